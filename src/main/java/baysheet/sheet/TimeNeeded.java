package baysheet.sheet;

/**
 * The time the job needs, in minutes.
 *
 * @param low mean less two standard deviations, not under the sum of the shortest times
 * @param mean the sum of the minutes that are printed at the steps, in whole minutes
 * @param high mean and two standard deviations
 * @param saved what sharing saves
 * @param untimed how many steps carry no minutes and are not in the sum
 */
public record TimeNeeded(int low, int mean, int high, int saved, int untimed) {
  /** A step's minutes as they are printed: in halves, and never less than one; 0 for none. */
  public static double printed(double minutes) {
    return minutes == 0 ? 0 : Math.max(1, Math.round(minutes * 2)) / 2.0;
  }
}
