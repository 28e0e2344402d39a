package baysheet.cli;

import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.Writers;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.output.Batch;
import baysheet.output.Console;
import baysheet.output.SheetIssuer;
import baysheet.output.SheetMaker;
import baysheet.output.Sheets;
import baysheet.report.Problems;
import baysheet.template.LayoutTemplates;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** A job by its number, with its file and its sheets: for commands that take it off its day. */
final class JobOfShop {
  final ShopChoice choice;

  final OptionSpec out =
      OptionSpec.builder("-o", "--out")
          .paramLabel("DIR")
          .type(Path.class)
          .description("The folder of the sheets (default: the shop's).")
          .build();

  private final Console console;
  private final Supplier<LocalDate> today;

  JobOfShop(Console console, Supplier<LocalDate> today) {
    this.console = console;
    this.today = today;
    this.choice = new ShopChoice(today);
  }

  /**
   * What was found.
   *
   * @param out the folder of the sheets
   */
  record Found(Path root, Path file, Path out) {
    Path day() {
      return DayFolders.whole(file).getParent();
    }
  }

  Found find(String number, CommandLine command) {
    Path root = choice.root(command);
    Map<String, List<Path>> known = DayFolders.byNumber(root);
    List<Path> files = known.getOrDefault(DayFolders.number(Path.of(number)), List.of());
    if (files.isEmpty()) {
      throw new WrongCommandLine(command, "the shop has no job \"" + number + '"')
          .near(number, known.keySet(), "the number of a job file in " + YamlFiles.shown(root));
    }
    if (files.size() > 1) {
      throw new WrongCommandLine(
          command,
          "job \"%s\" is in several days: %s"
              .formatted(number, files.stream().map(YamlFiles::shown).toList()));
    }
    Path place = Options.<Path>given(out).orElseGet(() -> OutFolder.of(root));
    return new Found(root, files.get(0), place);
  }

  /**
   * Does something with the ledger, where there is one, and with the sheets in it by which the job
   * is to be done on its day.
   */
  void inLedger(
      Found found, Problems problems, BiConsumer<Optional<Ledger>, List<SheetStory>> work) {
    Path folder = found.out().resolve(SheetIssuer.LEDGER);
    if (!Files.isDirectory(folder)) {
      work.accept(Optional.empty(), List.of());
      return;
    }
    try (Ledger open = Ledger.open(folder, Disk.REAL, problems).orElse(null)) {
      if (open != null) {
        String job = YamlFiles.name(found.file());
        String day = DayFolders.day(found.file());
        work.accept(
            Optional.of(open),
            open.index().current(job).stream()
                .filter(it -> it.issued().day().equals(day))
                .toList());
      }
    }
  }

  /** Takes the sheet of a job that has left its day out of the pile. */
  int tidy(Found found) {
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, LayoutTemplates.builtIn(), fonts, Optional.empty());
    SheetIssuer issues = new SheetIssuer(found.out(), Disk.REAL, today);
    Batch batch = new Batch(maker::make, 1, new Writers(), issues);
    Sheets.Output output = new Sheets.Output(found.out(), false, false, Disk.REAL);
    return new Sheets(console, folders, batch, issues, output).tidy(found.root(), found.day());
  }
}
