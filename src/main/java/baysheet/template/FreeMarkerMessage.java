package baysheet.template;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.template.TemplateException;
import java.util.List;
import java.util.regex.Pattern;

/** What FreeMarker says of a mistake, as one sentence without its own names and places. */
final class FreeMarkerMessage {
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
