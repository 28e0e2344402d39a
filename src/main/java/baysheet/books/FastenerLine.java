package baysheet.books;

import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.torque.Head;
import baysheet.torque.ScrewThread;
import baysheet.torque.Treatment;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A fastener on one line, {@code 2 x M12x1.5 class 10.9, hex 18 mm, 110 ± 5 N·m, dry, renew}, as
 * the map that says the same. Each part is known by its form alone, so the order is free and a part
 * never means two things; what is wrong within a part is found by whoever reads the map.
 */
final class FastenerLine {
  static final String REUSE = "re-use";
  static final String RENEW = "renew";

  private static final String TORQUE = "torque";
  private static final String UNKNOWN = "unknown";

  /** The keys that can be unknown, in the order of the example. */
  static final List<String> KEYS =
      List.of(
          FastenerText.Pieces.COUNT,
          FastenerText.Pieces.THREAD,
          FastenerText.Pieces.CLASS,
          FastenerText.Pieces.HEAD,
          TORQUE,
          FastenerText.Pieces.THREADS,
          FastenerText.Pieces.REUSE);

  /** Between two digits it is a decimal comma, which the figure's own reader refuses. */
  private static final Pattern COMMA = Pattern.compile("(?<![0-9]),|,(?![0-9])");

  /** In {@code 2xM12} no space is needed, because no number begins with M. */
  private static final Pattern COUNT =
      Pattern.compile("(?<count>[0-9]+)\\s*[x×](?:\\s+|(?=M)|$)(?<of>.*)");

  private static final Pattern CLASS = Pattern.compile("(?:(?<of>.+?)\\s+)?class\\s+(?<value>.+)");
  private static final Pattern RECHECK = Pattern.compile("recheck\\s+(?<value>.+)");
  private static final Pattern LIKE_A_THREAD = Pattern.compile("M\\s*[0-9].*");
  private static final Pattern LIKE_A_TORQUE = Pattern.compile("[0-9+].*|snug");
  private static final Pattern NUMBER = Pattern.compile("[0-9.,]+");

  private final Scalar line;
  private final Problems problems;
  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private boolean sound = true;

  private FastenerLine(Scalar line, Problems problems) {
    this.line = line;
    this.problems = problems;
  }

  /**
   * Reads a line; a part that is not known, stands twice, or is needed and not there, is reported.
   */
  static FastenerLine of(Scalar line, List<String> needed, Problems problems) {
    FastenerLine read = new FastenerLine(line, problems);
    if (line.text().strip().equals(UNKNOWN)) {
      KEYS.forEach(key -> read.put(key, UNKNOWN, 0, line.text().length()));
    } else {
      read.parts();
      read.lookFor(needed);
    }
    return read;
  }

  boolean isSound() {
    return sound;
  }

  /** The parts that are known, as a map. */
  Mapping mapping() {
    return new Mapping(List.copyOf(entries.values()), line.at());
  }

  private void parts() {
    Matcher comma = COMMA.matcher(line.text());
    int from = 0;
    while (comma.find()) {
      part(from, comma.start());
      from = comma.end();
    }
    part(from, line.text().length());
  }

  /** Reports missing parts, unless some part could not be read: that may be the missing one. */
  private void lookFor(List<String> needed) {
    if (sound) {
      needed.stream()
          .filter(key -> !entries.containsKey(key))
          .forEach(key -> report(BookSentences.missingPart(key, line.at())));
    }
  }

