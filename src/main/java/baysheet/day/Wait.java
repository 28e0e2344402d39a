package baysheet.day;

import java.util.ArrayList;
import java.util.List;

/**
 * Why an activity does not start a minute earlier: a resource that others hold.
 *
 * @param resource what it waits for
 * @param holders ids of the activities that hold it, in the order of the plan
 * @param from working minute at which this activity needs it in its timetable
 */
public record Wait(String resource, List<String> holders, int from) {
  public Wait {
    holders = List.copyOf(holders);
  }

  /**
   * What keeps the activity at a position from starting a minute earlier; empty where only its
   * earliest start or another activity before it does.
   */
  public static List<Wait> of(Timetable timetable, int position) {
    Activity activity = timetable.plan().activities().get(position);
    int start = timetable.starts().get(position);
    List<Wait> waits = new ArrayList<>();
    for (int k = 0; start > activity.earliest() && k < activity.uses().size(); k++) {
      Activity.Use use = activity.uses().get(k);
      String resource = timetable.chosen().get(position).get(k);
      int needed = start + use.from();
      List<String> holders = new ArrayList<>(timetable.usersOf(resource, needed - 1));
      holders.remove(activity.id());
      if (holders.size() >= timetable.plan().capacity().get(resource)) {
        waits.add(new Wait(resource, holders, needed));
      }
    }
    return waits;
  }
}
