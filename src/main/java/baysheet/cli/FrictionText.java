package baysheet.cli;

import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Parsed;
import java.util.regex.Pattern;

/** Reads a coefficient of friction: {@code 0.14}. */
final class FrictionText {
  // Below stands nothing in VDI 2230, table A5; 0.5 is dry stainless steel, a lost point is ten.
  private static final double LEAST = 0.03;
  private static final double MOST = 0.6;
  private static final Pattern FIGURE = Pattern.compile("[01](?:\\.[0-9]{1,4})?");

  private FrictionText() {}

  static ParseResult<Double> parse(String text) {
    String word = text.strip();
    if (FIGURE.matcher(word).matches()) {
      double figure = Double.parseDouble(word);
      if (figure >= LEAST && figure <= MOST) {
        return new Parsed<>(figure);
      }
    }
    return new ParseFailure<>(
        '"' + word + "\" is no coefficient of friction", "a figure from 0.03 to 0.6, such as 0.14");
  }
}
