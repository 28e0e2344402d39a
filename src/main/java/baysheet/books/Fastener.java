package baysheet.books;

import baysheet.report.Located;
import baysheet.torque.Plausibility;
import baysheet.torque.Reach;
import baysheet.torque.Tightening;
import baysheet.torque.TorquePlausibility;
import baysheet.torque.Treatment;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A set of like fasteners of which a book says enough to be tightened.
 *
 * @param name kebab-case
 * @param count how many the set has at one place
 * @param tightening stages, snug or unknown
 * @param written all that the book says of it
 */
public record Fastener(
    Located<String> name,
    Located<Integer> count,
    Located<Tightening> tightening,
    FastenerText written) {
  /** What the torque was published for. */
  public Treatment threads() {
    return written.pieces().threads().map(Located::value).orElse(Treatment.NOT_STATED);
  }

  /** When the final torque is given. */
  public Moment moment() {
    return written.method().moment().map(Located::value).orElse(Moment.AT_ONCE);
  }

  /** An adapter between wrench and fastener. */
  public Optional<Reach> reach() {
    return written.method().reach().map(Located::value);
  }

  /** Whether only a deep socket reaches it. */
  public boolean deep() {
    return written.method().deep().map(Located::value).orElse(false);
  }

  /** Whether the torque can belong to the thread and class. */
  public Plausibility plausibility() {
    return TorquePlausibility.of(
        tightening.value(),
        written.pieces().thread().map(Located::value),
        written.pieces().strength().map(Located::value),
        threads());
  }

  /** Whether a new one goes on each time. */
  public boolean isSingleUse() {
    return written.pieces().reuse().filter(it -> !it.value()).isPresent();
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
