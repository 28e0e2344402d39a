package baysheet.garage;

import baysheet.books.OpeningHours;
import baysheet.books.Shop;
import baysheet.day.Activity;
import baysheet.day.Clash;
import baysheet.day.DayPlan;
import baysheet.day.PromiseChance;
import baysheet.day.Scheduler;
import baysheet.day.Timetable;
import baysheet.day.Wait;
import baysheet.day.WorkingHours;
import baysheet.garage.Resource.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The timetable of a day. Times are minutes after midnight; what goes on after midnight has more
 * than a day's.
 *
 * @param open when the garage works
 * @param hoursGiven whether the shop file says so
 * @param jobs by their start
 * @param clashes where jobs would want the same tools if nobody waited for one
 */
public record GarageDay(
    String shop,
    LocalDate date,
    OpeningHours open,
    boolean hoursGiven,
    List<Placed> jobs,
    List<Together> clashes) {
  /** Enough that the chance of a promise is right within three in a hundred. */
  private static final int PLAYED_DAYS = 1000;

  /** Timetables looked at: more for a few jobs, for each takes longer with many. */
  private static final int SAMPLES = 8000;

  private static final int LEAST_SAMPLES = 60;
  private static final int MOST_SAMPLES = 400;

  /** As many as any day can use at once. */
  private static final int PLENTY = 1000;

  public GarageDay {
    jobs = List.copyOf(jobs);
    clashes = List.copyOf(clashes);
  }

  /**
   * A job with its place in the day.
   *
   * @param looks when somebody else looks at its hold points
   * @param tools when it uses special tools
   * @param chance the share of days on which its promise holds; 1 where nothing is promised
   * @param late minutes of work by which the promise is missed, as expected; 0 where it holds
   * @param waits why it does not start earlier
   */
  public record Placed(
      DayJob job,
      int from,
      int to,
      List<Spell> looks,
      List<Spell> tools,
      double chance,
      int late,
      List<Together> waits) {
    public Placed {
      looks = List.copyOf(looks);
      tools = List.copyOf(tools);
      waits = List.copyOf(waits);
    }

    public Optional<Integer> promised() {
      return job.job().readyBy().map(it -> DayActivities.minute(it.value()));
    }
  }

  /** A stretch of time with somebody or something. */
  public record Spell(String who, int from, int to) {}

  /**
   * Jobs that want the same thing at the same time.
   *
   * @param units how many there are
   */
  public record Together(Resource resource, int units, List<String> jobs, int from, int to) {
    public Together {
      jobs = List.copyOf(jobs);
    }
  }

  /**
   * Lays out a day.
   *
   * @param jobs in the order of their files
   */
  public static GarageDay of(Shop shop, LocalDate date, List<DayJob> jobs) {
    DayPlan plan = new DayActivities(shop).plan(jobs);
    Timetable timetable = Scheduler.schedule(plan, samples(jobs.size()));
    return new Laying(DayActivities.hours(shop.hours().orElse(OpeningHours.USUAL)), plan)
        .day(shop, date, jobs, timetable);
  }

  private static int samples(int jobs) {
    return Math.max(LEAST_SAMPLES, Math.min(MOST_SAMPLES, SAMPLES / Math.max(1, jobs)));
  }

  /** Puts a timetable of working minutes into times of the clock. */
  private record Laying(WorkingHours hours, DayPlan plan) {
    GarageDay day(Shop shop, LocalDate date, List<DayJob> jobs, Timetable timetable) {
      List<Double> chances = PromiseChance.of(timetable, PLAYED_DAYS);
      List<Placed> placed = new ArrayList<>();
      for (int i = 0; i < jobs.size(); i++) {
        placed.add(placed(jobs.get(i), timetable, i, chances.get(i)));
      }
      placed.sort(Comparator.comparingInt(Placed::from));
      return new GarageDay(
          shop.name().value(),
          date,
          shop.hours().orElse(OpeningHours.USUAL),
          shop.hours().isPresent(),
          placed,
          clashes());
    }

    private Placed placed(DayJob job, Timetable timetable, int i, double chance) {
      return new Placed(
          job,
          hours.startToClock(timetable.starts().get(i)),
          hours.endToClock(timetable.end(i)),
          spells(timetable, i, Kind.LOOK),
          spells(timetable, i, Kind.TOOL),
          chance,
          timetable.late(i),
          Wait.of(timetable, i).stream().map(this::wait).toList());
    }

    private Together wait(Wait wait) {
      int at = hours.startToClock(wait.from());
      return new Together(
          Resource.of(wait.resource()),
          plan.capacity().get(wait.resource()),
          wait.holders(),
          at,
          at);
    }

    private List<Spell> spells(Timetable timetable, int i, Kind kind) {
      List<Spell> spells = new ArrayList<>();
      Activity activity = plan.activities().get(i);
      int start = timetable.starts().get(i);
      for (int k = 0; k < activity.uses().size(); k++) {
        Resource resource = Resource.of(timetable.chosen().get(i).get(k));
        Activity.Use use = activity.uses().get(k);
        if (resource.kind() == kind) {
          spells.add(
              new Spell(
                  resource.name(),
                  hours.startToClock(start + use.from()),
                  hours.endToClock(start + use.to())));
        }
      }
      spells.sort(Comparator.comparingInt(Spell::from).thenComparing(Spell::who));
      return spells;
    }

    /** What would clash if jobs only waited for bays and people. */
    private List<Together> clashes() {
      Map<String, Integer> scarce = new TreeMap<>();
      Map<String, Integer> plenty = new LinkedHashMap<>(plan.capacity());
      plan.capacity()
          .forEach(
              (id, units) -> {
                Kind kind = Resource.of(id).kind();
                if (kind == Kind.TOOL || kind == Kind.STANDS) {
                  scarce.put(id, units);
                  plenty.put(id, PLENTY);
                }
              });
      Timetable free =
          Scheduler.schedule(
              new DayPlan(plan.activities(), plenty), samples(plan.activities().size()));
      return Clash.in(free, scarce).stream()
          .map(
              clash ->
                  new Together(
                      Resource.of(clash.resource()),
                      scarce.get(clash.resource()),
                      clash.activities(),
                      hours.startToClock(clash.from()),
                      hours.endToClock(clash.to())))
          .sorted(Comparator.comparingInt(Together::from))
          .toList();
    }
  }
}
