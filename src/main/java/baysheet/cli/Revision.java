package baysheet.cli;

import baysheet.books.Job;
import java.util.Optional;

/**
 * Which revision a job's sheets are to be.
 *
 * @param least its letter, unless the job file asks for a later one
 */
record Revision(String least) {
  /** What the job file asks for. */
  static final Revision FIRST = new Revision("A");

  private static final String LAST_LETTER = "Z";

  /** The job with the letter of this revision. */
  Job of(Job job) {
    return job.revision().value().compareTo(least) < 0 ? job.revised(least) : job;
  }

  /** The next one; empty after the last. */
  Optional<Revision> next() {
    return least.equals(LAST_LETTER)
        ? Optional.empty()
        : Optional.of(new Revision(Character.toString((char) (least.charAt(0) + 1))));
  }
}
