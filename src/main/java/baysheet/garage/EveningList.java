package baysheet.garage;

import baysheet.books.Shop;
import baysheet.sheet.CheckLine;
import baysheet.sheet.PartLine;
import baysheet.sheet.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * What has to be ready before a day begins, each line with the job that asks for it.
 *
 * @param borrow tools that the crib lacks
 * @param book who has to come, and appointments that jobs ask for
 * @param figures what has to be found or asked about
 * @param prepare what has to be soaked, cooled, washed or set up
 * @param parts new parts
 */
public record EveningList(
    List<Line> borrow, List<Line> book, List<Line> figures, List<Line> prepare, List<Part> parts) {
  public EveningList {
    borrow = List.copyOf(borrow);
    book = List.copyOf(book);
    figures = List.copyOf(figures);
    prepare = List.copyOf(prepare);
    parts = List.copyOf(parts);
  }

  /** One thing to see to. */
  public record Line(String job, Statement text) {}

  /**
   * A part to have.
   *
   * @param fastener whether it is a single-use fastener
   */
  public record Part(DayJob job, PartLine line) {}

  /** The list of a day. */
  public static EveningList of(Shop shop, List<DayJob> jobs) {
    EveningList list =
        new EveningList(
            all(jobs, job -> both(job.evening().borrow(), job.evening().wrenches())),
            all(jobs, job -> people(shop, job)),
            all(jobs, job -> both(job.evening().figures(), job.evening().fluids())),
            all(
                jobs,
                job ->
                    both(both(job.evening().rules(), job.evening().soak()), job.evening().own())),
            parts(jobs));
    return list;
  }

  /** What a job asks for, of one sort. */
  private interface Asked {
    List<Statement> of(DayJob job);
  }

  private static List<Line> all(List<DayJob> jobs, Asked asked) {
    List<Line> lines = new ArrayList<>();
    jobs.forEach(job -> asked.of(job).forEach(text -> lines.add(new Line(job.number(), text))));
    return lines;
  }

  private static List<Statement> both(List<Statement> one, List<Statement> other) {
    List<Statement> both = new ArrayList<>(one);
    both.addAll(other);
    return both;
  }

  private static List<Statement> people(Shop shop, DayJob job) {
    List<Statement> people = new ArrayList<>();
    boolean alone =
        new HoldLooks(shop, job, new StepTimes(job.sheet()))
            .all().stream().anyMatch(look -> look.people().isEmpty());
    if (alone) {
      people.add(Statement.Plain.SECOND_PERSON);
    }
    job.sheet().checks().stream()
        .map(CheckLine::keepsOpen)
        .flatMap(java.util.Optional::stream)
        .distinct()
        .map(Statement.Written::new)
        .forEach(people::add);
    return people;
  }

  private static List<Part> parts(List<DayJob> jobs) {
    List<Part> parts = new ArrayList<>();
    jobs.forEach(
        job -> job.sheet().equipment().parts().forEach(line -> parts.add(new Part(job, line))));
    return parts;
  }
}
