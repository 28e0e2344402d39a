package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.Head;
import baysheet.torque.Plausibility;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.ScrewThread;
import baysheet.torque.StrengthClass;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningPasses;
import baysheet.torque.TorquePlausibility;
import baysheet.torque.Treatment;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A set of like fasteners as a spec book gives it.
 *
 * @param name kebab-case
 * @param count how many the set has at one place
 * @param thread designation, where the book states it
 * @param strength strength class, where the book states it
 * @param head driving form and size; none for a fastener turned by hand
 * @param tightening stages, snug or unknown
 * @param order positions in which to tighten, or the shape from which they follow
 * @param passes percentages of the final torque; empty means the default rule
 * @param threads what the value was published for; {@link Treatment#NOT_STATED} when silent
 * @param reuse whether it may be used again; empty when the book does not say
 * @param lock how it is secured after tightening: stake, split-pin, lock-plate, safety-wire
 * @param moment where the final torque is given
 * @param recheck distance after which it is checked again
 * @param reach an adapter between wrench and fastener
 * @param deep whether only a deep socket reaches it
 * @param note a word of the book about it, printed at the torque line
 * @param source where this value comes from; otherwise the book's source stands
 */
public record Fastener(
    Located<String> name,
    Located<Integer> count,
    Optional<Located<ScrewThread>> thread,
    Optional<Located<StrengthClass>> strength,
    Optional<Located<Head>> head,
    Located<Tightening> tightening,
    Optional<Located<Order>> order,
    Optional<Located<TighteningPasses>> passes,
    Located<Treatment> threads,
    Optional<Located<Boolean>> reuse,
    Optional<Located<Lock>> lock,
    Moment moment,
    Optional<Located<Quantity>> recheck,
    Optional<Reach> reach,
    boolean deep,
    Optional<Located<String>> note,
    Optional<Located<String>> source,
    Span at) {
  /** Whether the torque can belong to the thread and class. */
  public Plausibility plausibility() {
    return TorquePlausibility.of(
        tightening.value(),
        thread.map(Located::value),
        strength.map(Located::value),
        threads.value());
  }

  /** Whether a new one goes on each time. */
  public boolean isSingleUse() {
    return reuse.isPresent() && !reuse.get().value();
  }

  /** Whether no book gives a torque for it. */
  public boolean isUnknown() {
    return tightening.value() instanceof Tightening.Unknown;
  }

  /** In which order the set is tightened. */
  public sealed interface Order {
    /** Positions on a circle. */
    record Circle() implements Order {}

    /** Rows of so many, from the front left. */
    record Rows(List<Integer> counts) implements Order {
      public Rows {
        counts = List.copyOf(counts);
      }
    }

    /** The positions one after another. */
    record Given(List<Integer> positions) implements Order {
      public Given {
        positions = List.copyOf(positions);
      }
    }
  }

  /** What keeps it from turning after it is tight. */
  public enum Lock {
    STAKE,
    SPLIT_PIN,
    LOCK_PLATE,
    LOCK_WIRE;

    /** As written in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** When the final torque is given. */
  public enum Moment {
    AT_ONCE("at-once"),
    ON_THE_GROUND("on-the-ground"),
    RIDE_HEIGHT("ride-height");

    private final String word;

    Moment(String word) {
      this.word = word;
    }

    /** As written in files. */
    public String word() {
      return word;
    }
  }
}
