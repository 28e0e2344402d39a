package baysheet.garage;

import baysheet.books.OpeningHours;
import baysheet.books.Shop;
import baysheet.day.Activity;
import baysheet.day.Clash;
import baysheet.day.DayPlan;
import baysheet.day.PromiseChance;
import baysheet.day.Scheduler;
import baysheet.day.Timetable;
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
import java.util.stream.Stream;

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
   * @param parts its stages in turn, or the whole job
   * @param looks when somebody else looks at its hold points
   * @param tools when it uses special tools
   * @param chance the share of days on which its promise holds; 1 where nothing is promised
   * @param late minutes of work by which the promise is missed, as expected; 0 where it holds
   * @param waits why it, or a stage of it, does not start earlier
   */
  public record Placed(
      DayJob job,
      List<Part> parts,
      List<Spell> looks,
      List<Spell> tools,
      double chance,
      int late,
      List<Wait> waits) {
    public Placed {
      parts = List.copyOf(parts);
      looks = List.copyOf(looks);
      tools = List.copyOf(tools);
      waits = List.copyOf(waits);
    }

    public int from() {
      return parts.get(0).from();
    }

    public int to() {
      return parts.get(parts.size() - 1).to();
    }

    /** Whether the vehicle keeps its bay after a part of the work. */
    public boolean staysAfter(int part) {
      return job.rests().stream()
          .noneMatch(rest -> rest.sheet().equals(parts.get(part).sheet()) && rest.canMove());
    }

    public Optional<Integer> promised() {
      return job.job().request().readyBy().map(it -> DayActivities.minute(it.value()));
    }
  }

  /**
   * A stretch of time in which a job is worked on.
   *
   * @param sheet the name of the sheet that is worked from; of a job without stages its number
   */
  public record Part(String sheet, int from, int to) {}

  /**
   * What a stage of a job waits for until it starts.
   *
   * @param part the number of the stage, counted from 0
   * @param at when it needs it
   * @param jobs that have it until then
   */
  public record Wait(int part, Resource resource, List<String> jobs, int at) {
    public Wait {
      jobs = List.copyOf(jobs);
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
    Laying laying = new Laying(DayActivities.hours(shop.hours().orElse(OpeningHours.USUAL)), plan);
    List<Timetable> timetables =
        Stream.of(plan, laying.withPlenty())
            .parallel()
            .map(each -> Scheduler.schedule(each, samples(jobs.size())))
            .toList();
    return laying.day(shop, date, jobs, timetables.get(0), timetables.get(1));
  }

  private static int samples(int jobs) {
    return Math.max(LEAST_SAMPLES, Math.min(MOST_SAMPLES, SAMPLES / Math.max(1, jobs)));
  }

  /** Puts a timetable of working minutes into times of the clock. */
  private record Laying(WorkingHours hours, DayPlan plan) {
    /** The same plan with more tools than anybody can use. */
    DayPlan withPlenty() {
      Map<String, Integer> plenty = new LinkedHashMap<>(plan.capacity());
      plenty.replaceAll((id, units) -> isScarce(id) ? PLENTY : units);
      return new DayPlan(plan.activities(), plenty);
    }

    private static boolean isScarce(String id) {
      Kind kind = Resource.of(id).kind();
      return kind == Kind.TOOL || kind == Kind.STANDS;
    }

    GarageDay day(
        Shop shop, LocalDate date, List<DayJob> jobs, Timetable timetable, Timetable careless) {
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
          clashes(careless));
    }

    private Placed placed(DayJob job, Timetable timetable, int i, double chance) {
      return new Placed(
          job,
          parts(job, timetable, i),
          spells(timetable, i, Kind.LOOK),
          spells(timetable, i, Kind.TOOL),
          chance,
          timetable.late(i),
          baysheet.day.Wait.of(timetable, i).stream().map(this::wait).toList());
    }

    private List<Part> parts(DayJob job, Timetable timetable, int i) {
      List<DayJob.Rest> rests = new StepTimes(job.sheet()).rests(job);
      List<Integer> minutes = plan.activities().get(i).rests();
      List<Part> parts = new ArrayList<>();
      int from = 0;
      for (int k = 0; k < minutes.size(); k++) {
        parts.add(part(rests.get(k).sheet(), timetable, i, from, minutes.get(k)));
        from = minutes.get(k);
      }
      String last = job.number() + (parts.isEmpty() ? "" : "-" + (job.rests().size() + 1));
      parts.add(part(last, timetable, i, from, plan.activities().get(i).minutes()));
      return parts;
    }

    private Part part(String sheet, Timetable timetable, int i, int from, int to) {
      return new Part(
          sheet,
          hours.startToClock(timetable.from(i, from)),
          hours.endToClock(timetable.until(i, to)));
    }

    private Wait wait(baysheet.day.Wait wait) {
      return new Wait(
          wait.part(),
          Resource.of(wait.resource()),
          wait.holders(),
          hours.startToClock(wait.from()));
    }

    private List<Spell> spells(Timetable timetable, int i, Kind kind) {
      List<Spell> spells = new ArrayList<>();
      Activity activity = plan.activities().get(i);
      for (int k = 0; k < activity.uses().size(); k++) {
        Resource resource = Resource.of(timetable.chosen().get(i).get(k));
        Activity.Use use = activity.uses().get(k);
        if (resource.kind() == kind) {
          spells.add(
              new Spell(
                  resource.name(),
                  hours.startToClock(timetable.from(i, use.from())),
                  hours.endToClock(timetable.until(i, use.to()))));
        }
      }
      spells.sort(Comparator.comparingInt(Spell::from).thenComparing(Spell::who));
      return spells;
    }

    /** What would clash if jobs only waited for bays and people. */
    private List<Together> clashes(Timetable careless) {
      Map<String, Integer> scarce = new TreeMap<>(plan.capacity());
      scarce.keySet().removeIf(id -> !isScarce(id));
      return Clash.in(careless, scarce).stream()
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
