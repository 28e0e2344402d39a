package baysheet.cli;

import baysheet.ledger.Disk;
import baysheet.ledger.Forgetting;
import baysheet.ledger.Index;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The command that deletes the names, plates, pages and notes of old jobs. */
final class ForgetCommand implements Callable<Integer> {
  private final Console console;
  private final AskLedger ask;
  private final Supplier<LocalDate> today;

  private final OptionSpec before =
      Options.one("--before", "DATE", String.class, "Jobs of earlier days are forgotten.");

  private final CommandSpec spec;

  ForgetCommand(Console console, Supplier<LocalDate> today) {
    this.console = console;
    this.today = today;
    ask = new AskLedger(console);
    spec =
        Options.command(
            "forget",
            "Delete the names, plates, pages and typed notes of old jobs; figures stay, by sheet"
                + " id.",
            this,
            List.of(before, ask.out));
  }

  CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    OptionParser typed = new OptionParser(spec.commandLine());
    LocalDate day =
        typed
            .word(before, IsoDate::parse)
            .orElseThrow(() -> typed.wrong("forget needs --before DATE"));
    Path folder = ask.ledger(spec.commandLine());
    Problems problems = new Problems();
    OutputLock.whileHeld(
        ask.folder(),
        () -> {
          try (Ledger ledger = Ledger.open(folder, Disk.REAL, problems).orElse(null)) {
            if (ledger != null) {
              forget(new Forgetting(day), ledger);
            }
          }
        });
    console.problems(
        problems.all(), problems.hasErrors() ? "nothing was forgotten" : "it was done", false);
    return Exit.of(problems);
  }

  private void forget(Forgetting forgetting, Ledger ledger) {
    List<SheetStory> stories = forgetting.sheets(ledger.index());
    long notClosed = stories.stream().filter(it -> it.closed().isEmpty()).count();
    List<Path> others =
        stories.stream().flatMap(it -> pages(it, ledger.index()).stream()).distinct().toList();
    Forgetting.Done done = forgetting.run(ledger, others, today.get());
    console.say(
        "forgot %s of before %s%s: %s lines with names and notes, and %s files"
            .formatted(
                done.sheets().size() + (done.sheets().size() == 1 ? " sheet" : " sheets"),
                forgetting.before(),
                notClosed == 0 ? "" : ", " + notClosed + " of them never closed",
                done.lines(),
                done.files()));
  }

  /** What shows the sheet among the files of its day: other files of the folder stay. */
  private List<Path> pages(SheetStory story, Index index) {
    Path day = ask.folder().resolve(story.issued().day());
    String job = Pattern.quote(story.issued().name());
    Set<Path> pages = new LinkedHashSet<>();
    pages.addAll(matching(day, "(" + job + "|" + Targets.ALL + ")\\.(pdf|json)"));
    pages.addAll(matching(day.resolve("withdrawn"), job + "(-[0-9]+)?\\.(pdf|json)"));
    String name = index.record(story.id()).map(KeptRecord::name).orElse(story.issued().job());
    String signed = "(" + Pattern.quote(name) + "|" + Pattern.quote(story.id()) + ")";
    pages.addAll(matching(day.resolve(SignedForm.FOLDER), signed + "\\.(pdf|yaml)|review\\.pdf"));
    return List.copyOf(pages);
  }

  private static List<Path> matching(Path folder, String names) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(it -> it.getFileName().toString().matches(names)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }
}
