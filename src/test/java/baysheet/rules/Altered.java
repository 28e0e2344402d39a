package baysheet.rules;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** Records with one component changed, for tests that spoil what holds. */
public final class Altered {
  private Altered() {}

  /** What a record has for a component. */
  public static Object get(Record record, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(record.getClass() + " cannot be read", e);
    }
  }

  /** The same of a component in a component: {@code equipment.tools}. */
  public static Object get(Record record, String path) {
    Object value = record;
    for (String name : path.split("\\.")) {
      Record within = (Record) value;
      value =
          Arrays.stream(within.getClass().getRecordComponents())
              .filter(it -> it.getName().equals(name))
              .map(it -> get(within, it))
              .findFirst()
              .orElseThrow(
                  () -> new IllegalArgumentException(within.getClass() + " has no " + name));
    }
    return value;
  }

  /** The same record with another value for a component, or for one in a component. */
  @SuppressWarnings("unchecked")
  public static <T extends Record> T with(T record, String path, Object other) {
    int dot = path.indexOf('.');
    String component = dot < 0 ? path : path.substring(0, dot);
    Object value =
        dot < 0 ? other : with((Record) get(record, component), path.substring(dot + 1), other);
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] values = new Object[components.length];
    boolean found = false;
    try {
      for (int i = 0; i < components.length; i++) {
        boolean wanted = components[i].getName().equals(component);
        found |= wanted;
        values[i] = wanted ? value : get(record, components[i]);
      }
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
      constructor.setAccessible(true);
      if (!found) {
        throw new IllegalArgumentException(record.getClass() + " has no " + component);
      }
      return (T) constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(record.getClass() + " cannot be altered", e);
    }
  }
}
