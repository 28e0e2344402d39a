package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import java.io.IOException;
import java.util.Optional;

/**
 * Whose record a file is, as its key {@code sheet} says.
 *
 * @param name the sheet's name: the job's number, with that of the stage where it has several
 * @param shop the name of the garage
 */
public record RecordHead(String name, String shop) {
  /** The head of a record; empty for a file that is none. */
  public static Optional<RecordHead> of(byte[] file) {
    try {
      return JsonText.read(file)
          .object("sheet")
          .filter(it -> it.has("id"))
          .map(it -> new RecordHead(name(it), it.text("shop")));
    } catch (IOException | IllegalArgumentException | ArithmeticException e) {
      return Optional.empty();
    }
  }

  private static String name(JsonObject sheet) {
    return sheet.text("job") + sheet.maybeNumber("stage").map(n -> "-" + n).orElse("");
  }
}
