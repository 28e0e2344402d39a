package baysheet.torque;

import java.util.Locale;
import java.util.Objects;

/** One stage of tightening. */
public sealed interface Stage permits Stage.Torque, Stage.Angle, Stage.Loosen {
  /** The stage as printed. */
  String print();

  /** Turn with a torque wrench until the target is reached. */
  record Torque(Target target) implements Stage {
    public Torque {
      Objects.requireNonNull(target);
    }

    @Override
    public String print() {
      return target.written();
    }
  }

  /** Turn further by an angle, counted from where the stage before ended. */
  record Angle(Quantity angle) implements Stage {
    public Angle {
      if (angle.unit().dimension() != Dimension.ANGLE || angle.value().signum() <= 0) {
        throw new IllegalArgumentException(angle.print() + " is no angle to turn");
      }
    }

    @Override
    public String print() {
      return "+" + angle.print();
    }
  }

  /** Slacken until no torque is left. */
  record Loosen() implements Stage {
    @Override
    public String print() {
      return "loosen";
    }
  }

  /** Reads {@code 25 N·m} (with a range or tolerance), {@code +90°} or {@code loosen}. */
  static Reading<Stage> parse(String text) {
    String word = text.strip();
    if (word.toLowerCase(Locale.ROOT).equals("loosen")) {
      return new Read<>(new Loosen());
    }
    if (word.startsWith("+") || isAngle(word)) {
      return QuantityText.quantity(word.replaceFirst("^\\+", ""), Dimension.ANGLE)
          .then(Stage::turned);
    }
    return QuantityText.target(word).map(Torque::new);
  }

  private static boolean isAngle(String word) {
    return QuantityText.quantity(word, Dimension.ANGLE).found().isPresent();
  }

  private static Reading<Stage> turned(Quantity angle) {
    return angle.value().signum() == 0
        ? new Misread<>("a stage of " + angle.print() + " turns nothing", "an angle such as +90°")
        : new Read<>(new Angle(angle));
  }
}
