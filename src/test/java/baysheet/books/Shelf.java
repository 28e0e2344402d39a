package baysheet.books;

import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.Node;
import baysheet.yaml.SourceFile;
import baysheet.yaml.YamlFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Files and texts for the tests of this package, read by the reader that their first key calls. */
final class Shelf {
  static final Path CASES = Path.of("src/test/resources/cases/read");

  private Shelf() {}

  /** A file of the folder {@code whole}. */
  static Node whole(String file) {
    Problems problems = new Problems();
    Path path = CASES.resolve("whole").resolve(file);
    Optional<Node> node =
        SourceFile.read(path, file, problems).flatMap(source -> YamlFile.parse(source, problems));
    return node.orElseThrow(() -> new AssertionError(problems.all()));
  }

  /** The tree of a text, or what is wrong with its form. */
  static Optional<Node> parse(String text, Problems problems) {
    return YamlFile.parse(new Source("test.yaml", text), problems);
  }

  /** Reads a tree as the file of the given name, without {@code .yaml}. */
  static Optional<?> read(Node node, String text, String name, Problems problems) {
    String firstKey = text.lines().filter(line -> !line.startsWith("#")).findFirst().orElse("");
    return switch (firstKey.replaceAll(":.*", "")) {
      case "shop" -> ShopReader.read(node, problems);
      case "vehicle" -> SpecBookReader.read(node, name, problems);
      case "procedure" -> ProcedureReader.read(node, name, problems);
      case "job" -> JobReader.read(node, name, problems);
      default -> catalogue(node, problems);
    };
  }

  private static Optional<Catalogue> catalogue(Node node, Problems problems) {
    Optional<Catalogue> catalogue = CatalogueReader.read(node, problems);
    catalogue.ifPresent(it -> CatalogueCheck.check(it, List.of(), problems));
    return catalogue;
  }
}
