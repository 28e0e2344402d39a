package baysheet.cli;

import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.garage.DayReport;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.record.DayRecord;
import baysheet.report.Problems;
import baysheet.template.Layouts;
import baysheet.wording.DayText;
import baysheet.wording.DayWords;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that lays out a day: timetable, evening list, parts, state. */
final class DayCommand implements Callable<Integer> {
  /** The name of a day's page, which no job can have. */
  static final String NAME = "day";

  private final Console console;
  private final ShopChoice choice;

  private final PositionalParamSpec day =
      Options.at(
          0,
          "DAY",
          "0..1",
          Path.class,
          "today, tomorrow, a date such as 2026-03-02, or a day folder (default: today).");

  private final OptionSpec out =
      Options.one(
          "--out",
          "DIR",
          Path.class,
          "Where the page goes, as DIR/DAY/day.pdf (default: the shop's).");

  private final OptionSpec parts =
      Options.one("--parts", "FILE", Path.class, "Also write the parts to order, as CSV.");

  private final OptionSpec paper = Papers.option();
  private final OptionSpec json = Options.flag("--json", "Print the day as JSON.");
  private final CommandSpec spec;

  DayCommand(Console console, Supplier<LocalDate> today) {
    this.console = console;
    this.choice = new ShopChoice(today);
    this.spec =
        Options.command(
            NAME,
            "Lay out a day: who does what in which bay, what is at risk, what to have ready the"
                + " evening before.",
            this,
            List.of(day, choice.shop, out, parts, paper, json));
  }

  CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    AsyncValue<Fonts> fonts = AsyncValue.start(Fonts::builtIn);
    AsyncValue<Layouts> layouts = AsyncValue.start(Layouts::ofDay);
    Writers writers = new Writers();
    // If making one fails here, it fails again, and is reported, where it is needed.
    CompletableFuture.runAsync(writers::prepare);
    Optional<Shop.Paper> size = Papers.given(paper, spec.commandLine());
    Path folder =
        Options.<Path>given(day)
            .map(word -> choice.meant(word, spec.commandLine()))
            .orElseGet(() -> choice.today(spec.commandLine()));
    Problems problems = new Problems();
    List<JobGroups> groups = JobGroups.of(List.of(folder), problems);
    Optional<LocalDate> date = DayFolders.date(folder);
    if (!groups.isEmpty() && date.isEmpty()) {
      throw new WrongCommandLine(
          spec.commandLine(), "a day is wanted, not \"" + YamlFiles.shown(folder) + '"');
    }
    boolean done = false;
    for (JobGroups group : groups) {
      ShopFolders folders = new ShopFolders(fonts.get());
      Optional<ShopFolder> read = folders.read(group.root(), problems);
      if (read.isPresent()) {
        Shop shop = read.get().shop();
        SheetMaker maker =
            new SheetMaker(folders, AsyncValue.onDemand(Layouts::builtIn), fonts.get(), size);
        DayPage page = new DayPage(fonts.get(), layouts, writers, shop, size.orElse(shop.paper()));
        done = new Run(group, read.get(), date.orElseThrow(), maker, page, problems).run();
      }
    }
    console.problems(
        problems.all(), done ? "the day was laid out" : "the day was not laid out", false);
    return Exit.of(problems);
  }

  /** One day. */
  private final class Run {
    private final JobGroups group;
    private final ShopFolder folder;
    private final LocalDate date;
    private final DayReader reader;
    private final DayPage page;
    private final Path place;
    private final Problems problems;

    Run(
        JobGroups group,
        ShopFolder folder,
        LocalDate date,
        SheetMaker maker,
        DayPage page,
        Problems problems) {
      this.group = group;
      this.folder = folder;
      this.date = date;
      this.reader = new DayReader(maker, folder);
      this.page = page;
      this.place =
          Options.<Path>given(out)
              .orElseGet(() -> OutFolder.of(group.root(), Optional.of(folder.shop())));
      this.problems = problems;
    }

    boolean run() {
      DayReader.Jobs jobs = reader.jobs(group.jobs(), problems).and(group.unread());
      jobs.faults().forEach(console::trace);
      DayReport report = reader.report(date, jobs, place, problems);
      if (jobs.planned().isEmpty()) {
        console.say(SummaryLine.unplanned(group.root().resolve(date.toString())));
        return false;
      }
      Path file = place.resolve(date.toString()).resolve(NAME + ".pdf");
      Optional<byte[]> pdf = page.pdf(report, group.root().resolve(date.toString()), problems);
      OutFiles files = new OutFiles(Disk.REAL);
      OutputLock.whileHeld(
          place,
          () -> {
            pdf.filter(bytes -> !OutFiles.holds(file, bytes))
                .ifPresent(bytes -> files.write(file, bytes));
            Options.<Path>given(parts)
                .ifPresent(csv -> files.write(csv.toAbsolutePath(), PartsCsv.of(report.evening())));
          });
      if (Options.isGiven(json)) {
        console.print(DayRecord.print(report));
      } else {
        tell(report, pdf.map(bytes -> file));
      }
      return pdf.isPresent();
    }

    private void tell(DayReport report, Optional<Path> file) {
      DayWords words = new DayWords(report, folder.shop());
      console.say(date + "  " + words.hours());
      console.print(DayTable.of(words.jobs()));
      words.risks().forEach(line -> console.say("At risk: " + line));
      words.gone().forEach(console::say);
      for (DayText.LinesText list : words.evening()) {
        list.lines().forEach(it -> console.say(list.heading() + ": " + it.job() + " " + it.text()));
      }
      words.prepare().forEach(it -> console.say("Prepare: " + it.job() + " " + it.text()));
      words.parts().forEach(it -> console.say("Order parts: " + it.job() + " " + it.parts()));
      file.ifPresent(it -> console.say(YamlFiles.shown(it)));
    }
  }
}
