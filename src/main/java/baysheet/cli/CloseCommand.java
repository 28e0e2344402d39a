package baysheet.cli;

import baysheet.books.Shop;
import baysheet.collect.SignedForm;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.ledger.Closing;
import baysheet.ledger.Disk;
import baysheet.ledger.Event;
import baysheet.ledger.Event.Closed;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.Ledger;
import baysheet.ledger.SheetStory;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OutFiles;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.torque.Wrench;
import baysheet.yaml.Node;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command with which a person declares a signed sheet complete. */
final class CloseCommand extends LedgerCommand {
  private final Supplier<LocalDate> today;

  private final PositionalParamSpec job =
      at(
          0,
          "JOB",
          "1",
          String.class,
          "The number of the job; where it has several sheets, the name of one: 2417-1.");

  private final OptionSpec by =
      option("--by", "ID", String.class, "Who read the sheet: an id of the shop's people.");

  private final OptionSpec shop =
      option("--shop", "DIR", Path.class, "The shop folder (default: the one here, or jobs/).");

  CloseCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "close",
        "Record what a person read on a signed sheet, and close it when nothing on it is open.");
    this.today = today;
  }

  @Override
  public Integer call() {
    OptionParser typed = new OptionParser(line());
    Problems problems = new Problems();
    Optional<Shop> garage = garage(typed, problems);
    String person = garage.map(it -> person(typed, it)).orElse("");
    boolean isClosed = false;
    if (garage.isPresent()) {
      Path folder = ledger();
      try (Ledger ledger = Ledger.open(folder, Disk.REAL, problems).orElse(null)) {
        isClosed = ledger != null && close(ledger, garage.get(), person, typed, problems);
      }
    }
    console.problems(problems.all(), isClosed ? "it was closed" : "the sheet stays open", false);
    return isClosed ? Exit.of(problems) : Math.max(Exit.PROBLEMS, Exit.of(problems));
  }

  private Optional<Shop> garage(OptionParser typed, Problems problems) {
    Path root =
        Options.<Path>given(shop)
            .flatMap(ShopFolders::rootOf)
            .or(() -> Options.given(shop).isPresent() ? Optional.empty() : ShopFolders.here())
            .orElseThrow(() -> typed.wrong(ShopFolders.NOT_HERE));
    inShop(root);
    return new ShopFolders(Fonts.builtIn()).shop(root, problems);
  }

  /** An apprentice's word alone never releases a car. */
  private String person(OptionParser typed, Shop garage) {
    String id =
        Options.<String>given(by).orElseThrow(() -> typed.wrong("close needs --by ID, such as T1"));
    Shop.Person person = garage.people().get(id);
    if (person == null) {
      String near =
          Nearest.of(id, garage.people().keySet())
              .map(it -> "; did you mean " + it + "?")
              .orElse("");
      throw typed.wrong("the shop has no person \"" + id + "\"" + near);
    }
    if (person.grade() == Shop.Grade.APPRENTICE) {
      throw typed.wrong(id + " is an apprentice, and cannot close a sheet");
    }
    return id;
  }

  private boolean close(
      Ledger ledger, Shop garage, String person, OptionParser typed, Problems problems) {
    String number = job.getValue();
    SheetStory story =
        ledger
            .index()
            .latest(number)
            .filter(it -> it.state() != SheetStory.State.SUPERSEDED)
            .orElseThrow(() -> unknownJob(number, ledger.index()));
    if (story.state() == SheetStory.State.WITHDRAWN) {
      throw typed.wrong("the sheet " + story.id() + " is withdrawn");
    }
    KeptRecord record =
        ledger
            .index()
            .record(story.id())
            .orElseThrow(() -> typed.wrong("what " + story.id() + " said was forgotten"));
    Path file = SignedForm.file(folder(), record);
    if (!Files.exists(file)) {
      String form = SignedForm.blank(record, story);
      new OutFiles(Disk.REAL).write(file, form.getBytes(StandardCharsets.UTF_8));
      console.say(
          "wrote "
              + YamlFiles.shown(file)
              + ": type in what stands on the paper, then run this again");
      return false;
    }
    Optional<Node> node = new ShopFolders(Fonts.builtIn()).node(file, problems);
    return node.flatMap(it -> SignedForm.read(it, record, person, today.get(), problems))
        .filter(filled -> isSettled(filled, record, story, garage, file, problems, ledger))
        .isPresent();
  }

  private boolean isSettled(
      SignedForm.Filled filled,
      KeptRecord record,
      SheetStory story,
      Shop garage,
      Path file,
      Problems problems,
      Ledger ledger) {
    List<Closing.Open> open =
        Closing.check(
            record,
            story,
            filled.values(),
            (name, planned, day) -> trouble(garage, name, planned, day));
    Span whole = new Source(YamlFiles.shown(file), "").whole();
    open.forEach(it -> problems.add(problem(it, filled.places().getOrDefault(it.box(), whole))));
    boolean wasClosed = story.closed().isPresent();
    List<Event> events = new ArrayList<>();
    // A figure that would open a closed sheet again is reported, and put right by its form.
    if (!story.knows(filled.values()) && (open.isEmpty() || !wasClosed)) {
      events.add(filled.values());
    }
    if (open.isEmpty() && !wasClosed) {
      events.add(new Closed(today.get(), story.id(), filled.values().by()));
    }
    if (!events.isEmpty()) {
      ledger.add(events, filled.notes());
    }
    if (open.isEmpty()) {
      String what =
          wasClosed ? events.isEmpty() ? " is closed already" : " corrected by " : " closed by ";
      console.say(story.id() + what + (events.isEmpty() ? "" : filled.values().by()));
    }
    return open.isEmpty();
  }

  private static Problem problem(Closing.Open open, Span at) {
    ProblemCode code =
        switch (open.why()) {
          case NOT_FILLED -> ProblemCode.BOX_OPEN;
          case OUTSIDE_BAND -> ProblemCode.OUTSIDE_BAND;
          case WRENCH -> ProblemCode.LAPSED_WRENCH;
        };
    return Problem.of(code, at, open.box() + ": " + open.what())
        .expecting("what stands on the paper, or except: with the reason");
  }

  /**
   * Why a wrench cannot be relied on for a day's work, by the shop's crib of today: a calibration
   * after that day says nothing about the wrench as it was, unless the sheet was printed with it.
   */
  private static Optional<String> trouble(
      Shop garage, String name, boolean planned, LocalDate day) {
    Optional<Wrench> wrench =
        garage.crib().wrenches().stream()
            .map(it -> it.value())
            .filter(it -> it.name().equals(name))
            .findFirst();
    if (wrench.isEmpty()) {
      return Optional.of("the shop has no wrench " + name);
    }
    LocalDate calibrated = wrench.get().calibrated();
    boolean lapsed = wrench.get().due(garage.wrenchUse().calibrationMonths()).isBefore(day);
    if (!planned && calibrated.isAfter(day)) {
      return Optional.of(name + " was calibrated on " + calibrated + ", after the job");
    }
    return lapsed
        ? Optional.of("the calibration of " + name + ", of " + calibrated + ", had lapsed")
        : Optional.empty();
  }
}
