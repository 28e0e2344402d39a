package baysheet.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** JSON with its keys sorted and nothing between its tokens, so that equal data are equal bytes. */
final class Canonical {
  private static final JsonFactory FACTORY = new JsonFactory();

  private Canonical() {}

  /** A figure as it was written. */
  private record Figure(String digits) {}

  static byte[] of(byte[] json) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(json.length);
    try (JsonParser in = FACTORY.createParser(json);
        JsonGenerator out = FACTORY.createGenerator(bytes)) {
      in.nextToken();
      write(out, read(in));
    } catch (IOException e) {
      throw new UncheckedIOException("a record in memory cannot be read", e);
    }
    return bytes.toByteArray();
  }

  private static Object read(JsonParser in) throws IOException {
    if (in.currentToken() == JsonToken.START_OBJECT) {
      Map<String, Object> object = new TreeMap<>();
      while (in.nextToken() == JsonToken.FIELD_NAME) {
        String key = in.currentName();
        in.nextToken();
        object.put(key, read(in));
      }
      return object;
    } else if (in.currentToken() == JsonToken.START_ARRAY) {
      List<Object> list = new ArrayList<>();
      while (in.nextToken() != JsonToken.END_ARRAY) {
        list.add(read(in));
      }
      return list;
    } else if (in.currentToken().isBoolean()) {
      return in.getBooleanValue();
    }
    return in.currentToken().isNumeric() ? new Figure(in.getText()) : in.getText();
  }

  private static void write(JsonGenerator out, Object value) throws IOException {
    if (value instanceof Map<?, ?> object) {
      out.writeStartObject();
      for (Map.Entry<?, ?> entry : object.entrySet()) {
        out.writeFieldName((String) entry.getKey());
        write(out, entry.getValue());
      }
      out.writeEndObject();
    } else if (value instanceof List<?> list) {
      out.writeStartArray();
      for (Object item : list) {
        write(out, item);
      }
      out.writeEndArray();
    } else if (value instanceof Boolean truth) {
      out.writeBoolean(truth);
    } else if (value instanceof Figure figure) {
      out.writeNumber(figure.digits());
    } else {
      out.writeString((String) value);
    }
  }
}
