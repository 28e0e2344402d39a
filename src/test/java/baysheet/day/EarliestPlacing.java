package baysheet.day;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Places activities in a given order, each at the first minute that works, by trying every minute.
 * For single choices only. Orders that break a precedence count as never ending.
 */
final class EarliestPlacing {
  private EarliestPlacing() {}

  static int end(DayPlan plan, List<Integer> order) {
    Map<String, Integer> ends = new HashMap<>();
    Map<String, Integer> load = new HashMap<>();
    int last = 0;
    for (int position : order) {
      Activity activity = plan.activities().get(position);
      if (!ends.keySet().containsAll(activity.after())) {
        return Integer.MAX_VALUE;
      }
      int start = activity.earliest();
      for (String before : activity.after()) {
        start = Math.max(start, ends.get(before));
      }
      while (!fits(plan, activity, start, load)) {
        start++;
      }
      for (Activity.Use use : activity.uses()) {
        for (int minute = use.from(); minute < use.to(); minute++) {
          load.merge(use.anyOf().get(0) + "@" + (start + minute), 1, Integer::sum);
        }
      }
      ends.put(activity.id(), start + activity.minutes());
      last = Math.max(last, start + activity.minutes());
    }
    return last;
  }

  private static boolean fits(
      DayPlan plan, Activity activity, int start, Map<String, Integer> load) {
    for (Activity.Use use : activity.uses()) {
      String resource = use.anyOf().get(0);
      for (int minute = use.from(); minute < use.to(); minute++) {
        int used = load.getOrDefault(resource + "@" + (start + minute), 0);
        if (used >= plan.capacity().get(resource)) {
          return false;
        }
      }
    }
    return true;
  }
}
