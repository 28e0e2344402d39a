package baysheet.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Turns minutes of the clock into working minutes and back. Working minute 0 is the opening; breaks
 * are left out. Work that is not done at closing time goes on after it: whoever looks at the
 * timetable sees how long it would take.
 *
 * @param opens minutes after midnight
 * @param closes minutes after midnight
 * @param breaks between opening and closing, in order, none touching another
 */
public record WorkingHours(int opens, int closes, List<Break> breaks) {
  /** A break, in minutes after midnight. */
  public record Break(int from, int to) {}

  /**
   * @throws IllegalArgumentException if a time does not follow the one before it
   */
  public WorkingHours {
    List<Break> sorted = new ArrayList<>(breaks);
    sorted.sort(Comparator.comparingInt(Break::from));
    breaks = List.copyOf(sorted);
    int last = opens;
    for (Break each : breaks) {
      if (each.from() < last || each.to() <= each.from() || each.to() > closes) {
        throw new IllegalArgumentException("break " + each + " in " + opens + " to " + closes);
      }
      last = each.to();
    }
    if (opens < 0 || closes <= last || closes > 24 * 60) {
      throw new IllegalArgumentException("open from " + opens + " to " + closes);
    }
  }

  /** Working minutes that have passed at a minute of the clock; 0 before the opening. */
  public int toWorking(int clock) {
    int passed = Math.max(0, clock - opens);
    for (Break each : breaks) {
      passed -= Math.max(0, Math.min(clock, each.to()) - each.from());
    }
    return passed;
  }

  /** The minute of the clock at which work can start when so many working minutes have passed. */
  public int startToClock(int working) {
    int clock = opens + working;
    for (Break each : breaks) {
      clock += clock >= each.from() ? each.to() - each.from() : 0;
    }
    return clock;
  }

  /** The minute of the clock at which so many working minutes have passed. */
  public int endToClock(int working) {
    int clock = opens + working;
    for (Break each : breaks) {
      clock += clock > each.from() ? each.to() - each.from() : 0;
    }
    return clock;
  }
}
