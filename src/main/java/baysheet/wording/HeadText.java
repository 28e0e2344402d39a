package baysheet.wording;

/**
 * What identifies the job.
 *
 * @param longTitle whether it needs smaller letters
 * @param complaint in the customer's words
 * @param promised when the vehicle has to be ready
 * @param time from–to with the likely time
 * @param saved what sharing saves, or nothing
 * @param carried where the work began, if that was on another day, and what is done
 * @param replaces which sheet it replaces, and what is different
 */
public record HeadText(
    String shop,
    String job,
    String date,
    String id,
    String code,
    String title,
    boolean longTitle,
    String customer,
    String complaint,
    String vehicle,
    String years,
    String plate,
    String vin,
    String odometer,
    String distanceUnit,
    String bay,
    String bayEquipment,
    String by,
    String with,
    String second,
    String state,
    String time,
    String saved,
    String promised,
    String carried,
    String replaces,
    String seen) {}
