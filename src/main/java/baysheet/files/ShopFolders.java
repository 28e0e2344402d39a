package baysheet.files;

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
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds shop folders and reads them. */
public final class ShopFolders {
  public static final String SHOP_FILE = "shop.yaml";

  /** What is said where no path is given and there is no shop folder to be found. */
  public static final String NOT_HERE =
      "there is no shop folder here: neither this folder nor one above it has a shop.yaml, and"
          + " neither has jobs; go to a shop folder, or name one of its folders";

  private static final List<String> BUILT_IN =
      List.of(
          "items.yaml",
          "cautions.yaml",
          "consequences.yaml",
          "states.yaml",
          "qualifications.yaml",
          "terms.yaml",
          "verbs.yaml",
          "vocabulary.yaml");

  private final Fonts fonts;

  /** Job files by their number, of each shop folder that was asked about. */
  private final Map<Path, Map<String, List<Path>>> numbers = new ConcurrentHashMap<>();

  public ShopFolders(Fonts fonts) {
    this.fonts = fonts;
  }

  /** The shop folder of a run that names none: the one in which it stands, or the one in jobs. */
  public static Optional<Path> here() {
    Path below = Path.of("jobs");
    return rootOf(Path.of(""))
        .or(() -> Optional.of(below).filter(it -> Files.isRegularFile(it.resolve(SHOP_FILE))));
  }

  /** The nearest folder upwards that holds a shop file. */
  public static Optional<Path> rootOf(Path path) {
    for (Path at = path.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
      if (Files.isRegularFile(at.resolve(SHOP_FILE))) {
        return Optional.of(at);
      }
    }
    return Optional.empty();
  }

  /** Another job file of the shop that has the same number as this one. */
  public Optional<Path> sameNumber(Path job) {
    return rootOf(job)
        .map(root -> numbers.computeIfAbsent(root, DayFolders::byNumber))
        .map(known -> known.getOrDefault(DayFolders.number(job), List.of()))
        .flatMap(
            same ->
                same.stream()
                    .filter(other -> !DayFolders.whole(other).equals(DayFolders.whole(job)))
                    .findFirst());
  }

  /** A job file of the shop of a job that has a number. */
  public Optional<Path> withNumber(Path job, String number) {
    return rootOf(job)
        .map(root -> numbers.computeIfAbsent(root, DayFolders::byNumber))
        .flatMap(
            known ->
                known.getOrDefault(number.toLowerCase(Locale.ROOT), List.of()).stream()
                    .findFirst());
  }

  /**
   * Everything below a root. A book or procedure with errors is left out, so that no job is done by
   * it; a shop file or a catalogue with errors leaves nothing, for any sheet could lack a caution,
   * and so does a folder that cannot be listed.
   */
  public Optional<ShopFolder> read(Path root, Problems problems) {
    FolderListing.nearlyOwn(root, problems);
    Optional<Shop> shop = shop(root, problems);
    Named<SpecBook> books =
        all(
            root.resolve("vehicles"),
            SpecBookReader::read,
            book -> book.vehicle().value(),
            problems);
    Named<Procedure> procedures =
        all(
            root.resolve("procedures"),
            ProcedureReader::read,
            procedure -> procedure.name().value(),
            problems);
    Optional<Catalogue> catalogue = catalogue(root.resolve("catalogue"), problems);
    ShopFolder.Faulty faulty =
        new ShopFolder.Faulty(books.faulty, procedures.faulty, procedures.texts);
    return shop.flatMap(
            found ->
                catalogue.map(
                    known -> new ShopFolder(found, books.sound, procedures.sound, known, faulty)))
        .filter(it -> books.listed && procedures.listed)
        .filter(folder -> isWhole(folder, problems));
  }

  /** A catalogue with an error leaves nothing: any sheet could lack a caution. */
  private static boolean isWhole(ShopFolder folder, Problems problems) {
    Problems own = new Problems();
    CatalogueCheck.check(folder, builtInFiles(), own);
    problems.addAll(own);
    return !own.hasErrors();
  }

  /** The shop file alone; empty when it has errors. */
  public Optional<Shop> shop(Path root, Problems problems) {
    Outcome<Shop> shop =
        outcome(root.resolve(SHOP_FILE), (node, name, own) -> ShopReader.read(node, own));
    problems.addAll(shop.problems());
    return shop.faultless();
  }

  /** How a node with the name that its file gives it becomes a value. */
  private interface NamedReader<T> {
    Optional<T> read(Node node, String name, Problems problems);
  }

  /** What the files of a folder hold by name, and the names of those with errors. */
  private record Named<T>(
      Map<String, T> sound, Set<String> faulty, List<String> texts, boolean listed) {}

