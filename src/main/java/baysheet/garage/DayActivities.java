package baysheet.garage;

import baysheet.books.OpeningHours;
import baysheet.books.Shop;
import baysheet.day.Activity;
import baysheet.day.Activity.Use;
import baysheet.day.DayPlan;
import baysheet.day.WorkingHours;
import baysheet.garage.Resource.Kind;
import baysheet.sheet.Detail;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.TimeNeeded;
import baysheet.sheet.ToolSpell;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Turns the jobs of a day into activities, and what the shop has into capacities. */
final class DayActivities {
  private static final int STANDS_EACH = 2;

  private final Shop shop;
  private final WorkingHours hours;
  private final Map<String, Integer> capacity = new LinkedHashMap<>();

  DayActivities(Shop shop) {
    this.shop = shop;
    this.hours = hours(shop.hours().orElse(OpeningHours.USUAL));
    shop.bays().keySet().forEach(bay -> has(Kind.BAY, bay, 1));
    shop.people()
        .keySet()
        .forEach(
            person -> {
              has(Kind.PERSON, person, 1);
              has(Kind.LOOK, person, 1);
            });
    shop.crib().special().forEach(it -> has(Kind.TOOL, it.name().value(), it.count().value()));
    shop.crib()
        .stands()
        .ifPresent(it -> capacity.put(Resource.STANDS.id(), it.count().value() / STANDS_EACH));
  }

  private void has(Kind kind, String name, int units) {
    capacity.merge(new Resource(kind, name).id(), units, Integer::sum);
  }

  static WorkingHours hours(OpeningHours open) {
    return new WorkingHours(
        minute(open.opens()),
        minute(open.closes()),
        open.breaks().stream()
            .map(it -> new WorkingHours.Break(minute(it.from()), minute(it.to())))
            .toList());
  }

  static int minute(LocalTime time) {
    return time.toSecondOfDay() / 60;
  }

  /**
   * The plan of a day.
   *
   * @param jobs in the order in which their files are listed
   */
  DayPlan plan(List<DayJob> jobs) {
    List<Activity> activities = jobs.stream().map(this::activity).toList();
    // What the crib lacks is borrowed, one of each.
    for (Activity activity : activities) {
      for (Use use : activity.uses()) {
        use.anyOf().forEach(id -> capacity.merge(id, 1, Math::max));
      }
    }
    return new DayPlan(activities, capacity);
  }

  private Activity activity(DayJob job) {
    StepTimes times = new StepTimes(job.sheet());
    TimeNeeded needed = job.sheet().time();
    return new Activity(
        job.number(),
        times.total(),
        Math.max(0, needed.high() - needed.mean()) / 2.0,
        job.job().request().arrives().map(it -> hours.toWorking(minute(it.value()))).orElse(0),
        promised(job),
        Optional.of(new Resource(Kind.BAY, job.job().bay().value()).id()),
        inStages(apart(uses(job, times)), times.rests(job), times),
        List.of(),
        times.rests(job).stream().map(rest -> times.end(rest.step())).toList());
  }

  private OptionalInt promised(DayJob job) {
    return job.job().request().readyBy().stream()
        .mapToInt(ready -> hours.toWorking(minute(ready.value())))
        .findFirst();
  }

  private List<Use> uses(DayJob job, StepTimes times) {
    List<Use> uses = new ArrayList<>();
    int total = times.total();
    uses.add(use(Kind.BAY, job.job().bay().value(), 0, total));
    uses.add(use(Kind.PERSON, job.job().crew().by().value(), 0, total));
    job.job().crew().with().ifPresent(it -> uses.add(use(Kind.PERSON, it.value(), 0, total)));
    qualified(job, times, uses);
    for (HoldLooks.Look look : new HoldLooks(shop, job, times).all()) {
      List<String> ids =
          look.people().stream().map(it -> new Resource(Kind.LOOK, it).id()).toList();
      if (!ids.isEmpty()) {
        uses.add(new Use(ids, look.from(), look.to()));
      }
    }
    for (ToolSpell spell : job.tools()) {
      uses.add(use(Kind.TOOL, spell.tool(), times.start(spell.first()), times.end(spell.last())));
    }
    stands(job, times, uses);
    return uses;
  }

