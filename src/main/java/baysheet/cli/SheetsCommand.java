package baysheet.cli;

import baysheet.books.Shop;
import baysheet.layout.Fonts;
import baysheet.template.Layouts;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command that makes bay sheets. */
@Command(
    name = "sheets",
    description = "Make the bay sheets of a day, or of single jobs.",
    mixinStandardHelpOptions = true)
final class SheetsCommand implements Callable<Integer> {
  private final Console console;
  private final Supplier<LocalDate> today;
  private final Ahead ahead;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "DAY-FOLDER|JOB.yaml",
      arity = "0..*",
      description =
          "Folders of job files, or job files. Without any: today's folder of the shop here or in jobs/.")
  private List<Path> paths = new ArrayList<>();

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      defaultValue = "out",
      description =
          "Where sheets go, as DIR/DAY/JOB.pdf and DIR/DAY/all.pdf (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Option(
      names = "--paper",
      paramLabel = "A4|Letter",
      description = "Paper, in place of the shop's.")
  private Optional<String> paper = Optional.empty();

  @Option(
      names = "--templates",
      paramLabel = "DIR",
      description = "Take the layout bay-sheet.ftlx from this folder.")
  private Optional<Path> templates = Optional.empty();

  @Option(
      names = "--record",
      description = "Also write each sheet's figures, as JOB.json beside it.")
  private boolean record;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = "How many sheets are made at one time (default: one a core).")
  private Optional<Integer> threads = Optional.empty();

  SheetsCommand(Console console, Supplier<LocalDate> today, Ahead ahead) {
    this.console = console;
    this.today = today;
    this.ahead = ahead;
  }

  @Override
  public Integer call() {
    Supplier<Layouts> layouts =
        templates
            .<Supplier<Layouts>>map(folder -> Early.start(() -> Layouts.in(folder)))
            .orElse(ahead.layouts());
    Fonts fonts = ahead.fonts().get();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, layouts, fonts, paper());
    Batch batch = new Batch(maker::make, threads(), ahead.writers());
    return new Sheets(console, folders, batch, out, record).run(paths.isEmpty() ? today() : paths);
  }

  private Optional<Shop.Paper> paper() {
    return paper.map(
        word ->
            List.of(Shop.Paper.values()).stream()
                .filter(size -> size.word().equals(word))
                .findFirst()
                .orElseThrow(() -> wrong("--paper takes A4 or Letter, not \"" + word + "\"")));
  }

  private int threads() {
    int wanted = threads.orElse(Runtime.getRuntime().availableProcessors());
    if (wanted < 1) {
      throw wrong("--jobs takes a whole number from 1, not " + wanted);
    }
    return wanted;
  }

  /** The folder of today, in the shop folder here or in jobs/. */
  private List<Path> today() {
    Path root = ShopFolders.rootOf(Path.of("")).orElse(Path.of("jobs"));
    return List.of(root.resolve(today.get().toString()));
  }

  private CommandLine.ParameterException wrong(String what) {
    return new CommandLine.ParameterException(spec.commandLine(), what);
  }
}
