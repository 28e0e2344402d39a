package baysheet.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Prints problems for people. The first line of each has the form of the GNU Coding Standards,
 * "Formatting Error Messages" ({@code file:line:column: error: sentence}), which editors recognise;
 * indented below it stands in plain sentences what was written, what was expected and where to read
 * more.
 */
public final class ProblemText {
  /** More than a screenful about one file helps nobody: the first ones cause the others. */
  public static final int USUAL_LIMIT = 20;

  /** Sentences are wrapped to fit a terminal of this many columns; the first line never is. */
  private static final int COLUMNS = 100;

  private static final String INDENT = "    ";
  private static final String WRAPPED_INDENT = INDENT + INDENT;

  /** How much of a long line of a file is repeated. */
  private static final int LONGEST_LINE = 80;

  private final int limit;
  private final boolean bold;
  private final StringBuilder out = new StringBuilder();

  private ProblemText(int limit, boolean bold) {
    this.limit = limit;
    this.bold = bold;
  }

  /**
   * The problems in file order, as plain text.
   *
   * @param limit how many are printed for one file; of the others only the number is
   * @param last the line below them
   */
  public static String print(List<Problem> problems, int limit, Summary last) {
    return new ProblemText(limit, false).text(problems, last);
  }

  /** The same with the first line of each in bold (ECMA-48, select graphic rendition). */
  public static String printBold(List<Problem> problems, int limit, Summary last) {
    return new ProblemText(limit, true).text(problems, last);
  }

  /**
   * An error in the command line, in the same form.
   *
   * @param program stands in place of a file
   * @param more the command that prints more about it
   */
  public static String print(
      String program,
      String what,
      Optional<String> nearest,
      Optional<String> expected,
      String more) {
    ProblemText text = new ProblemText(1, false);
    text.out.append(TerminalText.safe(program + ": error: " + sentence(what))).append('\n');
    text.meant(nearest, expected);
    text.note("More: " + more);
    return text.out.toString();
  }

  private String text(List<Problem> problems, Summary last) {
    byFile(problems).forEach(this::file);
    return out.append(emphasized(last.line())).append('\n').toString();
  }

  private static Map<String, List<Problem>> byFile(List<Problem> problems) {
    Map<String, List<Problem>> files = new TreeMap<>();
    for (Problem problem : InOrder.of(problems)) {
      files.computeIfAbsent(problem.at().source().name(), name -> new ArrayList<>()).add(problem);
    }
    return files;
  }

  private void file(String name, List<Problem> problems) {
    int printed = Math.min(limit, problems.size());
    List<String> lines = List.of();
    Source split = new Source("", "");
    for (Problem problem : problems.subList(0, printed)) {
      Source source = problem.at().source();
      lines = source.equals(split) ? lines : source.lines();
      split = source;
      problem(problem, lines);
    }
    int more = problems.size() - printed;
    if (more > 0) {
      out.append(TerminalText.safe(name)).append(": ").append(more);
      out.append(more == 1 ? " more problem in this file is" : " more problems in this file are");
      out.append(" not shown.\n\n");
    }
  }

  private void problem(Problem problem, List<String> lines) {
    String severity = problem.code().severity().word();
    String first = problem.at() + ": " + severity + ": " + sentence(problem.what());
    out.append(emphasized(TerminalText.safe(first))).append('\n');
    written(problem.at(), lines).ifPresent(line -> note("You wrote: " + line));
    meant(problem.nearest(), problem.expected());
    // To be copied, so it is not broken.
    problem
        .line()
        .ifPresent(text -> out.append(WRAPPED_INDENT).append(TerminalText.safe(text)).append('\n'));
    problem.related().forEach(place -> note(capitalized(place.value()) + ": " + where(place.at())));
    note("More: baysheet help " + problem.code().word());
    out.append('\n');
  }

  private void meant(Optional<String> nearest, Optional<String> expected) {
    nearest.ifPresent(name -> note("Did you mean " + name + "?"));
    expected.ifPresent(text -> note(sentence("Expected: " + text)));
  }

  /** The line to which the problem points; none for a file that was not read. */
  private static Optional<String> written(Span at, List<String> lines) {
    if (at.line() > lines.size()) {
      return Optional.empty();
    }
    String line = lines.get(at.line() - 1);
    return Optional.of(TerminalText.around(line, at.column() - 1, LONGEST_LINE).strip())
        .filter(text -> !text.isEmpty());
  }

  private void note(String text) {
    out.append(TerminalText.wrapped(TerminalText.safe(text), INDENT, WRAPPED_INDENT, COLUMNS));
  }

  private static String where(Span at) {
    return at.source().name() + ", line " + at.line() + ".";
  }

  private static String sentence(String text) {
    return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
  }

  private static String capitalized(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private String emphasized(String text) {
    return bold ? "\u001B[1m" + text + "\u001B[0m" : text;
  }
}
