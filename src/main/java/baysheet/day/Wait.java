package baysheet.day;

import java.util.ArrayList;
import java.util.List;

/**
 * Why an activity, or a part of it, does not start a minute earlier: a resource that others hold.
 *
 * @param resource what it waits for
 * @param holders ids of the activities that hold it, in the order of the plan
 * @param from working minute at which this activity needs it in its timetable
 * @param part which part of the activity waits, counted from 0
 */
public record Wait(String resource, List<String> holders, int from, int part) {
  public Wait {
    holders = List.copyOf(holders);
  }

  /**
   * What keeps the activity at a position from starting a minute earlier, and its parts from
   * following at once; empty where only its earliest start or another activity before it does.
   */
  public static List<Wait> of(Timetable timetable, int position) {
    Activity activity = timetable.plan().activities().get(position);
    List<Integer> pauses = timetable.pauses().get(position);
    List<Wait> waits = new ArrayList<>();
    for (int k = 0; k < activity.uses().size(); k++) {
      Activity.Use use = activity.uses().get(k);
      int part = Math.max(0, activity.part(use));
      boolean waited =
          part == 0
              ? timetable.starts().get(position) > activity.earliest()
              : !pauses.isEmpty() && pauses.get(part - 1) > 0;
      String resource = timetable.chosen().get(position).get(k);
      int needed = timetable.from(position, use.from());
      List<String> holders = new ArrayList<>();
      if (waited) {
        holders.addAll(timetable.usersOf(resource, needed - 1));
        holders.remove(activity.id());
      }
      if (holders.size() >= timetable.plan().capacity().get(resource)) {
        waits.add(new Wait(resource, holders, needed, part));
      }
    }
    return waits;
  }
}
