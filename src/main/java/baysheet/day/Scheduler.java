package baysheet.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;

/**
 * Looks for a good timetable: serial schedule generation with the latest finish time as priority,
 * forward–backward improvement (Li and Willis, European Journal of Operational Research 56, 1992;
 * Valls, Ballestín and Quintanilla, EJOR 165, 2005) and regret-based biased random sampling (Drexl,
 * Management Science 37, 1991). The same plan always gives the same timetable.
 */
public final class Scheduler {
  /** Seeds the sampling. Any number will do; it must only stay the same. */
  private static final long SEED = 20_260_302L;

  private final SerialSchedule forward;
  private final SerialSchedule backward;
  private final int[] latestFinish;
  private Timetable best;

  private Scheduler(DayPlan plan) {
    this.forward = new SerialSchedule(plan);
    this.backward = new SerialSchedule(reversed(plan));
    this.latestFinish = latestFinish(plan);
    this.best = improved(forward.of(soonestFirst(), false), false);
  }

  /**
   * The best timetable found.
   *
   * @param samples how many random priorities are tried after the deterministic one; each costs a
   *     few schedules
   */
  public static Timetable schedule(DayPlan plan, int samples) {
    Scheduler scheduler = new Scheduler(plan);
    boolean canPause = plan.activities().stream().anyMatch(it -> !it.rests().isEmpty());
    if (canPause) {
      scheduler.offer(scheduler.soonestFirst(), true);
    }
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < samples; i++) {
      // In turn something new and something near the best so far.
      double[] priority = i % 2 == 0 ? scheduler.sampled(random) : scheduler.nearBest(random);
      scheduler.offer(priority, canPause && i % 4 >= 2);
    }
    return scheduler.best;
  }

  private void offer(double[] priority, boolean mayPause) {
    Timetable other = improved(forward.of(priority, mayPause), mayPause);
    // An equal one as well, so that the search does not stay at one place.
    if (other.score().compareTo(best.score()) <= 0) {
      best = other;
    }
  }

  /**
   * The latest minute at which each activity can end so that every promise behind it holds; where
   * nothing is promised, so that the whole does not get longer than all activities in a row.
   */
  private static int[] latestFinish(DayPlan plan) {
    List<Activity> activities = plan.activities();
    Map<String, Integer> positions = plan.positions();
    int horizon = 0;
    for (Activity activity : activities) {
      horizon = Math.max(horizon, activity.earliest()) + activity.minutes();
    }
    int[] latest = new int[activities.size()];
    for (int i = 0; i < latest.length; i++) {
      OptionalInt promised = activities.get(i).promised();
      // Promises come first, whatever the length of the day.
      latest[i] = promised.isPresent() ? promised.getAsInt() : horizon;
    }
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < latest.length; i++) {
        int start = latest[i] - activities.get(i).minutes();
        for (String before : activities.get(i).after()) {
          int j = positions.get(before);
          changed |= start < latest[j];
          latest[j] = Math.min(latest[j], start);
        }
      }
    }
    return latest;
  }

  private double[] soonestFirst() {
    double[] priority = new double[latestFinish.length];
    for (int i = 0; i < priority.length; i++) {
      priority[i] = -latestFinish[i];
    }
    return priority;
  }

  /**
   * The larger the regret of leaving an activity for later, the likelier it comes first: of
   * activities drawn with weights w, the one with the largest u^(1/w) (Efraimidis and Spirakis,
   * Information Processing Letters 97, 2006).
   */
  private double[] sampled(SplittableRandom random) {
    int last = 0;
    for (int finish : latestFinish) {
      last = Math.max(last, finish);
    }
    double[] priority = new double[latestFinish.length];
    for (int i = 0; i < priority.length; i++) {
      double weight = last - latestFinish[i] + 1.0;
      priority[i] = StrictMath.log(random.nextDouble()) / weight;
    }
    return priority;
  }

  /**
   * The order of the best timetable, with some activities exchanged with those that start near:
   * mostly few, now and then all.
   */
  private double[] nearBest(SplittableRandom random) {
    double share = random.nextDouble();
    double reach = best.end() * share * share;
    double[] priority = new double[latestFinish.length];
    for (int i = 0; i < priority.length; i++) {
      priority[i] = -best.starts().get(i) + reach * random.nextDouble();
    }
    return priority;
  }

  /** Pushes everything to the end and back to the start as long as that gets better. */
  private Timetable improved(Timetable timetable, boolean mayPause) {
    Timetable better = timetable;
    while (true) {
      Timetable again = pushedTogether(better, mayPause);
      if (again.score().compareTo(better.score()) >= 0) {
        return better;
      }
      better = again;
    }
  }

  private Timetable pushedTogether(Timetable timetable, boolean mayPause) {
    double[] latestFirst = new double[latestFinish.length];
    for (int i = 0; i < latestFirst.length; i++) {
      latestFirst[i] = timetable.end(i);
    }
    Timetable late = backward.of(latestFirst, mayPause);
    double[] earliestFirst = new double[latestFinish.length];
    for (int i = 0; i < earliestFirst.length; i++) {
      // In the reversed plan what ends last starts first.
      earliestFirst[i] = late.end(i);
    }
    return forward.of(earliestFirst, mayPause);
  }

  /** The same plan seen from its end. Earliest starts do not count there. */
  private static DayPlan reversed(DayPlan plan) {
    Map<String, Integer> positions = plan.positions();
    List<List<String>> followers = new ArrayList<>();
    plan.activities().forEach(activity -> followers.add(new ArrayList<>()));
    for (Activity activity : plan.activities()) {
      activity.after().forEach(before -> followers.get(positions.get(before)).add(activity.id()));
    }
    List<Activity> mirrored = new ArrayList<>();
    for (int i = 0; i < followers.size(); i++) {
      Activity activity = plan.activities().get(i);
      List<Activity.Use> uses = new ArrayList<>();
      for (Activity.Use use : activity.uses()) {
        uses.add(
            new Activity.Use(
                use.anyOf(), activity.minutes() - use.to(), activity.minutes() - use.from()));
      }
      List<Integer> rests = new ArrayList<>();
      activity.rests().forEach(rest -> rests.add(0, activity.minutes() - rest));
      mirrored.add(
          Activity.of(activity.id(), activity.minutes(), uses, followers.get(i)).resting(rests));
    }
    return new DayPlan(mirrored, plan.capacity());
  }
}
