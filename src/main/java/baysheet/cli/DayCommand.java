package baysheet.cli;

import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.box.Form;
import baysheet.files.DayFolders;
import baysheet.files.JobGroups;
import baysheet.files.ShopFolders;
import baysheet.files.Writers;
import baysheet.files.YamlFiles;
import baysheet.garage.DayReport;
import baysheet.layout.Fonts;
import baysheet.layout.MissingGlyph;
import baysheet.layout.PageFit;
import baysheet.ledger.Disk;
import baysheet.ledger.Tables;
import baysheet.ledger.Tables.Column;
import baysheet.output.AsyncValue;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.LayoutProblems;
import baysheet.output.OutFiles;
import baysheet.output.OutputLock;
import baysheet.output.SheetMaker;
import baysheet.output.SummaryLine;
import baysheet.output.Targets;
import baysheet.pdf.PdfInfo;
import baysheet.record.DayRecord;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.template.LayoutTemplates;
import baysheet.wording.DayText;
import baysheet.wording.DayText.JobText;
import baysheet.wording.DayWords;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that lays out a day: timetable, evening list, parts, state. */
final class DayCommand extends Command {
  /** The name of a day's page, which no job can have. */
  private final ShopChoice choice;

  private final PositionalParamSpec day =
      at(
          0,
          "DAY",
          "0..1",
          Path.class,
          "today, tomorrow, a date such as 2026-03-02, or a day folder (default: today).");

  private final OptionSpec out =
      option(
          "--out",
          "DIR",
          Path.class,
          "Where the page goes, as DIR/DAY/day.pdf (default: the shop's).");

  private final OptionSpec parts =
      option("--parts", "FILE", Path.class, "Also write the parts to order, as CSV.");

  private final OptionSpec paper = add(Papers.option());
  private final OptionSpec json = flag("--json", "Print the day as JSON.");

  DayCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        Targets.DAY,
        "Lay out a day: who does what in which bay, what is at risk, what to have ready the"
            + " evening before.");
    this.choice = new ShopChoice(today);
    add(choice.shop);
  }

  @Override
  public Integer call() {
    AsyncValue<Fonts> fonts = AsyncValue.start(Fonts::builtIn);
    AsyncValue<LayoutTemplates> layouts = AsyncValue.start(LayoutTemplates::ofDay);
    Writers writers = new Writers();
    // If making one fails here, it fails again, and is reported, where it is needed.
    CompletableFuture.runAsync(writers::prepare);
    Optional<Shop.Paper> size = Papers.given(paper, line());
    Path folder =
        Options.<Path>given(day)
            .map(word -> choice.meant(word, line()))
            .orElseGet(() -> choice.today(line()));
    Problems problems = new Problems();
    List<JobGroups> groups = JobGroups.of(List.of(folder), problems);
    Optional<LocalDate> date = DayFolders.date(folder);
    if (!groups.isEmpty() && date.isEmpty()) {
      throw wrong("a day is wanted, not \"" + YamlFiles.shown(folder) + '"');
    }
    boolean done = false;
    for (JobGroups group : groups) {
      ShopFolders folders = new ShopFolders(fonts.get());
      Optional<ShopFolder> read = folders.read(group.root(), problems);
      if (read.isPresent()) {
        Shop shop = read.get().shop();
        SheetMaker maker =
            new SheetMaker(
                folders, AsyncValue.onDemand(LayoutTemplates::builtIn), fonts.get(), size);
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
      Path file = place.resolve(date.toString()).resolve(Targets.DAY + ".pdf");
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
      words.risks().forEach(it -> console.say("At risk: " + it.what() + " " + it.why()));
      words.gone().forEach(console::say);
      for (DayText.LinesText list : words.evening()) {
        list.lines().forEach(it -> console.say(list.heading() + ": " + it.job() + " " + it.text()));
      }
      words.prepare().forEach(it -> console.say("Prepare: " + it.job() + " " + it.text()));
      words
          .parts()
          .forEach(
              it ->
                  it.parts().forEach(part -> console.say("Order parts: " + it.job() + " " + part)));
      file.ifPresent(it -> console.say(YamlFiles.shown(it)));
    }
  }

  /** The timetable for the terminal. */
  private static final class DayTable {
    private static final List<Column> COLUMNS =
        List.of(
            new Column("FROM–TO", "times"),
            new Column("JOB", "job"),
            new Column("BAY", "bay"),
            new Column("PEOPLE", "people"),
            new Column("SECOND PERSON", "second"),
            new Column("SPECIAL TOOLS", "tools"),
            new Column("PROMISED", "promised"),
            new Column("SHEET", "state"));

    private DayTable() {}

    static String of(List<JobText> jobs) {
      return Tables.text(
          new Tables.Table(
              COLUMNS,
              jobs.stream()
                  .map(
                      it ->
                          List.<Object>of(
                              it.times(),
                              it.job(),
                              it.bay(),
                              it.people(),
                              it.second(),
                              it.tools(),
                              it.promised(),
                              it.state()))
                  .toList()));
    }
  }

  /** Sets the page of a day. */
  private record DayPage(
      Fonts fonts,
      Supplier<LayoutTemplates> layouts,
      Writers writers,
      Shop shop,
      Shop.Paper paper) {
    private static final List<String> KEYWORDS = List.of("timetable");

    /**
     * The page as a PDF; empty when problems were added.
     *
     * @param day the folder of the job files
     */
    Optional<byte[]> pdf(DayReport report, Path day, Problems problems) {
      DayText words = DayText.of(report, shop, paper);
      Optional<Form> form = layouts.get().fill(words, problems);
      if (form.isEmpty()) {
        return Optional.empty();
      }
      LayoutProblems trouble = new LayoutProblems(new Source(YamlFiles.shown(day), ""));
      List<MissingGlyph> missing = MissingGlyph.in(form.get(), fonts);
      if (!missing.isEmpty()) {
        trouble.missingGlyphs(missing, problems);
        return Optional.empty();
      }
      PageFit fit = PageFit.fit(form.get(), fonts);
      if (fit instanceof PageFit.Fitted fitted) {
        PdfInfo info =
            new PdfInfo(
                words.title(),
                "en",
                words.shop(),
                words.title(),
                KEYWORDS,
                report.day().date().atStartOfDay(ZoneOffset.UTC).toInstant(),
                words.title());
        return Optional.of(writers.write(writer -> writer.write(fitted.page(), info, List.of())));
      }
      trouble.unfit(fit, problems);
      return Optional.empty();
    }
  }
}
