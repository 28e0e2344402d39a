package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.files.DayFolders;
import baysheet.files.JobGroups;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.sheet.TorqueLine;
import baysheet.template.LayoutTemplates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that shows how the torque figures of a sheet came about. */
final class ExplainCommand extends Command {
  private final PositionalParamSpec job =
      at(
          0,
          "JOB",
          "1",
          Path.class,
          "A job file or the number of a job, whose torque rows are followed from the book to the"
              + " setting.");

  private final PositionalParamSpec row =
      at(1, "ROW", "0..1", Integer.class, "The number of one row of the torque table.");

  private final ShopChoice choice;

  ExplainCommand(Console console, Supplier<LocalDate> today) {
    super(console, "explain", "Show where each torque figure of a job comes from, step by step.");
    choice = new ShopChoice(today);
    add(choice.shop);
  }

  @Override
  public Integer call() {
    Path named = new ExplainedJob(job.getValue().toString()).file(this::wrong);
    return job(choice.meant(named, line()));
  }

  private Optional<Integer> number() {
    return Options.given(row);
  }

  private int job(Path file) {
    Problems problems = new Problems();
    int exit = Exit.PROBLEMS;
    if (Files.exists(file)) {
      exit =
          JobGroups.of(List.of(file), problems).stream()
              .findFirst()
              .map(it -> job(it, problems))
              .orElse(Exit.PROBLEMS);
    } else {
      problems.add(JobGroups.notThere(file));
    }
    console.problems(problems.all(), "the figures of a job with errors are not explained", false);
    return problems.hasErrors() ? Exit.of(problems) : exit;
  }

  private int job(JobGroups group, Problems problems) {
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, LayoutTemplates.builtIn(), fonts, Optional.empty());
    Optional<ShopFolder> folder = folders.read(group.root(), problems);
    Optional<Resolved> resolved =
        folder.flatMap(it -> maker.resolve(group.jobs().get(0), it, problems));
    Optional<TracedPlan> plan = resolved.flatMap(it -> Planner.traced(it, problems));
    plan.filter(it -> !problems.hasErrors())
        .ifPresent(
            it ->
                tell(resolved.get(), it, maker.make(group.jobs().get(0), folder.get(), problems)));
    return Exit.DONE;
  }

  /**
   * @param made the sheets of the job; none where its layout does not fit, which is reported as a
   *     problem
   */
  private void tell(Resolved resolved, TracedPlan plan, List<MadeSheet> made) {
    List<TorqueLine> lines =
        plan.sheet().torque().stream()
            .filter(line -> number().map(n -> n == line.n()).orElse(true))
            .toList();
    int rows = plan.sheet().torque().size();
    if (rows == 0) {
      console.say("the torque table of this job has no rows");
    } else if (lines.isEmpty()) {
      throw wrong("the torque table of this job has no row " + number().orElseThrow())
          .expecting("a number from 1 to " + rows);
    }
    String gap = "";
    for (TorqueLine line : lines) {
      console.print(
          gap + TorqueTrace.print(resolved, line, plan.selection(line), sheets(made, line)));
      gap = "\n";
    }
  }

  /** On which of several sheets a row stands; nothing where the job has one sheet. */
  private static List<String> sheets(List<MadeSheet> made, TorqueLine line) {
    return made.stream()
        .map(MadeSheet::sheet)
        .filter(sheet -> sheet.torque().stream().anyMatch(it -> it.n() == line.n()))
        .flatMap(
            sheet ->
                sheet.stage().stream()
                    .map(it -> sheet.name() + ", stage " + it.n() + " of " + it.of()))
        .toList();
  }

  /**
   * The job file that somebody wants explained.
   *
   * @param written as on the command line
   */
  private record ExplainedJob(String written) {
    private static final String EXAMPLE = "a job file such as jobs/2026-03-02/2401.yaml";
    private static final List<String> NOT_JOBS = List.of("vehicles", "procedures", "catalogue");

    /**
     * The file, if it can be one of a job; it may not be there.
     *
     * @param wrong makes the complaint about the command line
     */
    Path file(Function<String, WrongCommandLine> wrong) {
      Path path = Path.of(written);
      if (Files.isDirectory(path)) {
        throw wrong.apply(written + " is a folder").expecting(among(path));
      }
      if (ProblemCode.of(written).isPresent()) {
        throw wrong
            .apply(written + " is the code of a problem, not a job file")
            .expecting("a job file; baysheet help " + written + " prints the page of the problem");
      }
      if (path.endsWith(ShopFolders.SHOP_FILE) || NOT_JOBS.contains(DayFolders.day(path))) {
        throw wrong.apply(written + " is not a job").expecting(EXAMPLE);
      }
      return path;
    }

    private static String among(Path folder) {
      List<String> names =
          DayFolders.isInShop(folder) && !DayFolders.holdsNoJobs(DayFolders.whole(folder))
              ? names(folder)
              : List.of();
      return names.isEmpty()
          ? EXAMPLE
          : "one job file of it, such as " + folder.resolve(names.get(0));
    }

    private static List<String> names(Path folder) {
      return YamlFiles.in(folder).stream().map(file -> file.getFileName().toString()).toList();
    }
  }
}
