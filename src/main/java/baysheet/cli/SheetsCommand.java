package baysheet.cli;

import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.template.Layouts;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that makes bay sheets. */
final class SheetsCommand implements Callable<Integer> {
  private final Console console;
  private final Supplier<LocalDate> today;
  private final Ahead ahead;

  private final PositionalParamSpec paths =
      Options.rest(
          "DAY-FOLDER|JOB.yaml",
          "0..*",
          Path.class,
          "Folders of job files, or job files. Without any: today's folder of the shop here or in"
              + " jobs/.");

  private final OptionSpec out =
      OptionSpec.builder("-o", "--out")
          .paramLabel("DIR")
          .type(Path.class)
          .defaultValue("out")
          .description(
              "Where sheets go, as DIR/DAY/JOB.pdf and DIR/DAY/all.pdf (default:"
                  + " ${DEFAULT-VALUE}).")
          .build();

  private final OptionSpec paper = Papers.option();

  private final OptionSpec templates =
      Options.one(
          "--templates", "DIR", Path.class, "Take the layout bay-sheet.ftlx from this folder.");

  private final OptionSpec record =
      Options.flag(
          "--record",
          "Also write each sheet's figures, as JOB.json beside it; a JOB.json that is there is"
              + " always kept up to date.");

  private final OptionSpec threads =
      Options.one(
          "--jobs",
          "N",
          Integer.class,
          "How many sheets are made at one time (default: one a core).");

  private final OptionSpec again =
      Options.flag(
          "--again",
          "Also write sheets anew that lie there unchanged; they are byte for byte the same.");

  private final CommandSpec spec =
      Options.command(
          "sheets",
          "Make the bay sheets of a day, or of single jobs.",
          this,
          List.of(paths, out, paper, templates, record, again, threads));

  SheetsCommand(Console console, Supplier<LocalDate> today, Ahead ahead) {
    this.console = console;
    this.today = today;
    this.ahead = ahead;
  }

  CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Supplier<Layouts> layouts =
        Options.<Path>given(templates)
            .<Supplier<Layouts>>map(folder -> Early.start(() -> Layouts.in(folder)))
            .orElse(ahead.layouts());
    Fonts fonts = ahead.fonts().get();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, layouts, fonts, Papers.given(paper, spec.commandLine()));
    Path folder = out.getValue();
    Issues issues = new Issues(folder, Disk.REAL, Early.start(today));
    Batch batch = new Batch(maker::make, threads(), ahead.writers(), issues);
    List<Path> named = Options.all(paths);
    Sheets.Output output =
        new Sheets.Output(folder, Options.isGiven(record), Options.isGiven(again), Disk.REAL);
    return new Sheets(console, folders, batch, issues, output)
        .run(named.isEmpty() ? today() : named);
  }

  private int threads() {
    int wanted = Options.<Integer>given(threads).orElse(Runtime.getRuntime().availableProcessors());
    if (wanted < 1) {
      throw wrong("--jobs takes a whole number from 1, not " + wanted);
    }
    return wanted;
  }

  /** The folder of today, in the shop folder here or in jobs/. */
  private List<Path> today() {
    Path root = ShopFolders.here().orElseThrow(() -> wrong(ShopFolders.NOT_HERE));
    return List.of(root.resolve(today.get().toString()));
  }

  private WrongCommandLine wrong(String what) {
    return new WrongCommandLine(spec.commandLine(), what);
  }
}
