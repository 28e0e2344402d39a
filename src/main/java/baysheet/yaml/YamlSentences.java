package baysheet.yaml;

import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the typed readers say. */
final class YamlSentences {
  /** A longer text is cut in a sentence; the line itself is repeated below it. */
  private static final int LONGEST_QUOTE = 40;

  /** Dashes and hyphens that are not the one of the keyboard. */
  private static final Pattern DASH = Pattern.compile("[\\p{Pd}\u2212&&[^-]]");

  /** What people write between two words where a name has a hyphen. */
  private static final Pattern JOINT = Pattern.compile("[\\p{Pd}\u2212_\\s\\p{Zs}]++");

  private YamlSentences() {}

  static Problem unknownKey(String whatItIs, Entry entry, Collection<String> known) {
    String key = entry.key().text();
    return Problem.of(
            ProblemCode.UNKNOWN_KEY, entry.key().at(), whatItIs + " has no key " + quoted(key))
        .near(Nearest.of(key, known))
        .expecting(
            hasNoColon(entry)
                ? (key.matches("[0-9].*") ? "a point before decimals; or " : "")
                    + "quotes around a text that contains a comma, inside { }"
                : oneOf(known));
  }

  /**
   * Between brackets a comma ends a text, so the rest of a sentence becomes a key without colon.
   */
  private static boolean hasNoColon(Entry entry) {
    Span key = entry.key().at();
    Span value = entry.value().at();
    return entry.value().isEmpty()
        && value.line() == key.endLine()
        && value.column() == key.endColumn();
  }

  static Problem missingKey(String whatItIs, String key, Span at) {
    return Problem.of(ProblemCode.MISSING_KEY, at, whatItIs + " needs the key " + quoted(key));
  }

  static Problem emptyValue(Scalar key) {
    return Problem.of(ProblemCode.EMPTY_VALUE, key.at(), quoted(key.text()) + " has no value")
        .expecting("a value after the colon; or delete the line");
  }

  static Problem nothingWritten(Span at) {
    return Problem.of(ProblemCode.EMPTY_VALUE, at, "a value is missing here")
        .expecting("a value; or delete the line");
  }

  static Problem wrongShape(String wanted, Node node) {
    return Problem.of(
            ProblemCode.WRONG_SHAPE,
            node.at(),
            "this is " + node.shape() + ", but " + wanted + " is expected")
        .expecting(wanted);
  }

  /** A text with a colon in it most likely lacks the space that makes the colon one of YAML's. */
  static Problem notAMap(String whatItIs, Node node) {
    boolean colon = node instanceof Scalar scalar && scalar.text().contains(":");
    return Problem.of(
            ProblemCode.WRONG_SHAPE,
            node.at(),
            whatItIs + " must be keys with values, but this is " + node.shape())
        .expecting(
            colon ? "a space after the colon: \"key: value\"" : "lines of the form \"key: value\"");
  }

  static String underKey(String key) {
    return "the value of " + quoted(key);
  }

  static Problem sameKey(Span at, Span first) {
    return Problem.of(ProblemCode.DUPLICATE_KEY, at, "this key means the same as an earlier one")
        .seeAlso("first used", first);
  }

  static Problem keysClash(String whatItIs, List<String> keys, List<Span> written) {
    return Problem.of(
            ProblemCode.KEYS_CLASH,
            written.get(1),
            whatItIs + " can have only one of the keys " + join(keys))
        .seeAlso("the other key", written.get(0));
  }

  /** A dash that a word processor made of a hyphen looks like one, so it is named. */
  static ParseOutcome<String> notAName(String text) {
    boolean dash = !DASH.matcher(text).replaceAll("-").equals(text);
    // A name with a place, as in "drum-brakes at rear": only the name stands here.
    String bare = text.strip().replaceFirst(" at [a-z-]+$", "");
    String plain = JOINT.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll("-");
    return new ParseOutcome.Bad<>(
        ProblemCode.NOT_A_NAME,
        quoted(text)
            + (dash ? " has a dash that is not the hyphen of the keyboard" : " is not a name"),
        "lower-case letters a to z, digits and single hyphens, such as front-left",
        Optional.of(plain).filter(ValueReaders::isName));
  }

  static ParseOutcome<Integer> notANumber(String text, int least, int most) {
    return ParseOutcome.bad(
        ProblemCode.NOT_A_NUMBER, quoted(text) + " is not a whole number", range(least, most));
  }

  static ParseOutcome<Integer> outOfRange(String text, int least, int most) {
    return ParseOutcome.bad(
        ProblemCode.OUT_OF_RANGE, text + " is outside the plausible range", range(least, most));
  }

  private static String range(int least, int most) {
    return "a whole number from " + least + " to " + most;
  }

  static ParseOutcome<Boolean> notYesNo(String text) {
    return ParseOutcome.bad(
        ProblemCode.NOT_YES_NO, quoted(text) + " is neither yes nor no", "yes or no");
  }

  static <T> ParseOutcome<T> notADate(String text) {
    return ParseOutcome.bad(
        ProblemCode.NOT_A_DATE,
        quoted(text) + " is not a date",
        "year, month and day, such as 2026-03-02");
  }

  static <T> ParseOutcome<T> notOfThisTime(String text, int earliest, int latest) {
    return ParseOutcome.bad(
        ProblemCode.NOT_A_DATE,
        text + " is not a plausible date",
        "a year from " + earliest + " to " + latest);
  }

  static <T> ParseOutcome<T> noSuchDay(String text) {
    return ParseOutcome.bad(
        ProblemCode.NOT_A_DATE,
        quoted(text) + " is not a day of the calendar",
        "a date such as 2026-03-02");
  }

  static <T> ParseOutcome.Bad<T> notOneOf(String text, Collection<String> known) {
    return new ParseOutcome.Bad<>(
        ProblemCode.NOT_ONE_OF,
        quoted(text) + " is not one of the words that are allowed here",
        oneOf(known),
        Nearest.of(text, known));
  }

  static Problem of(ParseOutcome.Bad<?> bad, Span at) {
    return Problem.of(bad.code(), at, bad.what()).expecting(bad.expected()).near(bad.nearest());
  }

  static String quoted(String text) {
    String line = text.replace('\n', ' ');
    boolean fits = line.codePointCount(0, line.length()) <= LONGEST_QUOTE;
    String shown =
        fits ? line : line.substring(0, line.offsetByCodePoints(0, LONGEST_QUOTE - 1)) + "…";
    return "\"" + shown + "\"";
  }

  private static String oneOf(Collection<String> known) {
    return known.isEmpty() ? "no key" : (known.size() == 1 ? "" : "one of ") + join(known);
  }

  private static String join(Collection<String> words) {
    return String.join(", ", words);
  }
}
