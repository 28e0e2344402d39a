package baysheet.resolve;

import static baysheet.books.ShopFolder.Faulty.NONE;

import baysheet.books.Catalogue;
import baysheet.books.CatalogueCheck;
import baysheet.books.CatalogueReader;
import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Procedure;
import baysheet.books.ProcedureReader;
import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.books.ShopReader;
import baysheet.books.SpecBook;
import baysheet.books.SpecBookReader;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.Node;
import baysheet.yaml.YamlFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A shop folder as texts by path, read with the real readers. Its catalogue is its own file alone,
 * unless the built-in one is asked for.
 */
public final class ShopTexts {
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

  private final Map<String, String> files;

  private ShopTexts(Map<String, String> files) {
    this.files = new TreeMap<>(files);
  }

  public static ShopTexts empty() {
    return new ShopTexts(Map.of());
  }

  /** Every YAML file below a folder. */
  public static ShopTexts of(Path root) {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(path -> path.toString().endsWith(".yaml")).toList()) {
        files.put(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + root, e);
    }
    return new ShopTexts(files);
  }

  public String text(String path) {
    return files.get(path);
  }

  /** The same folder with one more file, or with another text for it. */
  public ShopTexts with(String path, String text) {
    Map<String, String> more = new TreeMap<>(files);
    more.put(path, text);
    return new ShopTexts(more);
  }

  /** The same folder with a piece of one file replaced; the piece has to be there. */
  public ShopTexts replacing(String path, String piece, String by) {
    String text = files.get(path);
    if (text == null || !text.contains(piece)) {
      throw new IllegalArgumentException(path + " has no \"" + piece + "\"");
    }
    return with(path, text.replace(piece, by));
  }

  /** The same folder with the catalogue that the tool brings, under its own. */
  public ShopTexts withBuiltIn() {
    ShopTexts all = this;
    for (String file : BUILT_IN) {
      all = all.with("catalogue/ " + file, resource("/baysheet/catalogue/" + file));
    }
    return all;
  }

  private static String resource(String path) {
    try (InputStream in = ShopTexts.class.getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + path, e);
    }
  }

  /** Paths of the job files: those in folders named by a day. */
  public List<String> jobs() {
    return files.keySet().stream().filter(path -> path.matches("\\d{4}-.*/.*")).toList();
  }

  /** The folder; nothing in it may be wrong. */
  public ShopFolder folder() {
    Problems problems = new Problems();
    Optional<Shop> shop =
        node("shop.yaml", problems).flatMap(node -> ShopReader.read(node, problems));
    Map<String, SpecBook> books = new LinkedHashMap<>();
    for (String path : under("vehicles/")) {
      node(path, problems)
          .flatMap(node -> SpecBookReader.read(node, name(path), problems))
          .ifPresent(book -> books.put(book.vehicle().value(), book));
    }
    Map<String, Procedure> procedures = new LinkedHashMap<>();
    for (String path : under("procedures/")) {
      node(path, problems)
          .flatMap(node -> ProcedureReader.read(node, name(path), problems))
          .ifPresent(procedure -> procedures.put(procedure.name().value(), procedure));
    }
    Catalogue catalogue = catalogue(problems);
    faultless(problems);
    ShopFolder folder = new ShopFolder(shop.orElseThrow(), books, procedures, catalogue, NONE);
    CatalogueCheck.check(folder, Set.of(), problems);
    faultless(problems);
    return folder;
  }

  /** The words that rules go by are the tool's own, whatever the rules are. */
  private Catalogue catalogue(Problems problems) {
    List<Catalogue> parts = new ArrayList<>();
    Source words =
        new Source("catalogue/vocabulary.yaml", resource("/baysheet/catalogue/vocabulary.yaml"));
    YamlFile.parse(words, problems)
        .flatMap(node -> CatalogueReader.read(node, problems))
        .ifPresent(parts::add);
    for (String path : under("catalogue/")) {
      node(path, problems)
          .flatMap(node -> CatalogueReader.read(node, problems))
          .ifPresent(parts::add);
    }
    return CatalogueReader.merge(parts);
  }

  private static void faultless(Problems problems) {
    if (problems.hasErrors()) {
      throw new IllegalStateException("the folder is at fault: " + told(problems));
    }
  }

  /** A job of this folder, bound; the job file itself has to be readable. */
  public Optional<Resolved> resolve(String path, Problems problems) {
    return resolve(path, folder(), problems);
  }

  /** The same with the folder as it was read before. */
  public Optional<Resolved> resolve(String path, ShopFolder folder, Problems problems) {
    return Resolver.resolve(job(path), folder, date(path), problems);
  }

  /** A job that resolves without any error. */
  public Resolved resolved(String path) {
    return resolved(path, folder());
  }

  /** The same with the folder as it was read before. */
  public Resolved resolved(String path, ShopFolder folder) {
    Problems problems = new Problems();
    Optional<Resolved> resolved = resolve(path, folder, problems);
    faultless(problems);
    return resolved.orElseThrow();
  }

  private Job job(String path) {
    Problems problems = new Problems();
    Optional<Job> job =
        node(path, problems).flatMap(node -> JobReader.read(node, name(path), problems));
    faultless(problems);
    return job.orElseThrow();
  }

  private static LocalDate date(String path) {
    return LocalDate.parse(path.substring(0, path.indexOf('/')));
  }

  /** Problems, each as {@code file:line:column code}. */
  public static List<String> told(Problems problems) {
    return problems.all().stream().map(ShopTexts::told).toList();
  }

  private static String told(Problem problem) {
    return problem.at() + " " + problem.code().word();
  }

  /** The paths in a folder. */
  public List<String> paths(String folder) {
    return under(folder);
  }

  private List<String> under(String folder) {
    return files.keySet().stream().filter(path -> path.startsWith(folder)).toList();
  }

  private static String name(String path) {
    return path.substring(path.lastIndexOf('/') + 1, path.length() - ".yaml".length());
  }

  private Optional<Node> node(String path, Problems problems) {
    return YamlFile.parse(new Source(path, files.get(path)), problems);
  }
}
