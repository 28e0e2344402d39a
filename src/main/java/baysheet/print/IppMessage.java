package baysheet.print;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A message of the Internet Printing Protocol as bytes (RFC 8010).
 *
 * @param code the operation of a request, the status of a response
 * @param attributes their values as text, by name, of all groups but those that are unsupported
 * @param unsupported names of attributes that the printer does not know or cannot do
 */
record IppMessage(int code, Map<String, List<String>> attributes, List<String> unsupported) {
  static final int PRINT_JOB = 0x0002;
  static final int GET_PRINTER_ATTRIBUTES = 0x000B;

  /** {@code server-error-busy}. */
  static final int BUSY = 0x0507;

  private static final int VERSION = 0x0101;
  private static final int END = 0x03;
  private static final int UNSUPPORTED = 0x05;
  private static final int LAST_DELIMITER = 0x0F;

  /** An answer with more is none of a printer's. */
  private static final int MOST_ATTRIBUTES = 10_000;

  /** The kinds of values that are written and read, by their tags. */
  enum Kind {
    INTEGER(0x21),
    BOOLEAN(0x22),
    ENUM(0x23),
    NAME(0x42),
    KEYWORD(0x44),
    URI(0x45),
    CHARSET(0x47),
    LANGUAGE(0x48),
    MIME_TYPE(0x49);

    private final int tag;

    Kind(int tag) {
      this.tag = tag;
    }
  }

  /** Writes a request attribute by attribute. */
  static final class Request {
    static final int OPERATION = 0x01;
    static final int JOB = 0x02;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);

    Request(int operation, int id) throws IOException {
      out.writeShort(VERSION);
      out.writeShort(operation);
      out.writeInt(id);
    }

    Request group(int tag) throws IOException {
      out.writeByte(tag);
      return this;
    }

    /** An attribute; further values follow the first without a name. */
    Request put(Kind kind, String name, String... values) throws IOException {
      for (int i = 0; i < values.length; i++) {
        byte[] called = (i == 0 ? name : "").getBytes(StandardCharsets.UTF_8);
        byte[] value = values[i].getBytes(StandardCharsets.UTF_8);
        out.writeByte(kind.tag);
        out.writeShort(called.length);
        out.write(called);
        out.writeShort(value.length);
        out.write(value);
      }
      return this;
    }

    byte[] bytes() throws IOException {
      out.writeByte(END);
      return bytes.toByteArray();
    }
  }

  /**
   * Reads a response.
   *
   * @throws IOException when these are not the bytes of one
   */
  static IppMessage read(InputStream bytes) throws IOException {
    DataInputStream in = new DataInputStream(bytes);
    in.readUnsignedShort();
    int code = in.readUnsignedShort();
    in.readInt();
    Map<String, List<String>> attributes = new LinkedHashMap<>();
    List<String> unsupported = new ArrayList<>();
    int group = 0;
    String name = "";
    int tag = in.readUnsignedByte();
    for (int count = 0; tag != END; count++) {
      if (count > MOST_ATTRIBUTES) {
        throw new IOException("the answer has no end");
      }
      if (tag <= LAST_DELIMITER) {
        group = tag;
      } else {
        String called = text(in);
        byte[] value = in.readNBytes(in.readUnsignedShort());
        name = called.isEmpty() ? name : called;
        if (group == UNSUPPORTED) {
          unsupported.add(name);
        } else {
          attributes.computeIfAbsent(name, key -> new ArrayList<>()).add(value(tag, value));
        }
      }
      tag = in.readUnsignedByte();
    }
    return new IppMessage(code, attributes, List.copyOf(unsupported));
  }

  private static String text(DataInputStream in) throws IOException {
    return new String(in.readNBytes(in.readUnsignedShort()), StandardCharsets.UTF_8);
  }

  private static String value(int tag, byte[] value) {
    if ((tag == Kind.INTEGER.tag || tag == Kind.ENUM.tag) && value.length == Integer.BYTES) {
      int number = 0;
      for (byte each : value) {
        number = number << Byte.SIZE | each & 0xFF;
      }
      return String.valueOf(number);
    }
    if (tag == Kind.BOOLEAN.tag && value.length == 1) {
      return String.valueOf(value[0] != 0);
    }
    return new String(value, StandardCharsets.UTF_8);
  }

  List<String> values(String name) {
    return attributes.getOrDefault(name, List.of());
  }

  /** {@code successful-ok} and its kin. */
  boolean isSuccessful() {
    return code < 0x0100;
  }
}
