package baysheet.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * JSON (RFC 8259) as maps, lists, texts, {@link BigDecimal}s and truths, in the order of the file.
 * A key that stands twice in one object is refused.
 */
public final class JsonTree {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private JsonTree() {}

  /**
   * The one object that a text holds.
   *
   * @throws IOException when it is none
   */
  static Map<String, Object> object(byte[] json) throws IOException {
    try (JsonParser in = FACTORY.createParser(json)) {
      if (in.nextToken() != JsonToken.START_OBJECT) {
        throw new IOException("this is no JSON object");
      }
      Map<String, Object> read = map(in);
      if (in.nextToken() != null) {
        throw new IOException("something follows the JSON object");
      }
      return read;
    }
  }

  private static Map<String, Object> map(JsonParser in) throws IOException {
    Map<String, Object> map = new LinkedHashMap<>();
    while (in.nextToken() == JsonToken.FIELD_NAME) {
      String key = in.currentName();
      in.nextToken();
      map.put(key, value(in));
    }
    return Collections.unmodifiableMap(map);
  }

  private static Object value(JsonParser in) throws IOException {
    return switch (in.currentToken()) {
      case START_OBJECT -> map(in);
      case START_ARRAY -> list(in);
      case VALUE_STRING -> in.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> in.getDecimalValue();
      case VALUE_TRUE, VALUE_FALSE -> in.getBooleanValue();
      default -> throw new IOException("unexpected " + in.currentToken());
    };
  }

  private static List<Object> list(JsonParser in) throws IOException {
    List<Object> list = new ArrayList<>();
    while (in.nextToken() != JsonToken.END_ARRAY) {
      list.add(value(in));
    }
    return Collections.unmodifiableList(list);
  }

  /** On one line, without its end. */
  static String line(Map<String, ?> object) {
    return written(object, false);
  }

  /** For eyes and programs: two blanks a level, line feeds, the last line ended. */
  public static String indented(Map<String, ?> object) {
    return written(object, true) + '\n';
  }

  private static String written(Object value, boolean indented) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      if (indented) {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        out.setPrettyPrinter(printer);
      }
      write(out, value);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write into memory", e);
    }
    return text.toString();
  }

  private static void write(JsonGenerator out, Object value) throws IOException {
    if (value instanceof Map<?, ?> map) {
      out.writeStartObject();
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        out.writeFieldName(entry.getKey().toString());
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
    } else if (value instanceof Number number) {
      out.writeNumber(new BigDecimal(number.toString()).toPlainString());
    } else {
      out.writeString(value.toString());
    }
  }
}
