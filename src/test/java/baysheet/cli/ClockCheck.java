package baysheet.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds what is impossible in a day of the demo's garage as it is printed for programs: minute by
 * minute on the clock, with no code of the scheduler.
 */
final class ClockCheck {
  private static final int DAY = 24 * 60;

  /** Of what the demo's crib has more than one; of all else it has one, or borrows one. */
  private static final Map<String, Integer> COUNTS =
      Map.of(
          "piston press", 2,
          "angle gauge", 2,
          "line clamp", 2,
          "DTI with stand", 2,
          "pole jack", 2,
          "solid wheel blocks", 2);

  private final List<String> faults = new ArrayList<>();
  private final Map<String, Integer> load = new HashMap<>();

  private ClockCheck() {}

  static List<String> faults(JsonNode jobs) {
    ClockCheck check = new ClockCheck();
    jobs.forEach(check::job);
    check.load.forEach(
        (what, units) -> {
          String tool = what.replaceFirst("^tool (.*) at \\d+$", "$1");
          if (units > COUNTS.getOrDefault(tool, 1)) {
            check.faults.add(units + " of " + what);
          }
        });
    return check.faults;
  }

  private void job(JsonNode job) {
    String by = job.path("by").asText();
    take("bay " + job.path("bay").asText(), job);
    List<JsonNode> worked = new ArrayList<>();
    job.path("stages").forEach(worked::add);
    stages(job, worked);
    for (JsonNode stretch : worked.isEmpty() ? List.of(job) : worked) {
      take("work of " + by, stretch);
      if (job.has("with")) {
        take("work of " + job.path("with").asText(), stretch);
      }
    }
    for (JsonNode look : job.path("looks")) {
      String person = look.path("person").asText();
      inside(job, look);
      take("look of " + person, look);
      // Only technicians look, and nobody at work of their own.
      if (!List.of("T1", "T2").contains(person) || person.equals(by)) {
        faults.add(person + " looks at " + job);
      }
    }
    for (JsonNode tool : job.path("tools")) {
      inside(job, tool);
      take("tool " + tool.path("tool").asText(), tool);
    }
  }

  /** One after another, from the beginning of the job to its end. */
  private void stages(JsonNode job, List<JsonNode> stages) {
    int before = minute(job, "from");
    for (JsonNode stage : stages) {
      inside(job, stage);
      if (minute(stage, "from") < before) {
        faults.add(stage + " is too early in " + job);
      }
      before = minute(stage, "to");
    }
    if (!stages.isEmpty() && before != minute(job, "to")) {
      faults.add("the last stage does not end " + job);
    }
  }

  private void inside(JsonNode job, JsonNode part) {
    if (minute(part, "from") < minute(job, "from") || minute(part, "to") > minute(job, "to")) {
      faults.add(part + " is outside of " + job);
    }
  }

  private void take(String what, JsonNode stretch) {
    for (int minute = minute(stretch, "from"); minute < minute(stretch, "to"); minute++) {
      load.merge(what + " at " + minute, 1, Integer::sum);
    }
  }

  /** {@code 16:30}, or {@code 01:10 +1 day} after midnight. */
  static int minute(JsonNode of, String key) {
    String[] parts = of.path(key).asText().split("[: +]+");
    int day = parts.length > 2 ? Integer.parseInt(parts[2]) * DAY : 0;
    return day + 60 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]);
  }
}
