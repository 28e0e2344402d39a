package baysheet.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Finds what is impossible in a timetable, minute by minute; shares no code with the scheduler. */
final class TimetableChecker {
  private TimetableChecker() {}

  /** The starting minute of each activity by its id. */
  static Map<String, Integer> starts(Timetable timetable) {
    Map<String, Integer> byId = new TreeMap<>();
    for (int i = 0; i < timetable.starts().size(); i++) {
      byId.put(timetable.plan().activities().get(i).id(), timetable.starts().get(i));
    }
    return byId;
  }

  static List<String> faults(Timetable timetable) {
    List<String> faults = new ArrayList<>();
    Map<String, Integer> load = new HashMap<>();
    List<Activity> activities = timetable.plan().activities();
    Map<String, Integer> starts = starts(timetable);
    for (int i = 0; i < activities.size(); i++) {
      Activity activity = activities.get(i);
      int start = starts.get(activity.id());
      if (start < activity.earliest()) {
        faults.add(activity.id() + " starts at " + start + " before " + activity.earliest());
      }
      for (Activity other : activities) {
        int otherEnd = minutes(timetable, activities.indexOf(other))[other.minutes() - 1] + 1;
        if (activity.after().contains(other.id()) && otherEnd > start) {
          faults.add(activity.id() + " starts before the end of " + other.id());
        }
      }
      List<Integer> pauses = timetable.pauses().get(i);
      boolean paused = pauses.size() == activity.rests().size();
      if (!pauses.isEmpty() && (!paused || pauses.stream().anyMatch(pause -> pause < 0))) {
        faults.add(activity.id() + " pauses " + pauses + " at " + activity.rests());
        continue;
      }
      List<String> chosen = timetable.chosen().get(i);
      if (chosen.size() != activity.uses().size()) {
        faults.add(activity.id() + " lacks a resource: " + chosen);
        continue;
      }
      for (int k = 0; k < chosen.size(); k++) {
        Activity.Use use = activity.uses().get(k);
        if (!use.anyOf().contains(chosen.get(k))) {
          faults.add(activity.id() + " takes " + chosen.get(k) + " for one of " + use.anyOf());
        }
        int[] minutes = minutes(timetable, i);
        for (int minute = minutes[use.from()]; minute <= minutes[use.to() - 1]; minute++) {
          int units = load.merge(chosen.get(k) + " at " + minute, 1, Integer::sum);
          if (units > timetable.plan().capacity().get(chosen.get(k))) {
            faults.add("too much of " + chosen.get(k) + " at " + minute);
          }
        }
      }
    }
    return faults;
  }

  /** The working minute at which each minute of an activity is worked. */
  private static int[] minutes(Timetable timetable, int position) {
    Activity activity = timetable.plan().activities().get(position);
    int[] minutes = new int[activity.minutes()];
    int now = timetable.starts().get(position);
    for (int i = 0; i < minutes.length; i++) {
      int rest = activity.rests().indexOf(i);
      now +=
          rest < 0 || timetable.pauses().get(position).isEmpty()
              ? 0
              : timetable.pauses().get(position).get(rest);
      minutes[i] = now++;
    }
    return minutes;
  }
}
