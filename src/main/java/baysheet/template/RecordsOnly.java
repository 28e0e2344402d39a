package baysheet.template;

import freemarker.template.ObjectWrapper;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateSequenceModel;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All that a layout can see: records by their components, lists, texts, numbers, yes and no.
 * Nothing else of any class is within its reach, for here is no way to it.
 */
final class RecordsOnly implements ObjectWrapper {
  /** The accessors of each kind of record that was met, by their names. */
  private static final ClassValue<Map<String, Method>> ACCESSORS =
      new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
          return found(type);
        }
      };

  /** FreeMarker's sign for what is not there. */
  private static final TemplateModel MISSING = null;

  @Override
  public TemplateModel wrap(Object value) throws TemplateModelException {
    if (value instanceof String text) {
      return new SimpleScalar(text);
    } else if (value instanceof List<?> list) {
      return new Sequence(this, list);
    } else if (value instanceof Record said) {
      return new Components(this, said, ACCESSORS.get(said.getClass()));
    } else if (value instanceof Boolean yes) {
      return yes ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE;
    } else if (value instanceof Number number) {
      return new SimpleNumber(number);
    } else if (value instanceof TemplateModel known) {
      // What FreeMarker's own functions give.
      return known;
    }
    throw new TemplateModelException("a layout cannot see " + value);
  }

  private static Map<String, Method> found(Class<?> type) {
    Map<String, Method> accessors = new HashMap<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Method accessor = component.getAccessor();
      // Else the machine asks at every call whether we may.
      accessor.setAccessible(true);
      accessors.put(component.getName(), accessor);
    }
    return accessors;
  }

  private record Sequence(RecordsOnly wrapper, List<?> list) implements TemplateSequenceModel {
    @Override
    public TemplateModel get(int index) throws TemplateModelException {
      boolean there = index >= 0 && index < list.size();
      return there ? wrapper.wrap(list.get(index)) : MISSING;
    }

    @Override
    public int size() {
      return list.size();
    }
  }

  private record Components(RecordsOnly wrapper, Record said, Map<String, Method> accessors)
      implements TemplateHashModel {
    @Override
    public TemplateModel get(String name) throws TemplateModelException {
      Method accessor = accessors.get(name);
      try {
        return accessor == null ? MISSING : wrapper.wrap(accessor.invoke(said));
      } catch (ReflectiveOperationException e) {
        throw new TemplateModelException("cannot read " + name + " of " + said.getClass(), e);
      }
    }

    @Override
    public boolean isEmpty() {
      return false;
    }
  }
}
