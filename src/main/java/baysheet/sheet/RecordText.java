package baysheet.sheet;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * All that a record says, and the records in it, as text in UTF-8: {@code Name[key=value,
 * key=value]}.
 *
 * <p>The language leaves it open how a record's own {@code toString} puts it, so that another Java
 * could put it otherwise and give the same sheet another id. The one that is there also puts every
 * record through a formatter, which is slow for a whole sheet.
 */
final class RecordText {
  /** The kinds of records that were met; there are no more of them than classes. */
  private static final ClassValue<Form> FORMS =
      new ClassValue<>() {
        @Override
        protected Form computeValue(Class<?> type) {
          return Form.of(type);
        }
      };

  // Bytes, for all of it is hashed, and nearly all of it is one byte a character.
  private byte[] said = new byte[1 << 15];
  private int size;

  private RecordText() {}

  static byte[] of(Record said) {
    RecordText whole = new RecordText();
    whole.add(said);
    return Arrays.copyOf(whole.said, whole.size);
  }

  private void add(Object value) {
    if (value instanceof String plain) {
      text(plain);
    } else if (value instanceof Record record) {
      add(record);
    } else if (value instanceof List<?> list) {
      add(list);
    } else if (value instanceof Optional<?> maybe && maybe.isPresent()) {
      text("Optional[");
      add(maybe.get());
      text("]");
    } else {
      text(value.toString());
    }
  }

  private void add(List<?> list) {
    String separator = "";
    text("[");
    for (Object value : list) {
      text(separator);
      add(value);
      separator = ", ";
    }
    text("]");
  }

  private void add(Record record) {
    Form form = FORMS.get(record.getClass());
    if (form.worded()) {
      text(record.toString());
      return;
    }
    bytes(form.start());
    for (Part part : form.parts()) {
      bytes(part.label());
      add(part.of(record));
    }
    text("]");
  }

  private void text(String text) {
    ensureRoom(text.length());
    int from = size;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= 0x80) {
        size = from;
        bytes(encoded(text));
        return;
      }
      said[size++] = (byte) c;
    }
  }

  private static byte[] encoded(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private void bytes(byte[] more) {
    ensureRoom(more.length);
    System.arraycopy(more, 0, said, size, more.length);
    size += more.length;
  }

  private void ensureRoom(int more) {
    if (size + more > said.length) {
      said = Arrays.copyOf(said, 2 * (size + more));
    }
  }

  /**
   * A kind of record.
   *
   * @param start its name and the bracket before its parts
   * @param worded whether its writer has worded by hand how it is put
   */
  private record Form(byte[] start, boolean worded, List<Part> parts) {
    static Form of(Class<?> type) {
      try {
        // The compiler makes final what it writes by itself.
        boolean worded = !Modifier.isFinal(type.getMethod("toString").getModifiers());
        List<Part> parts = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
          String label = (parts.isEmpty() ? "" : ", ") + component.getName() + "=";
          parts.add(Part.of(label, type.getDeclaredField(component.getName())));
        }
        return new Form(encoded(type.getSimpleName() + "["), worded, List.copyOf(parts));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(type + " is no record as the language has them", e);
      }
    }
  }

  /** A component: what is written before its value, and where that is. */
  private record Part(byte[] label, Field field) {
    static Part of(String label, Field field) {
      field.setAccessible(true);
      return new Part(encoded(label), field);
    }

    Object of(Record said) {
      try {
        return field.get(said);
      } catch (IllegalAccessException e) {
        throw new IllegalStateException("cannot read " + field, e);
      }
    }
  }
}
