package baysheet.cli;

import baysheet.files.DayFolders;
import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Event;
import baysheet.ledger.Event.Withdrawn;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OutFiles;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that takes a cancelled job off its day. */
final class WithdrawCommand extends Command {
  /** Beside the sheets of a day: what was withdrawn. */
  private static final String FOLDER = "withdrawn";

  private final Supplier<LocalDate> today;
  private final JobOfShop jobs;

  private final PositionalParamSpec job = at(0, "JOB", "1", String.class, "The number of the job.");

  WithdrawCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "withdraw",
        "Cancel a job: its sheet leaves the pile, and its file goes beside it.");
    this.today = today;
    this.jobs = new JobOfShop(console, today);
    add(jobs.choice.shop);
    add(jobs.out);
  }

  @Override
  public Integer call() {
    JobOfShop.Found from = jobs.find(job.getValue(), line());
    Problems problems = new Problems();
    jobs.inLedger(from, problems, this::write);
    if (problems.hasErrors()) {
      console.problems(problems.all(), "the job stays on its day", false);
      return Exit.of(problems);
    }
    console.problems(problems.all(), "the job was withdrawn", false);
    Path kept = free(from);
    move(from.file(), kept);
    console.say(
        YamlFiles.name(from.file()) + "  withdrawn; its file is now " + YamlFiles.shown(kept));
    return jobs.tidy(from);
  }

  /** By copying, for the sheets may lie on another device. */
  private static void move(Path file, Path to) {
    try {
      new OutFiles(Disk.REAL).write(to, Files.readAllBytes(file));
      Files.delete(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot move " + file, e);
    }
  }

  private void write(Optional<Ledger> ledger, List<SheetStory> sheets) {
    sheets.stream()
        .filter(it -> it.state() == SheetStory.State.CLOSED)
        .findFirst()
        .ifPresent(
            it -> {
              throw wrong("the sheet " + it.id() + " is closed: its work was done");
            });
    List<Event> withdrawn = new ArrayList<>();
    sheets.stream()
        .filter(it -> !it.hasLeft())
        .forEach(it -> withdrawn.add(new Withdrawn(today.get(), it.id())));
    if (!withdrawn.isEmpty()) {
      ledger.orElseThrow().add(withdrawn, List.of());
    }
  }

  /** A name that nothing has: 502.yaml, 502-2.yaml. */
  private static Path free(JobOfShop.Found from) {
    String name = YamlFiles.name(from.file());
    Path folder = from.out().resolve(DayFolders.day(from.file())).resolve(FOLDER);
    Path free = folder.resolve(name + YamlFiles.ENDING);
    for (int count = 2; Files.exists(free); count++) {
      free = folder.resolve(name + "-" + count + YamlFiles.ENDING);
    }
    return free;
  }
}
