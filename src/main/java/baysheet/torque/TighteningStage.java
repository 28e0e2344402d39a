package baysheet.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** One stage of tightening. */
public sealed interface TighteningStage
    permits TighteningStage.Torque, TighteningStage.Angle, TighteningStage.Loosen {
  /** Before a plus that stands behind something and leads to an angle. */
  Pattern BEFORE_ANGLE = Pattern.compile("(?<=\\S)\\s*(?=\\+\\s*[0-9.]+\\s*(?:°|º|[Dd][Ee][Gg]))");

  /** The stage as printed. */
  String print();

  /** Turn with a torque wrench until the target is reached. */
  record Torque(Target target) implements TighteningStage {
    @Override
    public String print() {
      return target.written();
    }
  }

  /** Turn further by an angle, counted from where the stage before ended. */
  record Angle(Quantity angle) implements TighteningStage {
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
  record Loosen() implements TighteningStage {
    @Override
    public String print() {
      return "loosen";
    }
  }

  /**
   * Reads one stage, or a torque and the angles behind it where they stand in one text: {@code 80
   * N·m + 90°}.
   */
  static ParseResult<List<TighteningStage>> parseAll(String text) {
    return WrittenText.read(text, "stages such as [25 N·m, 50 N·m, +90°]", TighteningStage::eachOf);
  }

  private static ParseResult<List<TighteningStage>> eachOf(String text) {
    String[] parts = BEFORE_ANGLE.split(text.strip());
    List<TighteningStage> stages = new ArrayList<>();
    for (String part : parts) {
      ParseResult<TighteningStage> stage = parse(part);
      if (stage instanceof ParseFailure<TighteningStage> misread) {
        return misread.as();
      }
      stage.found().ifPresent(stages::add);
    }
    return new Parsed<>(List.copyOf(stages));
  }

  /** Reads {@code 25 N·m} (with a range or tolerance), {@code +90°} or {@code loosen}. */
  static ParseResult<TighteningStage> parse(String text) {
    String word = text.strip();
    if (word.toLowerCase(Locale.ROOT).equals("loosen")) {
      return new Parsed<>(new Loosen());
    }
    if (word.startsWith("+") || isAngle(word)) {
      return QuantityText.quantity(word.replaceFirst("^\\+", ""), Dimension.ANGLE)
          .then(TighteningStage::turned);
    }
    return QuantityText.target(word).map(Torque::new);
  }

  private static boolean isAngle(String word) {
    return QuantityText.quantity(word, Dimension.ANGLE).found().isPresent();
  }

  private static ParseResult<TighteningStage> turned(Quantity angle) {
    return angle.value().signum() == 0
        ? new ParseFailure<>(
            "a stage of " + angle.print() + " does not turn the fastener", "an angle such as +90°")
        : new Parsed<>(new Angle(angle));
  }
}
