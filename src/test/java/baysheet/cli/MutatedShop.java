package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.output.Batch;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.resolve.Bound;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.template.LayoutTemplates;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.SourceFile;
import baysheet.yaml.YamlFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A copy of a shop folder that is changed and put back, and what its jobs give. */
final class MutatedShop {
  private static final Fonts FONTS = Fonts.builtIn();
  private static final LayoutTemplates LAYOUTS = LayoutTemplates.builtIn();

  final Path root;
  final List<Path> files;
  final List<Path> jobs;
  private final Map<Path, String> texts = new TreeMap<>();
  private final Map<Path, List<WrittenFact>> facts = new TreeMap<>();
  private final Map<Path, Unmutated> unmutated = new TreeMap<>();

  private MutatedShop(Path root) {
    this.root = root;
    this.files = yaml(root);
    this.jobs = DayFolders.all(root);
    files.forEach(file -> texts.put(file, read(file)));
    files.forEach(file -> facts.put(file, WrittenFact.in(tree(file).orElseThrow())));
  }

  /** A copy of the shop in {@code from}. */
  static MutatedShop copy(Path from, Path to) {
    CopyOfTheDemo copy = new CopyOfTheDemo(to);
    return new MutatedShop(copy.with(from).root());
  }

  /**
   * What one job gives.
   *
   * @param made its sheets, one for each stage; none where it is refused
   * @param says all of the sheets as text
   * @param problems as {@code code: sentence}
   * @param fault what went wrong in the tool itself
   */
  record Result(
      List<MadeSheet> made, String says, List<Problem> problems, Optional<Throwable> fault) {
    Stream<Sheet> sheets() {
      return made.stream().map(MadeSheet::sheet);
    }

    /** Hashes of all that the sheets say. */
    List<String> ids() {
      return made.stream().map(it -> it.id().text()).toList();
    }

    /** The rows of their torque tables. */
    List<TorqueLine> torque() {
      return sheets().flatMap(it -> it.torque().stream()).toList();
    }

    /** The names of the tools that they lay out. */
    Set<String> tools() {
      return sheets()
          .flatMap(it -> it.equipment().tools().stream())
          .map(Sheet.ToolLine::name)
          .collect(Collectors.toSet());
    }

    Set<String> told() {
      return problems.stream().map(it -> it.code() + ": " + it.what()).collect(Collectors.toSet());
    }

    boolean isDone() {
      return !made.isEmpty() && problems.stream().noneMatch(Problem::isError);
    }
  }

  /**
   * A job before anything was changed.
   *
   * @param used files that it draws on
   * @param asked procedures that the job names
   * @param keys keys of the fasteners and items that it touches, as {@code file:line:column}
   */
  record Unmutated(
      Path job,
      Result result,
      Set<Path> used,
      Set<String> asked,
      Set<String> keys,
      boolean apprentice) {}

  /** The job as it is in the unchanged shop; it has to give a sheet. */
  Unmutated before(Path job) {
    return unmutated.computeIfAbsent(job, this::examine);
  }

  private Unmutated examine(Path job) {
    Problems problems = new Problems();
    ShopFolders folders = new ShopFolders(FONTS);
    ShopFolder folder = folders.read(root, problems).orElseThrow();
    Resolved resolved =
        new SheetMaker(folders, LAYOUTS, FONTS, Optional.empty())
            .resolve(job, folder, problems)
            .orElseThrow(() -> new IllegalStateException(job + ": " + problems.all()));
    Set<Path> used = new TreeSet<>(Set.of(root.resolve(ShopFolders.SHOP_FILE), job));
    resolved.tasks().keySet().forEach(it -> used.add(file("procedures", it.procedure())));
    resolved.book().books().stream()
        .map(SpecBook::vehicle)
        .forEach(it -> used.add(file("vehicles", it.value())));
    files.stream().filter(it -> it.startsWith(root.resolve("catalogue"))).forEach(used::add);
    Set<String> keys = new TreeSet<>();
    for (Bound bound : resolved.things().values()) {
      bound.entry().ifPresent(entry -> keys.add(entry.name().at().toString()));
      if (bound instanceof Bound.OfBook fastener) {
        fastener.chain().forEach(link -> keys.add(link.at().toString()));
      }
    }
    Optional<Located<String>> with = Optional.of(resolved.job()).flatMap(it -> it.crew().with());
    Set<String> asked =
        resolved.tasks().values().stream()
            .filter(Task::asked)
            .map(task -> task.id().procedure())
            .collect(Collectors.toSet());
    return new Unmutated(job, run(job), used, asked, keys, with.isPresent());
  }

  private Path file(String folder, String name) {
    return root.resolve(folder).resolve(name + ".yaml");
  }

  /** Everything that a run on one job says and makes. */
  Result run(Path job) {
    Problems problems = new Problems();
    ShopFolders folders = new ShopFolders(FONTS);
    SheetMaker maker = new SheetMaker(folders, LAYOUTS, FONTS, Optional.empty());
    List<Batch.Outcome> outcomes = new ArrayList<>();
    try {
      folders
          .read(root, problems)
          .ifPresent(folder -> new Batch(maker::make, 1).run(List.of(job), folder, outcomes::add));
    } catch (UncheckedIOException e) {
      return new Result(List.of(), "", problems.all(), Optional.empty());
    } catch (RuntimeException | Error e) {
      return new Result(List.of(), "", problems.all(), Optional.of(e));
    }
    outcomes.forEach(outcome -> problems.addAll(outcome.problems()));
    List<MadeSheet> made = outcomes.stream().flatMap(it -> it.made().stream()).toList();
    return new Result(
        made,
        made.stream().map(it -> it.sheet().toString()).collect(Collectors.joining("\n")),
        problems.all(),
        outcomes.stream().flatMap(it -> it.fault().stream()).findFirst());
  }

  /** The catalogues of the shop and those that come with the program. */
  List<List<WrittenFact>> catalogues() {
    Stream<Path> builtIn = yaml(Path.of("src/main/resources/baysheet/catalogue")).stream();
    return Stream.concat(
            builtIn.map(file -> WrittenFact.in(tree(file).orElseThrow())),
            files.stream().filter(it -> shown(it).startsWith("catalogue/")).map(facts::get))
        .toList();
  }

  String text(Path file) {
    return texts.get(file);
  }

  List<WrittenFact> facts(Path file) {
    return facts.get(file);
  }

  /** The file that a fact stands in. */
  Path file(WrittenFact fact) {
    return files.stream()
        .filter(it -> YamlFiles.shown(it).equals(fact.file()))
        .findFirst()
        .orElseThrow();
  }

  /** The value at a path of an unchanged file. */
  String value(Path file, String path) {
    return facts(file).stream()
        .filter(fact -> fact.path().equals(path))
        .map(fact -> ((Scalar) fact.node()).text())
        .findFirst()
        .orElse("");
  }

  /** What a file says now; nothing where it cannot be read. */
  ChangedFile changed(Path file) {
    return new ChangedFile(tree(file).map(WrittenFact::values).orElse(Map.of()));
  }

  void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }

  /** Puts a file back as it was. */
  void restore(Path file) {
    write(file, texts.get(file));
  }

  String shown(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }

  private static Optional<Node> tree(Path file) {
    Problems problems = new Problems();
    return SourceFile.read(file, YamlFiles.shown(file), problems)
        .flatMap(source -> YamlFile.parse(source, problems));
  }

  private static List<Path> yaml(Path root) {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(it -> it.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + root, e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }
}
