package baysheet.sheet;

/**
 * The time the job needs, in minutes.
 *
 * @param low mean less two standard deviations, not under the sum of the shortest times
 * @param mean PERT mean
 * @param high mean and two standard deviations
 * @param saved what sharing saves
 * @param untimed how many steps carry no minutes and are not in the sum
 */
public record TimeNeeded(int low, int mean, int high, int saved, int untimed) {}
