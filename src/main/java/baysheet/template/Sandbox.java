package baysheet.template;

import freemarker.core.TemplateClassResolver;
import freemarker.core.XMLOutputFormat;
import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.Version;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;

/**
 * FreeMarker with everything taken away that a layout does not need: it sees record components,
 * lists, strings and numbers, creates nothing, loads nothing and depends on no locale or zone.
 */
final class Sandbox {
  /** The newest behaviour there is; records are seen from 2.3.33 on. */
  private static final Version BEHAVIOUR = Configuration.VERSION_2_3_34;

  private Sandbox() {}

  /** A configuration without a template loader: a layout is one file and can include no other. */
  static Configuration configuration() {
    Configuration freemarker = new Configuration(BEHAVIOUR);
    freemarker.setOutputFormat(XMLOutputFormat.INSTANCE);
    freemarker.setAutoEscapingPolicy(Configuration.FORCE_AUTO_ESCAPING_POLICY);
    freemarker.setRecognizeStandardFileExtensions(false);
    freemarker.setObjectWrapper(wrapper());
    freemarker.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    freemarker.setAPIBuiltinEnabled(false);
    freemarker.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    freemarker.setLogTemplateExceptions(false);
    freemarker.setWrapUncheckedExceptions(true);
    freemarker.setLocalizedLookup(false);
    freemarker.setLocale(Locale.ROOT);
    freemarker.setTimeZone(TimeZone.getTimeZone("UTC"));
    freemarker.setNumberFormat("c");
    freemarker.setDefaultEncoding(StandardCharsets.UTF_8.name());
    // A tab is one column, as everywhere in our messages.
    freemarker.setTabSize(1);
    return freemarker;
  }

  private static DefaultObjectWrapper wrapper() {
    DefaultObjectWrapperBuilder builder = new DefaultObjectWrapperBuilder(BEHAVIOUR);
    builder.setMemberAccessPolicy(new RecordComponents());
    builder.setExposeFields(false);
    return builder.build();
  }

  /** Lets a layout read the components of records and nothing else of any class. */
  private static final class RecordComponents implements MemberAccessPolicy {
    @Override
    public ClassMemberAccessPolicy forClass(Class<?> type) {
      return ComponentsOf.of(type);
    }

    @Override
    public boolean isToStringAlwaysExposed() {
      return false;
    }
  }

  private record ComponentsOf(Set<Method> accessors) implements ClassMemberAccessPolicy {
    static ComponentsOf of(Class<?> type) {
      Set<Method> accessors = new HashSet<>();
      if (type.isRecord()) {
        for (RecordComponent component : type.getRecordComponents()) {
          accessors.add(component.getAccessor());
        }
      }
      return new ComponentsOf(accessors);
    }

    @Override
    public boolean isMethodExposed(Method method) {
      return accessors.contains(method);
    }

    @Override
    public boolean isConstructorExposed(Constructor<?> constructor) {
      return false;
    }

    @Override
    public boolean isFieldExposed(Field field) {
      return false;
    }
  }
}
