package baysheet.wording;

/**
 * What identifies the job.
 *
 * @param longTitle whether it needs smaller letters
 */
public record HeadText(
    String shop,
    String job,
    String date,
    String id,
    String code,
    String title,
    boolean longTitle,
    RequestText request,
    VehicleText vehicle,
    WorkText work,
    BeforeText before) {
  /**
   * What the customer wants.
   *
   * @param complaint in the customer's words
   * @param promised when the vehicle has to be ready
   */
  public record RequestText(String customer, String complaint, String promised) {}

  /** The vehicle, and how it is: rusty … */
  public record VehicleText(
      String name,
      String years,
      String plate,
      String vin,
      String odometer,
      String distanceUnit,
      String state) {}

  /**
   * Where the work is done, by whom, and how long it takes.
   *
   * @param time from–to with the likely time; "" where no step is left
   * @param saved what sharing saves, or nothing
   */
  public record WorkText(
      String bay,
      String equipment,
      String by,
      String with,
      String second,
      String time,
      String saved) {}

  /**
   * What happened before this sheet.
   *
   * @param carried where the work began, if that was on another day, and what is done
   * @param replaces which sheet it replaces, and what is different
   */
  public record BeforeText(String carried, String replaces, String seen) {}
}
