package baysheet.scan;

import baysheet.record.PlacedBoxes;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.Result;
import baysheet.scan.PageReading.State;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads one page of a scan: which sheet it is, and which of its boxes hold ink.
 *
 * <ol>
 *   <li>{@code ScanFile} gives one page at a time as a {@code Grey} picture: the one picture of a
 *       PDF page as it was scanned, anything else as drawn. A page that is too large or broken is
 *       reported with its reason, and the others are read.
 *   <li>{@code Streaks} removes lines of dust on the glass: they run through both margins of the
 *       paper, where nothing is printed.
 *   <li>{@code CodeFinder} looks for the code in the corners, then enlarged, then enlarged and
 *       smoothed, then on the whole page; if a streak went through the code, on the picture as it
 *       was scanned.
 *   <li>{@code Registration} looks for the corner squares, from the nearest to the farthest; each
 *       one found makes the next search narrower. Four give a homography, three an affine
 *       projection. The code must lie within 1 mm of its place.
 *   <li>{@code PageReader} sets the page straight, 8 pixels a millimetre. {@code BlankPage} draws
 *       the issued sheet at the same scale. {@code Ink} is what is darker than its surroundings.
 *   <li>{@code BoxReader} lays each box on its own print, removes the print and decides on the
 *       pieces of ink that are left ({@code Strokes}, {@code Piece}).
 * </ol>
 *
 * <p>An empty box must never be called marked. A box is marked if it contains a stroke that is
 * long, thin, dark and sharp, and lies mainly inside the box. Any other ink is doubtful. The rules
 * for what looks like a stroke:
 *
 * <table>
 *   <caption>How ink is judged</caption>
 *   <tr><th>ink<th>judged as
 *   <tr><td>crosses the box from far outside on both sides<td>a streak, a fold, or the ring of a cup
 *   <tr><td>hangs into the upper part of a box from above<td>the bottom of the tick in the box above
 *   <tr><td>a neighbour's stroke, at most 0.43 of the edge in the box (training half)<td>an
 *       overrun; a stroke through the box takes 0.55 of it
 *   <tr><td>two short strokes that lean like the arms of a tick and meet near the lower border
 *       <td>one tick ({@code Arms}); the long arm alone, if its middle is in the box and no other
 *       box holds more than a little of it
 *   <tr><td>pale, and fading into the paper<td>a smudge
 *   <tr><td>black and white, where a smudge is as dark and as sharp as a stroke<td>a stroke only if
 *       its shape says so ({@code Piece.evidence}) very clearly; less clearly, if three sure
 *       strokes of the page have the same width and slant; still less clearly, if eight have
 *   <tr><td>pale and straight, on a grey scan<td>a stroke only with three others like it
 *   <tr><td>words in a thick pen, in black and white<td>writing, if many strokes have that width;
 *       this does not apply to signatures
 *   <tr><td>pale ink that broke into dots in black and white<td>looked at again with the dots
 *       joined ({@code Ink.smooth}); every stroke then needs three others like it
 *   <tr><td>a long pale or single line in a wide box that bends no more than the ring of a cup
 *       <td>no writing
 * </table>
 */
public final class PageReader {
  private final IssuedSheets sheets;

  public PageReader(IssuedSheets sheets) {
    this.sheets = sheets;
  }

  /** Reads a page; one that cannot be read says why. */
  public PageReading read(Grey picture) {
    Grey clean = Streaks.without(picture);
    // A streak through the code is taken out of its black squares too.
    Optional<CodeFinder.Found> code =
        CodeFinder.find(clean)
            .or(() -> clean == picture ? Optional.empty() : CodeFinder.find(picture));
    if (code.isEmpty()) {
      return PageReading.unread("no code of a sheet was found", Optional.empty());
    }
    Optional<String> text = code.map(CodeFinder.Found::text);
    Optional<Issued> issued = text.flatMap(sheets::find);
    if (issued.isEmpty()) {
      return new PageReading(
          Result.UNKNOWN,
          "no sheet was issued with the code " + text.get(),
          text,
          Optional.empty(),
          List.of(),
          Optional.empty());
    }
    try {
      return read(clean, code.get(), issued.get());
    } catch (IOException e) {
      return new PageReading(
          Result.UNREAD,
          "the issued sheet cannot be drawn: " + e.getMessage(),
          text,
          issued,
          List.of(),
          Optional.empty());
    }
  }

  /** Reads a page of a form: what it shows and what its fields say must agree. */
  public PageReading read(Grey picture, FilledForm form) {
    PageReading seen = read(picture);
    return new PageReading(
        seen.result(),
        seen.reason(),
        seen.code(),
        seen.sheet(),
        form.together(seen.boxes()),
        seen.picture());
  }

  private static PageReading read(Grey picture, CodeFinder.Found code, Issued issued)
      throws IOException {
    BlankPage blank = BlankPage.of(issued.pdf());
    PlacedBoxes boxes = issued.boxes();
    Registration.Layout layout = Registration.Layout.of(boxes, blank.height());
    Optional<Projection> projection = Registration.find(picture, layout, code);
    if (projection.isEmpty()) {
      return new PageReading(
          Result.UNREAD,
          "the squares near the corners are not where they should be",
          Optional.of(code.text()),
          Optional.of(issued),
          List.of(),
          Optional.empty());
    }
    Grey page = straight(picture, projection.get(), blank.width(), blank.rows());
    List<BoxReading> read = read(page, blank, boxes.boxes(), picture.isTwoTone());
    Result result = issued.superseded() ? Result.SUPERSEDED : Result.READ;
    String reason = issued.superseded() ? "a later revision has taken its place" : "";
    return new PageReading(
        result, reason, Optional.of(code.text()), Optional.of(issued), read, Optional.of(page));
  }

  /**
   * In black and white what is doubtful is looked at once more, with the dots of pale ink joined.
   */
  static List<BoxReading> read(
      Grey page, BlankPage blank, List<PlacedBoxes.Box> boxes, boolean twoTone) {
    Ink ink = Ink.of(page);
    List<BoxReading> read =
        new BoxReader(new Scanned(page, ink, blank, twoTone), false).read(boxes);
    if (!twoTone || read.stream().noneMatch(PageReader::isDoubtful)) {
      return read;
    }
    Scanned smooth = new Scanned(page, ink.smooth(page), blank, true);
    List<BoxReading> again = new BoxReader(smooth, true).read(boxes);
    return IntStream.range(0, read.size())
        .mapToObj(
            i ->
                isDoubtful(read.get(i)) && again.get(i).state() == State.MARKED
                    ? again.get(i)
                    : read.get(i))
        .toList();
  }

  private static boolean isDoubtful(BoxReading box) {
    return box.state() == State.DOUBTFUL;
  }

  /** The page set straight, {@link BlankPage#PIXELS} a millimetre. */
  private static Grey straight(Grey picture, Projection projection, int width, int height) {
    byte[] pixels = new byte[width * height];
    double[] f = projection.figures();
    for (int y = 0; y < height; y++) {
      double down = (y + 0.5) / BlankPage.PIXELS;
      for (int x = 0; x < width; x++) {
        double across = (x + 0.5) / BlankPage.PIXELS;
        double w = f[6] * across + f[7] * down + 1;
        double u = (f[0] * across + f[1] * down + f[2]) / w;
        double v = (f[3] * across + f[4] * down + f[5]) / w;
        pixels[y * width + x] = (byte) (picture.between(u, v) + 0.5);
      }
    }
    return new Grey(width, height, pixels);
  }
}
