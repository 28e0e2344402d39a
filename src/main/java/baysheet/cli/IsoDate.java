package baysheet.cli;

import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Parsed;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Reads a date as ISO 8601 writes it: {@code 2026-04-07}. */
final class IsoDate {
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private IsoDate() {}

  static ParseResult<LocalDate> parse(String text) {
    String word = text.strip();
    if (DATE.matcher(word).matches()) {
      try {
        return new Parsed<>(LocalDate.parse(word));
      } catch (DateTimeException e) {
        return none(word);
      }
    }
    return none(word);
  }

  private static ParseResult<LocalDate> none(String word) {
    return new ParseFailure<>(
        '"' + word + "\" is no date", "year, month and day, such as 2026-04-07");
  }
}
