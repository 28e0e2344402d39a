package baysheet.pdf;

import baysheet.layout.FontFace;
import baysheet.layout.Fonts;

/** The fonts that text is drawn from: one of each weight, and a second one for what it lacks. */
enum Face {
  REGULAR("R", "RobotoCondensed-Regular", Fonts.REGULAR, false),
  BOLD("B", "RobotoCondensed-Bold", Fonts.BOLD, true),
  SECOND_REGULAR("SR", "DejaVuSansCondensed", Fonts.SECOND_REGULAR, false),
  SECOND_BOLD("SB", "DejaVuSansCondensed-Bold", Fonts.SECOND_BOLD, true);

  private final String label;
  private final String postScriptName;
  private final String resource;
  private final boolean bold;

  Face(String label, String postScriptName, String resource, boolean bold) {
    this.label = label;
    this.postScriptName = postScriptName;
    this.resource = resource;
    this.bold = bold;
  }

  /** The face of a weight that draws a character. */
  static Face of(int character, boolean bold) {
    if (first(bold).draws(character)) {
      return bold ? BOLD : REGULAR;
    }
    return bold ? SECOND_BOLD : SECOND_REGULAR;
  }

  private static FontFace first(boolean bold) {
    return bold ? Fonts.builtIn().bold() : Fonts.builtIn().regular();
  }

  /** Its name among the resources of a page. */
  String label() {
    return label;
  }

  String postScriptName() {
    return postScriptName;
  }

  String resource() {
    return resource;
  }

  boolean bold() {
    return bold;
  }

  FontFace metrics() {
    FontFace first = first(bold);
    return this == REGULAR || this == BOLD ? first : first.second().orElseThrow();
  }
}
