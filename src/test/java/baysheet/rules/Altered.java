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

  /** The same record with another value for a component. */
  @SuppressWarnings("unchecked")
  public static <T extends Record> T with(T record, String component, Object value) {
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
