package baysheet.yaml;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.util.List;
import java.util.Optional;

/** Reads texts for the tests of this package and writes problems in one line each. */
final class Texts {
  private Texts() {}

  static Optional<Node> parse(String text, Problems problems) {
    return YamlFile.parse(new Source("bay.yaml", text), problems);
  }

  /** The tree of a text that has to be free of problems. */
  static Node tree(String text) {
    Problems problems = new Problems();
    Optional<Node> node = parse(text, problems);
    if (!problems.all().isEmpty()) {
      throw new AssertionError(text + " gave " + told(problems));
    }
    return node.orElseThrow();
  }

  /** The problems of reading a text, each as {@code line:column code}. */
  static List<String> faults(String text) {
    Problems problems = new Problems();
    parse(text, problems);
    return told(problems);
  }

  /** The problems of reading a text as a value, each as {@code line:column code}. */
  static List<String> faults(String text, ValueReader<?> reader) {
    Problems problems = new Problems();
    parse(text, problems).ifPresent(node -> reader.read(node, problems));
    return told(problems);
  }

  /** The value of a text that has to be free of problems. */
  static <T> T value(String text, ValueReader<T> reader) {
    Problems problems = new Problems();
    Optional<Located<T>> value = reader.read(tree(text), problems);
    if (!problems.all().isEmpty()) {
      throw new AssertionError(text + " gave " + told(problems));
    }
    return value.orElseThrow().value();
  }

  static List<String> told(Problems problems) {
    return problems.all().stream().map(Texts::told).toList();
  }

  private static String told(Problem problem) {
    return problem.at().line() + ":" + problem.at().column() + " " + problem.code().word();
  }
}
