package baysheet.day;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Work that runs from its start to its end: one job in its bay. It can pause only at its rests.
 * Breaks of the garage interrupt it, but they are no working minutes.
 *
 * @param id its name, different from that of every other activity
 * @param minutes expected length in working minutes, at least 1
 * @param deviation standard deviation of the length in working minutes
 * @param earliest working minute before which it cannot start
 * @param promised working minute by which it should have ended; absent where nothing is promised
 * @param queue the line in which activities should start as listed, such as a bay
 * @param uses what it needs while it runs
 * @param after ids of activities that must have ended before it starts
 * @param rests minutes of its own work after which it can pause, in order; what it uses across a
 *     rest stays taken during the pause
 */
public record Activity(
    String id,
    int minutes,
    double deviation,
    int earliest,
    OptionalInt promised,
    Optional<String> queue,
    List<Use> uses,
    List<String> after,
    List<Integer> rests) {
  public Activity {
    uses = List.copyOf(uses);
    after = List.copyOf(after);
    rests = List.copyOf(rests);
    if (minutes < 1 || earliest < 0 || !(deviation >= 0)) {
      throw new IllegalArgumentException(
          id + ": minutes " + minutes + ", deviation " + deviation + ", earliest " + earliest);
    }
    for (Use use : uses) {
      if (use.to() > minutes) {
        throw new IllegalArgumentException(id + " uses " + use + " after its end at " + minutes);
      }
    }
    int last = 0;
    for (int rest : rests) {
      if (rest <= last || rest >= minutes) {
        throw new IllegalArgumentException(id + " of " + minutes + " minutes rests at " + rests);
      }
      last = rest;
    }
  }

  /** Work that does not pause. */
  public Activity(
      String id,
      int minutes,
      double deviation,
      int earliest,
      OptionalInt promised,
      Optional<String> queue,
      List<Use> uses,
      List<String> after) {
    this(id, minutes, deviation, earliest, promised, queue, uses, after, List.of());
  }

  /** Work of a known length that may start at once and that nothing is promised for. */
  public static Activity of(String id, int minutes, List<Use> uses, List<String> after) {
    return new Activity(id, minutes, 0, 0, OptionalInt.empty(), Optional.empty(), uses, after);
  }

  /** The same work, which can pause. */
  public Activity resting(List<Integer> rests) {
    return new Activity(id, minutes, deviation, earliest, promised, queue, uses, after, rests);
  }

  /**
   * When a minute of this work begins, or ends, after its start.
   *
   * @param pauses how long it pauses at each rest; empty where it does not pause
   * @param goesOn whether what begins there is meant, not what ends there
   */
  int elapsed(List<Integer> pauses, int minute, boolean goesOn) {
    int elapsed = minute;
    for (int k = 0; k < pauses.size(); k++) {
      boolean before = goesOn ? rests.get(k) <= minute : rests.get(k) < minute;
      elapsed += before ? pauses.get(k) : 0;
    }
    return elapsed;
  }

  /** Which of its parts, counted from 0, a use lies in; −1 where it goes across a rest. */
  int part(Use use) {
    int part = 0;
    for (int rest : rests) {
      part += rest <= use.from() ? 1 : 0;
      if (use.from() < rest && rest < use.to()) {
        return -1;
      }
    }
    return part;
  }

  /**
   * A need for one unit of a resource during a part of an activity.
   *
   * @param anyOf ids of resources, each of which will do; the first that is free is taken
   * @param from working minutes after the start of the activity
   * @param to the minute after the last one
   */
  public record Use(List<String> anyOf, int from, int to) {
    public Use {
      anyOf = List.copyOf(anyOf);
      if (anyOf.isEmpty() || from < 0 || to <= from) {
        throw new IllegalArgumentException("one of " + anyOf + " from " + from + " to " + to);
      }
    }

    /** A need for one certain resource. */
    public static Use of(String resource, int from, int to) {
      return new Use(List.of(resource), from, to);
    }
  }
}
