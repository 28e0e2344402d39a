package baysheet.cli;

import baysheet.books.Bay;
import baysheet.books.CatalogueReader;
import baysheet.books.FastenerTable;
import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.files.BookDraft;
import baysheet.files.DayFolders;
import baysheet.files.ProgramFiles;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.output.Console;
import baysheet.output.DecidingTraits;
import baysheet.output.Exit;
import baysheet.output.OutFiles;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.Needs;
import baysheet.yaml.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
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

  private final OptionSpec jobFile =
      option("--job", "JOB", Path.class, "The work of a job file, or of the job of that number.");

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

  private final ShopChoice choice;
  private final Supplier<LocalDate> today;

  DraftCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "draft",
        "Add to a spec book each fastener that work needs and the book lacks, to be filled in.");
    this.today = today;
    this.choice = new ShopChoice(today);
    add(choice.shop);
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
    Optional<Path> file = job();
    Optional<Job> job = file.flatMap(it -> folder.flatMap(all -> job(it, folders, all, problems)));
    boolean asked = file.isEmpty() || job.isPresent();
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
        job()
            .or(() -> Options.<String>given(bookName).filter(it -> it.contains("/")).map(Path::of))
            .flatMap(ShopFolders::rootOf);
    return Options.<Path>given(choice.shop).isEmpty() && near.isPresent()
        ? near.get()
        : choice.root(line());
  }

  private Optional<Path> job() {
    return Options.<Path>given(jobFile).map(word -> choice.meant(word, line()));
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
                    .expecting(
                        "the name of a spec book, or --job with the number or the file of a job"));
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
                NewBook.of(file, Options.all(traits), Map.of(), List.of(), List.of(), folder));
    if (exists && !Options.all(traits).isEmpty()) {
      throw wrong("--traits is for a new book, and " + file + " is there already");
    }
    Optional<BookDraft> draft = text.flatMap(it -> draft(it, rows, job, folder, problems));
    if (!problems.hasErrors() && draft.isPresent()) {
      Map<String, String> deciding = deciding(job, draft.get(), folder);
      // A new book has them in its lines, which moves those below; so it is drafted anew.
      List<Procedure> works =
          works(job, draft.get(), folder).stream()
              .map(it -> folder.procedures().get(it.value().procedure()))
              .toList();
      Source begun =
          NewBook.of(file, Options.all(traits), deciding, bays(job, folder), works, folder);
      Optional<BookDraft> whole = exists ? draft : draft(begun, rows, job, folder, problems);
      write(
          file, exists, whole.orElseThrow(), deciding.isEmpty() ? "" : ", and fill in the traits");
      // A new book asks in its own lines.
      if (exists && !deciding.isEmpty()) {
        console.say(
            "this work also goes by traits that the book does not name; add what the vehicle has: "
                + String.join(", ", deciding.keySet()));
      }
      rows.stream()
          .filter(
              row ->
                  draft.get().added().getOrDefault(row.group().value().word(), List.of()).stream()
                      .noneMatch(row.fastener().value()::equals))
          .map(row -> row.fastener().value() + " under " + row.group().value())
          .forEach(kept -> console.say("kept, as it is there: " + kept));
    }
  }

  /** The bay of the job; without a job, each bay of the shop. */
  private static Collection<Bay> bays(Optional<Job> job, ShopFolder folder) {
    Map<String, Bay> all = folder.shop().bays();
    return job.map(it -> all.get(it.bay().value()))
        .<Collection<Bay>>map(List::of)
        .orElse(all.values());
  }

  private Optional<BookDraft> draft(
      Source text,
      List<FastenerTable.Row> rows,
      Optional<Job> job,
      ShopFolder folder,
      Problems problems) {
    return BookDraft.of(text, problems)
        .flatMap(it -> it.with(rows, problems))
        .flatMap(it -> with(bays(job, folder), works(job, it, folder), it, folder, problems));
  }

  /** The traits by which the work goes, with their meanings: those that the book does not name. */
  private Map<String, String> deciding(Optional<Job> job, BookDraft draft, ShopFolder folder) {
    List<Job.Work> works = works(job, draft, folder).stream().map(Located::value).toList();
    Map<String, String> deciding = new LinkedHashMap<>();
    if (!works.isEmpty()) {
      DecidingTraits.of(
              draft.assumed(), works, job.map(it -> it.bay().value()), folder, today.get())
          .stream()
          .filter(trait -> !draft.names(trait))
          .forEach(
              trait ->
                  deciding.put(trait, folder.catalogue().vocabulary().traits().get(trait).value()));
    }
    return deciding;
  }

  private static Optional<BookDraft> with(
      Collection<Bay> bays,
      List<Located<Job.Work>> works,
      BookDraft draft,
      ShopFolder folder,
      Problems problems) {
    if (works.isEmpty()) {
      return Optional.of(draft);
    }
    List<Needs> needs = draft.needs(bays, works, folder);
    List<Needs> possible = needs.stream().filter(Needs::possible).toList();
    if (possible.isEmpty()) {
      problems.stop();
      needs.stream().limit(1).flatMap(it -> it.problems().stream()).forEach(problems::add);
    }
    return possible.isEmpty()
        ? Optional.empty()
        : draft.with(
            possible,
            gap -> gap.step(folder, bays),
            BookDraft.explaining(folder).isPresent(),
            problems);
  }

  private List<Located<Job.Work>> works(Optional<Job> job, BookDraft draft, ShopFolder folder) {
    Stream<Located<Job.Work>> typed =
        Options.<String>all(work).stream()
            .flatMap(it -> new TypedWork(it, this::wrong).at(draft, folder));
    return Stream.concat(job.stream().flatMap(it -> it.work().stream()), typed).distinct().toList();
  }

  private void write(Path file, boolean exists, BookDraft draft, String traits) {
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
    String next =
        Options.<Path>given(jobFile)
            .map(it -> "then run baysheet check " + YamlFiles.shown(it))
            .orElseGet(
                () ->
                    "baysheet procedures --vehicle "
                        + draft.book().vehicle().value()
                        + shopOption(file)
                        + " says what is still missing");
    String too = exists ? "" : traits;
    console.say("type over each unknown that you can look up" + too + "; " + next);
  }

  /** What a command must add to find the shop of a book from where this one runs. */
  private String shopOption(Path book) {
    Path root = Options.<Path>given(choice.shop).orElse(book.getParent().getParent());
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
}
