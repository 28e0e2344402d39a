package baysheet.cli;

import baysheet.layout.Fonts;
import baysheet.report.Problem;
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
    scalar
        .text()
        .codePoints()
        .filter(character -> !Character.isWhitespace(character) && !covered(character))
        .distinct()
        .forEach(character -> problems.add(missing(character, scalar.at())));
  }

  private boolean covered(int character) {
    return fonts.regular().covers(character) && fonts.bold().covers(character);
  }

  private static Problem missing(int character, Span at) {
    String name = Character.getName(character);
    return Problem.error(
            "no-glyph",
            at,
            "the character \"%s\" (U+%04X, %s) cannot be printed"
                .formatted(
                    Character.toString(character), character, name == null ? "no name" : name))
        .expecting(
            "letters of Latin, Greek or Cyrillic, digits, and signs such as ° ± × · – → ≤ ≥ ½ ⌀");
  }
}
