package baysheet.plan;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that a record says, and the records in it, as text: {@code Name[key=value, key=value]}.
 *
 * <p>The language leaves it open how a record's own {@code toString} puts it, so that another Java
 * could put it otherwise; and the one that is there puts every record through a formatter, which
 * for a sheet takes longer than to plan most of it.
 */
final class RecordText {
  private static final ClassValue<Form> FORMS =
      new ClassValue<>() {
        @Override
        protected Form computeValue(Class<?> type) {
          return Form.of(type);
        }
      };

  // A sheet of twenty steps comes to some 25,000 characters.
  private final StringBuilder text = new StringBuilder(1 << 15);

  private RecordText() {}

  static String of(Record said) {
    RecordText whole = new RecordText();
    whole.add(said);
    return whole.text.toString();
  }

  private void add(Object value) {
    if (value instanceof String plain) {
      text.append(plain);
    } else if (value instanceof Record said) {
      add(said);
    } else if (value instanceof List<?> list) {
      add(list);
    } else if (value instanceof Optional<?> maybe && maybe.isPresent()) {
      text.append("Optional[");
      add(maybe.get());
      text.append(']');
    } else {
      text.append(value);
    }
  }

  private void add(List<?> list) {
    String separator = "";
    text.append('[');
    for (Object value : list) {
      text.append(separator);
      add(value);
      separator = ", ";
    }
    text.append(']');
  }

  private void add(Record said) {
    Form form = FORMS.get(said.getClass());
    if (form.worded()) {
      text.append(said);
      return;
    }
    String separator = "";
    text.append(form.name()).append('[');
    for (Part part : form.parts()) {
      text.append(separator).append(part.name()).append('=');
      add(part.of(said));
      separator = ", ";
    }
    text.append(']');
  }

  /**
   * A kind of record.
   *
   * @param worded whether its writer has worded by hand how it is put
   */
  private record Form(String name, boolean worded, List<Part> parts) {
    static Form of(Class<?> type) {
      try {
        // The compiler makes final what it writes by itself.
        boolean worded = !Modifier.isFinal(type.getMethod("toString").getModifiers());
        List<Part> parts = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
          parts.add(Part.of(type.getDeclaredField(component.getName())));
        }
        return new Form(type.getSimpleName(), worded, List.copyOf(parts));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(type + " is no record as the language has them", e);
      }
    }
  }

  private record Part(String name, Field field) {
    static Part of(Field field) {
      field.setAccessible(true);
      return new Part(field.getName(), field);
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
