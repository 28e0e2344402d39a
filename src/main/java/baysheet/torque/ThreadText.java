package baysheet.torque;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads thread designations, and refuses pitches that nobody cuts: most are a slip of the pen. */
final class ThreadText {
  private static final String LEFT = "(?:\\s*+-?+\\s*+(LH))?+";
  private static final String NUMBER = "([0-9]++(?:\\.[0-9]++)?+)";

  /** Tolerance classes, ISO 965-1: 6g, 6H, 5g6g. */
  private static final String METRIC_FIT = "(?:\\s*+-\\s*+((?:[3-9][e-hGH]){1,2}))?+";

  /** Diameter and pitch; between them x, or the hyphen that the trade writes as well. */
  private static final Pattern METRIC =
      Pattern.compile(
          "[Mm]"
              + NUMBER
              + "(?:\\s*+[xX×-]\\s*+"
              + NUMBER
              + "(?![e-hGH]))?"
              + METRIC_FIT
              + "(?i:"
              + LEFT
              + ")");

  /** Size, threads per inch, series and class of fit (ASME B1.1: 1A to 3B). */
  private static final Pattern UNIFIED =
      Pattern.compile(
          "(#?[0-9]{1,2}|(?:[0-9]-)?+[0-9]{1,2}/[0-9]{1,2})\\s*+-\\s*+([0-9]{1,2})"
              + "\\s*+(UN[CFS]?|UNEF)?+(?:\\s*+-\\s*+([1-3][AB]))?+"
              + LEFT,
          Pattern.CASE_INSENSITIVE);

  /** Diameters that ISO 261 lists, in mm. */
  private static final BigDecimal LEAST_DIAMETER = BigDecimal.ONE;

  private static final BigDecimal MOST_DIAMETER = new BigDecimal(300);
  private static final int MOST_DIGITS = 6;
  private static final String EXPECTED = "a thread such as M12x1.5, M10 or 1/2-20 UNF";
  private static final Pattern LEADING_ZEROS = Pattern.compile("(?<![0-9.])0++(?=[0-9])");
  private static final Pattern LEFT_HAND =
      Pattern.compile("(?i)\\s+left(?:[\\s-]hand(?:ed)?)?\\s*+$");

  /** Coarse pitches in mm by diameter in mm, ISO 261 (ISO 262 for the usual sizes). */
  private static final Map<BigDecimal, BigDecimal> COARSE =
      table(
          "3 0.5, 3.5 0.6, 4 0.7, 5 0.8, 6 1, 7 1, 8 1.25, 9 1.25, 10 1.5, 11 1.5, 12 1.75, 14 2,"
              + " 16 2, 18 2.5, 20 2.5, 22 2.5, 24 3, 27 3, 30 3.5, 33 3.5, 36 4, 39 4, 42 4.5,"
              + " 45 4.5, 48 5, 52 5, 56 5.5, 60 5.5, 64 6");

  /** Pitches of ISO 261 finer than coarse, in mm. */
  private static final List<BigDecimal> FINE =
      decimals("0.35 0.5 0.75 1 1.25 1.5 2 3 4".split(" "));

  /** Threads per inch of the coarse and fine unified series, ASME B1.1 (from memory). */
  private static final Map<String, Pair> UNIFIED_SERIES = series();

  private ThreadText() {}

  static ParseResult<ScrewThread> parse(String text) {
    return WrittenText.read(text, EXPECTED, ThreadText::read);
  }

  private static ParseResult<ScrewThread> read(String text) {
    ParseResult<ScrewThread> thread = asWritten(text.strip(), text);
    return thread instanceof ParseFailure<ScrewThread> misread
        ? misread.near(nearest(text))
        : thread;
  }

  private static ParseResult<ScrewThread> asWritten(String word, String text) {
    Matcher metric = METRIC.matcher(word);
    if (metric.matches()) {
      return metric(metric, text);
    }
    Matcher unified = UNIFIED.matcher(word);
    if (unified.matches()) {
      return unified(unified, text);
    }
    return word.contains(",")
        ? misread(text, "has a comma in its figure")
        : misread(text, "is not a thread designation");
  }

  /** Without zeros too many, with a point, the letter M and the letters for left-handed. */
  private static Optional<String> nearest(String text) {
    String word = LEADING_ZEROS.matcher(text.strip().replace(',', '.')).replaceAll("");
    String handed = LEFT_HAND.matcher(word).replaceFirst(" LH");
    return Stream.of(handed, "M" + handed)
        .flatMap(it -> asWritten(it, it).found().stream())
        .map(ScrewThread::designation)
        .findFirst();
  }

  private static ParseResult<ScrewThread> metric(Matcher parts, String text) {
    Optional<String> unfit =
        unfit(parts.group(1)).or(() -> optional(parts, 2).flatMap(it -> unfit(it)));
    if (unfit.isPresent()) {
      return misread(text, unfit.get());
    }
    BigDecimal diameter = plain(parts.group(1));
    if (diameter.compareTo(LEAST_DIAMETER) < 0 || diameter.compareTo(MOST_DIAMETER) > 0) {
      return misread(text, "has a diameter beyond the 1 mm to 300 mm of ISO 261");
    }
    Optional<BigDecimal> coarse = Optional.ofNullable(COARSE.get(diameter));
    Optional<BigDecimal> written = optional(parts, 2).map(ThreadText::plain);
    if (written.isEmpty() && coarse.isEmpty()) {
      return misread(text, "has no coarse pitch in ISO 261: write its pitch");
    }
    BigDecimal pitch = written.or(() -> coarse).orElseThrow();
    if (!cut(diameter, pitch, coarse)) {
      return misread(text, "has a pitch that ISO 261 does not know for its diameter");
    }
    String name =
        "M"
            + diameter.toPlainString()
            + written.map(it -> "x" + it.toPlainString()).orElse("")
            + optional(parts, 3).map(it -> "-" + it).orElse("");
    boolean left = parts.group(4) != null;
    return new Parsed<>(ScrewThread.metric(left ? name + " LH" : name, diameter, pitch));
  }

