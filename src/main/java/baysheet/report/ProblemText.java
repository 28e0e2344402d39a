package baysheet.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Prints problems for people: where, what, the line with the place marked, and what helps to put it
 * right.
 */
public final class ProblemText {
  /** More than a screenful about one file helps nobody: the first ones cause the others. */
  public static final int USUAL_LIMIT = 20;

  /** Notes are broken to fit a terminal of this many columns. */
  private static final int COLUMNS = 100;

  /** Where the text of a note begins. */
  private static final int NOTE_INDENT = 13;

  private final int limit;
  private final Ink ink;
  private final StringBuilder out = new StringBuilder();

  private ProblemText(int limit, Ink ink) {
    this.limit = limit;
    this.ink = ink;
  }

  /**
   * The problems in file order, without colour.
   *
   * @param limit how many are printed for one file; of the others only the number is
   * @param last the line below them
   */
  public static String print(List<Problem> problems, int limit, Summary last) {
    return new ProblemText(limit, Ink.NONE).text(problems, last);
  }

  /** The same with the colours of an ANSI terminal (ECMA-48, select graphic rendition). */
  public static String printColoured(List<Problem> problems, int limit, Summary last) {
    return new ProblemText(limit, Ink.ANSI).text(problems, last);
  }

  private String text(List<Problem> problems, Summary last) {
    byFile(problems).forEach(this::file);
    return out.append(ink.bold(last.line())).append('\n').toString();
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
      out.append(Columns.shown(name)).append(": ").append(more);
      out.append(more == 1 ? " more problem\n\n" : " more problems\n\n");
    }
  }

  private void problem(Problem problem, List<String> lines) {
    String kind = problem.isError() ? "error" : "warning";
    String label = kind + "[" + problem.code() + "]";
    out.append(Columns.shown(problem.at().toString())).append(": ");
    out.append(problem.isError() ? ink.red(label) : ink.yellow(label)).append(": ");
    out.append(ink.bold(Columns.shown(problem.what()))).append("\n\n");
    if (problem.at().line() <= lines.size()) {
      excerpt(problem, lines);
    }
    notes(problem);
  }

  private void excerpt(Problem problem, List<String> lines) {
    Excerpt excerpt = Excerpt.of(problem.at(), lines);
    String number = String.valueOf(problem.at().line());
    String gap = " ".repeat(Math.max(4, number.length()) - number.length());
    out.append(gap).append(number).append(" | ").append(excerpt.line()).append('\n');
    out.append(" ".repeat(gap.length() + number.length())).append(" | ");
    out.append(problem.isError() ? ink.red(excerpt.marks()) : ink.yellow(excerpt.marks()));
    out.append("\n\n");
  }

  private void notes(Problem problem) {
    int before = out.length();
    problem.expected().ifPresent(text -> note("expected", text));
    problem.nearest().ifPresent(text -> note("nearest", text));
    for (Located<String> place : problem.related()) {
      boolean searched = place.value().startsWith(Problem.LOOKED_IN);
      String word = place.value().substring(searched ? Problem.LOOKED_IN.length() : 0);
      note(searched ? "looked in" : "see also", place.at() + "  " + word);
    }
    if (out.length() > before) {
      out.append('\n');
    }
  }

  /** A label and its text, broken between words with the following lines indented below it. */
  private void note(String label, String text) {
    String indent = " ".repeat(NOTE_INDENT);
    StringBuilder line =
        new StringBuilder("  " + label + " ".repeat(NOTE_INDENT - 2 - label.length()));
    int used = indent.length();
    for (String word : Columns.shown(text).split("(?<= )(?! )")) {
      int width = Columns.width(word.stripTrailing());
      if (used + width > COLUMNS && used > indent.length()) {
        out.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(indent);
        used = indent.length();
      }
      line.append(word);
      used += Columns.width(word);
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }

  /** Whether and how words are coloured. */
  private enum Ink {
    NONE,
    ANSI;

    String red(String text) {
      return inked("1;31", text);
    }

    String yellow(String text) {
      return inked("1;33", text);
    }

    String bold(String text) {
      return inked("1", text);
    }

    private String inked(String rendition, String text) {
      return this == NONE ? text : "\u001B[" + rendition + "m" + text + "\u001B[0m";
    }
  }
}
