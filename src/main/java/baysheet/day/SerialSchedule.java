package baysheet.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Serial schedule generation: activities are placed one after another, each at the earliest minute
 * at which its predecessors have ended and every resource is free (Kelley 1963; Kolisch, European
 * Journal of Operational Research 90, 1996).
 */
final class SerialSchedule {
  /** A year of minutes: who waits longer can never start. */
  private static final int LONGEST_WAIT = 525_600;

  private final DayPlan plan;
  private final Map<String, Integer> positions;
  private final Map<String, int[]> used = new HashMap<>();
  private final boolean mayPause;
  private final int[] starts;
  private final List<List<Integer>> pauses;
  private final List<List<String>> chosen;

  private SerialSchedule(DayPlan plan, boolean mayPause) {
    this.plan = plan;
    this.mayPause = mayPause;
    this.positions = plan.positions();
    this.starts = new int[plan.activities().size()];
    Arrays.fill(starts, -1);
    this.pauses = new ArrayList<>();
    this.chosen = new ArrayList<>();
    for (int i = 0; i < starts.length; i++) {
      pauses.add(List.of());
      chosen.add(List.of());
    }
    plan.capacity().keySet().forEach(resource -> used.put(resource, new int[256]));
  }

  /**
   * The timetable that a priority leads to.
   *
   * @param priority the higher of two activities that may both be placed comes first; of equals the
   *     one that is written first
   * @param mayPause whether activities pause at their rests where they would have to wait
   */
  static Timetable of(DayPlan plan, double[] priority, boolean mayPause) {
    SerialSchedule schedule = new SerialSchedule(plan, mayPause);
    for (int placed = 0; placed < priority.length; placed++) {
      schedule.place(schedule.next(priority));
    }
    return new Timetable(
        plan, Arrays.stream(schedule.starts).boxed().toList(), schedule.pauses, schedule.chosen);
  }

  private int next(double[] priority) {
    int best = -1;
    for (int i = 0; i < starts.length; i++) {
      if (starts[i] < 0 && isReady(i) && (best < 0 || priority[i] > priority[best])) {
        best = i;
      }
    }
    return best;
  }

  private boolean isReady(int position) {
    for (String before : plan.activities().get(position).after()) {
      if (starts[positions.get(before)] < 0) {
        return false;
      }
    }
    return true;
  }

  private void place(int position) {
    Activity activity = plan.activities().get(position);
    int start = activity.earliest();
    for (String before : activity.after()) {
      int i = positions.get(before);
      Activity earlier = plan.activities().get(i);
      int took = earlier.elapsed(pauses.get(i), earlier.minutes(), false);
      start = Math.max(start, starts[i] + took);
    }
    int last = start + LONGEST_WAIT;
    while (true) {
      Placing placing = new Placing(activity, start, pauses(activity, start));
      int free = soonestFree(placing);
      if (free == start && take(placing, List.of())) {
        break;
      }
      start = Math.max(free, start + 1);
      if (start > last) {
        throw new IllegalArgumentException(
            activity.id() + " never finds all that it needs at once");
      }
    }
  }

  /** An activity at a start that is tried. */
  private record Placing(Activity activity, int start, List<Integer> pauses) {
    int from(Activity.Use use) {
      return start + activity.elapsed(pauses, use.from(), true);
    }

    int to(Activity.Use use) {
      return start + activity.elapsed(pauses, use.to(), false);
    }
  }

  /** How long the activity pauses at each rest so that its next part finds what it needs. */
  private List<Integer> pauses(Activity activity, int start) {
    if (!mayPause || activity.rests().isEmpty()) {
      return List.of();
    }
    List<Integer> found = new ArrayList<>();
    int shift = start;
    for (int part = 1; part <= activity.rests().size(); part++) {
      int begin = shift;
      int last = -1;
      while (last < shift && shift - begin < LONGEST_WAIT) {
        last = shift;
        for (Activity.Use use : activity.uses()) {
          if (activity.part(use) == part) {
            shift = Math.max(shift, soonestFree(use, shift));
          }
        }
      }
      found.add(shift - begin);
    }
    return found;
  }

  /** The first start at which every use, looked at alone, has a resource. */
  private int soonestFree(Placing placing) {
    int soonest = placing.start();
    for (Activity.Use use : placing.activity().uses()) {
      int part = placing.activity().part(use);
      if (placing.pauses().isEmpty() || part == 0) {
        soonest = Math.max(soonest, soonestFree(use, placing.start()));
      } else if (part < 0
          && use.anyOf().stream()
              .allMatch(it -> lastFullMinute(it, placing.from(use), placing.to(use)) >= 0)) {
        soonest = Math.max(soonest, placing.start() + 1);
      }
    }
    return soonest;
  }

  /** The first start of work without a pause at which a use has a resource. */
  private int soonestFree(Activity.Use use, int start) {
    int first = Integer.MAX_VALUE;
    for (String resource : use.anyOf()) {
      int full = lastFullMinute(resource, start + use.from(), start + use.to());
      first = Math.min(first, full < 0 ? start : full + 1 - use.from());
    }
    return first;
  }

  /** Takes a resource for each use from the given one on; takes none where not all are free. */
  private boolean take(Placing placing, List<String> taken) {
    if (taken.size() == placing.activity().uses().size()) {
      int position = positions.get(placing.activity().id());
      starts[position] = placing.start();
      pauses.set(position, placing.pauses());
      chosen.set(position, taken);
      return true;
    }
    Activity.Use use = placing.activity().uses().get(taken.size());
    int from = placing.from(use);
    int to = placing.to(use);
    for (String resource : use.anyOf()) {
      if (lastFullMinute(resource, from, to) < 0) {
        book(resource, from, to, 1);
        List<String> more = new ArrayList<>(taken);
        more.add(resource);
        if (take(placing, more)) {
          return true;
        }
        book(resource, from, to, -1);
      }
    }
    return false;
  }

  /** The last minute of a stretch at which no unit is left; −1 where there is none. */
  private int lastFullMinute(String resource, int from, int to) {
    int[] profile = used.get(resource);
    int capacity = plan.capacity().get(resource);
    for (int minute = Math.min(to, profile.length) - 1; minute >= from; minute--) {
      if (profile[minute] >= capacity) {
        return minute;
      }
    }
    return -1;
  }

  private void book(String resource, int from, int to, int units) {
    int[] profile = used.get(resource);
    if (to > profile.length) {
      profile = Arrays.copyOf(profile, Math.max(to, 2 * profile.length));
      used.put(resource, profile);
    }
    for (int minute = from; minute < to; minute++) {
      profile[minute] += units;
    }
  }
}
