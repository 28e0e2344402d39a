package baysheet.day;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What has to be scheduled.
 *
 * @param activities in the order in which they are written down
 * @param capacity how many units of each resource can be used at once, by its id
 */
public record DayPlan(List<Activity> activities, Map<String, Integer> capacity) {
  /**
   * Checks that every name is known.
   *
   * @throws IllegalArgumentException if an id stands twice, a resource or activity is unknown, a
   *     resource has no unit, or activities wait for one another in a circle
   */
  public DayPlan {
    activities = List.copyOf(activities);
    capacity = Map.copyOf(new TreeMap<>(capacity));
    Set<String> ids = new HashSet<>();
    for (Activity activity : activities) {
      require(ids.add(activity.id()), activity.id() + " stands twice");
    }
    for (Activity activity : activities) {
      require(ids.containsAll(activity.after()), activity.id() + " follows an unknown activity");
      for (Activity.Use use : activity.uses()) {
        for (String resource : use.anyOf()) {
          require(capacity.getOrDefault(resource, 0) > 0, "no unit of " + resource);
        }
      }
    }
    requireNoCircle(activities);
  }

  private static void requireNoCircle(List<Activity> activities) {
    Set<String> done = new HashSet<>();
    int before = -1;
    while (done.size() > before) {
      before = done.size();
      for (Activity activity : activities) {
        if (done.containsAll(activity.after())) {
          done.add(activity.id());
        }
      }
    }
    require(done.size() == activities.size(), "activities wait for one another in a circle");
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(otherwise);
    }
  }

  /** The position of each activity in the list, by its id. */
  Map<String, Integer> positions() {
    Map<String, Integer> positions = new HashMap<>();
    for (int i = 0; i < activities.size(); i++) {
      positions.put(activities.get(i).id(), i);
    }
    return positions;
  }
}
