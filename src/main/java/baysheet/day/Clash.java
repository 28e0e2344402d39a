package baysheet.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A stretch of time in which more units of a resource are wanted than there are.
 *
 * @param from first working minute
 * @param to the working minute after the last one
 * @param activities ids of all that want it in that stretch, in the order of the plan
 */
public record Clash(String resource, int from, int to, List<String> activities) {
  public Clash {
    activities = List.copyOf(activities);
  }

  /**
   * All clashes of a timetable that was made without regard to some resources.
   *
   * @param capacity what there is of the resources to look at
   */
  public static List<Clash> in(Timetable timetable, Map<String, Integer> capacity) {
    List<Clash> clashes = new ArrayList<>();
    new TreeMap<>(capacity)
        .forEach((resource, units) -> clashes.addAll(of(timetable, resource, units)));
    return clashes;
  }

  private static List<Clash> of(Timetable timetable, String resource, int units) {
    List<Clash> clashes = new ArrayList<>();
    List<String> users = List.of();
    int from = 0;
    for (int minute = 0; minute <= timetable.end(); minute++) {
      List<String> now = timetable.usersOf(resource, minute);
      if (!now.equals(users)) {
        if (users.size() > units) {
          clashes.add(new Clash(resource, from, minute, users));
        }
        users = now;
        from = minute;
      }
    }
    return clashes;
  }
}
