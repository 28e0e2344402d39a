package baysheet.record;

import baysheet.torque.Quantity;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Writes JSON (RFC 8259) in UTF-8, with line feeds; nothing depends on the machine. */
final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(32_768);
  private final JsonGenerator out;

  /** A piece of the record, written into its place. */
  interface Piece {
    void write() throws IOException;
  }

  private Json(PrettyPrinter printer) throws IOException {
    out = FACTORY.createGenerator(bytes).setPrettyPrinter(printer);
  }

  private static PrettyPrinter indented() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    return printer;
  }

  /** What was written. */
  byte[] bytes() throws IOException {
    out.writeRaw('\n');
    out.close();
    return bytes.toByteArray();
  }

  /** For eyes: two blanks a level. */
  static byte[] indented(JsonWork work) {
    return write(indented(), work);
  }

  /** For a file: {@link OneLineEach}. */
  static byte[] lines(JsonWork work) {
    return write(new OneLineEach(), work);
  }

  /** Runs a piece of writing; memory does not fail, so an I/O failure is a fault of ours. */
  private static byte[] write(PrettyPrinter printer, JsonWork work) {
    try {
      Json json = new Json(printer);
      work.on(json);
      return json.bytes();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write a record into memory", e);
    }
  }

  /** Something to write with a generator. */
  interface JsonWork {
    void on(Json json) throws IOException;
  }

  void object(Piece piece) throws IOException {
    out.writeStartObject();
    piece.write();
    out.writeEndObject();
  }

  void object(String key, Piece piece) throws IOException {
    out.writeFieldName(key);
    object(piece);
  }

  <T> void list(String key, List<T> items, ItemWork<T> work) throws IOException {
    out.writeArrayFieldStart(key);
    for (T item : items) {
      work.on(item);
    }
    out.writeEndArray();
  }

  /** How one item of a list is written. */
  interface ItemWork<T> {
    void on(T item) throws IOException;
  }

  void texts(String key, List<?> items) throws IOException {
    list(key, items, item -> out.writeString(words(item)));
  }

  void numbers(String key, List<? extends Number> items) throws IOException {
    list(key, items, item -> out.writeNumber(plain(new BigDecimal(item.toString()))));
  }

  void text(String key, Object value) throws IOException {
    out.writeStringField(key, words(value));
  }

  /** A sheet keeps figure and unit on one line by the space between them; data have plain ones. */
  private static String words(Object value) {
    return value.toString().replace('\u00A0', ' ').replace('\u202F', ' ');
  }

  void text(String key, Optional<?> value) throws IOException {
    if (value.isPresent()) {
      text(key, value.get());
    }
  }

  void number(String key, long value) throws IOException {
    out.writeNumberField(key, value);
  }

  void number(String key, BigDecimal value) throws IOException {
    out.writeFieldName(key);
    out.writeNumber(plain(value));
  }

  void truth(String key, boolean value) throws IOException {
    out.writeBooleanField(key, value);
  }

  /** {@code {"value": 110, "unit": "N·m"}}. */
  void quantity(String key, Quantity quantity) throws IOException {
    object(
        key,
        () -> {
          number("value", quantity.value());
          text("unit", quantity.unit().symbol());
        });
  }

  void quantity(String key, Optional<Quantity> quantity) throws IOException {
    if (quantity.isPresent()) {
      quantity(key, quantity.get());
    }
  }

  /** The figure in plain digits, as it was written. */
  private static String plain(BigDecimal value) {
    return value.toPlainString();
  }

  /** Thousandths of a point as points. */
  static BigDecimal points(long thousandths) {
    BigDecimal points = BigDecimal.valueOf(thousandths, 3).stripTrailingZeros();
    return points.scale() < 0 ? points.setScale(0) : points;
  }
}
