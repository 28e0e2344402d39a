package baysheet.template;

import freemarker.core.TemplateClassResolver;
import freemarker.core.XMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.Version;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.TimeZone;

/**
 * FreeMarker with everything taken away that a layout does not need: it sees record components,
 * lists, strings and numbers, creates nothing, loads nothing and depends on no locale or zone.
 */
final class Sandbox {
  /** The newest behaviour there is. */
  private static final Version BEHAVIOUR = Configuration.VERSION_2_3_34;

  private Sandbox() {}

  /** A configuration without a template loader: a layout can include no other file. */
  static Configuration configuration() {
    Configuration freemarker = new Configuration(BEHAVIOUR);
    freemarker.setOutputFormat(XMLOutputFormat.INSTANCE);
    freemarker.setAutoEscapingPolicy(Configuration.FORCE_AUTO_ESCAPING_POLICY);
    freemarker.setRecognizeStandardFileExtensions(false);
    freemarker.setObjectWrapper(new RecordsOnly());
    freemarker.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    freemarker.setAPIBuiltinEnabled(false);
    freemarker.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    freemarker.setLogTemplateExceptions(false);
    freemarker.setWrapUncheckedExceptions(true);
    freemarker.setLocalizedLookup(false);
    freemarker.setLocale(Locale.ROOT);
    freemarker.setTimeZone(TimeZone.getTimeZone("UTC"));
    freemarker.setNumberFormat("c");
    freemarker.setArithmeticEngine(new BoundedNumbers());
    freemarker.setTagSyntax(Configuration.ANGLE_BRACKET_TAG_SYNTAX);
    freemarker.setDefaultEncoding(StandardCharsets.UTF_8.name());
    // A tab is one column, as everywhere in our messages.
    freemarker.setTabSize(1);
    return freemarker;
  }
}
