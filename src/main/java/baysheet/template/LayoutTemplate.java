package baysheet.template;

import baysheet.box.Form;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.wording.DayText;
import baysheet.wording.SheetText;
import freemarker.core.Environment;
import freemarker.core.InvalidReferenceException;
import freemarker.core.LayoutLanguage;
import freemarker.core.LayoutLanguage.Refusal;
import freemarker.core.ParseException;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** One layout, parsed once and filled for each sheet; safe for use by several threads. */
final class LayoutTemplate {
  /** The largest sheet of the tests fills to 120,000 characters. */
  private static final int LONGEST = 1_000_000;

  private final LayoutSource source;
  private final MarkedText marked;
  private final Optional<Template> template;
  private final Optional<Problem> unreadable;

  private LayoutTemplate(
      LayoutSource source,
      MarkedText marked,
      Optional<Template> template,
      Optional<Problem> unreadable) {
    this.source = source;
    this.marked = marked;
    this.template = template;
    this.unreadable = unreadable;
  }

  /** Parses a layout; what FreeMarker cannot read is reported at each filling. */
  static LayoutTemplate parse(LayoutSource source, Configuration freemarker) {
    String name = source.name();
    MarkedText marked = MarkedText.of(source.text());
    try {
      Template template = new Template(name, new StringReader(marked.text()), freemarker);
      Optional<Problem> refused =
          LayoutLanguage.refusal(template).map(it -> refused(it, source, marked));
      LayoutLanguage.charge(template);
      return new LayoutTemplate(source, marked, Optional.of(template), refused);
    } catch (ParseException e) {
      Span at = source.span(marked.original(e.getLineNumber(), e.getColumnNumber()));
      return unreadable(source, marked, source.cannotFill(at, FreeMarkerMessage.of(e)));
    } catch (IllegalArgumentException e) {
      // What the header of a template asks for and the sandbox does not allow.
      return unreadable(source, marked, source.cannotFill(source.start(), FreeMarkerMessage.of(e)));
    } catch (StackOverflowError e) {
      return unreadable(source, marked, source.tooDeep());
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  private static LayoutTemplate unreadable(LayoutSource source, MarkedText marked, Problem why) {
    return new LayoutTemplate(source, marked, Optional.empty(), Optional.of(why));
  }

  private static Problem refused(Refusal refusal, LayoutSource source, MarkedText marked) {
    Span at = source.span(marked.original(refusal.line(), refusal.column()));
    return source.cannotFill(at, refusal.what());
  }

  /** The layout filled; empty, with the reasons in {@code problems}, where it fails. */
  Optional<Form> fill(Given given, Problems problems) {
    return write(given, problems)
        .flatMap(filled -> FormReader.read(filled, source.collect(problems)));
  }

  /** The box markup that this layout writes. */
  Optional<BoundedText> write(Given given, Problems problems) {
    if (unreadable.isPresent()) {
      problems.add(unreadable.get());
      return Optional.empty();
    }
    return template.flatMap(parsed -> write(parsed, given, problems));
  }

  private Optional<BoundedText> write(Template parsed, Given given, Problems problems) {
    BoundedText out = new BoundedText(LONGEST);
    try {
      FillBudget budget = new FillBudget();
      LayoutLanguage.fill(parsed.createProcessingEnvironment(given, out), budget);
      return Optional.of(out);
    } catch (TemplateException e) {
      problems.add(source.cannotFill(where(e), FreeMarkerMessage.of(e)));
    } catch (BoundedText.Overflow e) {
      problems.add(source.tooLong(LONGEST));
    } catch (StackOverflowError e) {
      problems.add(source.tooDeep());
    } catch (IOException e) {
      throw new UncheckedIOException(parsed.getName(), e);
    }
    return Optional.empty();
  }

  private Span where(TemplateException e) {
    Integer line = e.getLineNumber();
    Integer column = e.getColumnNumber();
    return line == null || column == null
        ? source.start()
        : source.span(marked.original(line, column));
  }

  /** What a layout finds by its name. */
  sealed interface Given {}

  record OfSheet(SheetText sheet) implements Given {}

  record OfDay(DayText day) implements Given {}

  /** The work that one filling of a layout may take, counted and not timed. */
  private static final class FillBudget implements LayoutLanguage.Budget {
    /** The largest sheet of the tests takes 53,000; a layout that takes more does not end. */
    static final int UNITS = 1_000_000;

    private int left = UNITS;

    @Override
    public void spend(int units, Environment at) throws TemplateException {
      left -= units;
      if (left < 0) {
        throw new TemplateException(
            "it takes too many steps; does a list or a macro never end?", at);
      }
    }
  }

  /** What FreeMarker says of a mistake, as one sentence without its own names and places. */
  private static final class FreeMarkerMessage {
    /** A longer message quotes the layout itself. */
    private static final int LONGEST = 2_000;

    /** Its lines count the blocks that stand before a layout; a problem has the file's own. */
    private static final Pattern PLACE =
        Pattern.compile(" ?\\[?(?:in|In) template \"[^\"]{0,400}\" at line \\d+, column \\d+]?:?");

    private static final Pattern JAVA_CLASS = Pattern.compile(" ?\\(wrapper: [^)]{0,200}\\)");

    /** Where its manual is. */
    private static final Pattern HELP = Pattern.compile(" Help \\(latest version\\):[\\s\\S]*");

    private static final Pattern SPACES = Pattern.compile("\\s++");

    private FreeMarkerMessage() {}

    static String of(ParseException e) {
      return sentence(e.getEditorMessage());
    }

    static String of(TemplateException e) {
      if (e instanceof InvalidReferenceException) {
        return "\"" + e.getBlamedExpressionString() + "\" has no value";
      }
      // A calculation that the sandbox stopped: FreeMarker only says that something was thrown.
      return e.getCause() instanceof ArithmeticException cause
          ? cause.getMessage()
          : sentence(e.getMessageWithoutStackTop());
    }

    static String of(IllegalArgumentException e) {
      return sentence(e.getMessage());
    }

    /** The first paragraph on one line, without a full stop: the rest are hints. */
    private static String sentence(String message) {
      String text = String.valueOf(message);
      String bounded = text.substring(0, Math.min(LONGEST, text.length())).strip();
      String first = bounded.split("\n[ \t]*\n", 2)[0];
      String plain = first.replace("==>", "");
      for (Pattern own : List.of(PLACE, JAVA_CLASS, HELP)) {
        plain = own.matcher(plain).replaceAll("");
      }
      String line = SPACES.matcher(plain).replaceAll(" ").strip();
      return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }
  }
}
