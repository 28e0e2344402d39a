package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import baysheet.yaml.MapReader;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads times of day and the hours of a garage: {@code 08:15}, {@code 08:00..17:00}. */
final class ClockReader {
  private static final String ONE_TIME = "([01]?[0-9]|2[0-3]):([0-5][0-9])";
  private static final Pattern ONE = Pattern.compile(ONE_TIME);
  private static final Pattern TWO = Pattern.compile(ONE_TIME + "\\s*\\.\\.\\s*" + ONE_TIME);

  private static final ValueReader<OpeningHours.Break> STRETCH =
      ValueReaders.value(ClockReader::stretch);

  private ClockReader() {}

  /** A time of day on a 24-hour clock. */
  static ValueReader<LocalTime> time() {
    return ValueReaders.value(
        text -> {
          Matcher time = ONE.matcher(text);
          return time.matches() ? ParseOutcome.ok(time(time, 1)) : notATime(text);
        });
  }

  /** The keys {@code hours} and {@code breaks}; empty where the hours are left out. */
  static Optional<OpeningHours> hours(MapReader map) {
    Optional<Located<OpeningHours.Break>> open = map.optional("hours", STRETCH);
    List<Located<OpeningHours.Break>> breaks = new ArrayList<>(map.listOrOne("breaks", STRETCH));
    breaks.sort(Comparator.comparing(it -> it.value().from()));
    if (open.isEmpty()) {
      breaks.stream().findFirst().ifPresent(it -> map.problems().add(noHours(it.at())));
      return Optional.empty();
    }
    LocalTime last = open.get().value().from();
    List<OpeningHours.Break> kept = new ArrayList<>();
    for (Located<OpeningHours.Break> it : breaks) {
      boolean outside =
          it.value().from().isBefore(last) || !it.value().to().isBefore(open.get().value().to());
      if (outside) {
        map.problems().add(breakOutside(it.at()));
      } else {
        kept.add(it.value());
        last = it.value().to();
      }
    }
    return Optional.of(new OpeningHours(open.get().value().from(), open.get().value().to(), kept));
  }

  private static ParseOutcome<OpeningHours.Break> stretch(String text) {
    Matcher two = TWO.matcher(text);
    if (!two.matches()) {
      return notTwoTimes(text);
    }
    OpeningHours.Break read = new OpeningHours.Break(time(two, 1), time(two, 3));
    return read.from().isBefore(read.to()) ? ParseOutcome.ok(read) : endsBeforeItStarts(text);
  }

  private static LocalTime time(Matcher text, int group) {
    return LocalTime.of(
        Integer.parseInt(text.group(group)), Integer.parseInt(text.group(group + 1)));
  }

  private static <T> ParseOutcome<T> notATime(String text) {
    return ParseOutcome.bad(
        '"' + text + "\"" + " is not a time of day",
        "hours and minutes of a 24-hour clock, such as 08:15");
  }

  private static <T> ParseOutcome<T> notTwoTimes(String text) {
    return ParseOutcome.bad(
        '"' + text + "\"" + " is not a range of times",
        "two times of a 24-hour clock, such as 08:00..17:00");
  }

  private static <T> ParseOutcome<T> endsBeforeItStarts(String text) {
    return ParseOutcome.bad(
        '"' + text + "\"" + " ends before it starts",
        "the earlier time first, such as 08:00..17:00");
  }

  private static Problem breakOutside(Span at) {
    return Problem.of(
            ProblemCode.BAD_VALUE,
            at,
            "the break is outside the working hours, or overlaps the break before it")
        .expecting("breaks between the times under \"hours\", such as 12:00..12:30");
  }

  private static Problem noHours(Span at) {
    return Problem.of(ProblemCode.BAD_VALUE, at, "there are breaks, but no working hours")
        .expecting("the working hours as well, such as hours: 08:00..17:00");
  }
}
