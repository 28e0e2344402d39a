package baysheet.day;

import baysheet.day.Activity.Use;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A job shop as published: a row for each job, machine and time of each operation in turn. */
final class JobShop {
  private JobShop() {}

  static DayPlan read(String rows) {
    List<Activity> activities = new ArrayList<>();
    Map<String, Integer> machines = new HashMap<>();
    List<String> jobs = rows.lines().map(String::strip).filter(row -> !row.isEmpty()).toList();
    for (int job = 0; job < jobs.size(); job++) {
      String[] numbers = jobs.get(job).split("\\s+");
      for (int k = 0; k < numbers.length / 2; k++) {
        String machine = "machine " + numbers[2 * k];
        int minutes = Integer.parseInt(numbers[2 * k + 1]);
        machines.put(machine, 1);
        activities.add(
            Activity.of(
                job + "." + k,
                minutes,
                List.of(Use.of(machine, 0, minutes)),
                k == 0 ? List.of() : List.of(job + "." + (k - 1))));
      }
    }
    return new DayPlan(activities, machines);
  }
}
