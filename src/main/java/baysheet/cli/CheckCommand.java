package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.layout.Fonts;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.FolderCheck;
import baysheet.template.Layouts;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The command that reports every problem and writes nothing. */
@Command(
    name = "check",
    description = "Report every problem of a shop folder and its jobs; write nothing.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(
      paramLabel = "PATH",
      arity = "0..*",
      description =
          "Shop folders, day folders or job files. Without any: the shop here or in jobs/.")
  private List<Path> paths = new ArrayList<>();

  @Option(names = "--json", description = "Print the problems as JSON.")
  private boolean json;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, Layouts.builtIn(), fonts, Optional.empty());
    Batch batch = new Batch(maker::make, Runtime.getRuntime().availableProcessors());
    Problems problems = new Problems();
    int jobs = 0;
    for (Map.Entry<Path, Set<Path>> shop : shops(problems).entrySet()) {
      jobs += shop.getValue().size();
      check(shop.getKey(), List.copyOf(shop.getValue()), folders, batch, problems);
    }
    tell(problems, jobs);
    return problems.hasErrors() ? Exit.PROBLEMS : Exit.DONE;
  }

  private void tell(Problems problems, int jobs) {
    console.problems(problems.all(), "nothing was written", json);
    if (problems.all().isEmpty() && !json) {
      console.say("no problems; " + jobs + (jobs == 1 ? " job" : " jobs") + " checked");
    }
  }

  /** Shop folders with the job files to look at. */
  private Map<Path, Set<Path>> shops(Problems problems) {
    Map<Path, Set<Path>> shops = new LinkedHashMap<>();
    List<Path> named = paths.isEmpty() ? List.of(here()) : paths;
    for (Path path : named) {
      boolean whole = Files.isRegularFile(path.resolve(ShopFolders.SHOP_FILE));
      if (whole) {
        Path root = path.toAbsolutePath().normalize();
        shops.computeIfAbsent(root, key -> new LinkedHashSet<>()).addAll(DayFolders.all(root));
      } else {
        for (JobGroups group : JobGroups.of(List.of(path), problems)) {
          shops.computeIfAbsent(group.root(), key -> new LinkedHashSet<>()).addAll(group.jobs());
        }
      }
    }
    return shops;
  }

  private static Path here() {
    return ShopFolders.rootOf(Path.of("")).orElse(Path.of("jobs"));
  }

  private static void check(
      Path root, List<Path> jobs, ShopFolders folders, Batch batch, Problems problems) {
    Optional<ShopFolder> folder = folders.read(root, problems);
    if (folder.isEmpty()) {
      return;
    }
    FolderCheck.check(folder.get(), problems);
    batch.run(
        jobs,
        folder.get(),
        outcome -> {
          problems.addAll(outcome.problems());
          outcome.fault().ifPresent(fault -> problems.add(fault(outcome.job(), fault)));
        });
  }

  private static Problem fault(Path job, Throwable fault) {
    return Problem.error(
        "tool-fault",
        new Source(YamlFiles.shown(job), "").whole(),
        "a fault of the tool itself; no sheet would be made: " + fault.getMessage());
  }
}
