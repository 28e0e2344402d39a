package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import java.io.IOException;
import java.util.List;

/**
 * What stands where on a sheet, as its record says: the boxes for a pen, and what a machine looks
 * for. Lengths are points from the page's lower left corner.
 *
 * @param boxes in reading order
 * @param code the code; none of the squares is it
 */
public record PlacedBoxes(List<Box> boxes, Place code, List<Place> squares) {
  /** A rectangle, by its lower left corner. */
  public record Place(double x, double y, double w, double h) {}

  /**
   * A box for a pen.
   *
   * @param kind tick, value, initials, signature or line
   * @param required whether the sheet is incomplete while it is empty
   */
  public record Box(String name, String kind, boolean required, Place place) {}

  public PlacedBoxes {
    boxes = List.copyOf(boxes);
    squares = List.copyOf(squares);
  }

  /**
   * Reads a record.
   *
   * @throws IOException if the bytes are no record of a sheet that carries a code
   */
  public static PlacedBoxes of(byte[] record) throws IOException {
    JsonObject whole = JsonText.read(record);
    try {
      List<Box> boxes = whole.objects("boxes").stream().map(PlacedBoxes::box).toList();
      List<Place> codes = marks(whole, true);
      List<Place> squares = marks(whole, false);
      if (codes.size() != 1 || squares.size() != 4) {
        throw new IOException(
            codes.size() + " codes and " + squares.size() + " squares in a record");
      }
      return new PlacedBoxes(boxes, codes.get(0), squares);
    } catch (IllegalArgumentException e) {
      throw new IOException("a box in a record: " + e.getMessage(), e);
    }
  }

  private static List<Place> marks(JsonObject whole, boolean codes) {
    return whole.objects("marks").stream()
        .filter(it -> it.text("kind").equals("code") == codes)
        .map(PlacedBoxes::place)
        .toList();
  }

  private static Box box(JsonObject box) {
    if (!box.has("required")) {
      throw new IllegalArgumentException("there is no required");
    }
    return new Box(box.text("name"), box.text("kind"), box.truth("required"), place(box));
  }

  private static Place place(JsonObject object) {
    return new Place(
        object.decimal("x").doubleValue(),
        object.decimal("y").doubleValue(),
        object.decimal("w").doubleValue(),
        object.decimal("h").doubleValue());
  }
}
