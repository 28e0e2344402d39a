package baysheet.layout;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The family that a page is set in: a regular and a bold face. */
public record Fonts(FontFace regular, FontFace bold) {
  /** Where the regular face stands among the program's resources. */
  public static final String REGULAR = "/baysheet/fonts/Roboto-Condensed-Regular.woff";

  /** Where the bold face stands among the program's resources. */
  public static final String BOLD = "/baysheet/fonts/Roboto-Condensed-Bold.woff";

  /** Where the face stands that draws what the regular one lacks. */
  public static final String SECOND_REGULAR = "/baysheet/fonts/DejaVuSansCondensed.ttf";

  /** Where the face stands that draws what the bold one lacks. */
  public static final String SECOND_BOLD = "/baysheet/fonts/DejaVuSansCondensed-Bold.ttf";

  /** The family that ships with the program; read once, on first use. */
  public static Fonts builtIn() {
    return BuiltIn.FONTS;
  }

  /**
   * The bytes of a font among the program's resources.
   *
   * @throws UncheckedIOException naming the resource if it cannot be read
   */
  public static byte[] resource(String name) {
    try (InputStream stream = Fonts.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IOException("no such resource: " + name);
      }
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the font " + name, e);
    }
  }

  FontFace face(boolean bold) {
    return bold ? this.bold : regular;
  }

  /** How wide a space is behind a word: as its last letter's face has it. */
  long spaceAfter(Word word) {
    return face(word.endsBold()).advance(' ');
  }

  /** Class loading makes this happen once, whichever thread comes first. */
  private static final class BuiltIn {
    private static final Fonts FONTS =
        new Fonts(FontFace.read(REGULAR, SECOND_REGULAR), FontFace.read(BOLD, SECOND_BOLD));
  }
}
