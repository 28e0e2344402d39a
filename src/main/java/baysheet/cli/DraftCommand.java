package baysheet.cli;

import baysheet.books.CatalogueReader;
import baysheet.books.FastenerTable;
import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.files.BookDraft;
import baysheet.files.DayFolders;
import baysheet.files.ProgramFiles;
import baysheet.files.ShopFolders;
import baysheet.files.WorkAt;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OutFiles;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.resolve.Needs;
import baysheet.yaml.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that adds to a spec book what work needs and the book lacks. */
final class DraftCommand extends Command {
  private static final String MARK = "\uFEFF";

  private final PositionalParamSpec bookName =
      at(
          0,
          "BOOK",
          "0..1",
          String.class,
          "The spec book, by its name or its file; a new one is begun. With --job, the job's.");

  private final OptionSpec work =
      add(
          OptionSpec.builder("--for")
              .paramLabel("PROCEDURE[@PLACE]")
              .arity("1..*")
              .type(List.class)
              .auxiliaryTypes(String.class)
              .completionCandidates(DraftCommand::shippedProcedures)
              .description(
                  "Work that the book is to be ready for, such as discs-and-pads@front. Without a"
                      + " place: wherever the vehicle allows it.")
              .build());

  private final OptionSpec jobFile = option("--job", "FILE", Path.class, "The work of a job file.");

  private final OptionSpec table =
      option(
          "--table",
          "CSV",
          Path.class,
          "Fasteners from a spreadsheet: columns fastener, place, count, thread, class, head,"
              + " torque, order, threads, reuse, lock, final, recheck, deep, note, source; a unit"
              + " may stand in the heading, as in torque (N·m).");

  private final OptionSpec traits =
      add(
          OptionSpec.builder("--traits")
              .paramLabel("TRAIT")
              .arity("1..*")
              .splitRegex(",")
              .type(List.class)
              .auxiliaryTypes(String.class)
              .completionCandidates(DraftCommand::builtInTraits)
              .description("What the vehicle of a new book has; baysheet names traits lists them.")
              .build());

  private final OptionSpec shop = shop();

  DraftCommand(Console console) {
    super(
        console,
        "draft",
        "Add to a spec book each fastener that work needs and the book lacks, to be filled in.");
  }

  /** Looked up for completion only: a shop's own are not known where it is written. */
  private static Iterator<String> shippedProcedures() {
    return ProgramFiles.names("/baysheet/start/procedures").stream()
        .map(file -> file.replaceFirst("\\.yaml$", ""))
        .iterator();
  }

  private static Iterator<String> builtInTraits() {
    return CatalogueReader.merge(ShopFolders.builtInCatalogue())
        .vocabulary()
        .traits()
        .keySet()
        .iterator();
  }

  @Override
  public Integer call() {
    Problems problems = new Problems();
    Path root = root();
    ShopFolders folders = new ShopFolders(Fonts.builtIn());
    Optional<ShopFolder> folder = folders.read(root, problems);
    Optional<Job> job =
        Options.<Path>given(jobFile)
            .flatMap(file -> folder.flatMap(it -> job(file, folders, it, problems)));
    boolean asked = Options.<Path>given(jobFile).isEmpty() || job.isPresent();
    if (folder.isPresent() && asked) {
      String name = name(job);
      if (folder.get().faulty().books().contains(name)) {
        problems.stop();
      } else {
        draft(book(root, name), job, folder.get(), problems);
      }
    }
    console.problems(problems.all(), "nothing was added", false);
    return Exit.of(problems);
  }

  /** A book that is named with its folder is written there and nowhere else. */
  private Path book(Path root, String name) {
    Path file = root.resolve("vehicles").resolve(name + YamlFiles.ENDING);
    Options.<String>given(bookName)
        .map(Path::of)
        .filter(it -> it.getParent() != null)
        .filter(it -> !DayFolders.whole(it).getParent().equals(DayFolders.whole(file).getParent()))
        .ifPresent(
            it -> {
              throw wrong(it + " is not in the folder of the shop's spec books")
                  .expecting(YamlFiles.shown(file));
            });
    return file;
  }

