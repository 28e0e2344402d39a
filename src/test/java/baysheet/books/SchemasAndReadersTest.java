package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.yaml.Node;
import baysheet.yaml.SourceFile;
import baysheet.yaml.YamlFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** An editor with the schemas marks what the readers refuse, line by line, and nothing else. */
class SchemasAndReadersTest {
  /** What was found beyond the schemas, over all comparisons of a test. */
  private final Set<BeyondSchemas> needed = new LinkedHashSet<>();

  static Stream<Path> cases() throws IOException {
    return yaml(Shelf.CASES);
  }

  static Stream<Path> goodFiles() {
    return Stream.of(
            "src/test/resources/shop",
            "jobs",
            "src/main/resources/baysheet/catalogue",
            "src/main/resources/baysheet/start")
        .flatMap(folder -> yaml(Path.of(folder)));
  }

  private static Stream<Path> yaml(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(path -> path.toString().endsWith(".yaml")).sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aCaseIsMarkedWhereTheReaderReportsIt(Path file) {
    compare(tree(file), name(file), file.toString());
  }

  @Test
  void everyRuleBeyondTheSchemasIsNeeded() throws IOException {
    cases().forEach(file -> compare(tree(file), name(file), file.toString()));
    assertEquals(new LinkedHashSet<>(BeyondSchemas.ALL), needed);
  }

  @ParameterizedTest
  @MethodSource("goodFiles")
  void aGoodFileIsNotMarkedWhateverLoadsIt(Path file) {
    Node tree = tree(file);
    for (EditorView view : EditorView.values()) {
      assertEquals(Set.of(), FileKind.of(tree).marked(tree, view), file + " as " + view);
    }
  }

  @ParameterizedTest
  @EnumSource(FileKind.class)
  void aSlipInAGoodFileIsMarkedWhereTheReaderReportsIt(FileKind kind) {
    Slips slips = new Slips();
    int compared = 0;
    for (Path file : goodFiles().filter(file -> FileKind.of(tree(file)) == kind).toList()) {
      for (Slips.Slip slip : slips.in(tree(file))) {
        Set<Integer> twice = slip.isMisspelt() ? Set.of(slip.line()) : Set.of();
        compare(kind, slip.file(), name(file), file + ": " + slip.what(), twice);
        compared++;
      }
    }
    assertTrue(compared >= 300, kind + ": " + compared);
  }

  private void compare(Node file, String name, String shown) {
    compare(FileKind.of(file), file, name, shown, Set.of());
  }

  /**
   * Where steps could not be read none may be left; that follows from what is reported of them.
   *
   * @param twice lines that the schema may mark besides: it takes a misspelt key for a missing one
   *     as well
   */
  private void compare(FileKind kind, Node file, String name, String shown, Set<Integer> twice) {
    Problems problems = new Problems();
    kind.read(file, name, problems);
    Set<Integer> marked = kind.marked(file, EditorView.YAML_1_2);
    Set<Integer> told = new TreeSet<>();
    for (Problem problem : problems.all()) {
      int line = problem.at().line();
      boolean follows = problem.code().word().equals("no-steps") && problems.all().size() > 1;
      if (marked.contains(line) || !(follows || isBeyond(problem))) {
        told.add(line);
      }
    }
    assertEquals(
        told,
        marked.stream()
            .filter(line -> told.contains(line) || !twice.contains(line))
            .collect(Collectors.toSet()),
        () ->
            shown
                + "\n"
                + String.join(
                    "\n",
                    problems.all().stream()
                        .map(it -> it.at() + " " + it.code().word() + ": " + it.what())
                        .toList()));
  }

  private boolean isBeyond(Problem problem) {
    List<BeyondSchemas> rules =
        BeyondSchemas.ALL.stream().filter(rule -> rule.holds(problem)).toList();
    needed.addAll(rules);
    return !rules.isEmpty();
  }

  private static Node tree(Path file) {
    Problems problems = new Problems();
    return SourceFile.read(file, file.toString(), problems)
        .flatMap(source -> YamlFile.parse(source, problems))
        .orElseThrow(() -> new AssertionError(problems.all()));
  }

  private static String name(Path file) {
    return file.getFileName().toString().replace(".yaml", "");
  }
}
