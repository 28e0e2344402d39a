package baysheet.torque;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Signs between the digits of a figure that are written differently from country to country. */
final class FigureSlip {
  private static final String BETWEEN = "[\\s\\u00A0\\u202F\\u2009'’]";
  private static final Pattern COMMA = Pattern.compile("[+\\-−]?[0-9][0-9.]*+,[0-9].*");
  private static final Pattern THOUSANDS =
      Pattern.compile("[1-9][0-9]{0,2}(?:,[0-9]{3})+(?![0-9,.]).*");
  private static final Pattern PARTED =
      Pattern.compile("[1-9][0-9]{0,2}(?:" + BETWEEN + "[0-9]{3})+(?![0-9/])");
  private static final Pattern SIGN_BETWEEN =
      Pattern.compile("(?<=[0-9])" + BETWEEN + "(?=[0-9]{3})");
  private static final Pattern TWO_POINTS = Pattern.compile("[0-9]++\\.[0-9]++\\.[0-9].*");

  private FigureSlip() {}

  /** What is wrong with the figure that a text begins with. */
  static Optional<ParseFailure<Quantity>> in(String text, Dimension expected) {
    if (COMMA.matcher(text).matches()) {
      return Optional.of(comma(text, expected));
    }
    if (PARTED.matcher(text).lookingAt()) {
      return Optional.of(
          misread(text, "has something between its thousands", expected)
              .near(spelling(SIGN_BETWEEN.matcher(text).replaceAll(""), expected)));
    }
    return TWO_POINTS.matcher(text).matches()
        ? Optional.of(misread(text, "has two points in its figure", expected))
        : Optional.empty();
  }

  /** The text with 0 and 1 in place of the letters that look like them; empty without such. */
  static Optional<String> digits(String text) {
    String figure = text.split("\\s", 2)[0];
    String digits = figure.replaceAll("[Oo]", "0").replaceAll("[Il]", "1");
    return digits.equals(figure)
        ? Optional.empty()
        : Optional.of(digits + text.substring(figure.length()));
  }

  /** A comma before three digits may part thousands or decimals; nobody can tell. */
  private static ParseFailure<Quantity> comma(String text, Dimension expected) {
    String what = WrittenText.quoted(text) + " has a comma in its figure";
    Matcher thousands = THOUSANDS.matcher(text);
    boolean three = thousands.matches();
    if (three && text.indexOf(',') == text.lastIndexOf(',')) {
      return new ParseFailure<>(
          what, "either " + text.replace(",", "") + " or " + text.replace(',', '.'));
    }
    return new ParseFailure<Quantity>(
            what, "a point before decimals and nothing between thousands: " + expected.example())
        .near(spelling(three ? text.replace(",", "") : text.replace(',', '.'), expected));
  }

  private static ParseFailure<Quantity> misread(String text, String what, Dimension expected) {
    return new ParseFailure<>(WrittenText.quoted(text) + " " + what, QuantityText.like(expected));
  }

  private static Optional<String> spelling(String text, Dimension expected) {
    return QuantityText.spelling(text, expected);
  }
}