  /**
   * Reads a part.
   *
   * @param begin where it begins in the text, with the spaces around it
   */
  private void part(int begin, int end) {
    String text = line.text().substring(begin, end);
    int from = begin + text.length() - text.stripLeading().length();
    text = text.strip();
    int to = from + text.length();
    Matcher count = COUNT.matcher(text);
    Matcher strength = CLASS.matcher(text);
    Matcher recheck = RECHECK.matcher(text);
    Optional<String> unknown = unknownKey(text);
    if (text.isEmpty()) {
      report(BookSentences.emptyPart(at(begin, end)));
    } else if (unknown.isPresent()) {
      put(unknown.get(), UNKNOWN, from, to);
    } else if (count.matches()) {
      String number = count.group("count");
      put(FastenerText.Pieces.COUNT, number, from, from + number.length());
      if (!count.group("of").isEmpty()) {
        part(from + count.start("of"), to);
      }
    } else if (strength.matches()) {
      if (strength.group("of") != null) {
        part(from, from + strength.end("of"));
      }
      put(FastenerText.Pieces.CLASS, strength.group("value"), from + strength.start("value"), to);
    } else if (recheck.matches()) {
      put("recheck", recheck.group("value"), from + recheck.start("value"), to);
    } else {
      value(text, from, to);
    }
  }

  private void value(String text, int from, int to) {
    if (text.equals(REUSE) || text.equals(RENEW)) {
      put(FastenerText.Pieces.REUSE, text.equals(REUSE) ? "yes" : "no", from, to);
      return;
    }
    key(text)
        .ifPresentOrElse(
            key -> put(key, text, from, to),
            () -> report(BookSentences.notAPart(text, nearest(text), at(from, to))));
  }

  /** The key that a figure or a word belongs to, even where something in it is wrong. */
  private static Optional<String> key(String text) {
    if (Treatment.parse(text).found().isPresent()) {
      return Optional.of(FastenerText.Pieces.THREADS);
    } else if (LIKE_A_THREAD.matcher(text).matches()
        || ScrewThread.parse(text).found().isPresent()) {
      return Optional.of(FastenerText.Pieces.THREAD);
    } else if (Stream.of(Head.Form.values()).anyMatch(form -> text.startsWith(form.word()))) {
      return Optional.of(FastenerText.Pieces.HEAD);
    }
    // A number alone can be a count, a class or a torque: nothing is guessed.
    boolean torque = LIKE_A_TORQUE.matcher(text).matches() && !NUMBER.matcher(text).matches();
    return Optional.of(TORQUE).filter(any -> torque);
  }

  private static Optional<String> unknownKey(String text) {
    return KEYS.stream().filter(key -> text.equals(key + " " + UNKNOWN)).findFirst();
  }

  private static Optional<String> nearest(String text) {
    List<String> known = new ArrayList<>(List.of(REUSE, RENEW, "snug"));
    Stream.of(Treatment.values())
        .filter(it -> it != Treatment.NOT_STATED)
        .map(Treatment::word)
        .forEach(known::add);
    KEYS.forEach(key -> known.add(key + " " + UNKNOWN));
    return NUMBER.matcher(text).matches() ? Optional.empty() : Nearest.of(text, known);
  }

  private void put(String key, String value, int from, int to) {
    Span at = at(from, to);
    Entry first = entries.get(key);
    if (first == null) {
      entries.put(key, new Entry(new Scalar(key, false, at), new Scalar(value, false, at)));
    } else {
      report(BookSentences.partTwice(key, at, first.value().at()));
    }
  }

  private void report(Problem problem) {
    problems.add(problem);
    sound = false;
  }

  /** Where a part stands in the file; the whole line where its text is not written as it reads. */
  private Span at(int from, int to) {
    Span all = line.at();
    String text = line.text();
    int quote = line.quoted() ? 1 : 0;
    int length = all.endColumn() - all.column() - 2 * quote;
    boolean exact =
        all.line() == all.endLine()
            && length == text.codePointCount(0, text.length())
            && written(all, quote).equals(text);
    int column = all.column() + quote;
    return exact
        ? new Span(
            all.source(),
            all.line(),
            column + text.codePointCount(0, from),
            all.line(),
            column + text.codePointCount(0, to))
        : all;
  }

  private static String written(Span at, int quote) {
    String row = at.source().lines().get(at.line() - 1);
    return row.substring(
        row.offsetByCodePoints(0, at.column() - 1 + quote),
        row.offsetByCodePoints(0, at.endColumn() - 1 - quote));
  }
}
