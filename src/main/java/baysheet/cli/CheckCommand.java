package baysheet.cli;

import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.Step;
import baysheet.files.DayFolders;
import baysheet.files.FolderListing;
import baysheet.files.JobGroups;
import baysheet.files.ProgramFiles;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.output.Batch;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.RunReport;
import baysheet.output.SheetMaker;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.ProblemText;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.resolve.FolderCheck;
import baysheet.template.LayoutTemplates;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that reports every problem and writes nothing. */
final class CheckCommand extends Command {
  private static final String SHIPPED = "/baysheet/start/procedures";

  /** Problems of each file that a screen has room for. */
  private static final int FEW = 3;

  private final Function<SheetMaker, Batch.Maker> checking;
  private final List<Throwable> internal = new ArrayList<>();

  private final PositionalParamSpec paths =
      rest(
          "PATH",
          "0..*",
          Path.class,
          "Shop folders, day folders, job files, days or numbers of jobs. Without any: the whole"
              + " shop.");

  private final OptionSpec json = flag("--json", "Print the problems as JSON.");

  private final OptionSpec watching =
      flag(
          "--watch",
          "Check again whenever a file changes, the first problems on top; end it with Ctrl-C.");

  private final ShopChoice choice;

  CheckCommand(Console console, Supplier<LocalDate> today) {
    this(
        console,
        today,
        maker -> (job, folder, revision, problems) -> maker.check(job, folder, problems));
  }

  /** Tests pass what fails. */
  CheckCommand(
      Console console, Supplier<LocalDate> today, Function<SheetMaker, Batch.Maker> checking) {
    super(console, "check", "Report every problem of a shop folder and its jobs; write nothing.");
    this.checking = checking;
    choice = new ShopChoice(today);
    add(choice.shop);
  }

  @Override
  public Integer call() {
    if (!Options.isGiven(watching)) {
      return check(ProblemText.USUAL_LIMIT);
    }
    if (Options.isGiven(json)) {
      throw wrong("--watch prints no JSON");
    }
    List<Path> roots =
        meant().stream().map(path -> ShopFolders.rootOf(path).orElse(path)).distinct().toList();
    new Watch(roots).run(this::screen);
    return Exit.DONE;
  }

  /** One round of watching: what is read first is what has to be put right first. */
  private void screen() {
    console.clear();
    check(FEW);
  }

  private int check(int most) {
    internal.clear();
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, LayoutTemplates.builtIn(), fonts, Optional.empty());
    Problems problems = new Problems();
    int jobs = 0;
    int refused = 0;
    for (Map.Entry<Path, Set<Path>> shop : shops(problems).entrySet()) {
      jobs += shop.getValue().size();
      refused += check(shop.getKey(), List.copyOf(shop.getValue()), folders, maker, problems);
    }
    tell(problems, jobs, refused, most);
    internal.forEach(console::trace);
    return Exit.of(problems);
  }

  private void tell(Problems problems, int jobs, int refused, int most) {
    String checked = jobs + (jobs == 1 ? " job" : " jobs") + " checked";
    String refusal =
        !problems.hasErrors()
            ? ", no sheet is refused"
            // What is wrong elsewhere, as in a file that is not read, says so itself.
            : refused == 0
                ? ""
                : refused == jobs
                    ? ", no sheet can be made"
                    : ", " + refused + (refused == 1 ? " is" : " are") + " refused";
    console.problems(problems.all(), checked + refusal, Options.isGiven(json), most);
    if (problems.all().isEmpty() && !Options.isGiven(json)) {
      console.say("no problems; " + checked);
    }
  }

  /** Shop folders with the job files to look at. */
  private Map<Path, Set<Path>> shops(Problems problems) {
    Map<Path, Set<Path>> shops = new LinkedHashMap<>();
    for (Path path : meant()) {
      boolean whole = Files.isRegularFile(path.resolve(ShopFolders.SHOP_FILE));
      if (whole) {
        Path root = path.toAbsolutePath().normalize();
        FolderListing.beside(root, problems);
        shops
            .computeIfAbsent(root, key -> new LinkedHashSet<>())
            .addAll(DayFolders.all(root, problems));
      } else {
        for (JobGroups group : JobGroups.of(List.of(path), problems)) {
          shops.computeIfAbsent(group.root(), key -> new LinkedHashSet<>()).addAll(group.jobs());
        }
      }
    }
    return shops;
  }

  private List<Path> meant() {
    List<Path> named = Options.all(paths);
    return named.isEmpty()
        ? List.of(choice.root(line()))
        : named.stream().map(word -> choice.meant(word, line())).toList();
  }

  /** How many of the jobs would get no sheet. */
  private int check(
      Path root, List<Path> jobs, ShopFolders folders, SheetMaker maker, Problems problems) {
    Optional<ShopFolder> folder = folders.read(root, problems);
    if (folder.isEmpty()) {
      return jobs.size();
    }
    AtomicInteger refused = new AtomicInteger();
    FolderCheck.check(folder.get(), problems);
    verbs(folder.get(), problems);
    new Batch(checking.apply(maker), Runtime.getRuntime().availableProcessors())
        .run(
            jobs,
            folder.get(),
            outcome -> {
              problems.addAll(outcome.problems());
              outcome.fault().ifPresent(fault -> problems.add(fault(outcome.job(), fault)));
              if (outcome.problems().hasErrors() || outcome.fault().isPresent()) {
                refused.incrementAndGet();
              }
            });
    days(jobs, new DayReader(maker, folder.get()), folder.get(), problems);
    return refused.get();
  }

  /** What is wrong with days as a whole; with their jobs it was said. */
  private static void days(
      List<Path> jobs, DayReader reader, ShopFolder folder, Problems problems) {
    Map<Path, List<Path>> days = new LinkedHashMap<>();
    jobs.forEach(
        job ->
            days.computeIfAbsent(DayFolders.whole(job).getParent(), day -> new ArrayList<>())
                .add(job));
    days.forEach(
        (day, files) ->
            DayFolders.date(day)
                .filter(date -> files.size() > 1)
                .ifPresent(
                    date ->
                        new DayWarnings(
                                folder.shop(), date, reader.jobs(files, new Problems()).planned())
                            .addTo(problems)));
  }

  private Problem fault(Path job, Throwable fault) {
    if (fault instanceof UncheckedIOException files) {
      return YamlFiles.cannotRead(job, files.getCause());
    }
    internal.add(fault);
    return RunReport.internalError(job);
  }

  /** Procedures that came with the program keep to the verbs of the catalogue. */
  private static void verbs(ShopFolder folder, Problems problems) {
    List<String> shipped = ProgramFiles.names(SHIPPED);
    folder.procedures().values().stream()
        .filter(it -> shipped.contains(it.name().value() + ".yaml") && keepsItsTitle(it))
        .flatMap(
            it ->
                Stream.of(it.blocks().open(), it.blocks().work(), it.blocks().close())
                    .flatMap(List::stream))
        .map(Step::text)
        .filter(text -> !folder.catalogue().beginsWithVerb(text.value()))
        .forEach(text -> problems.add(noVerb(text.at())));
  }

  /** One of the same name that a garage wrote itself has another title, and words of its own. */
  private static boolean keepsItsTitle(Procedure procedure) {
    return ProgramFiles.text(SHIPPED + "/" + procedure.name().value() + ".yaml")
        .contains("\ntitle: " + procedure.title().value() + "\n");
  }

  private static Problem noVerb(Span at) {
    return Problem.of(ProblemCode.STEP_VERB, at, "the step begins with no verb of the list")
        .expecting("one action that begins with a listed verb, such as remove, fit, check");
  }
}
