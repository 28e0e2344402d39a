package baysheet.files;

import baysheet.layout.Fonts;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;

/** Finds characters that the sheets' fonts cannot print, where somebody wrote them. */
final class Glyphs {
  private final Fonts fonts;

  Glyphs(Fonts fonts) {
    this.fonts = fonts;
  }

  void check(Node node, Problems problems) {
    if (node instanceof Scalar scalar) {
      check(scalar, problems);
    } else if (node instanceof Sequence sequence) {
      sequence.items().forEach(item -> check(item, problems));
    } else if (node instanceof Mapping mapping) {
      for (Entry entry : mapping.entries()) {
        check(entry.key(), problems);
        check(entry.value(), problems);
      }
    }
  }

  private void check(Scalar scalar, Problems problems) {
    if (!covered(scalar.text()) && !isFaulty(scalar, problems)) {
      scalar
          .text()
          .codePoints()
          .filter(character -> !covered(character))
          .distinct()
          .forEach(character -> problems.add(missing(character, scalar.at())));
    }
  }

  /** What was said of a value when it was read is not said again in other words. */
  private static boolean isFaulty(Scalar scalar, Problems problems) {
    return problems.all().stream()
        .anyMatch(it -> it.code() == ProblemCode.CONTROL_CHARACTER && it.at().equals(scalar.at()));
  }

  /** No stream here: this runs for every word of every file. */
  private boolean covered(String text) {
    for (int i = 0; i < text.length(); ) {
      int character = text.codePointAt(i);
      if (!covered(character)) {
        return false;
      }
      i += Character.charCount(character);
    }
    return true;
  }

  private boolean covered(int character) {
    return fonts.regular().covers(character) && fonts.bold().covers(character)
        || Character.isWhitespace(character);
  }

  private static Problem missing(int character, Span at) {
    String name = Character.getName(character);
    return Problem.of(
            ProblemCode.NO_GLYPH,
            at,
            "the character \"%s\" (U+%04X, %s) cannot be printed"
                .formatted(
                    Character.toString(character), character, name == null ? "no name" : name))
        .expecting(
            "letters of Latin, Greek or Cyrillic, digits, and signs such as ° ± × · – → ≤ ≥ ½ ⌀");
  }
}
