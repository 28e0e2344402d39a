package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Boxes;
import baysheet.template.Form;
import baysheet.template.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A character that a face has no picture of.
 *
 * @param text the text it stands in
 */
public record MissingGlyph(int codePoint, boolean bold, String text, Box.Where at) {
  public MissingGlyph {
    Objects.requireNonNull(text);
    Objects.requireNonNull(at);
  }

  /**
   * All such characters of a form, in reading order; one that stands twice in a run counts once.
   */
  public static List<MissingGlyph> in(Form form, Fonts fonts) {
    List<MissingGlyph> missing = new ArrayList<>();
    for (Box box : Boxes.walk(form.body())) {
      if (box instanceof Box.Text text) {
        for (Box.Run run : text.runs()) {
          find(run.text(), run.bold(), text.at(), fonts, missing);
        }
      } else if (box instanceof Box.Drawing drawing) {
        for (Mark mark : drawing.marks()) {
          if (mark instanceof Mark.Label label) {
            find(label.text(), label.bold(), drawing.at(), fonts, missing);
          }
        }
      }
    }
    return missing;
  }

  private static void find(
      String text, boolean bold, Box.Where at, Fonts fonts, List<MissingGlyph> missing) {
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
