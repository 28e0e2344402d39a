package baysheet.books;

import baysheet.report.Located;
import java.util.List;
import java.util.Optional;

/**
 * Which vehicles and places a procedure is for.
 *
 * @param onlyWith what the vehicle must have: every line of it
 * @param notWith traits that exclude a vehicle, each with what to use instead
 * @param onlyAt the part of the vehicle to which the procedure belongs
 */
public record Applicability(
    List<Located<Need>> onlyWith, List<Exclusion> notWith, Optional<Located<Place>> onlyAt) {
  public Applicability {
    onlyWith = List.copyOf(onlyWith);
    notWith = List.copyOf(notWith);
  }

  /**
   * One thing that the vehicle must have.
   *
   * @param anyOf traits of which one is enough
   * @param at where it is asked for; everywhere if absent
   */
  public record Need(List<String> anyOf, Optional<Place> at) {
    public Need {
      anyOf = List.copyOf(anyOf);
    }
  }

  /**
   * A trait with which the procedure must not be used.
   *
   * @param at where; everywhere if absent
   * @param instead a procedure, or a sentence that says what to do
   */
  public record Exclusion(Located<String> trait, Optional<Place> at, Located<String> instead) {
    /** The procedure to use instead; empty where a sentence says what to do. */
    public Optional<Located<String>> procedure() {
      return Optional.of(instead).filter(text -> text.value().indexOf(' ') < 0);
    }
  }
}
