package baysheet.wording;

import baysheet.sheet.TimeNeeded;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Small pieces of sentences as the sheet prints them. */
final class Phrases {
  /** U+00A0: what stands round it is never parted by the end of a line. */
  static final String NBSP = "\u00a0";

  private static final Pattern FIGURE_AND_UNIT =
      Pattern.compile(
          "(?<=[0-9]) (?=(?:N·m|lbf·ft|lbf·in|ft-lb|in-lb|kgf·m|kgf·cm|daN·m|N·cm|mm|cm|m|km|mi|ft"
              + "|kg|lb|t|kN|N|h|min|s|bar|kPa|psi|ml|mL|rpm|Hz|°C|[LVAΩ%°])(?:[^A-Za-z]|$))");

  private Phrases() {}

  static String orNothing(Optional<String> text) {
    return text.orElse("");
  }

  /** {@code 1, 2, 5}. */
  static String numbers(List<Integer> numbers) {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  /** {@code step 4} or {@code steps 4, 7}; nothing for none. */
  static String counted(String word, List<Integer> numbers) {
    if (numbers.isEmpty()) {
      return "";
    }
    return word + (numbers.size() == 1 ? "" : "s") + NBSP + ranges(numbers);
  }

  /** Like {@link #numbers}, with runs of three and more closed up: {@code 4, 7–9}. */
  static String ranges(List<Integer> numbers) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < numbers.size(); i++) {
      int last = i;
      while (last + 1 < numbers.size() && numbers.get(last + 1) == numbers.get(last) + 1) {
        last++;
      }
      text.append(i == 0 ? "" : ", ").append(numbers.get(i));
      if (last > i + 1) {
        text.append('–').append(numbers.get(last));
        i = last;
      }
    }
    return text.toString();
  }

  /** The text with a capital and a full stop, as a sentence. */
  static String sentence(String text) {
    String stripped = text.strip();
    if (stripped.isEmpty()) {
      return "";
    }
    String capital = capital(together(stripped));
    return ".!?:".indexOf(capital.charAt(capital.length() - 1)) >= 0 ? capital : capital + ".";
  }

  /** Figures with the units that follow them, never parted by the end of a line. */
  static String together(String text) {
    return FIGURE_AND_UNIT.matcher(text).replaceAll(NBSP);
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** {@code on-the-ground} as {@code on the ground}. */
  static String spaced(String word) {
    return word.replace('-', ' ');
  }

  /** {@code 8 min} or {@code 0.5 min}; nothing for none. */
  static String minutes(double minutes) {
    double printed = TimeNeeded.printed(minutes);
    String figure = printed == Math.rint(printed) ? "" + (long) printed : "" + printed;
    return printed == 0 ? "" : figure + NBSP + "min";
  }
}
