package baysheet.output;

import baysheet.books.Job;
import baysheet.sheet.Heading;
import baysheet.sheet.Heading.Replaced;
import baysheet.sheet.Sheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Which revision a job's sheets are to be.
 *
 * @param least its letter, unless the job file asks for a later one
 * @param replaces what the sheets say of the revision before, by their names
 * @param seen what was found on the vehicle of a job on earlier days
 */
public record Revision(
    String least, Map<String, Replaced> replaces, Function<Heading, List<Heading.Seen>> seen) {
  /** What the job file asks for. */
  public static final Revision FIRST = first(heading -> List.of());

  private static final String LAST_LETTER = "Z";

  public Revision {
    replaces = Map.copyOf(replaces);
  }

  /** The same with what is known of vehicles. */
  static Revision first(Function<Heading, List<Heading.Seen>> seen) {
    return new Revision("A", Map.of(), seen);
  }

  /** The job with the letter of this revision. */
  Job of(Job job) {
    return job.sheets().revision().value().compareTo(least) < 0 ? job.revised(least) : job;
  }

  /**
   * The sheet with what it says of the revision before and of earlier days. The sheet of a whole
   * job, which may turn out to be too long, says what the first of several would say: so it is
   * decided in each run alike whether the job is divided.
   */
  Sheet of(Sheet sheet) {
    String name = sheet.name();
    return sheet
        .replacing(
            Optional.ofNullable(replaces.get(name))
                .or(() -> Optional.ofNullable(replaces.get(name + "-1"))))
        .seeing(seen.apply(sheet.heading()));
  }

  /** The same revision with other words on its sheets. */
  Revision replacing(Map<String, Replaced> other) {
    return new Revision(least, other, seen);
  }

  /** The next one, which says nothing of this one yet; empty after the last. */
  Optional<Revision> next() {
    String letter = Character.toString((char) (least.charAt(0) + 1));
    return least.equals(LAST_LETTER)
        ? Optional.empty()
        : Optional.of(new Revision(letter, Map.of(), seen));
  }
}
