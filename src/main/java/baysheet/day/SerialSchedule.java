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
  private final int[] starts;
  private final List<List<String>> chosen;

  private SerialSchedule(DayPlan plan) {
    this.plan = plan;
    this.positions = plan.positions();
    this.starts = new int[plan.activities().size()];
    Arrays.fill(starts, -1);
    this.chosen = new ArrayList<>();
    plan.activities().forEach(activity -> chosen.add(List.of()));
    plan.capacity().keySet().forEach(resource -> used.put(resource, new int[256]));
  }

  /**
   * The timetable that a priority leads to.
   *
   * @param priority the higher of two activities that may both be placed comes first; of equals the
   *     one that is written first
   */
  static Timetable of(DayPlan plan, double[] priority) {
    SerialSchedule schedule = new SerialSchedule(plan);
    for (int placed = 0; placed < priority.length; placed++) {
      schedule.place(schedule.next(priority));
    }
    return new Timetable(plan, Arrays.stream(schedule.starts).boxed().toList(), schedule.chosen);
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
      start = Math.max(start, starts[i] + plan.activities().get(i).minutes());
    }
    int last = start + LONGEST_WAIT;
    while (true) {
      int free = soonestFree(activity, start);
      if (free == start && take(position, activity, start, List.of())) {
        break;
      }
      start = Math.max(free, start + 1);
      if (start > last) {
        throw new IllegalArgumentException(
            activity.id() + " never finds all that it needs at once");
      }
    }
    starts[position] = start;
  }

  /** The first start at which every use, looked at alone, has a resource. */
  private int soonestFree(Activity activity, int start) {
    int soonest = start;
    for (Activity.Use use : activity.uses()) {
      int first = Integer.MAX_VALUE;
      for (String resource : use.anyOf()) {
        int full = lastFullMinute(resource, start + use.from(), start + use.to());
        first = Math.min(first, full < 0 ? start : full + 1 - use.from());
      }
      soonest = Math.max(soonest, first);
    }
    return soonest;
  }

  /** Takes a resource for each use from the given one on; takes none where not all are free. */
  private boolean take(int position, Activity activity, int start, List<String> taken) {
    if (taken.size() == activity.uses().size()) {
      starts[position] = start;
      chosen.set(position, taken);
      return true;
    }
    Activity.Use use = activity.uses().get(taken.size());
    for (String resource : use.anyOf()) {
      if (lastFullMinute(resource, start + use.from(), start + use.to()) < 0) {
        book(resource, use, start, 1);
        List<String> more = new ArrayList<>(taken);
        more.add(resource);
        if (take(position, activity, start, more)) {
          return true;
        }
        book(resource, use, start, -1);
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

  private void book(String resource, Activity.Use use, int start, int units) {
    int to = start + use.to();
    int[] profile = used.get(resource);
    if (to > profile.length) {
      profile = Arrays.copyOf(profile, Math.max(to, 2 * profile.length));
      used.put(resource, profile);
    }
    for (int minute = start + use.from(); minute < to; minute++) {
      profile[minute] += units;
    }
  }
}
