package baysheet.books;

import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.Node;
import baysheet.yaml.SourceFile;
import baysheet.yaml.YamlFile;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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
    catalogue.ifPresent(it -> CatalogueCheck.check(folder(it, List.of()), Set.of(), problems));
    return catalogue;
  }

  /**
   * A folder with the tool's own words, that catalogue and those books; procedures are said to have
   * a fault, so that any name of one may be right.
   */
  static ShopFolder folder(Catalogue catalogue, List<SpecBook> books) {
    Map<String, SpecBook> named = new LinkedHashMap<>();
    books.forEach(book -> named.put(book.vehicle().value(), book));
    return new ShopFolder(
        ShopReader.read(whole("shop.yaml"), new Problems()).orElseThrow(),
        named,
        Map.of(),
        CatalogueReader.merge(List.of(words(), catalogue)),
        new ShopFolder.Faulty(Set.of(), Set.of("any"), List.of("")));
  }

  private static Catalogue words() {
    Problems problems = new Problems();
    Path path = Path.of("src/main/resources/baysheet/catalogue/vocabulary.yaml");
    return SourceFile.read(path, "vocabulary.yaml", problems)
        .flatMap(source -> YamlFile.parse(source, problems))
        .flatMap(node -> CatalogueReader.read(node, problems))
        .orElseThrow(() -> new AssertionError(problems.all()));
  }
}
