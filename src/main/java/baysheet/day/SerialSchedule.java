package baysheet.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
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
  private final Map<String, Profile> profiles = new HashMap<>();

  /** What each activity needs, in the order of its uses. */
  private final List<List<Need>> needs = new ArrayList<>();

  private final int[] starts;
  private final List<List<Integer>> pauses = new ArrayList<>();
  private final List<List<String>> chosen = new ArrayList<>();
  private boolean mayPause;

  SerialSchedule(DayPlan plan) {
    this.plan = plan;
    this.positions = plan.positions();
    this.starts = new int[plan.activities().size()];
    plan.capacity().forEach((id, units) -> profiles.put(id, new Profile(id, units)));
    for (Activity activity : plan.activities()) {
      needs.add(activity.uses().stream().map(use -> need(activity, use)).toList());
      pauses.add(List.of());
      chosen.add(List.of());
    }
  }

  private Need need(Activity activity, Activity.Use use) {
    List<Profile> anyOf = use.anyOf().stream().map(profiles::get).toList();
    boolean first = activity.rests().stream().allMatch(rest -> use.from() < rest);
    return new Need(anyOf, use.from(), use.to(), activity.part(use), first);
  }

  /**
   * The timetable that a priority leads to.
   *
   * @param priority the higher of two activities that may both be placed comes first; of equals the
   *     one that is written first
   * @param pausing whether activities pause at their rests where they would have to wait
   */
  Timetable of(double[] priority, boolean pausing) {
    mayPause = pausing;
    Arrays.fill(starts, -1);
    profiles.values().forEach(Profile::clear);
    for (int placed = 0; placed < priority.length; placed++) {
      place(next(priority));
    }
    return new Timetable(plan, Arrays.stream(starts).boxed().toList(), pauses, chosen);
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
      int free = soonestFree(position, start);
      if (free == start && take(new Placing(position, activity, start, pauses(position, start)))) {
        break;
      }
      start = Math.max(free, start + 1);
      if (start > last) {
        throw new IllegalArgumentException(
            activity.id() + " never finds all that it needs at once");
      }
    }
  }

  /**
   * A use of an activity.
   *
   * @param part of the activity, as {@link Activity#part} counts them
   * @param first whether it begins before the activity can pause
   */
  private record Need(List<Profile> anyOf, int from, int to, int part, boolean first) {
    /** The first start of work without a pause at which it has a resource. */
    int soonestFree(int start) {
      int first = Integer.MAX_VALUE;
      for (Profile resource : anyOf) {
        int full = resource.lastFull(start + from, start + to);
        if (full < 0) {
          return start;
        }
        first = Math.min(first, full + 1 - from);
      }
      return first;
    }
  }

  /** An activity at a start that is tried. */
  private record Placing(int position, Activity activity, int start, List<Integer> pauses) {
    int from(Need need) {
      return start + activity.elapsed(pauses, need.from(), true);
    }

    int to(Need need) {
      return start + activity.elapsed(pauses, need.to(), false);
    }
  }

  /** How long the activity pauses at each rest so that its next part finds what it needs. */
  private List<Integer> pauses(int position, int start) {
    int rests = plan.activities().get(position).rests().size();
    if (!mayPause || rests == 0) {
      return List.of();
    }
    List<Integer> found = new ArrayList<>();
    int shift = start;
    for (int part = 1; part <= rests; part++) {
      int begin = shift;
      int last = -1;
      while (last < shift && shift - begin < LONGEST_WAIT) {
        last = shift;
        for (Need need : needs.get(position)) {
          if (need.part() == part) {
            shift = Math.max(shift, need.soonestFree(shift));
          }
        }
      }
      found.add(shift - begin);
    }
    return found;
  }

  /**
   * The first start at which every use, looked at alone, has a resource for as long as it takes
   * without a pause. What begins after a rest can wait there.
   */
  private int soonestFree(int position, int start) {
    int soonest = start;
    for (Need need : needs.get(position)) {
      if (!mayPause || need.first()) {
        soonest = Math.max(soonest, need.soonestFree(start));
      }
    }
    return soonest;
  }

  /** Takes a resource for each use; takes none where not all are free. */
  private boolean take(Placing placing) {
    List<Need> all = needs.get(placing.position());
    for (Need need : all) {
      if (need.part() < 0 && isNoneFree(need, placing.from(need), placing.to(need))) {
        return false;
      }
    }
    return take(placing, new String[all.size()], 0);
  }

  private static boolean isNoneFree(Need need, int from, int to) {
    for (Profile resource : need.anyOf()) {
      if (resource.lastFull(from, to) < 0) {
        return false;
      }
    }
    return true;
  }

  /** The same from the given use on. */
  private boolean take(Placing placing, String[] taken, int use) {
    int position = placing.position();
    if (use == taken.length) {
      starts[position] = placing.start();
      pauses.set(position, placing.pauses());
      chosen.set(position, List.of(taken));
      return true;
    }
    Need need = needs.get(position).get(use);
    int from = placing.from(need);
    int to = placing.to(need);
    for (Profile resource : need.anyOf()) {
      if (resource.lastFull(from, to) < 0) {
        resource.book(from, to, 1);
        taken[use] = resource.id;
        if (take(placing, taken, use + 1)) {
          return true;
        }
        resource.book(from, to, -1);
      }
    }
    return false;
  }

  /** How many units of a resource are in use at each minute. */
  private static final class Profile {
    private final String id;
    private final int capacity;
    private int[] used = new int[256];

    /** The minutes at which no unit is left. */
    private final BitSet full = new BitSet();

    Profile(String id, int capacity) {
      this.id = id;
      this.capacity = capacity;
    }

    void clear() {
      Arrays.fill(used, 0);
      full.clear();
    }

    /** The last minute of a stretch at which no unit is left; −1 where there is none. */
    int lastFull(int from, int to) {
      int minute = full.previousSetBit(to - 1);
      return minute < from ? -1 : minute;
    }

    void book(int from, int to, int units) {
      if (to > used.length) {
        used = Arrays.copyOf(used, Math.max(to, 2 * used.length));
      }
      for (int minute = from; minute < to; minute++) {
        used[minute] += units;
        full.set(minute, used[minute] >= capacity);
      }
    }
  }
}
