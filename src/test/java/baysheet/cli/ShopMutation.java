package baysheet.cli;

import baysheet.report.Span;
import baysheet.yaml.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A change of one file that is known to change a fact, and what must come of it.
 *
 * @param what what was changed, for people
 * @param text the file's text afterwards
 * @param must what must come of it
 * @param marker a text that was written in, where there is one
 * @param facts what was changed
 */
record ShopMutation(
    String what, String text, Must must, Optional<String> marker, List<WrittenFact> facts) {
  /** What must come of a mutation unless the fact is not printed for the job. */
  enum Must {
    /** The marker stands on the sheet, or a problem was reported. */
    SHOW_MARKER,
    /** The sheet differs, or a problem was reported. */
    DIFFER,
    /** A problem was reported, or the new name stands on the sheet. */
    BE_REFUSED,
    /** Nothing, for it is not known what the change means; but no fault. */
    STAY_SOUND
  }

  private static final Pattern NAME = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern PLACED = Pattern.compile("([a-z0-9-]+) at ([a-z-]+)");
  private static final Pattern FIGURE =
      Pattern.compile(
          "[+±]?[0-9].*|M[0-9].*|[TE][0-9]+.*|(hex|12-point|six-lobe) .*|A[24]-.*|grade .*");
  private static final Pattern DIGIT = Pattern.compile("[0-9]");
  private static final List<String> BOOLEANS = List.of("yes", "no", "true", "false");

  /** A mutation of a fact of a file; empty where this kind does not suit the fact. */
  static Optional<ShopMutation> of(String text, WrittenFact fact, Random random) {
    int kind = random.nextInt(10);
    if (kind < 6 && fact.node() instanceof Scalar scalar) {
      return value(text, fact, scalar, random);
    }
    if (kind < 8 && fact.key().isPresent()) {
      return key(text, fact, random);
    }
    return deleted(text, fact);
  }

  private static Optional<ShopMutation> value(
      String text, WrittenFact fact, Scalar scalar, Random random) {
    String written = scalar.text();
    if (BOOLEANS.contains(written)) {
      String other = written.equals("yes") ? "no" : written.equals("no") ? "yes" : "no";
      return replaced(text, fact, scalar, other, Must.DIFFER, Optional.empty());
    }
    if (FIGURE.matcher(written).matches()) {
      return otherDigit(written, random)
          .flatMap(it -> replaced(text, fact, scalar, it, Must.DIFFER, Optional.empty()));
    }
    if (NAME.matcher(written).matches() || PLACED.matcher(written).matches()) {
      String slip = slip(written, random);
      return replaced(text, fact, scalar, slip, Must.BE_REFUSED, Optional.of(slip));
    }
    String marker = "zq" + letters(random);
    return replaced(
        text, fact, scalar, written + " " + marker, Must.SHOW_MARKER, Optional.of(marker));
  }

  private static Optional<String> otherDigit(String written, Random random) {
    List<Integer> digits = new ArrayList<>();
    Matcher digit = DIGIT.matcher(written);
    while (digit.find()) {
      digits.add(digit.start());
    }
    if (digits.isEmpty()) {
      return Optional.empty();
    }
    int at = digits.get(random.nextInt(digits.size()));
    int old = written.charAt(at) - '0';
    int other = 1 + (old + random.nextInt(8)) % 9;
    return Optional.of(written.substring(0, at) + other + written.substring(at + 1))
        .filter(it -> !it.equals(written));
  }

  /** A letter doubled, left out or swapped with its neighbour. */
  private static String slip(String name, Random random) {
    int at = random.nextInt(name.length());
    while (name.charAt(at) == '-' || name.charAt(at) == ' ') {
      at = (at + 1) % name.length();
    }
    String letter = name.substring(at, at + 1);
    return switch (random.nextInt(3)) {
      case 0 -> name.substring(0, at) + letter + letter + name.substring(at + 1);
      case 1 -> name.substring(0, at) + "z" + name.substring(at + 1);
      default -> name.substring(0, at + 1) + "q" + name.substring(at + 1);
    };
  }

  private static String letters(Random random) {
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < 4; i++) {
      letters.append((char) ('a' + random.nextInt(26)));
    }
    return letters.toString();
  }

  /** Quoted as before where it was quoted. */
  private static Optional<ShopMutation> replaced(
      String text, WrittenFact fact, Scalar scalar, String by, Must must, Optional<String> marker) {
    String token = token(text, scalar.at());
    if (token.contains("\n") || token.startsWith("|") || token.startsWith(">")) {
      // A text over several lines: a marker in its middle.
      return marker
          .filter(it -> must == Must.SHOW_MARKER)
          .map(
              it ->
                  new ShopMutation(
                      fact.path() + " with " + it,
                      replace(text, scalar.at(), token.replaceFirst(" ", " " + it + " ")),
                      must,
                      marker,
                      List.of(fact)));
    }
    String quote = token.startsWith("\"") || token.startsWith("'") ? token.substring(0, 1) : "";
    if (by.contains(quote.isEmpty() ? "\n" : quote) || by.contains("\\")) {
      return Optional.empty();
    }
    return Optional.of(
        new ShopMutation(
            fact.path() + ": " + scalar.text() + " → " + by,
            replace(text, scalar.at(), quote + by + quote),
            must,
            marker,
            List.of(fact)));
  }

  private static Optional<ShopMutation> key(String text, WrittenFact fact, Random random) {
    Scalar key = fact.key().orElseThrow();
    if (!NAME.matcher(key.text()).matches()) {
      return Optional.empty();
    }
    String slip = slip(key.text(), random);
    return Optional.of(
        new ShopMutation(
            "key " + fact.path() + " → " + slip,
            replace(text, key.at(), slip),
            Must.BE_REFUSED,
            Optional.of(slip),
            List.of(fact)));
  }

  /** Without an entry or an item: its lines in a block, its stretch and one comma in brackets. */
  private static Optional<ShopMutation> deleted(String text, WrittenFact fact) {
    int from = offset(text, fact.start().line(), fact.start().column());
    int to = offset(text, fact.node().at().endLine(), fact.node().at().endColumn());
    if (fact.flow()) {
      int comma = to;
      while (comma < text.length() && Character.isWhitespace(text.charAt(comma))) {
        comma++;
      }
      if (comma < text.length() && text.charAt(comma) == ',') {
        to = comma + 1;
      } else {
        int before = from - 1;
        while (before >= 0 && Character.isWhitespace(text.charAt(before))) {
          before--;
        }
        from = before >= 0 && text.charAt(before) == ',' ? before : from;
      }
    } else {
      int line = text.lastIndexOf('\n', from - 1) + 1;
      String before = text.substring(line, from).strip();
      if (!before.isEmpty() && !(before.equals("-") && fact.inList())) {
        return Optional.empty();
      }
      int end = text.indexOf('\n', to);
      from = line;
      to = end < 0 ? text.length() : end + 1;
    }
    return Optional.of(
        new ShopMutation(
            "without " + fact.path(),
            text.substring(0, from) + text.substring(to),
            Must.DIFFER,
            Optional.empty(),
            List.of(fact)));
  }

  private static String token(String text, Span at) {
    return text.substring(
        offset(text, at.line(), at.column()), offset(text, at.endLine(), at.endColumn()));
  }

  private static String replace(String text, Span at, String by) {
    return text.substring(0, offset(text, at.line(), at.column()))
        + by
        + text.substring(offset(text, at.endLine(), at.endColumn()));
  }

  private static int offset(String text, int line, int column) {
    int at = 0;
    for (int i = 1; i < line; i++) {
      at = text.indexOf('\n', at) + 1;
    }
    return text.offsetByCodePoints(at, column - 1);
  }

  /** Characters and lines changed without a thought, as a cat on the keyboard does. */
  static ShopMutation careless(String text, Random random) {
    String changed = text;
    int times = 1 + random.nextInt(3);
    for (int i = 0; i < times; i++) {
      changed = carelessOnce(changed, random);
    }
    return new ShopMutation(
        "careless change of " + times, changed, Must.STAY_SOUND, Optional.empty(), List.of());
  }

  private static final List<String> PIECES =
      List.of(
          " ",
          "\t",
          ":",
          ": ",
          " #",
          "#3",
          "-",
          "- ",
          "'",
          "\"",
          "{",
          "}",
          "[",
          "]",
          ",",
          "&a ",
          "*a",
          "!!int ",
          "|",
          ">",
          "?",
          "%",
          "@",
          "\\",
          "\u0000",
          "\u00A0",
          "\u200B",
          "\uFEFF",
          "\u202E",
          "é",
          "車",
          "🔧",
          "ש",
          "0",
          "9",
          ".",
          "a",
          "\n",
          "\r\n",
          "---\n",
          "...\n",
          "<<: ",
          "~",
          "null",
          "x".repeat(5_000),
          "9".repeat(3_000),
          "a-".repeat(2_500),
          " ".repeat(9_000),
          "[".repeat(60),
          "k: v\n".repeat(300));

  private static String carelessOnce(String text, Random random) {
    if (text.isEmpty()) {
      return "a";
    }
    int at = text.offsetByCodePoints(0, random.nextInt(text.codePointCount(0, text.length())));
    int next = text.offsetByCodePoints(at, 1);
    String piece = PIECES.get(random.nextInt(PIECES.size()));
    List<String> lines = new ArrayList<>(text.lines().toList());
    int line = random.nextInt(lines.size());
    return switch (random.nextInt(9)) {
      case 0, 1 -> text.substring(0, at) + text.substring(next);
      case 2 -> text.substring(0, at) + piece + text.substring(at);
      case 3 -> text.substring(0, at) + piece + text.substring(next);
      case 4 -> text.substring(0, next) + text.substring(at);
      case 5 -> {
        lines.remove(line);
        yield String.join("\n", lines) + "\n";
      }
      case 6 -> {
        lines.add(line, lines.get(line));
        yield String.join("\n", lines) + "\n";
      }
      case 7 -> {
        String other = lines.get(random.nextInt(lines.size()));
        lines.set(line, other);
        yield String.join("\n", lines) + "\n";
      }
      default -> text.substring(0, at);
    };
  }
}
