package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.ProblemText;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Summary;
import baysheet.yaml.Node;
import baysheet.yaml.YamlFile;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever stands in a file of a shop folder, its reader ends with the book or with problems that
 * name a place in the file. The build replays the demo's files; DEVELOPERS.md says how to hunt.
 */
class FuzzedBooksTest {
  @MethodSource("files")
  @FuzzTest(maxDuration = "10m")
  void anyFileIsReadOrHasAProblem(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    Source source = new Source("any.yaml", text);
    Problems problems = new Problems();
    Optional<Node> tree = YamlFile.parse(source, problems);
    check(source, tree, problems);
    if (tree.isPresent()) {
      Node node = tree.get();
      read(source, into -> ShopReader.read(node, into));
      read(source, into -> SpecBookReader.read(node, "any", into));
      read(source, into -> ProcedureReader.read(node, "any", into));
      read(source, into -> JobReader.read(node, "any", into));
      read(source, into -> CatalogueReader.read(node, into));
    }
  }

  @MethodSource("tables")
  @FuzzTest(maxDuration = "10m")
  void anyTableIsReadOrHasAProblem(byte[] bytes) {
    Source source = new Source("any.csv", new String(bytes, StandardCharsets.UTF_8));
    Problems problems = new Problems();
    List<FastenerTable.Row> rows = FastenerTable.read(source, problems);
    check(source, rows.isEmpty() ? Optional.empty() : Optional.of(rows), problems);
  }

  private interface Reader {
    Optional<?> read(Problems into);
  }

  private static void read(Source source, Reader reader) {
    Problems problems = new Problems();
    check(source, reader.read(problems), problems);
  }

  private static void check(Source source, Optional<?> read, Problems problems) {
    assertTrue(read.isPresent() || problems.hasErrors(), "nothing is read and nothing is said");
    long lines = source.text().lines().count();
    for (Problem problem : problems.all()) {
      assertTrue(problem.at().line() >= 1 && problem.at().line() <= lines + 1, problem.toString());
      assertTrue(problem.at().column() >= 1, problem.toString());
    }
    List<Problem> all = problems.all();
    ProblemText.print(all, all.size() + 1, Summary.of(all, ""));
  }

  static Stream<byte[]> files() throws IOException {
    try (Stream<Path> jobs = Files.walk(Path.of("jobs"))) {
      return jobs
          .filter(Files::isRegularFile)
          .sorted()
          .map(FuzzedBooksTest::bytes)
          .toList()
          .stream();
    }
  }

  static Stream<byte[]> tables() {
    return Stream.of(
            "fastener,place,count,thread,class,head,torque (N·m)\nx-nut,engine,4,M8x1.25,8.8,hex 13 mm,\"22 ± 2\"\n",
            "fastener;place;torque [N·m]\r\nx-nut;engine;22,5\r\ny-nut;front-wheels;unknown\r\n",
            "fastener\tplace\ttorque\n\"a\"\"b\"\tengine\t\"30 N·m, +60°\"\n")
        .map(it -> it.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
