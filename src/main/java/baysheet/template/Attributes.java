package baysheet.template;

import baysheet.box.Length;
import baysheet.box.Width;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Attribute;
import baysheet.template.MarkupNode.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Typed reading of an element's attributes. A value that cannot be read is a problem, and the
 * fallback stands in so that one run finds all problems.
 */
final class Attributes {
  static final Map<String, Boolean> YES_OR_NO = Map.of("yes", true, "no", false);
  private static final Pattern SHARE = Pattern.compile("([1-9][0-9]{0,2})\\*");
  private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,6}");

  private final Element element;
  private final Faults faults;

  private Attributes(Element element, Faults faults) {
    this.element = element;
    this.faults = faults;
  }

  /** The attributes of an element that has no others than {@code known}. */
  static Attributes of(Element element, Faults faults, String... known) {
    for (Attribute attribute : element.attributes()) {
      if (!isAmong(known, attribute.name())) {
        faults.unknownAttribute(element.at(), element.name(), attribute.name(), List.of(known));
      }
    }
    return new Attributes(element, faults);
  }

  private static boolean isAmong(String[] known, String name) {
    for (String each : known) {
      if (each.equals(name)) {
        return true;
      }
    }
    return false;
  }

  Optional<String> text(String name) {
    return element.attribute(name);
  }

  /** A text that must be there and must say something; a word that stands for it otherwise. */
  String required(String name) {
    Optional<String> value = text(name).filter(text -> !text.isBlank());
    if (value.isEmpty()) {
      faults.missing(element.at(), element.name(), name);
    }
    return value.orElse("?");
  }

  Length length(String name, Length fallback) {
    return text(name)
        .map(value -> LengthText.parse(value).orElseGet(() -> bad(name, value, LENGTHS, fallback)))
        .orElse(fallback);
  }

  private static final String LENGTHS = "a length such as 3mm, 6pt or 0.5em";

  /** A length in thousandths of a point that does not grow with the text. */
  long points(String name, long fallback) {
    return text(name)
        .map(
            value ->
                LengthText.parse(value)
                    .filter(length -> !length.ofBody())
                    .map(Length::amount)
                    .orElseGet(() -> bad(name, value, "a length such as 3mm or 6pt", fallback)))
        .orElse(fallback);
  }

  /** A length in thousandths of a point that must be there. */
  long requiredPoints(String name) {
    if (text(name).isEmpty()) {
      faults.missing(element.at(), element.name(), name);
    }
    return points(name, 1);
  }

  Width width(String name, Width fallback) {
    return text(name)
        .map(value -> parseWidth(value).orElseGet(() -> bad(name, value, WIDTHS, fallback)))
        .orElse(fallback);
  }

  private static final String WIDTHS = "natural, a share such as 2*, or a length such as 12mm";

  int whole(String name, int least, int most, int fallback) {
    return text(name)
        .map(
            value ->
                parseWhole(value)
                    .filter(number -> number >= least && number <= most)
                    .orElseGet(
                        () -> bad(name, value, "a whole number " + least + "…" + most, fallback)))
        .orElse(fallback);
  }

  /** A whole number that must be there. */
  int requiredWhole(String name, int least, int most) {
    if (text(name).isEmpty()) {
      faults.missing(element.at(), element.name(), name);
    }
    return whole(name, least, most, least);
  }

  /** Whole numbers with spaces between; there must be one at least. */
  List<Integer> requiredWholes(String name, int least, int most) {
    List<Integer> numbers = new ArrayList<>();
    for (String part : required(name).strip().split(" +")) {
      numbers.add(parseWhole(part).filter(it -> it >= least && it <= most).orElse(least - 1));
    }
    if (!numbers.contains(least - 1)) {
      return numbers;
    }
    List<Integer> fallback = List.of(least);
    return text(name)
        .map(value -> bad(name, value, "whole numbers " + least + "…" + most, fallback))
        .orElse(fallback);
  }

  /** A decimal factor of the body size, in thousandths. */
  int scale(String name, int fallback) {
    return text(name)
        .map(
            value ->
                LengthText.parse(value + "em")
                    .map(Length::amount)
                    .filter(amount -> amount >= 100 && amount <= 10_000)
                    .map(Math::toIntExact)
                    .orElseGet(() -> bad(name, value, "a factor such as 1.2", fallback)))
        .orElse(fallback);
  }

  boolean yes(String name) {
    return choice(name, YES_OR_NO, false);
  }

  <T> T choice(String name, Map<String, T> words, T fallback) {
    return text(name)
        .map(
            value ->
                Optional.ofNullable(words.get(value))
                    .orElseGet(() -> bad(name, value, sorted(words), fallback)))
        .orElse(fallback);
  }

  private static String sorted(Map<String, ?> words) {
    return "one of " + String.join(", ", words.keySet().stream().sorted().toList());
  }

  private <T> T bad(String name, String value, String wanted, T fallback) {
    faults.badValue(element.at(), element.name(), name, value, wanted);
    return fallback;
  }

  private static Optional<Width> parseWidth(String value) {
    if (value.equals("natural")) {
      return Optional.of(new Width.Natural());
    }
    if (value.endsWith("*")) {
      Matcher share = SHARE.matcher(value);
      return share.matches()
          ? Optional.of(new Width.Share(Integer.parseInt(share.group(1))))
          : Optional.empty();
    }
    return LengthText.parse(value).map(Width.Fixed::new);
  }

  private static Optional<Integer> parseWhole(String value) {
    return WHOLE.matcher(value).matches() ? Optional.of(Integer.valueOf(value)) : Optional.empty();
  }
}
