package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.Boxes;
import baysheet.box.Form;
import baysheet.box.Printed;
import baysheet.report.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * A character that a face has no picture of.
 *
 * @param text the text it stands in
 */
public record MissingGlyph(int codePoint, boolean bold, String text, Span at) {
  /**
   * All such characters of a form, in reading order; one that stands twice in a run counts once.
   */
  public static List<MissingGlyph> in(Form form, Fonts fonts) {
    List<MissingGlyph> missing = new ArrayList<>();
    for (Box box : Boxes.walk(form.body())) {
      for (Printed printed : box.printed()) {
        find(printed.text(), printed.bold(), box.at(), fonts, missing);
      }
    }
    return missing;
  }

  private static void find(
      String text, boolean bold, Span at, Fonts fonts, List<MissingGlyph> missing) {
    if (!coversAll(fonts.face(bold), text)) {
      text.codePoints()
          .filter(c -> !fonts.face(bold).covers(c))
          .distinct()
          .forEach(c -> missing.add(new MissingGlyph(c, bold, text, at)));
    }
  }

  /** Nearly always true, so it is asked first and without a stream. */
  private static boolean coversAll(FontFace face, String text) {
    for (int i = 0; i < text.length(); ) {
      int codePoint = text.codePointAt(i);
      if (!face.covers(codePoint)) {
        return false;
      }
      i += Character.charCount(codePoint);
    }
    return true;
  }
}