  private <T> Named<T> all(
      Path folder, NamedReader<T> reader, Function<T, String> name, Problems problems) {
    FolderListing listing = FolderListing.ofOptional(folder, problems);
    Named<T> found =
        new Named<>(
            new LinkedHashMap<>(), new LinkedHashSet<>(), new ArrayList<>(), listing.listed());
    for (Path file : listing.unread()) {
      found.faulty.add(YamlFiles.stem(file));
      found.texts.add("");
    }
    List<Path> files = listing.files();
    List<Outcome<T>> outcomes = atOnce(files, file -> outcome(file, reader));
    for (int i = 0; i < files.size(); i++) {
      problems.addAll(outcomes.get(i).problems());
      Optional<T> value = outcomes.get(i).faultless();
      value.ifPresent(it -> found.sound.put(name.apply(it), it));
      if (value.isEmpty()) {
        found.faulty.add(YamlFiles.name(files.get(i)));
        outcomes.get(i).problems().all().forEach(it -> found.texts.add(it.at().source().text()));
      }
    }
    return found;
  }

  private <T> Outcome<T> outcome(Path file, NamedReader<T> reader) {
    Problems own = new Problems();
    String name = YamlFiles.name(file);
    try {
      return new Outcome<>(node(file, own).flatMap(node -> reader.read(node, name, own)), own);
    } catch (StackOverflowError | OutOfMemoryError e) {
      own.add(YamlFiles.tooMuch(file));
      return new Outcome<>(Optional.empty(), own);
    }
  }

  /** What came of files that are read on all cores, in the order of the files. */
  private static <S, T> List<T> atOnce(List<S> files, Function<S, T> reading) {
    return files.parallelStream().map(reading).toList();
  }

  /** What came of one file. */
  private record Outcome<T>(Optional<T> value, Problems problems) {
    /** The value, if nothing is wrong with the file. */
    Optional<T> faultless() {
      return value.filter(found -> !problems.hasErrors());
    }
  }

  /** The built-in catalogue with the shop's own entries over it. */
  private Optional<Catalogue> catalogue(Path folder, Problems problems) {
    Problems told = new Problems();
    List<Outcome<CatalogueFile>> own =
        atOnce(FolderListing.ofOptional(folder, told).files(), this::ownCatalogue);
    List<Outcome<CatalogueFile>> files = new ArrayList<>(atOnce(BUILT_IN, ShopFolders::builtIn));
    files.addAll(own);
    files.forEach(file -> told.addAll(file.problems()));
    CatalogueReader.sameNames(nodes(own), told);
    List<Node> builtIn = nodes(files.subList(0, BUILT_IN.size()));
    nodes(own).forEach(file -> CatalogueReader.nearNames(file, builtIn, told));
    Catalogue shipped = CatalogueReader.merge(catalogues(files.subList(0, BUILT_IN.size())));
    catalogues(own).forEach(file -> CatalogueCheck.notWeaker(file, shipped, told));
    problems.addAll(told);
    return told.hasErrors()
        ? Optional.empty()
        : Optional.of(CatalogueReader.merge(catalogues(files)));
  }

  private static List<Catalogue> catalogues(List<Outcome<CatalogueFile>> files) {
    return files.stream()
        .flatMap(file -> file.value().stream())
        .map(CatalogueFile::catalogue)
        .toList();
  }

  private static List<Node> nodes(List<Outcome<CatalogueFile>> files) {
    return files.stream().flatMap(file -> file.value().stream()).map(CatalogueFile::node).toList();
  }

  /** A catalogue, and its file as a tree. */
  private record CatalogueFile(Node node, Catalogue catalogue) {}

  private Outcome<CatalogueFile> ownCatalogue(Path file) {
    return outcome(file, (node, name, own) -> catalogueFile(node, own));
  }

  private static Optional<CatalogueFile> catalogueFile(Node node, Problems problems) {
    return CatalogueReader.read(node, problems).map(read -> new CatalogueFile(node, read));
  }

  /** The files of the catalogue that comes with the program. */
  public static Set<Source> builtInFiles() {
    return BUILT_IN.stream().map(ShopFolders::source).collect(Collectors.toSet());
  }

  /** The catalogue that comes with the program, file by file. */
  public static List<Catalogue> builtInCatalogue() {
    return BUILT_IN.stream()
        .map(ShopFolders::builtIn)
        .flatMap(file -> file.value().stream())
        .map(CatalogueFile::catalogue)
        .toList();
  }

  private static Outcome<CatalogueFile> builtIn(String file) {
    Problems own = new Problems();
    return new Outcome<>(
        YamlFile.parse(source(file), own).flatMap(node -> catalogueFile(node, own)), own);
  }

  private static Source source(String file) {
    return new Source("catalogue/" + file, ProgramFiles.text("/baysheet/catalogue/" + file));
  }

  /** A file as a tree, every character of which can be printed. */
  public Optional<Node> node(Path file, Problems problems) {
    Problems own = new Problems();
    Optional<Node> node = source(file, own).flatMap(source -> YamlFile.parse(source, own));
    node.ifPresent(tree -> new Glyphs(fonts).check(tree, own));
    problems.addAll(own);
    return node.filter(tree -> !own.hasErrors());
  }

  /** A file that cannot be read stops those who need it, and nobody else. */
  private static Optional<Source> source(Path file, Problems problems) {
    try {
      return SourceFile.read(file, YamlFiles.shown(file), problems);
    } catch (UncheckedIOException e) {
      problems.add(YamlFiles.cannotRead(file, e.getCause()));
      return Optional.empty();
    }
  }
}