  private Path root() {
    Optional<Path> near =
        Options.<Path>given(jobFile)
            .or(() -> Options.<String>given(bookName).filter(it -> it.contains("/")).map(Path::of))
            .flatMap(ShopFolders::rootOf);
    return Options.<Path>given(shop).isEmpty() && near.isPresent()
        ? near.get()
        : ShopChoice.rootFor(Options.given(shop), line());
  }

  private Optional<Job> job(Path file, ShopFolders folders, ShopFolder folder, Problems problems) {
    Problems own = new Problems();
    Optional<Job> job =
        folders
            .node(file, own)
            .flatMap(
                node ->
                    JobReader.read(node, YamlFiles.name(file), folder.procedures().values(), own));
    problems.addAll(own);
    return job.filter(it -> !own.hasErrors());
  }

  private String name(Optional<Job> job) {
    Optional<String> named = Options.<String>given(bookName).map(it -> YamlFiles.name(Path.of(it)));
    return named
        .or(() -> job.map(it -> it.vehicle().book().value()))
        .orElseThrow(
            () ->
                wrong("the command draft needs a BOOK")
                    .expecting("the name of a spec book, or --job with a job file"));
  }

  private void draft(Path file, Optional<Job> job, ShopFolder folder, Problems problems) {
    List<FastenerTable.Row> rows =
        Options.<Path>given(table)
            .flatMap(it -> SourceFile.read(it, YamlFiles.shown(it), problems))
            .map(it -> FastenerTable.read(it, problems))
            .orElse(List.of());
    boolean exists = Files.exists(file);
    Optional<Source> text =
        exists
            ? SourceFile.read(file, YamlFiles.shown(file), problems)
            : Optional.of(
                new Source(
                    YamlFiles.shown(file),
                    NewBook.text(YamlFiles.name(file), Options.all(traits))));
    if (exists && !Options.all(traits).isEmpty()) {
      throw wrong("--traits is for a new book, and " + file + " is there already");
    }
    Optional<BookDraft> draft =
        text.flatMap(it -> BookDraft.of(it, problems)).flatMap(it -> it.with(rows, problems));
    Optional<BookDraft> whole =
        draft.flatMap(it -> with(works(job, it, folder), it, folder, problems));
    if (!problems.hasErrors() && whole.isPresent()) {
      write(file, exists, whole.get());
      rows.stream()
          .filter(
              row ->
                  draft.get().added().getOrDefault(row.group().value().word(), List.of()).stream()
                      .noneMatch(row.fastener().value()::equals))
          .forEach(
              row ->
                  console.say(
                      "kept, as it is there: "
                          + row.fastener().value()
                          + " under "
                          + row.group().value()));
    }
  }

  private Optional<BookDraft> with(
      List<Located<Job.Work>> works, BookDraft draft, ShopFolder folder, Problems problems) {
    if (works.isEmpty()) {
      return Optional.of(draft);
    }
    List<Needs> bays = draft.needs(works, folder);
    List<Needs> possible = bays.stream().filter(Needs::possible).toList();
    if (possible.isEmpty()) {
      problems.stop();
      bays.stream().limit(1).flatMap(it -> it.problems().stream()).forEach(problems::add);
    }
    return possible.isEmpty()
        ? Optional.empty()
        : draft.with(possible, gap -> gap.step(folder), problems);
  }

  private List<Located<Job.Work>> works(Optional<Job> job, BookDraft draft, ShopFolder folder) {
    Stream<Located<Job.Work>> typed =
        Options.<String>all(work).stream().flatMap(it -> works(it, draft, folder));
    return Stream.concat(job.stream().flatMap(it -> it.work().stream()), typed).distinct().toList();
  }

