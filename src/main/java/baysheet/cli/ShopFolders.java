package baysheet.cli;

import baysheet.books.Catalogue;
import baysheet.books.CatalogueCheck;
import baysheet.books.CatalogueReader;
import baysheet.books.Procedure;
import baysheet.books.ProcedureReader;
import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.books.ShopReader;
import baysheet.books.SpecBook;
import baysheet.books.SpecBookReader;
import baysheet.layout.Fonts;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.Node;
import baysheet.yaml.SourceFile;
import baysheet.yaml.YamlFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Finds shop folders and reads them. */
final class ShopFolders {
  static final String SHOP_FILE = "shop.yaml";
  private static final List<String> BUILT_IN =
      List.of("items.yaml", "cautions.yaml", "consequences.yaml", "states.yaml");

  private final Fonts fonts;

  ShopFolders(Fonts fonts) {
    this.fonts = fonts;
  }

  /** The nearest folder upwards that holds a shop file. */
  static Optional<Path> rootOf(Path path) {
    for (Path at = path.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
      if (Files.isRegularFile(at.resolve(SHOP_FILE))) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  /**
   * Everything below a root; what cannot be read is left out and is a problem. Without a shop file
   * that can be read there is no folder.
   */
  Optional<ShopFolder> read(Path root, Problems problems) {
    Optional<Shop> shop =
        node(root.resolve(SHOP_FILE), problems).flatMap(node -> ShopReader.read(node, problems));
    Map<String, SpecBook> books =
        all(
            root.resolve("vehicles"),
            (node, name) -> SpecBookReader.read(node, name, problems),
            book -> book.vehicle().value(),
            problems);
    Map<String, Procedure> procedures =
        all(
            root.resolve("procedures"),
            (node, name) -> ProcedureReader.read(node, name, problems),
            procedure -> procedure.name().value(),
            problems);
    Catalogue catalogue = catalogue(root.resolve("catalogue"), problems);
    CatalogueCheck.check(catalogue, books.values(), problems);
    return shop.map(found -> new ShopFolder(found, books, procedures, catalogue));
  }

  /** How a node with the name that its file gives it becomes a value. */
  private interface NamedReader<T> {
    Optional<T> read(Node node, String name);
  }

  private <T> Map<String, T> all(
      Path folder, NamedReader<T> reader, Function<T, String> name, Problems problems) {
    Map<String, T> found = new LinkedHashMap<>();
    for (Path file : YamlFiles.in(folder)) {
      node(file, problems)
          .flatMap(node -> reader.read(node, YamlFiles.name(file)))
          .ifPresent(value -> found.put(name.apply(value), value));
    }
    return found;
  }

  /** The built-in catalogue with the shop's own entries over it. */
  private Catalogue catalogue(Path folder, Problems problems) {
    List<Catalogue> catalogues = new ArrayList<>();
    for (String file : BUILT_IN) {
      Source source = new Source("catalogue/" + file, builtIn(file));
      YamlFile.parse(source, problems)
          .flatMap(node -> CatalogueReader.read(node, problems))
          .ifPresent(catalogues::add);
    }
    for (Path file : YamlFiles.in(folder)) {
      node(file, problems)
          .flatMap(node -> CatalogueReader.read(node, problems))
          .ifPresent(catalogues::add);
    }
    return CatalogueReader.merge(catalogues);
  }

  private static String builtIn(String file) {
    return new String(Fonts.resource("/baysheet/catalogue/" + file), StandardCharsets.UTF_8);
  }

  /** A file as a tree, every character of which can be printed. */
  Optional<Node> node(Path file, Problems problems) {
    Problems own = new Problems();
    Optional<Node> node =
        SourceFile.read(file, YamlFiles.shown(file), own)
            .flatMap(source -> YamlFile.parse(source, own));
    node.ifPresent(tree -> new Glyphs(fonts).check(tree, own));
    problems.addAll(own);
    return node.filter(tree -> !own.hasErrors());
  }
}
