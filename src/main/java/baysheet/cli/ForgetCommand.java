package baysheet.cli;

import baysheet.collect.SignedForm;
import baysheet.ledger.FolderEntries;
import baysheet.ledger.Forgetting;
import baysheet.ledger.Index;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OldSheets;
import baysheet.output.Targets;
import baysheet.report.Problems;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;

/** The command that deletes the names, plates, pages and notes of old jobs. */
final class ForgetCommand extends LedgerCommand {
  private final Supplier<LocalDate> today;

  private final OptionSpec before =
      option("--before", "DATE", String.class, "Jobs of earlier days are forgotten.");

  ForgetCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "forget",
        "Delete the names, plates, pages and typed notes of old jobs; figures stay, by sheet"
            + " id.");
    this.today = today;
  }

  @Override
  public Integer call() {
    OptionParser typed = new OptionParser(line());
    LocalDate day =
        typed
            .word(before, IsoDate::parse)
            .orElseThrow(() -> typed.wrong("forget needs --before DATE"));
    Problems problems = new Problems();
    whileHeld(problems, ledger -> forget(new Forgetting(day), ledger));
    console.problems(
        problems.all(), problems.hasErrors() ? "nothing was forgotten" : "it was done", false);
    return Exit.of(problems);
  }

  private boolean forget(Forgetting forgetting, Ledger ledger) {
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
    return true;
  }

  /** What shows the sheet among the files of its day: other files of the folder stay. */
  private List<Path> pages(SheetStory story, Index index) {
    Path day = folder().resolve(story.issued().day());
    String job = Pattern.quote(story.issued().name());
    Set<Path> pages = new LinkedHashSet<>();
    String id = Pattern.quote(story.id());
    String whole = job + "|" + Targets.ALL + "|" + Targets.DAY;
    pages.addAll(matching(day, "(" + whole + ")\\.(pdf|json)"));
    pages.addAll(matching(day.resolve(OldSheets.FORMS), id + "\\.pdf"));
    String withdrawn = "(" + job + "(-[0-9]+)?|" + id + ")\\.(pdf|json)";
    pages.addAll(matching(day.resolve(OldSheets.WITHDRAWN), withdrawn));
    String name = index.record(story.id()).map(KeptRecord::name).orElse(story.issued().job());
    String signed = "(" + Pattern.quote(name) + "|" + id + ")";
    pages.addAll(matching(day.resolve(SignedForm.FOLDER), signed + "\\.(pdf|yaml)|review\\.pdf"));
    return List.copyOf(pages);
  }

  private static List<Path> matching(Path folder, String names) {
    return FolderEntries.of(folder).stream()
        .filter(it -> it.getFileName().toString().matches(names))
        .toList();
  }
}
