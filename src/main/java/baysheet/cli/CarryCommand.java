package baysheet.cli;

import baysheet.files.DayFolders;
import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Event;
import baysheet.ledger.Event.Carried;
import baysheet.ledger.Event.Withdrawn;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OutFiles;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that carries an unfinished job to another day. */
final class CarryCommand extends Command {
  /** As this command writes it: on one line. */
  private static final Pattern CARRIED = Pattern.compile("(?m)^carried: *\\{[^\\n]*\\}[ \\t]*\\R?");

  private static final Pattern ANY_CARRIED = Pattern.compile("(?m)^carried\\s*:");
  private static final Pattern DATE = Pattern.compile("(?m)^date\\s*:");

  private final Supplier<LocalDate> today;
  private final JobOfShop jobs;

  private final PositionalParamSpec job = at(0, "JOB", "1", String.class, "The number of the job.");

  private final PositionalParamSpec day =
      at(1, "DAY", "1", String.class, "The day on which it goes on: tomorrow or 2026-03-03.");

  private final OptionSpec step =
      option("--step", "N", Integer.class, "The last step of the sheet that was done.");

  private final OptionSpec found =
      add(
          OptionSpec.builder("--found")
              .paramLabel("TEXT")
              .type(List.class)
              .auxiliaryTypes(String.class)
              .arity("1")
              .description("What was found until then. May be given several times.")
              .build());

  CarryCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "carry",
        "Carry an unfinished job to another day; its next sheet says where the work stopped.");
    this.today = today;
    this.jobs = new JobOfShop(console, today);
    add(jobs.choice.shop);
    add(jobs.out);
  }

  @Override
  public Integer call() {
    String number = job.getValue();
    JobOfShop.Found from = jobs.find(number, line());
    LocalDate to = to(from);
    Path target = from.root().resolve(to.toString()).resolve(from.file().getFileName());
    if (Files.exists(target)) {
      throw wrong(YamlFiles.shown(target) + " is there already");
    }
    String text = text(from.file());
    Problems problems = new Problems();
    jobs.inLedger(from, problems, (ledger, sheets) -> move(from, to, target, text, ledger, sheets));
    if (problems.hasErrors()) {
      console.problems(problems.all(), "the job stays on its day", false);
      return Exit.of(problems);
    }
    console.problems(problems.all(), "the job was carried over", false);
    console.say(number + "  carried to " + to + "  " + YamlFiles.shown(target));
    return jobs.tidy(from);
  }

  private LocalDate to(JobOfShop.Found from) {
    String word = day.getValue();
    LocalDate to =
        jobs.choice
            .day(word)
            .orElseThrow(
                () -> wrong('"' + word + "\" is no day").expecting("tomorrow, or 2026-03-03"));
    if (DayFolders.day(from.file()).equals(to.toString())) {
      throw wrong("job " + job.getValue() + " is on " + to + " already");
    }
    return to;
  }

  private String text(Path file) {
    try {
      String text = Files.readString(file, StandardCharsets.UTF_8);
      if (DATE.matcher(text).find()) {
        throw wrong(
            YamlFiles.shown(file) + " has a key \"date\"; delete it, for its folder says the day");
      }
      if (ANY_CARRIED.matcher(CARRIED.matcher(text).replaceAll("")).find()) {
        throw wrong(
            YamlFiles.shown(file) + " has a key \"carried\" that is not on one line; delete it");
      }
      return text;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** The event comes first, then the new file, then the old one goes: none of it is lost. */
  private void move(
      JobOfShop.Found from,
      LocalDate to,
      Path target,
      String text,
      Optional<Ledger> ledger,
      List<SheetStory> sheets) {
    Optional<Integer> done = Options.given(step);
    String whole = text.isEmpty() || text.endsWith("\n") ? text : text + "\n";
    if (!sheets.isEmpty()) {
      SheetStory last = stoppedAt(sheets, ledger.orElseThrow(), done);
      ledger.get().add(events(sheets, last, ledger.get(), to, done), List.of());
      whole = CARRIED.matcher(whole).replaceAll("") + carried(from, last.id(), done);
    } else if (done.isPresent() || !Options.all(found).isEmpty()) {
      throw wrong("job " + job.getValue() + " has no sheet of its day, so no step of it was done");
    }
    new OutFiles(Disk.REAL).write(target, whole.getBytes(StandardCharsets.UTF_8));
    try {
      Files.delete(from.file());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete " + from.file(), e);
    }
  }

  /** The sheet on which the work stopped: that of the step, else the first that is not closed. */
  private SheetStory stoppedAt(List<SheetStory> sheets, Ledger ledger, Optional<Integer> done) {
    List<Integer> all = new ArrayList<>();
    for (SheetStory sheet : sheets) {
      List<Integer> own = steps(ledger, sheet);
      all.addAll(own);
      boolean closed = sheet.state() == SheetStory.State.CLOSED;
      boolean here = done.map(own::contains).orElse(!closed);
      if (here && closed) {
        throw wrong("the sheet " + sheet.id() + " is closed");
      } else if (here) {
        return sheet;
      }
    }
    String last = sheets.get(sheets.size() - 1).id();
    throw done.isEmpty()
        ? wrong("the sheet " + last + " is closed")
        : wrong("the sheet " + last + " has no step " + done.get())
            .expecting("a step from 1 to " + Collections.max(all));
  }

  private static List<Integer> steps(Ledger ledger, SheetStory sheet) {
    return ledger.index().record(sheet.id()).map(KeptRecord::steps).orElse(List.of());
  }

  /** What is before the sheet that was stopped is done; what is behind it was not begun. */
  private List<Event> events(
      List<SheetStory> sheets,
      SheetStory last,
      Ledger ledger,
      LocalDate to,
      Optional<Integer> done) {
    List<Event> events = new ArrayList<>();
    for (SheetStory sheet : sheets) {
      int after = sheets.indexOf(sheet) - sheets.indexOf(last);
      boolean over = sheet.hasLeft() || sheet.state() == SheetStory.State.CLOSED;
      if (after == 0) {
        events.add(new Carried(today.get(), sheet.id(), to, done));
      } else if (after < 0 && !over) {
        Optional<Integer> end = steps(ledger, sheet).stream().max(Integer::compare);
        events.add(new Carried(today.get(), sheet.id(), to, end));
      } else if (!over) {
        events.add(new Withdrawn(today.get(), sheet.id()));
      }
    }
    return events;
  }

  private String carried(JobOfShop.Found from, String sheet, Optional<Integer> done) {
    String step = done.map(n -> ", step: " + n).orElse("");
    List<String> texts = Options.all(found);
    String found =
        texts.isEmpty()
            ? ""
            : ", found: ["
                + texts.stream().map(CarryCommand::quoted).collect(Collectors.joining(", "))
                + "]";
    return "carried: {from: %s, sheet: %s%s%s}\n"
        .formatted(DayFolders.day(from.file()), sheet, step, found);
  }

  /** YAML's double quotes: what JSON escapes, YAML reads. */
  private static String quoted(String text) {
    String escaped =
        text.strip().replaceAll("\\s+", " ").replace("\\", "\\\\").replace("\"", "\\\"");
    return '"' + escaped + '"';
  }
}
