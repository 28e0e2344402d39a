package baysheet.books;

import baysheet.report.Located;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How one piece of work is done.
 *
 * @param name same as its file
 * @param at the kind of place at which it is done
 * @param serves the access that this procedure provides under another name, where the bay decides
 *     which of several does
 * @param applicability which vehicles and places it is for
 * @param behind access: opened before and closed after this one
 * @param after procedures that this one follows where both are in a job
 * @param before procedures that this one precedes where both are in a job
 */
public record Procedure(
    Located<String> name,
    Located<String> title,
    Located<Place.Kind> at,
    Optional<Located<String>> serves,
    Applicability applicability,
    Needs needs,
    List<Located<Access>> behind,
    List<Located<String>> after,
    List<Located<String>> before,
    Blocks blocks,
    List<Check> checks) {
  public Procedure {
    behind = List.copyOf(behind);
    after = List.copyOf(after);
    before = List.copyOf(before);
    checks = List.copyOf(checks);
  }

  /**
   * What must be there for it.
   *
   * @param equipment of the bay, without which it does not serve
   * @param qualifications what whoever does any of it must be certified for
   */
  public record Needs(
      Optional<Located<Bay.Equipment>> equipment,
      List<Located<String>> qualifications,
      List<Located<Use>> uses,
      List<Part> parts) {
    public Needs {
      qualifications = List.copyOf(qualifications);
      uses = List.copyOf(uses);
      parts = List.copyOf(parts);
    }
  }

  /** Its steps; those that close are only what mirrored ones do not say. */
  public record Blocks(List<Step> open, List<Step> work, List<Step> close) {
    public Blocks {
      open = List.copyOf(open);
      work = List.copyOf(work);
      close = List.copyOf(close);
    }

    /** Every step, block after block. */
    public Stream<Step> steps() {
      return Stream.of(open, work, close).flatMap(List::stream);
    }
  }

  /** A procedure to open first, at a place of its own where that does not follow by itself. */
  public record Access(String procedure, Optional<Place> place) {}

  /**
   * A tool or other thing a step needs.
   *
   * @param special whether it is looked up in the crib
   * @param ifStuck whether only its ways out ask for it
   */
  public record Use(String name, boolean special, boolean ifStuck) {
    /** One that the work itself asks for. */
    public Use(String name, boolean special) {
      this(name, special, false);
    }
  }

  /** Whether one of its steps takes an item off. */
  public boolean takesOff(String item) {
    return blocks
        .steps()
        .flatMap(step -> step.touched().undo().stream())
        .anyMatch(it -> it.value().equals(item));
  }

  /**
   * A new part.
   *
   * @param renews the item in whose place it goes on
   */
  public record Part(
      Located<String> name, Located<Integer> count, Optional<Located<String>> renews) {}

  /** A check that this procedure always asks for. */
  public record Check(
      Located<String> text,
      Located<Moment> moment,
      boolean hold,
      Optional<Located<String>> because) {}
}
