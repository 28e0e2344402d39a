package baysheet.plan;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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

  private final StringBuilder said = new StringBuilder(1 << 15);

  private RecordText() {}

  static byte[] of(Record said) {
    RecordText whole = new RecordText();
    whole.add(said);
    return whole.said.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void add(Object value) {
    if (value instanceof String plain) {
      said.append(plain);
    } else if (value instanceof Record record) {
      add(record);
    } else if (value instanceof List<?> list) {
      add(list);
    } else if (value instanceof Optional<?> maybe && maybe.isPresent()) {
      said.append("Optional[");
      add(maybe.get());
      said.append(']');
    } else {
      said.append(value);
    }
  }

  private void add(List<?> list) {
    String separator = "";
    said.append('[');
    for (Object value : list) {
      said.append(separator);
      add(value);
      separator = ", ";
    }
    said.append(']');
  }

  private void add(Record record) {
    Form form = FORMS.get(record.getClass());
    if (form.worded()) {
      said.append(record);
      return;
    }
    said.append(form.start());
    for (Part part : form.parts()) {
      said.append(part.label());
      add(part.of(record));
    }
    said.append(']');
  }

  /**
   * A kind of record.
   *
   * @param start its name and the bracket before its parts
   * @param worded whether its writer has worded by hand how it is put
   */
  private record Form(String start, boolean worded, List<Part> parts) {
    static Form of(Class<?> type) {
      try {
        // The compiler makes final what it writes by itself.
        boolean worded = !Modifier.isFinal(type.getMethod("toString").getModifiers());
        List<Part> parts = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
          String label = (parts.isEmpty() ? "" : ", ") + component.getName() + "=";
          parts.add(Part.of(label, type.getDeclaredField(component.getName())));
        }
        return new Form(type.getSimpleName() + "[", worded, List.copyOf(parts));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(type + " is no record as the language has them", e);
      }
    }
  }

  /** A component: what is written before its value, and where that is. */
  private record Part(String label, Field field) {
    static Part of(String label, Field field) {
      field.setAccessible(true);
      return new Part(label, field);
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
