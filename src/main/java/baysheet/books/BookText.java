package baysheet.books;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Adds fasteners to the text of a spec book. Lines are only ever put between those that are there,
 * so that no byte of them changes.
 */
public final class BookText {
  private static final String FASTENERS = "fasteners";
  private static final String STEP = "  ";

  private final Source source;
  private final Problems problems;

  /** New lines by the number of the line behind which they go. */
  private final Map<Integer, List<String>> added = new TreeMap<>();

  private BookText(Source source, Problems problems) {
    this.source = source;
    this.problems = problems;
  }

  /**
   * The text with new fasteners; empty, with a problem, where a place is written in braces, to
   * which no line can be added.
   *
   * @param book the text as a tree
   * @param groups new lines by group, without their indentation
   */
  public static Optional<String> with(
      Source source, Node book, Map<String, List<String>> groups, Problems problems) {
    BookText text = new BookText(source, problems);
    boolean done = book instanceof Mapping root && text.isBlock(root) && text.add(root, groups);
    return done ? Optional.of(text.joined()) : Optional.empty();
  }

  /** A block of keys begins with the first of them. */
  private boolean isBlock(Mapping map) {
    boolean block = character(map.at()) != '{';
    if (!block) {
      problems.add(
          Problem.of(
                  ProblemCode.IN_BRACES,
                  map.at(),
                  "this is written in braces, and no line can be added to it")
              .expecting("a line for each key, indented by two more spaces"));
    }
    return block;
  }

  private int character(Span at) {
    String line = source.lines().get(at.line() - 1);
    return line.codePointAt(line.offsetByCodePoints(0, at.column() - 1));
  }

  private boolean add(Mapping root, Map<String, List<String>> groups) {
    Optional<Entry> fasteners = entry(root, FASTENERS);
    String margin = " ".repeat(root.start().column() - 1);
    if (fasteners.isEmpty() || fasteners.get().value().isEmpty()) {
      int behind = fasteners.map(BookText::lastLine).orElseGet(() -> root.at().endLine());
      if (fasteners.isEmpty()) {
        put(behind, margin, List.of(FASTENERS + ":"));
      }
      newGroups(behind, margin + STEP, groups);
      return true;
    }
    return fasteners.get().value() instanceof Mapping map && isBlock(map) && addGroups(map, groups);
  }

  private boolean addGroups(Mapping map, Map<String, List<String>> groups) {
    String margin = " ".repeat(map.start().column() - 1);
    Map<String, List<String>> others = new LinkedHashMap<>(groups);
    boolean sound = true;
    for (Entry group : map.entries()) {
      List<String> lines = others.remove(group.key().text());
      if (lines != null && group.value().isEmpty()) {
        put(lastLine(group), margin + STEP, lines);
      } else if (lines != null && group.value() instanceof Mapping own && isBlock(own)) {
        put(own.at().endLine(), " ".repeat(own.start().column() - 1), lines);
      } else {
        sound &= lines == null;
      }
    }
    newGroups(map.at().endLine(), margin, others);
    return sound;
  }

  private void newGroups(int behind, String margin, Map<String, List<String>> groups) {
    groups.forEach(
        (group, lines) -> {
          put(behind, margin, List.of(group + ":"));
          put(behind, margin + STEP, lines);
        });
  }

  private void put(int behind, String margin, List<String> lines) {
    List<String> there = added.computeIfAbsent(behind, key -> new ArrayList<>());
    lines.forEach(line -> there.add(margin + line));
  }

  private static Optional<Entry> entry(Mapping map, String key) {
    return map.entries().stream().filter(it -> it.key().text().equals(key)).findFirst();
  }

  private static int lastLine(Entry entry) {
    return entry.value().isEmpty() ? entry.key().at().endLine() : entry.value().at().endLine();
  }

  private String joined() {
    String end = source.text().contains("\r\n") ? "\r\n" : "\n";
    StringBuilder text = new StringBuilder();
    List<String> lines = lines();
    for (int i = 0; i < lines.size(); i++) {
      text.append(lines.get(i));
      List<String> behind = added.getOrDefault(i + 1, List.of());
      if (!behind.isEmpty() && !lines.get(i).endsWith("\n") && !lines.get(i).endsWith("\r")) {
        text.append(end);
      }
      behind.forEach(line -> text.append(line).append(end));
    }
    return text.toString();
  }

  /** The lines with their ends. */
  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    String text = source.text();
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      boolean half = text.charAt(i) == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (text.charAt(i) == '\n' || (text.charAt(i) == '\r' && !half)) {
        lines.add(text.substring(from, i + 1));
        from = i + 1;
      }
    }
    if (from < text.length()) {
      lines.add(text.substring(from));
    }
    return lines;
  }
}
