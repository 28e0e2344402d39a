package baysheet.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * How likely each promise of a timetable holds when the activities take longer or shorter than
 * expected. The day is played many times with lengths drawn from normal distributions (cut off at a
 * tenth of the expected length): nobody starts before the time in the timetable, each resource goes
 * from one user to the next as planned, and who waits for it works on afterwards.
 */
public final class PromiseChance {
  private static final long SEED = 17L;

  /** No work is done in no time. */
  private static final double SHORTEST = 0.1;

  private final Timetable timetable;
  private final List<Point> points = new ArrayList<>();
  private final List<List<Integer>> waitsFor = new ArrayList<>();

  /**
   * A moment inside an activity. At each it first gives back what it has used, then waits for what
   * it takes: two activities may exchange their tools.
   */
  private record Point(int activity, int offset, int planned, boolean takes) {}

  private PromiseChance(Timetable timetable) {
    this.timetable = timetable;
    addPoints();
    addHandovers();
  }

  /**
   * The share of days on which each promise holds, from 0 to 1, in the order of the plan; 1 where
   * nothing is promised.
   *
   * @param days how many days are played; the standard error is at most 0.5/√days
   */
  public static List<Double> of(Timetable timetable, int days) {
    PromiseChance chance = new PromiseChance(timetable);
    SplittableRandom random = new SplittableRandom(SEED);
    int[] kept = new int[timetable.starts().size()];
    for (int day = 0; day < days; day++) {
      double[] ends = chance.play(random);
      for (int i = 0; i < kept.length; i++) {
        OptionalInt promised = timetable.plan().activities().get(i).promised();
        kept[i] += promised.isEmpty() || ends[i] <= promised.getAsInt() ? 1 : 0;
      }
    }
    return Arrays.stream(kept).mapToObj(count -> count / (double) days).toList();
  }

  private void addPoints() {
    List<Activity> activities = timetable.plan().activities();
    for (int i = 0; i < activities.size(); i++) {
      int[] offsets = {0, activities.get(i).minutes()};
      for (int rest : activities.get(i).rests()) {
        offsets = Arrays.copyOf(offsets, offsets.length + 1);
        offsets[offsets.length - 1] = rest;
      }
      for (Activity.Use use : activities.get(i).uses()) {
        offsets = Arrays.copyOf(offsets, offsets.length + 2);
        offsets[offsets.length - 2] = use.from();
        offsets[offsets.length - 1] = use.to();
      }
      for (int offset : Arrays.stream(offsets).sorted().distinct().toArray()) {
        points.add(given(i, offset));
        points.add(taken(i, offset));
      }
    }
    points.sort(
        Comparator.comparingInt(Point::planned)
            .thenComparing(Point::takes)
            .thenComparingInt(Point::activity));
    points.forEach(point -> waitsFor.add(new ArrayList<>()));
  }

  private Point given(int activity, int offset) {
    return new Point(activity, offset, timetable.until(activity, offset), false);
  }

  private Point taken(int activity, int offset) {
    return new Point(activity, offset, timetable.from(activity, offset), true);
  }

  /** Who gives what to whom: predecessors, and the users of each unit of a resource in turn. */
  private void addHandovers() {
    Map<String, Integer> positions = timetable.plan().positions();
    List<Activity> activities = timetable.plan().activities();
    for (int i = 0; i < activities.size(); i++) {
      for (String before : activities.get(i).after()) {
        int j = positions.get(before);
        link(j, activities.get(j).minutes(), i, 0);
      }
    }
    spells().values().forEach(this::addHandovers);
  }

  /** A stretch in which an activity uses a resource, as offsets from its start and as planned. */
  private record Spell(int activity, int from, int to, int planned, int plannedEnd) {}

  private Map<String, List<Spell>> spells() {
    Map<String, List<Spell>> spells = new TreeMap<>();
    for (int i = 0; i < timetable.starts().size(); i++) {
      List<Activity.Use> uses = timetable.plan().activities().get(i).uses();
      for (int k = 0; k < uses.size(); k++) {
        Activity.Use use = uses.get(k);
        spells
            .computeIfAbsent(timetable.chosen().get(i).get(k), resource -> new ArrayList<>())
            .add(
                new Spell(
                    i,
                    use.from(),
                    use.to(),
                    timetable.from(i, use.from()),
                    timetable.until(i, use.to())));
      }
    }
    return spells;
  }

  private void addHandovers(List<Spell> spells) {
    List<Spell> inTurn = new ArrayList<>(spells);
    inTurn.sort(Comparator.comparingInt(Spell::planned).thenComparingInt(Spell::activity));
    List<Spell> lastOfUnit = new ArrayList<>();
    for (Spell spell : inTurn) {
      int unit = 0;
      while (unit < lastOfUnit.size() && lastOfUnit.get(unit).plannedEnd() > spell.planned()) {
        unit++;
      }
      if (unit == lastOfUnit.size()) {
        lastOfUnit.add(spell);
      } else {
        Spell before = lastOfUnit.set(unit, spell);
        if (before.activity() != spell.activity()) {
          link(before.activity(), before.to(), spell.activity(), spell.from());
        }
      }
    }
  }

  private void link(int giver, int given, int taker, int taken) {
    waitsFor.get(points.indexOf(taken(taker, taken))).add(points.indexOf(given(giver, given)));
  }

  /** When each activity ends on one day, in the order of the plan. */
  private double[] play(SplittableRandom random) {
    double[] stretch = new double[timetable.starts().size()];
    for (int i = 0; i < stretch.length; i++) {
      Activity activity = timetable.plan().activities().get(i);
      double relative = activity.minutes() == 0 ? 0 : activity.deviation() / activity.minutes();
      stretch[i] = Math.max(SHORTEST, 1 + relative * normal(random));
    }
    double[] times = new double[points.size()];
    Map<Integer, Integer> before = new HashMap<>();
    double[] ends = new double[stretch.length];
    for (int i = 0; i < times.length; i++) {
      Point point = points.get(i);
      Integer last = before.put(point.activity(), i);
      times[i] =
          last == null
              ? point.planned()
              : times[last]
                  + (point.offset() - points.get(last).offset()) * stretch[point.activity()];
      if (last != null && isPause(points.get(last), point)) {
        times[i] = Math.max(times[i], point.planned());
      }
      for (int giver : waitsFor.get(i)) {
        times[i] = Math.max(times[i], times[giver]);
      }
      ends[point.activity()] = times[i];
    }
    return ends;
  }

  private static boolean isPause(Point before, Point after) {
    return before.offset() == after.offset() && before.planned() < after.planned();
  }

  /** Box and Muller, Annals of Mathematical Statistics 29, 1958. */
  private static double normal(SplittableRandom random) {
    double u = 1 - random.nextDouble();
    return StrictMath.sqrt(-2 * StrictMath.log(u))
        * StrictMath.cos(2 * Math.PI * random.nextDouble());
  }
}
