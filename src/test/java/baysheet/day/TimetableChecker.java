package baysheet.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds what is impossible in a timetable, minute by minute; shares no code with the scheduler. */
final class TimetableChecker {
  private TimetableChecker() {}

  static List<String> faults(Timetable timetable) {
    List<String> faults = new ArrayList<>();
    Map<String, Integer> load = new HashMap<>();
    List<Activity> activities = timetable.plan().activities();
    Map<String, Integer> starts = timetable.startsById();
    for (int i = 0; i < activities.size(); i++) {
      Activity activity = activities.get(i);
      int start = starts.get(activity.id());
      if (start < activity.earliest()) {
        faults.add(activity.id() + " starts at " + start + " before " + activity.earliest());
      }
      for (Activity other : activities) {
        int otherEnd = starts.get(other.id()) + other.minutes();
        if (activity.after().contains(other.id()) && otherEnd > start) {
          faults.add(activity.id() + " starts before the end of " + other.id());
        }
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
        for (int minute = start + use.from(); minute < start + use.to(); minute++) {
          int units = load.merge(chosen.get(k) + " at " + minute, 1, Integer::sum);
          if (units > timetable.plan().capacity().get(chosen.get(k))) {
            faults.add("too much of " + chosen.get(k) + " at " + minute);
          }
        }
      }
    }
    return faults;
  }
}
