package baysheet.cli;

import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.output.AsyncValue;
import baysheet.output.Batch;
import baysheet.output.Console;
import baysheet.output.DryRun;
import baysheet.output.Printing;
import baysheet.output.RunReport;
import baysheet.output.SheetIssuer;
import baysheet.output.SheetMaker;
import baysheet.output.Sheets;
import baysheet.print.Printer;
import baysheet.template.LayoutTemplates;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that makes bay sheets. */
final class SheetsCommand extends Command {
  private static final Pattern PART = Pattern.compile("([1-9][0-9]{0,5})/([1-9][0-9]{0,5})");

  private final Supplier<LocalDate> today;
  private final Startup ahead;

  private final PositionalParamSpec paths =
      rest(
          "DAY|JOB",
          "0..*",
          Path.class,
          "Days or jobs: today, tomorrow, a date, a job's number, a folder of job files, a job"
              + " file. Without any: today.");

  private final OptionSpec out =
      add(
          OptionSpec.builder("-o", "--out")
              .paramLabel("DIR")
              .type(Path.class)
              .description(
                  "Where sheets go, as DIR/DAY/JOB.pdf and DIR/DAY/all.pdf (default: the shop's,"
                      + " which is out beside the shop folder).")
              .build());

  private final OptionSpec paper = add(Papers.option());

  private final OptionSpec templates =
      option("--templates", "DIR", Path.class, "Take the layout bay-sheet.ftlx from this folder.");

  private final OptionSpec record =
      flag(
          "--record",
          "Also write each sheet's figures, as JOB.json beside it; a JOB.json that is there is"
              + " always kept up to date.");

  private final OptionSpec print =
      option(
          "--print",
          "PRINTER",
          String.class,
          "Print what was not printed yet: ipp://HOST/ipp/print, or the name of a queue.");

  private final OptionSpec quiet =
      add(Options.flag("Say nothing but problems.", "-q", "--quiet").build());

  private final OptionSpec json = flag("--json", "Print what was made as JSON.");

  private final ShopChoice choice;

  private final OptionSpec threads =
      option(
          "--jobs",
          "N",
          Integer.class,
          "How many sheets are made at one time (default: one a core).");

  private final OptionSpec part =
      option(
          "--part",
          "K/N",
          String.class,
          "Make part K of N: of the days and jobs that are named, in the order of their paths, every"
              + " Nth from the Kth on. All parts together make what one run makes.");

  private final OptionSpec again =
      flag(
          "--again",
          "Also write sheets anew that lie there unchanged; they are byte for byte the same.");

  private final OptionSpec fillable =
      flag(
          "--fillable",
          "Also write each sheet as a form to fill in on a screen, forms/SHEET.pdf beside it; one"
              + " that lies there is left alone, for somebody may have filled it in.");

  private final OptionSpec dryRun =
      flag("--dry-run", "Make the sheets and report problems, but write nothing.");

  SheetsCommand(Console console, Supplier<LocalDate> today, Startup ahead) {
    super(console, "sheets", "Make the bay sheets of a day, or of single jobs.");
    this.today = today;
    this.ahead = ahead;
    this.choice = new ShopChoice(today);
    add(choice.shop);
  }

  @Override
  public Integer call() {
    Supplier<LayoutTemplates> layouts =
        Options.<Path>given(templates)
            .<Supplier<LayoutTemplates>>map(
                folder -> AsyncValue.start(() -> LayoutTemplates.in(folder)))
            .orElse(ahead.layouts());
    Fonts fonts = ahead.fonts().get();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, layouts, fonts, Papers.given(paper, line()));
    List<Path> meant = meant();
    List<Path> own = Options.<String>given(part).map(it -> part(it, meant)).orElse(meant);
    if (Options.isGiven(dryRun)) {
      return new DryRun(console, folders, new Batch(maker::make, threads())).run(own);
    }
    Path folder = Options.<Path>given(out).orElseGet(() -> usual(meant));
    SheetIssuer issues = new SheetIssuer(folder, Disk.REAL, AsyncValue.start(today));
    Batch batch = new Batch(maker::make, threads(), ahead.writers(), issues);
    Sheets.Output output =
        new Sheets.Output(
            folder,
            Options.isGiven(record),
            Options.isGiven(again),
            Options.isGiven(fillable),
            Disk.REAL,
            voice(),
            printing());
    return new Sheets(console, folders, batch, issues, output).run(own);
  }

  private List<Path> meant() {
    List<Path> named = Options.all(paths);
    return named.isEmpty()
        ? List.of(choice.today(line()))
        : named.stream().map(word -> choice.meant(word, line())).toList();
  }

  /** The days and jobs of a part: by their paths, so the same ones in whatever order they come. */
  private List<Path> part(String written, List<Path> meant) {
    Matcher part = PART.matcher(written);
    if (!part.matches() || Integer.parseInt(part.group(1)) > Integer.parseInt(part.group(2))) {
      throw wrong("--part takes a part and their number, as in 3/8, not \"" + written + '"');
    }
    int parts = Integer.parseInt(part.group(2));
    Map<Path, Path> byPath = new TreeMap<>();
    meant.forEach(path -> byPath.putIfAbsent(DayFolders.whole(path), path));
    List<Path> all = List.copyOf(byPath.values());
    return IntStream.iterate(
            Integer.parseInt(part.group(1)) - 1, i -> i < all.size(), i -> i + parts)
        .mapToObj(all::get)
        .toList();
  }

  /** The place that the shop of what was named has for its sheets. */
  private static Path usual(List<Path> meant) {
    return meant.stream()
        .flatMap(path -> ShopFolders.rootOf(path).stream())
        .findFirst()
        .map(OutFolder::of)
        .orElseGet(OutFolder::here);
  }

  private RunReport.Voice voice() {
    if (Options.isGiven(json)) {
      return RunReport.Voice.JSON;
    }
    return Options.isGiven(quiet) ? RunReport.Voice.NOTHING : RunReport.Voice.LINES;
  }

  private Optional<Printing> printing() {
    return Options.<String>given(print)
        .map(
            name -> {
              try {
                return new Printing(name, Printer.of(name), Options.isGiven(again));
              } catch (IllegalArgumentException e) {
                throw wrong("--print takes ipp://HOST/ipp/print or a queue: " + e.getMessage());
              }
            });
  }

  private int threads() {
    int wanted = Options.<Integer>given(threads).orElse(Runtime.getRuntime().availableProcessors());
    if (wanted < 1) {
      throw wrong("--jobs takes a whole number from 1, not " + wanted);
    }
    return wanted;
  }
}