  private Stream<Located<Job.Work>> works(String typed, BookDraft draft, ShopFolder folder) {
    String name = typed.replaceFirst("@.*", "");
    Procedure procedure =
        Optional.ofNullable(folder.procedures().get(name))
            .orElseThrow(
                () ->
                    wrong("there is no procedure \"" + name + '"')
                        .near(
                            name,
                            folder.procedures().keySet(),
                            "a name that baysheet procedures lists"));
    Span here = new Source("--for " + typed, "").whole();
    if (typed.contains("@")) {
      String place = typed.substring(typed.indexOf('@') + 1);
      return Stream.of(new Located<>(new Job.Work(name, place(place)), here));
    }
    List<Located<Job.Work>> all =
        WorkAt.places(procedure).stream()
            .map(place -> new Located<>(new Job.Work(name, place), here))
            .toList();
    List<Located<Job.Work>> suitable =
        all.stream()
            .filter(it -> draft.needs(List.of(it), folder).stream().anyMatch(Needs::possible))
            .toList();
    return (suitable.isEmpty() ? all : suitable).stream();
  }

  private Place place(String word) {
    return Place.of(word)
        .orElseThrow(
            () ->
                wrong('"' + word + "\" is not a place on a vehicle")
                    .near(word, Stream.of(Place.values()).map(Place::word).toList()));
  }

  private void write(Path file, boolean exists, BookDraft draft) {
    String shown = YamlFiles.shown(file);
    if (exists && draft.added().isEmpty()) {
      console.say(shown + " has all fasteners that this work needs; nothing was added");
      return;
    }
    String mark = exists && hasMark(file) ? MARK : "";
    byte[] bytes = (mark + draft.text().text()).getBytes(StandardCharsets.UTF_8);
    new OutFiles(Disk.REAL).write(file, bytes);
    console.say((exists ? "added to " : "made ") + shown + ":");
    draft
        .added()
        .forEach((group, names) -> console.say("  " + group + ": " + String.join(", ", names)));
    console.say(
        "replace each unknown that you can look up; baysheet procedures --vehicle "
            + draft.book().vehicle().value()
            + shopOption(file)
            + " says what is still missing");
  }

  /** What a command must add to find the shop of a book from where this one runs. */
  private String shopOption(Path book) {
    Path root = Options.<Path>given(shop).orElse(book.getParent().getParent());
    boolean found =
        ShopFolders.here().map(DayFolders::whole).equals(Optional.of(DayFolders.whole(root)));
    return found ? "" : " --shop \"" + YamlFiles.shown(root) + '"';
  }

  private static boolean hasMark(Path file) {
    byte[] mark = MARK.getBytes(StandardCharsets.UTF_8);
    try (InputStream in = Files.newInputStream(file)) {
      return Arrays.equals(mark, in.readNBytes(mark.length));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** The text with which a new spec book begins. */
  static final class NewBook {
    private NewBook() {}

    static String text(String name, List<String> traits) {
      return """
      # unknown stands for a figure to look up. If the vehicle has none of a fastener, delete its line and
      # write its name under absent in the same place, as in absent: [disc-screw].
      vehicle: NAME
      name: NAME    # what the sheet prints
      source: not stated yet    # where the figures come from; printed on every sheet
      # Take the # away from what you fill in. Stands and lifts are checked with the masses.
      # kerb-mass: 1300 kg
      # front-share: 60 %    # how much of it stands on the front axle
      # supports: {front: where stands and lift pads go, rear: where they go}
      # jacking: {front: where a jack lifts, rear: where a jack lifts}
      # fluids: {engine-oil: {capacity: 4.2 L, grade: 5W-30}}
      # checked: {by: initials, on: 2026-01-31}    # who compared the book with its source, and when
      # Further keys of a fastener, as in a finished book: order, threads, reuse, final, recheck, lock, note.
      traits: [TRAITS]    # what the vehicle has; baysheet names traits lists them
      """
          .replace("NAME", name)
          .replace("TRAITS", String.join(", ", traits));
    }
  }
}
