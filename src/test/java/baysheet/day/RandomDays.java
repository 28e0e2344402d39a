package baysheet.day;

import baysheet.day.Activity.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;

/** Made-up days of a garage. */
final class RandomDays {
  private RandomDays() {}

  /** Up to 12 jobs in 3 bays with 4 people and 3 tools. */
  static DayPlan day(long seed) {
    Random random = new Random(seed);
    return day(random, 1 + random.nextInt(12), 3, 4, 3);
  }

  /**
   * @param bays with one unit each
   * @param people of whom one does a job and any other looks at it
   * @param tools with one or two units each
   */
  static DayPlan day(Random random, int jobs, int bays, int people, int tools) {
    Map<String, Integer> capacity = new TreeMap<>();
    List<String> everybody = new ArrayList<>();
    for (int i = 0; i < people; i++) {
      everybody.add("person " + i);
      capacity.put("person " + i, 1);
      capacity.put("look of person " + i, 1);
    }
    for (int i = 0; i < bays; i++) {
      capacity.put("bay " + i, 1);
    }
    for (int i = 0; i < tools; i++) {
      capacity.put("tool " + i, 1 + random.nextInt(2));
    }
    List<Activity> activities = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      int minutes = 20 + random.nextInt(200);
      String bay = "bay " + random.nextInt(bays);
      String by = everybody.get(random.nextInt(people));
      List<Use> uses = new ArrayList<>(List.of(Use.of(bay, 0, minutes), Use.of(by, 0, minutes)));
      List<String> others =
          everybody.stream().filter(one -> !one.equals(by)).map(one -> "look of " + one).toList();
      int look = random.nextInt(minutes - 5);
      uses.add(new Use(others, look, look + 5));
      for (int i = random.nextInt(3); i > 0 && tools > 0; i--) {
        int from = random.nextInt(minutes - 10);
        uses.add(Use.of("tool " + random.nextInt(tools), from, from + 10));
      }
      activities.add(
          new Activity(
              "job " + job,
              minutes,
              minutes * 0.1,
              random.nextInt(120),
              random.nextBoolean() ? OptionalInt.of(60 + random.nextInt(500)) : OptionalInt.empty(),
              Optional.of(bay),
              withoutSelfClash(random.nextBoolean() ? uses : inStages(uses, by, minutes)),
              List.of(),
              minutes > 60 ? List.of(minutes / 3, minutes / 2) : List.of()));
    }
    return new DayPlan(activities, capacity);
  }

  /** The person of a job is free between its stages, the bay is not. */
  private static List<Use> inStages(List<Use> uses, String by, int minutes) {
    List<Use> stages = new ArrayList<>(uses);
    stages.removeIf(use -> use.anyOf().equals(List.of(by)));
    stages.add(Use.of(by, 0, minutes / 3));
    stages.add(Use.of(by, minutes / 3, minutes / 2));
    stages.add(Use.of(by, minutes / 2, minutes));
    return stages;
  }

  /** A tool wanted twice at once by one job would never be free. */
  private static List<Use> withoutSelfClash(List<Use> uses) {
    List<Use> kept = new ArrayList<>();
    for (Use use : uses) {
      boolean clash =
          kept.stream()
              .anyMatch(
                  other ->
                      other.anyOf().equals(use.anyOf())
                          && use.from() < other.to()
                          && other.from() < use.to());
      if (!clash) {
        kept.add(use);
      }
    }
    return kept;
  }

  /** Five activities on two resources, some after others, nothing promised. */
  static DayPlan small(long seed) {
    Random random = new Random(seed);
    List<Activity> activities = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      int minutes = 2 + random.nextInt(8);
      int from = random.nextInt(minutes);
      int other = random.nextInt(minutes);
      List<Use> uses = new ArrayList<>(List.of(Use.of("r", from, minutes)));
      if (random.nextBoolean()) {
        uses.add(Use.of("s", other, minutes));
      }
      List<String> after =
          i > 0 && random.nextInt(3) == 0 ? List.of("a" + random.nextInt(i)) : List.of();
      activities.add(
          new Activity(
              "a" + i,
              minutes,
              0,
              random.nextInt(6),
              OptionalInt.empty(),
              Optional.empty(),
              uses,
              after));
    }
    return new DayPlan(activities, Map.of("r", 1 + random.nextInt(2), "s", 1));
  }
}
