package baysheet.json;

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
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Reads and writes objects. Figures keep their digits; nothing depends on the machine. */
public final class JsonText {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private final JsonGenerator out;
  private final boolean sorted;
  private final UnaryOperator<String> texts;

  private JsonText(JsonGenerator out, boolean sorted, UnaryOperator<String> texts) {
    this.out = out;
    this.sorted = sorted;
    this.texts = texts;
  }

  /**
   * The one object that a text holds; a key that stands twice in one object is refused.
   *
   * @throws IOException when it is none
   */
  public static JsonObject read(byte[] json) throws IOException {
    try (JsonParser in = FACTORY.createParser(json)) {
      if (in.nextToken() != JsonToken.START_OBJECT) {
        throw new IOException("this is no JSON object");
      }
      JsonObject read = object(in);
      if (in.nextToken() != null) {
        throw new IOException("something follows the JSON object");
      }
      return read;
    }
  }

  private static JsonObject object(JsonParser in) throws IOException {
    JsonObject object = new JsonObject();
    while (in.nextToken() == JsonToken.FIELD_NAME) {
      String key = in.currentName();
      in.nextToken();
      object.values().put(key, value(in));
    }
    return object;
  }

  private static Object value(JsonParser in) throws IOException {
    return switch (in.currentToken()) {
      case START_OBJECT -> object(in);
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
    return list;
  }

  /** On one line, without its end. */
  public static String line(JsonObject object) {
    return write(object, false, false, UnaryOperator.identity());
  }

  /** For eyes and programs: two blanks a level, line feeds, the last line ended. */
  public static String indented(JsonObject object) {
    return write(object, true, false, UnaryOperator.identity()) + '\n';
  }

  /** The same with plain spaces. */
  public static String indentedPlain(JsonObject object) {
    return write(object, true, false, JsonText::plainSpaces) + '\n';
  }

  /** Keys sorted and nothing between tokens, so that equal data are equal bytes; plain spaces. */
  public static String canonical(JsonObject object) {
    return write(object, false, true, JsonText::plainSpaces);
  }

  /**
   * For a file, with plain spaces: every key of the whole on a line of its own, and every entry of
   * its lists. A step, a torque line or a box is one line, which can be searched for and compared.
   */
  public static String lines(JsonObject object) {
    StringJoiner lines = new StringJoiner(",\n", "{\n", "\n}\n");
    object.values().forEach((key, value) -> lines.add(plainLine(key) + ':' + entries(value)));
    return lines.toString();
  }

  private static String entries(Object value) {
    return value instanceof List<?> list && !list.isEmpty()
        ? list.stream().map(JsonText::plainLine).collect(Collectors.joining(",\n", "[\n", "]"))
        : plainLine(value);
  }

  private static String plainLine(Object value) {
    return write(value, false, false, JsonText::plainSpaces);
  }

  /** A sheet keeps figure and unit on one line by the space between them; data have plain ones. */
  private static String plainSpaces(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  private static String write(
      Object value, boolean indented, boolean sorted, UnaryOperator<String> texts) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      if (indented) {
        // The library's own indenter ends lines as the system does.
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        out.setPrettyPrinter(printer);
      }
      new JsonText(out, sorted, texts).write(value);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write into memory", e);
    }
    return text.toString();
  }

  private void write(Object value) throws IOException {
    if (value instanceof JsonObject object) {
      out.writeStartObject();
      Map<String, Object> values = sorted ? new TreeMap<>(object.values()) : object.values();
      for (Map.Entry<String, Object> entry : values.entrySet()) {
        out.writeFieldName(entry.getKey());
        write(entry.getValue());
      }
      out.writeEndObject();
    } else if (value instanceof List<?> list) {
      out.writeStartArray();
      for (Object item : list) {
        write(item);
      }
      out.writeEndArray();
    } else if (value instanceof Boolean truth) {
      out.writeBoolean(truth);
    } else if (value instanceof BigDecimal number) {
      out.writeNumber(number.toPlainString());
    } else {
      out.writeString(texts.apply((String) value));
    }
  }
}
