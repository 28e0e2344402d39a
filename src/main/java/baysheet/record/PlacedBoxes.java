package baysheet.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What stands where on a sheet, as its record says: the boxes for a pen, and what a machine looks
 * for. Lengths are points from the page's lower left corner.
 *
 * @param boxes in reading order
 * @param code the code; none of the squares is it
 */
public record PlacedBoxes(List<Box> boxes, Place code, List<Place> squares) {
  private static final JsonFactory FACTORY = new JsonFactory();

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
    List<Box> boxes = new ArrayList<>();
    List<Place> codes = new ArrayList<>();
    List<Place> squares = new ArrayList<>();
    try (JsonParser json = FACTORY.createParser(record)) {
      json.nextToken();
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String key = json.currentName();
        json.nextToken();
        if (key.equals("boxes")) {
          for (Map<String, String> box : objects(json)) {
            boolean required = Boolean.parseBoolean(text(box, "required"));
            boxes.add(new Box(text(box, "name"), text(box, "kind"), required, place(box)));
          }
        } else if (key.equals("marks")) {
          for (Map<String, String> mark : objects(json)) {
            (text(mark, "kind").equals("code") ? codes : squares).add(place(mark));
          }
        } else {
          json.skipChildren();
        }
      }
    }
    if (codes.size() != 1 || squares.size() != 4) {
      throw new IOException(codes.size() + " codes and " + squares.size() + " squares in a record");
    }
    return new PlacedBoxes(boxes, codes.get(0), squares);
  }

  private static List<Map<String, String>> objects(JsonParser json) throws IOException {
    List<Map<String, String>> objects = new ArrayList<>();
    while (json.nextToken() == JsonToken.START_OBJECT) {
      Map<String, String> object = new HashMap<>();
      while (json.nextToken() == JsonToken.FIELD_NAME) {
        String key = json.currentName();
        json.nextToken();
        object.put(key, json.getText());
        json.skipChildren();
      }
      objects.add(object);
    }
    return objects;
  }

  private static Place place(Map<String, String> object) throws IOException {
    return new Place(
        number(object, "x"), number(object, "y"), number(object, "w"), number(object, "h"));
  }

  private static double number(Map<String, String> object, String key) throws IOException {
    try {
      return Double.parseDouble(text(object, key));
    } catch (NumberFormatException e) {
      throw new IOException(key + " of a box in a record is no number", e);
    }
  }

  private static String text(Map<String, String> object, String key) throws IOException {
    String text = object.get(key);
    if (text == null) {
      throw new IOException("a box in a record has no " + key);
    }
    return text;
  }
}
