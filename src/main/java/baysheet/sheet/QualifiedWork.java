package baysheet.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Steps that only somebody with a certificate may do.
 *
 * @param qualification its name in the catalogue
 * @param words what the sheet calls it
 * @param steps their numbers
 * @param by who does them
 * @param holds those at which somebody looks who is certified as well
 * @param checks held checks that only its steps bring: who does the steps does them too
 * @param second who may look; none where nothing is held
 */
public record QualifiedWork(
    String qualification,
    String words,
    List<Integer> steps,
    Holder by,
    List<Integer> holds,
    List<Statement> checks,
    List<Holder> second) {
  public QualifiedWork {
    steps = List.copyOf(steps);
    holds = List.copyOf(holds);
    checks = List.copyOf(checks);
    second = List.copyOf(second);
  }

  /**
   * Somebody who has a valid certificate.
   *
   * @param person what job files call them
   * @param until its last day; absent where it has no end
   */
  public record Holder(String person, String name, String certificate, Optional<LocalDate> until) {}
}
