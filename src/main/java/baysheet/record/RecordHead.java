package baysheet.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Whose record a file is, as its key {@code sheet} says.
 *
 * @param name the sheet's name: the job's number, with that of the stage where it has several
 * @param shop the name of the garage
 */
public record RecordHead(String name, String shop) {
  private static final JsonFactory FACTORY = new JsonFactory();

  /** The head of a record; empty for a file that is none. */
  public static Optional<RecordHead> of(byte[] file) {
    try (JsonParser json = FACTORY.createParser(file)) {
      return json.nextToken() == JsonToken.START_OBJECT && find(json, "sheet")
          ? head(texts(json))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<RecordHead> head(Map<String, String> sheet) {
    return Optional.of(sheet)
        .filter(it -> it.containsKey("job") && it.containsKey("shop") && it.containsKey("id"))
        .map(it -> new RecordHead(name(it), it.get("shop")));
  }

  private static String name(Map<String, String> sheet) {
    String stage = sheet.get("stage");
    return sheet.get("job") + (stage == null ? "" : "-" + stage);
  }

  /** Goes to the object behind a key of the object that was entered. */
  private static boolean find(JsonParser json, String key) throws IOException {
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      boolean wanted = json.currentName().equals(key);
      if (json.nextToken() == JsonToken.START_OBJECT && wanted) {
        return true;
      }
      json.skipChildren();
    }
    return false;
  }

  private static Map<String, String> texts(JsonParser json) throws IOException {
    Map<String, String> texts = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String key = json.currentName();
      JsonToken value = json.nextToken();
      if (value == JsonToken.VALUE_STRING || value == JsonToken.VALUE_NUMBER_INT) {
        texts.put(key, json.getText());
      }
      json.skipChildren();
    }
    return texts;
  }
}
