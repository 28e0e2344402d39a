package baysheet.garage;

import baysheet.books.Job;
import baysheet.books.Moment;
import baysheet.books.Shop;
import baysheet.sheet.CheckLine;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** When a second person is needed at a job's hold points, and who may be it. */
final class HoldLooks {
  /** How long somebody looks, from common practice. */
  private static final int MINUTES = 5;

  private final Shop shop;
  private final DayJob job;
  private final StepTimes times;

  HoldLooks(Shop shop, DayJob job, StepTimes times) {
    this.shop = shop;
    this.job = job;
    this.times = times;
  }

  /**
   * A look at hold points that follow closely on one another.
   *
   * @param from working minutes after the start of the job
   * @param people ids of those who may look; nobody where the shop has none
   */
  record Look(int from, int to, List<String> people) {}

  List<Look> all() {
    List<Look> looks = new ArrayList<>();
    for (Sheet.SheetStep step : job.sheet().steps()) {
      if (step.hold()) {
        looks.add(look(times.end(step.n()), certified(work -> work.holds().contains(step.n()))));
      }
    }
    for (CheckLine check : job.sheet().checks()) {
      if (check.hold() && check.steps().isEmpty()) {
        looks.add(
            look(at(check.moment()), certified(work -> work.checks().contains(check.name()))));
      }
    }
    looks.sort(Comparator.comparingInt(Look::from));
    return joined(looks);
  }

  private Look look(int end, List<String> people) {
    int to = Math.max(end, Math.min(MINUTES, times.total()));
    return new Look(Math.max(0, to - MINUTES), to, people);
  }

  /** Checks of a moment are done at the step that leads to them, else at the end. */
  private int at(Moment moment) {
    return job.sheet().steps().stream()
        .filter(
            step ->
                step.source() instanceof StepSource.Checkpoint point && point.moment() == moment)
        .mapToInt(step -> times.end(step.n()))
        .findFirst()
        .orElse(times.total());
  }

  /** Who may look: the one that the job names, or any technician but the one who works. */
  private List<String> certified(Predicate<QualifiedWork> concerned) {
    Set<String> people = new LinkedHashSet<>();
    Job.Crew crew = job.job().crew();
    if (crew.second().isPresent()) {
      people.add(crew.second().get().value());
    } else {
      shop.people()
          .forEach(
              (id, person) -> {
                if (person.grade() == Shop.Grade.TECHNICIAN && !id.equals(crew.by().value())) {
                  people.add(id);
                }
              });
    }
    job.sheet().safety().qualified().stream()
        .filter(concerned)
        .forEach(
            work ->
                people.retainAll(
                    work.second().stream().map(QualifiedWork.Holder::person).toList()));
    return List.copyOf(people);
  }

  /**
   * Looks that overlap become one, by somebody who may do both; those that nobody may both do are
   * left to two people.
   */
  private static List<Look> joined(List<Look> looks) {
    List<Look> joined = new ArrayList<>();
    for (Look look : looks) {
      Look whole = look;
      for (Look other = partner(joined, whole); other != null; other = partner(joined, whole)) {
        joined.remove(other);
        whole =
            new Look(
                Math.min(other.from(), whole.from()),
                Math.max(other.to(), whole.to()),
                shared(other, whole));
      }
      joined.add(whole);
    }
    return joined;
  }

  private static Look partner(List<Look> among, Look look) {
    for (Look other : among) {
      boolean overlap = other.from() < look.to() && look.from() < other.to();
      boolean nobody = other.people().isEmpty() && look.people().isEmpty();
      if (overlap && (nobody || !shared(other, look).isEmpty())) {
        return other;
      }
    }
    return null;
  }

  private static List<String> shared(Look one, Look other) {
    return one.people().stream().filter(other.people()::contains).toList();
  }
}
