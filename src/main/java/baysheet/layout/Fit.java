package baysheet.layout;

import java.util.List;

/**
 * How a form was made to fit.
 *
 * @param bodySize in thousandths of a point
 * @param handSize that of text read in the hand
 * @param leastPens whether boxes for a pen are at their smallest
 * @param dropped the groups that gave way, in the order they went
 * @param measurements how often the form was measured
 */
public record Fit(
    long bodySize, long handSize, boolean leastPens, List<String> dropped, int measurements) {
  public Fit {
    dropped = List.copyOf(dropped);
  }
}
