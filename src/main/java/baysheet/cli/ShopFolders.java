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
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Finds shop folders and reads them. */
final class ShopFolders {
  static final String SHOP_FILE = "shop.yaml";
  private static final List<String> BUILT_IN =
      List.of("items.yaml", "cautions.yaml", "consequences.yaml", "states.yaml", "terms.yaml");

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
   * Everything below a root. A book or procedure with errors is left out, so that no job is done by
   * it; a shop file or a catalogue with errors leaves nothing, for any sheet could lack a caution.
   */
  Optional<ShopFolder> read(Path root, Problems problems) {
    Optional<Shop> shop = shop(root, problems);
    Map<String, SpecBook> books =
        all(
            root.resolve("vehicles"),
            SpecBookReader::read,
            book -> book.vehicle().value(),
            problems);
    Map<String, Procedure> procedures =
        all(
            root.resolve("procedures"),
            ProcedureReader::read,
            procedure -> procedure.name().value(),
            problems);
    Optional<Catalogue> catalogue = catalogue(root.resolve("catalogue"), books.values(), problems);
    return shop.flatMap(
        found -> catalogue.map(known -> new ShopFolder(found, books, procedures, known)));
  }

  /** The shop file alone; empty when it has errors. */
  Optional<Shop> shop(Path root, Problems problems) {
    return faultless(root.resolve(SHOP_FILE), ShopReader::read, problems);
  }

  /** How a node becomes a value. */
  private interface Reader<T> {
    Optional<T> read(Node node, Problems problems);
  }

  /** How a node with the name that its file gives it becomes a value. */
  private interface NamedReader<T> {
    Optional<T> read(Node node, String name, Problems problems);
  }

  private <T> Map<String, T> all(
      Path folder, NamedReader<T> reader, Function<T, String> name, Problems problems) {
    Map<String, T> found = new LinkedHashMap<>();
    for (Path file : YamlFiles.in(folder)) {
      faultless(file, (node, own) -> reader.read(node, YamlFiles.name(file), own), problems)
          .ifPresent(value -> found.put(name.apply(value), value));
    }
    return found;
  }

  /** A file's value, if nothing is wrong with the file. */
  private <T> Optional<T> faultless(Path file, Reader<T> reader, Problems problems) {
    Problems own = new Problems();
    Optional<T> value = node(file, own).flatMap(node -> reader.read(node, own));
    problems.addAll(own);
    return value.filter(found -> !own.hasErrors());
  }

  /** The built-in catalogue with the shop's own entries over it. */
  private Optional<Catalogue> catalogue(
      Path folder, Collection<SpecBook> books, Problems problems) {
    Problems own = new Problems();
    List<Catalogue> catalogues = new ArrayList<>();
    for (String file : BUILT_IN) {
      Source source = new Source("catalogue/" + file, builtIn(file));
      YamlFile.parse(source, own)
          .flatMap(node -> CatalogueReader.read(node, own))
          .ifPresent(catalogues::add);
    }
    for (Path file : YamlFiles.in(folder)) {
      node(file, own).flatMap(node -> CatalogueReader.read(node, own)).ifPresent(catalogues::add);
    }
    Catalogue merged = CatalogueReader.merge(catalogues);
    CatalogueCheck.check(merged, books, own);
    problems.addAll(own);
    return own.hasErrors() ? Optional.empty() : Optional.of(merged);
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