  /**
   * People are free between two stages, and so is the bay where the vehicle can move; what holds
   * something stays. Somebody who looks at the end of a step is asked for in its stage only.
   */
  private static List<Use> inStages(List<Use> uses, List<DayJob.Rest> rests, StepTimes times) {
    List<Use> parted = new ArrayList<>();
    for (Use use : uses) {
      Kind kind = Resource.of(use.anyOf().get(0)).kind();
      int from = use.from();
      for (DayJob.Rest rest : rests) {
        int end = times.end(rest.step());
        boolean free =
            kind == Kind.PERSON || kind == Kind.LOOK || kind == Kind.BAY && rest.canMove();
        if (free && from < end && end < use.to()) {
          if (kind != Kind.LOOK) {
            parted.add(new Use(use.anyOf(), from, end));
          }
          from = end;
        }
      }
      parted.add(new Use(use.anyOf(), from, use.to()));
    }
    return parted;
  }

  /** Whoever does the steps that need a certificate leaves other work for them. */
  private static void qualified(DayJob job, StepTimes times, List<Use> uses) {
    for (QualifiedWork work : job.sheet().safety().qualified()) {
      String person = work.by().person();
      boolean isHere =
          person.equals(job.job().crew().by().value())
              || job.job().crew().with().filter(it -> it.value().equals(person)).isPresent();
      if (!isHere && !work.steps().isEmpty()) {
        int first = work.steps().stream().min(Integer::compare).get();
        int last = work.steps().stream().max(Integer::compare).get();
        uses.add(use(Kind.PERSON, person, times.start(first), times.end(last)));
      }
    }
  }

  /** Stands carry the vehicle from the first step that raises it to the last that lowers it. */
  private void stands(DayJob job, StepTimes times, List<Use> uses) {
    if (!capacity.containsKey(Resource.STANDS.id())
        || job.sheet().safety().support().stream().noneMatch(it -> it.each().isPresent())) {
      return;
    }
    int first = 0;
    int last = 0;
    boolean both = false;
    for (Sheet.Section section : job.sheet().sections()) {
      boolean moves = section.title() == Sheet.Title.RAISE || section.title() == Sheet.Title.LOWER;
      for (Sheet.SheetStep step : section.steps()) {
        first = moves && first == 0 ? step.n() : first;
        last = moves ? step.n() : last;
        both |= step.details().stream().anyMatch(Detail.BothEndsUp.class::isInstance);
      }
    }
    int pairs = Math.min(both ? 2 : 1, Math.max(1, capacity.get(Resource.STANDS.id())));
    for (int pair = 0; first > 0 && pair < pairs; pair++) {
      uses.add(new Use(List.of(Resource.STANDS.id()), times.start(first), times.end(last)));
    }
  }

  private static Use use(Kind kind, String name, int from, int to) {
    return Use.of(new Resource(kind, name).id(), from, to);
  }

  /** Spells of one tool that touch within a minute, by rounding, become one. */
  private static List<Use> apart(List<Use> uses) {
    List<Use> apart = new ArrayList<>();
    for (Use use : uses) {
      Use whole = use;
      boolean pairs = use.anyOf().equals(List.of(Resource.STANDS.id()));
      for (Use other : pairs ? List.<Use>of() : List.copyOf(apart)) {
        if (other.anyOf().equals(whole.anyOf())
            && other.from() < whole.to()
            && whole.from() < other.to()) {
          apart.remove(other);
          whole =
              new Use(
                  whole.anyOf(),
                  Math.min(other.from(), whole.from()),
                  Math.max(other.to(), whole.to()));
        }
      }
      apart.add(whole);
    }
    return apart;
  }
}