  /** What is wrong with a figure before anybody asks what it is worth. */
  private static Optional<String> unfit(String figure) {
    if (LEADING_ZEROS.matcher(figure).lookingAt()) {
      return Optional.of("has a zero too many");
    }
    return figure.length() > MOST_DIGITS ? Optional.of("has too many digits") : Optional.empty();
  }

  /** The figure without zeros behind its decimals: M10x1.50 and M10x1.5 are one thread. */
  private static BigDecimal plain(String figure) {
    BigDecimal worth = new BigDecimal(figure).stripTrailingZeros();
    return worth.scale() < 0 ? worth.setScale(0) : worth;
  }

  private static Optional<String> optional(Matcher parts, int group) {
    return Optional.ofNullable(parts.group(group));
  }

  /** Coarse, or one of the fine pitches below it; a tenth of the diameter where none is coarse. */
  private static boolean cut(BigDecimal diameter, BigDecimal pitch, Optional<BigDecimal> coarse) {
    boolean fine = FINE.stream().anyMatch(known -> known.compareTo(pitch) == 0);
    BigDecimal most = coarse.orElse(diameter.movePointLeft(1));
    return pitch.compareTo(most) == 0 || (fine && pitch.compareTo(most) < 0);
  }

  private static ParseResult<ScrewThread> unified(Matcher parts, String text) {
    String size = size(parts.group(1));
    int perInch = Integer.parseInt(parts.group(2));
    Optional<String> label = optional(parts, 3).map(it -> it.toUpperCase(Locale.ROOT));
    Optional<String> fit = optional(parts, 4).map(it -> it.toUpperCase(Locale.ROOT));
    Pair usual = UNIFIED_SERIES.get(size);
    if (usual == null) {
      return misread(text, "has no size of the unified series");
    }
    if (!usual.allows(perInch, label)) {
      return misread(text, "has threads per inch that its series does not know");
    }
    boolean left = parts.group(5) != null;
    String series = label.map(it -> " " + it).orElse("");
    String name = size + "-" + perInch + series + fit.map(it -> "-" + it).orElse("");
    return new Parsed<>(
        new ScrewThread(
            left ? name + " LH" : name,
            inches(size) * 25.4,
            25.4 / perInch,
            ScrewThread.Series.UNIFIED));
  }

  /** Below an inch a whole number is a number size, whether or not its sign was written. */
  private static String size(String written) {
    return written.chars().allMatch(Character::isDigit) && !written.equals("1")
        ? "#" + written
        : written;
  }

  /** Number sizes rise by 0.013 in from 0.060 in (ASME B1.1). */
  private static double inches(String size) {
    return size.startsWith("#")
        ? 0.060 + 0.013 * Integer.parseInt(size.substring(1))
        : Fraction.worth(size).doubleValue();
  }

  private static ParseResult<ScrewThread> misread(String text, String fault) {
    return new ParseFailure<>(WrittenText.quoted(text) + " " + fault, EXPECTED);
  }

  /** Threads per inch of one size: coarse, fine. */
  private record Pair(int coarse, int fine) {
    // Labels for threads outside the two series, for which no count of threads is settled.
    private static final Set<String> SPECIAL = Set.of("UN", "UNS", "UNEF");

    boolean allows(int perInch, Optional<String> label) {
      if (label.isEmpty()) {
        return perInch == coarse || perInch == fine;
      }
      return switch (label.get()) {
        case "UNC" -> perInch == coarse;
        case "UNF" -> perInch == fine;
        default -> SPECIAL.contains(label.get()) && perInch > coarse;
      };
    }
  }

  private static Map<String, Pair> series() {
    Map<String, Pair> series = new TreeMap<>();
    String rows =
        "#4 40 48, #5 40 44, #6 32 40, #8 32 36, #10 24 32, #12 24 28, 1/4 20 28, 5/16 18 24,"
            + " 3/8 16 24, 7/16 14 20, 1/2 13 20, 9/16 12 18, 5/8 11 18, 3/4 10 16, 7/8 9 14,"
            + " 1 8 12, 1-1/8 7 12, 1-1/4 7 12, 1-3/8 6 12, 1-1/2 6 12";
    for (String row : rows.split(", ")) {
      String[] cells = row.split(" ");
      series.put(cells[0], new Pair(Integer.parseInt(cells[1]), Integer.parseInt(cells[2])));
    }
    return series;
  }

  private static Map<BigDecimal, BigDecimal> table(String rows) {
    Map<BigDecimal, BigDecimal> table = new TreeMap<>();
    for (String row : rows.split(",\\s*")) {
      List<BigDecimal> cells = decimals(row.split(" "));
      table.put(cells.get(0), cells.get(1));
    }
    return table;
  }

  private static List<BigDecimal> decimals(String... figures) {
    return Arrays.stream(figures).map(BigDecimal::new).toList();
  }
}
