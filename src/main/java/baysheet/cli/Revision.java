package baysheet.cli;

import baysheet.books.Job;
import baysheet.ledger.Event.Replaced;
import java.util.Optional;

/**
 * Which revision a sheet is to be.
 *
 * @param least its letter, unless the job file asks for a later one
 * @param replaces the revision before it, with what is different
 */
record Revision(String least, Optional<Replaced> replaces) {
  /** What the job file asks for. */
  static final Revision FIRST = new Revision("A", Optional.empty());

  private static final String LAST_LETTER = "Z";

  /** The job with the letter of this revision. */
  Job of(Job job) {
    return job.revision().value().compareTo(least) < 0 ? job.revised(least) : job;
  }

  /** The one after a letter; empty after the last. */
  static Optional<Revision> after(String letter, Replaced replaced) {
    return letter.equals(LAST_LETTER)
        ? Optional.empty()
        : Optional.of(
            new Revision(Character.toString((char) (letter.charAt(0) + 1)), Optional.of(replaced)));
  }
}
