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
 * @param like the book from which everything is taken that stands not here
 * @param fasteners groups in file order
 * @param partNumbers what parts and fasteners are ordered by, by their names
 * @param seen what was found on vehicles of this kind
 */
public record SpecBook(
    Located<String> vehicle,
    Model model,
    Optional<Located<String>> like,
    Origin origin,
    Mass mass,
    Traits traits,
    Points points,
    Map<String, Fluid> fluids,
    List<Group> fasteners,
    Map<String, PartNumber> partNumbers,
    List<Seen> seen,
    Span at) {
  public SpecBook {
    fluids = Collections.unmodifiableMap(new LinkedHashMap<>(fluids));
    fasteners = List.copyOf(fasteners);
    partNumbers = Collections.unmodifiableMap(new LinkedHashMap<>(partNumbers));
    seen = List.copyOf(seen);
  }

  /** The same vehicle with other traits. */
  public SpecBook withTraits(List<Located<String>> own) {
    Traits others = new Traits(own, traits.without);
    return new SpecBook(
        vehicle,
        model,
        like,
        origin,
        mass,
        others,
        points,
        fluids,
        fasteners,
        partNumbers,
        seen,
        at);
  }

  /**
   * Which vehicles it is about.
   *
   * @param title what a sheet prints; the book named by {@code like} gives it where absent
   */
  public record Model(Optional<Located<String>> title, Optional<Located<String>> years) {}

  /** Where its values come from, and who compared them with that. */
  public record Origin(Optional<Located<String>> source, Optional<Checked> checked) {}

  /**
   * What such a vehicle has.
   *
   * @param without traits of the book named by {@code like} that this vehicle does not have
   */
  public record Traits(List<Located<String>> own, List<Located<String>> without) {
    public Traits {
      own = List.copyOf(own);
      without = List.copyOf(without);
    }
  }

  /**
   * Where it is held, by axle.
   *
   * @param supports support points
   * @param jacking where a jack lifts
   */
  public record Points(Map<Place, Located<String>> supports, Map<Place, Located<String>> jacking) {
    public Points {
      supports = Collections.unmodifiableMap(new LinkedHashMap<>(supports));
      jacking = Collections.unmodifiableMap(new LinkedHashMap<>(jacking));
    }
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
      Located<String> name, Optional<Located<Quantity>> capacity, Optional<Located<String>> grade) {
    /** What is written here, and what the other book says of the rest. */
    public Fluid over(Fluid base) {
      return new Fluid(name, capacity.or(base::capacity), grade.or(base::grade));
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
