package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.Quantity;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the garage knows of one vehicle, or of a range of years of one.
 *
 * @param vehicle the book's name, same as its file
 * @param title what a sheet prints; the book named by {@code like} gives it where absent
 * @param like the book from which everything is taken that stands not here
 * @param source where the values come from
 * @param withoutTraits traits of the book named by {@code like} that this vehicle does not have
 * @param supports support points by axle
 * @param jacking where a jack lifts, by axle
 * @param fasteners groups in file order
 * @param partNumbers what parts and fasteners are ordered by, by their names
 * @param seen what was found on vehicles of this kind
 */
public record SpecBook(
    Located<String> vehicle,
    Optional<Located<String>> title,
    Optional<Located<String>> years,
    Optional<Located<String>> like,
    Optional<Located<String>> source,
    Optional<Checked> checked,
    Mass mass,
    List<Located<String>> traits,
    List<Located<String>> withoutTraits,
    Map<Place, Located<String>> supports,
    Map<Place, Located<String>> jacking,
    Map<String, Fluid> fluids,
    List<Group> fasteners,
    Map<String, PartNumber> partNumbers,
    List<Seen> seen,
    Span at) {
  public SpecBook {
    traits = List.copyOf(traits);
    withoutTraits = List.copyOf(withoutTraits);
    supports = Collections.unmodifiableMap(new LinkedHashMap<>(supports));
    jacking = Collections.unmodifiableMap(new LinkedHashMap<>(jacking));
    fluids = Collections.unmodifiableMap(new LinkedHashMap<>(fluids));
    fasteners = List.copyOf(fasteners);
    partNumbers = Collections.unmodifiableMap(new LinkedHashMap<>(partNumbers));
    seen = List.copyOf(seen);
  }

  /** The same vehicle with other traits. */
  public SpecBook withTraits(List<Located<String>> others) {
    return new SpecBook(
        vehicle,
        title,
        years,
        like,
        source,
        checked,
        mass,
        others,
        withoutTraits,
        supports,
        jacking,
        fluids,
        fasteners,
        partNumbers,
        seen,
        at);
  }

  /** How heavy the vehicle is, and two ways to say how much of it stands on the front axle. */
  public record Mass(
      Optional<Located<Quantity>> kerb,
      Optional<Located<Quantity>> frontShare,
      Optional<Located<Quantity>> wheelbase,
      Optional<Located<Quantity>> behindFront) {}

  /** What a part, or a fastener that is renewed, is ordered by. */
  public record PartNumber(Located<String> part, Located<String> number) {}

  /**
   * What somebody found on a vehicle of this kind.
   *
   * @param job the number of the job on which it was found
   */
  public record Seen(Located<LocalDate> on, Optional<Located<String>> job, Located<String> what) {}

  /** Who compared the book with its source, and when. */
  public record Checked(Located<String> by, Located<LocalDate> on) {}

  /** A fluid: how much goes in, and of what kind. */
  public record Fluid(
      Located<String> name,
      Optional<Located<Quantity>> capacity,
      Optional<Located<String>> grade,
      Span at) {
    /** What is written here, and what the other book says of the rest. */
    public Fluid over(Fluid base) {
      return new Fluid(name, capacity.or(base::capacity), grade.or(base::grade), at);
    }
  }

  /**
   * The fasteners of one place or set of places, by name.
   *
   * @param absent fasteners and other items that this vehicle does not have there
   */
  public record Group(
      Located<PlaceGroup> places, Map<String, Entry> fasteners, List<Located<String>> absent) {
    public Group {
      fasteners = Collections.unmodifiableMap(new LinkedHashMap<>(fasteners));
      absent = List.copyOf(absent);
    }
  }

  /**
   * One fastener as written: whole, or what differs from the book that is named by {@code like}.
   */
  public record Entry(Located<String> name, FastenerText text) {}
}
