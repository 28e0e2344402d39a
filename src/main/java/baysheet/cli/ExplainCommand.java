package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.layout.Fonts;
import baysheet.plan.Planner;
import baysheet.plan.Sheet;
import baysheet.plan.TorqueLine;
import baysheet.report.Explanations;
import baysheet.report.Nearest;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.template.Layouts;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that says what a problem means, or how a figure on a sheet came about. */
final class ExplainCommand implements Callable<Integer> {
  private final Console console;

  private final PositionalParamSpec what =
      Options.at(
          0,
          "CODE|JOB.yaml",
          "1",
          String.class,
          "The code of a problem, as in error[unknown-key]; or a job file, whose torque lines are"
              + " followed from the book to the setting.");

  private final PositionalParamSpec line =
      Options.at(1, "LINE", "0..1", Integer.class, "The number of one torque line.");

  private final CommandSpec spec =
      Options.command(
          "explain",
          "Say what a problem means, or how the torque lines of a job come about.",
          this,
          List.of(what, line));

  ExplainCommand(Console console) {
    this.console = console;
  }

  CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    String asked = what.getValue();
    return isPath(asked) ? job(new ExplainedJob(asked).file(this::wrong)) : code(asked);
  }

  private Optional<Integer> number() {
    return Options.given(line);
  }

  /** Codes have neither dots nor slashes; a job's number alone does not say where its file is. */
  private static boolean isPath(String asked) {
    return asked.matches("[^\\[\\]]*[./\\\\][^\\[\\]]*|[0-9]+") || Files.exists(Path.of(asked));
  }

  private int code(String asked) {
    // Codes are copied with what stands around them: error[unknown-key].
    String code = asked.replaceFirst("^(?:error|warning)\\[(.*)]:?$", "$1");
    Optional<String> page = Explanations.of(code);
    if (page.isEmpty()) {
      throw wrong(
          "there is no page about \""
              + code
              + "\""
              + Nearest.of(code, ExplainedCodes.all())
                  .map(it -> "; did you mean " + it + "?")
                  .orElse("; a code stands in brackets, as in error[unknown-key]"));
    }
    if (number().isPresent()) {
      throw wrong("a code has no torque lines: a number goes with a job file");
    }
    console.print(page.get());
    return Exit.DONE;
  }

  private int job(Path file) {
    Problems problems = new Problems();
    int exit =
        JobGroups.of(List.of(file), problems).stream()
            .findFirst()
            .map(it -> job(it, problems))
            .orElse(Exit.PROBLEMS);
    console.problems(problems.all(), "the figures of a job with errors are not explained", false);
    return problems.hasErrors() ? Exit.PROBLEMS : exit;
  }

  private int job(JobGroups group, Problems problems) {
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, Layouts.builtIn(), fonts, Optional.empty());
    Optional<ShopFolder> folder = folders.read(group.root(), problems);
    Optional<Resolved> resolved =
        folder.flatMap(it -> maker.resolve(group.jobs().get(0), it, problems));
    Optional<Sheet> sheet = resolved.flatMap(it -> Planner.plan(it, problems));
    sheet.filter(it -> !problems.hasErrors()).ifPresent(it -> tell(resolved.get(), it));
    return Exit.DONE;
  }

  private void tell(Resolved resolved, Sheet sheet) {
    List<TorqueLine> lines =
        sheet.torque().stream()
            .filter(line -> number().map(n -> n == line.n()).orElse(true))
            .toList();
    if (lines.isEmpty()) {
      throw wrong("the job has torque lines 1 to " + sheet.torque().size());
    }
    String gap = "";
    for (TorqueLine line : lines) {
      console.print(gap + LineChain.print(resolved, line));
      gap = "\n";
    }
  }

  private CommandLine.ParameterException wrong(String what) {
    return new CommandLine.ParameterException(spec.commandLine(), what);
  }
}
