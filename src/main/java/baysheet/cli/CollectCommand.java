package baysheet.cli;

import baysheet.collect.CollectedForms;
import baysheet.collect.CollectedJobs;
import baysheet.collect.CollectedJobs.Job;
import baysheet.collect.Collecting;
import baysheet.collect.Collecting.Page;
import baysheet.collect.Collecting.Result;
import baysheet.collect.SignedPages;
import baysheet.files.YamlFiles;
import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.Ledger;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.report.Problems;
import baysheet.report.TerminalText;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that reads the scans of signed sheets. */
final class CollectCommand extends LedgerCommand {
  /** A stack of fewer pages is read before anybody wonders. */
  private static final int LONG = 20;

  private static final int STEP = 10;

  /** A code of another maker may be a whole letter. */
  private static final int LONGEST_REASON = 200;

  private final Supplier<LocalDate> today;

  private final PositionalParamSpec scans =
      rest("SCAN", "1..*", Path.class, "Scans of signed sheets: PDF, TIFF, PNG or JPEG.");

  private final OptionSpec json = json();

  CollectCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "collect",
        "Read scans of signed sheets: find each one's job, and say what is still open.");
    this.today = today;
  }

  /** What a run came to. */
  private record Outcome(
      List<Page> pages, List<Job> jobs, List<Path> reviews, List<Path> typed, Ledger ledger) {
    boolean isOpen() {
      return pages.stream().anyMatch(it -> isLost(it))
          || jobs.stream().anyMatch(it -> it.state() != CollectedJobs.State.COMPLETE);
    }

    private static boolean isLost(Page page) {
      return page.result() == Result.UNREAD || page.result() == Result.UNKNOWN;
    }
  }

  @Override
  public Integer call() {
    Console.muteRemarksOnFonts();
    Problems problems = new Problems();
    boolean isOpen =
        whileHeld(
            problems,
            ledger -> {
              Outcome outcome = collect(ledger);
              print(outcome);
              return outcome.isOpen();
            });
    console.problems(
        problems.all(), problems.hasErrors() ? "nothing was read" : "it was done", false);
    return Math.max(isOpen ? Exit.PROBLEMS : Exit.DONE, Exit.of(problems));
  }

  private Outcome collect(Ledger ledger) {
    Path out = folder();
    Collecting collecting = new Collecting(out, ledger, today.get());
    for (Path scan : Options.<Path>all(scans)) {
      collecting.read(scan, (page, of) -> progress(scan, page, of));
    }
    CollectedForms forms = new CollectedForms(out, ledger.index(), collecting.returned());
    collecting.record();
    List<Path> typed = forms.write(collecting.typed());
    Set<LocalDate> days =
        collecting.pages().stream()
            .flatMap(it -> it.sheet().stream())
            .map(it -> it.issued().date())
            .collect(Collectors.toCollection(TreeSet::new));
    List<Path> reviews = days.stream().flatMap(day -> forms.review(day).stream()).toList();
    List<Job> jobs =
        days.stream().flatMap(day -> CollectedJobs.of(ledger.index(), day, out).stream()).toList();
    return new Outcome(collecting.pages(), jobs, reviews, typed, ledger);
  }

  private void progress(Path scan, int page, int of) {
    if (of > LONG && page % STEP == 0) {
      console.err().println(TerminalText.safe(name(scan) + ": read " + page + " of " + of));
      console.err().flush();
    }
  }

  private static String name(Path scan) {
    return String.valueOf(scan.getFileName());
  }

  private void print(Outcome outcome) {
    if (Options.isGiven(json)) {
      console.print(
          JsonText.indented(
              new JsonObject()
                  .put("format", 1)
                  .list("pages", outcome.pages(), it -> json(it, outcome.ledger()))
                  .list("jobs", outcome.jobs(), CollectCommand::json)));
      return;
    }
    outcome.pages().stream().filter(it -> it.result() != Result.READ).forEach(this::say);
    outcome.jobs().forEach(job -> console.say(line(job, outcome.pages())));
    outcome.typed().forEach(it -> console.say("left as it was typed in: " + YamlFiles.shown(it)));
    outcome.reviews().forEach(it -> console.say("look through " + YamlFiles.shown(it)));
  }

  private static String word(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }

  private void say(Page page) {
    String where = page.number() == 0 ? page.file() : page.file() + ", page " + page.number();
    String sheet = page.sheet().map(it -> " " + it.id()).orElse("");
    String result = page.result() == Result.TWICE ? "scanned twice" : word(page.result());
    String at = page.at().map(it -> "; kept as " + YamlFiles.shown(it)).orElse("");
    console.say(
        TerminalText.safe(where + ": " + result + sheet + ": " + bounded(page.reason()) + at));
  }

  private static String bounded(String reason) {
    return TerminalText.bounded(reason, LONGEST_REASON);
  }

  private String line(Job job, List<Page> pages) {
    String what =
        switch (job.state()) {
          case MISSING -> missing(job, pages);
          case OPEN -> "open: " + job.words();
          case COMPLETE -> job.isClosed() ? "complete, closed" : "complete, not closed yet";
        };
    return job.day()
        + "  "
        + job.job()
        + "  "
        + what
        + figures(job.figures(), "to type in")
        + figures(job.typed(), "typed in, to look through");
  }

  private static String figures(long count, String what) {
    return count == 0 ? "" : "; " + count + (count == 1 ? " figure " : " figures ") + what;
  }

  private static String missing(Job job, List<Page> pages) {
    return pages.stream()
        .filter(it -> it.result() == Result.SUPERSEDED)
        .flatMap(it -> it.sheet().stream())
        .filter(it -> it.issued().job().equals(job.job()))
        .findFirst()
        .map(it -> "missing; only " + it.id() + " came back, which is superseded")
        .orElse("missing: its sheet has not come back");
  }

  private static JsonObject json(Page page, Ledger ledger) {
    JsonObject json =
        new JsonObject()
            .put("file", page.file())
            .put("page", page.number())
            .put("result", word(page.result()))
            .put("reason", bounded(page.reason()));
    page.sheet()
        .ifPresent(
            it ->
                json.put("sheet", it.id())
                    .put("job", it.issued().job())
                    .put("stage", ledger.index().record(it.id()).map(KeptRecord::stage).orElse(1)));
    return json.put("kept", page.at().map(YamlFiles::shown))
        .list("boxes", page.boxes(), SignedPages::json);
  }

  private static JsonObject json(Job job) {
    return new JsonObject()
        .put("job", job.job())
        .put("day", job.day())
        .put("state", word(job.state()))
        .put("open", job.open())
        .put("doubtful", job.doubtful())
        .put("closed", job.isClosed())
        .put("figures", job.figures())
        .put("typed", job.typed());
  }
}
