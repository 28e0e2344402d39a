package baysheet.wording;

import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.books.ToolNames;
import baysheet.sheet.Heading;
import baysheet.sheet.Heading.Person;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SocketLine;
import baysheet.sheet.Sheet.TallyLine;
import baysheet.sheet.Sheet.ToolLine;
import baysheet.sheet.Statement;
import baysheet.sheet.TimeNeeded;
import baysheet.torque.Drive;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import baysheet.wording.HeadText.BeforeText;
import baysheet.wording.HeadText.RequestText;
import baysheet.wording.HeadText.VehicleText;
import baysheet.wording.HeadText.WorkText;
import baysheet.wording.SheetText.DriveText;
import baysheet.wording.SheetText.PartText;
import baysheet.wording.SheetText.SocketText;
import baysheet.wording.SheetText.SourcesText;
import baysheet.wording.SheetText.TallyLineText;
import baysheet.wording.SheetText.TallyText;
import baysheet.wording.SheetText.ToolText;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Turns a sheet into the words and figures that a layout prints. */
final class SheetWords {
  /** A longer title is set smaller. */
  private static final int LONG_TITLE = 50;

  /** So many findings are printed; of more, how many there are. */
  private static final int MOST_SEEN = 3;

  /** Points of a common socket. */
  private static final int COMMON = 6;

  private final Sheet sheet;
  private final String id;
  private final String code;
  private final Heading heading;
  private final Language language;
  private final CautionWords cautions;

  private SheetWords(Sheet sheet, String id, String code) {
    this.sheet = sheet;
    this.id = id;
    this.code = code;
    this.heading = sheet.heading();
    this.language = Language.of(heading);
    this.cautions = new CautionWords(sheet.safety(), language);
  }

  static SheetText of(Sheet sheet, String id, String code) {
    return new SheetWords(sheet, id, code).text();
  }

  private SheetText text() {
    CheckWords checks = new CheckWords(sheet, language);
    StepWords steps = new StepWords(sheet, cautions, checks);
    return new SheetText(
        heading.style().paper().word(),
        language.tag(),
        "Bay sheet " + sheet.name() + ", " + language.title(heading),
        new StageWords(language, sheet.safety().support()).text(sheet.stage()),
        heading.crew().with().isPresent(),
        head(),
        cautions.onTop(),
        cautions.also(),
        sheet.safety().qualified().stream()
            .map(work -> QualifiedWords.sentence(work, language))
            .toList(),
        cautions.waived(),
        cautions.protect(),
        language.statements(sheet.evening()).stream().map(Phrases::sentence).toList(),
        sheet.steps().size(),
        sheet.sections().stream().map(steps::section).toList(),
        new TorqueWords(sheet.torque(), heading.style().torqueUnits().get(0), language).table(),
        sheet.equipment().wrenches().stream().map(this::wrench).toList(),
        sockets(),
        sheet.equipment().tools().stream()
            .filter(tool -> !standsForSocket(tool))
            .map(tool -> new ToolText(language.text(tool.name()), !tool.owned(), tool.ifStuck()))
            .toList(),
        parts(),
        language.statements(sheet.equipment().consumables()),
        tally(),
        checks.byMoment(),
        checks.openItems(),
        checks.releasedBy(sheet.stage(), heading),
        checks.rechecks(sheet.torque(), sheet.stage()),
        Phrases.sentence(Phrases.orNothing(sheet.notes())),
        new SourcesText(
            language.sources(sheet.sources()),
            hasMakersFigures() ? Phrases.sentence(language.own(Phrase.MAKERS_FIGURES)) : ""));
  }

  private HeadText head() {
    return new HeadText(
        heading.shop(),
        heading.job(),
        heading.date().toString(),
        id,
        code,
        language.title(heading),
        language.title(heading).length() > LONG_TITLE,
        new RequestText(
            Phrases.orNothing(heading.request().customer()),
            Phrases.orNothing(heading.request().complaint()),
            heading.request().promised().map(LocalTime::toString).orElse("")),
        vehicle(heading.vehicle()),
        new WorkText(
            heading.bay().name(),
            heading.bay().equipment(),
            person(Optional.of(heading.crew().by())),
            person(heading.crew().with()),
            person(heading.crew().second()),
            time(),
            saved(sheet.time())),
        new BeforeText(
            heading.before().carried().map(it -> StageWords.continues(language, it)).orElse(""),
            heading.before().replaces().map(this::replaces).orElse(""),
            sheet.stage().filter(it -> !it.isFirst()).isPresent() ? "" : seen()));
  }

  private VehicleText vehicle(Heading.Vehicle vehicle) {
    Unit unit = vehicle.odometer().map(Quantity::unit).orElse(heading.style().distance());
    return new VehicleText(
        vehicle.name(),
        Phrases.orNothing(vehicle.years()),
        Phrases.orNothing(vehicle.plate()),
        Phrases.orNothing(vehicle.vin()),
        vehicle.odometer().map(Quantity::print).orElse(""),
        unit.symbol(),
        vehicle.state().stream().map(Phrases::spaced).collect(Collectors.joining(", ")));
  }

  /** What was found before; for whoever begins the job. */
  private String seen() {
    return Stream.of(seen(Phrase.SEEN_ON_THIS, true), seen(Phrase.SEEN_ON_KIND, false))
        .filter(it -> !it.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private String seen(Phrase phrase, boolean onVehicle) {
    List<Heading.Seen> all =
        heading.before().seen().stream().filter(it -> it.onVehicle() == onVehicle).toList();
    List<String> said = new ArrayList<>();
    all.stream().limit(MOST_SEEN).forEach(it -> said.add(it.what() + " " + it.on()));
    if (all.size() > MOST_SEEN) {
      said.add(language.own(Phrase.SEEN_EARLIER, all.size() - MOST_SEEN));
    }
    return said.isEmpty() ? "" : Phrases.sentence(language.own(phrase, String.join("; ", said)));
  }

  private String replaces(Heading.Replaced before) {
    String changes = String.join("; ", before.changes());
    return Phrases.sentence(
        Phrases.together(language.own(Phrase.REPLACES, before.sheet(), changes)));
  }

  private static String person(Optional<Person> person) {
    return person
        .map(
            each ->
                each.name()
                    + " ("
                    + each.id()
                    + (each.grade() == Shop.Grade.APPRENTICE ? ", apprentice)" : ")"))
        .orElse("");
  }

  private String wrench(Sheet.WrenchLine wrench) {
    boolean today = wrench.due().equals(heading.date());
    return language.own(today ? Phrase.DUE_TODAY : Phrase.DUE_ON, wrench.name(), wrench.due());
  }

  /** Whether something is written in that no book of the garage has. */
  private boolean hasMakersFigures() {
    Stream<Statement> figures =
        Stream.concat(
            sheet.steps().stream().flatMap(step -> step.entries().stream()),
            sheet.checks().stream()
                .flatMap(check -> check.needs().stream())
                .map(Statement::writtenIn));
    return figures.map(language::text).anyMatch(text -> text.matches("(.* )?maker\\b.*"));
  }

  /** {@code 70 to 150 min, likely 95 min}, and the steps that it leaves out; "" without steps. */
  private String time() {
    if (sheet.steps().isEmpty()) {
      return "";
    }
    TimeNeeded time = sheet.time();
    String range =
        time.low() == time.high()
            ? language.own(Phrase.TIME, time.mean())
            : language.own(Phrase.TIME_RANGE, time.low(), time.high(), time.mean());
    List<Integer> untimed =
        sheet.steps().stream()
            .filter(step -> step.minutes().mean() == 0)
            .map(Sheet.SheetStep::n)
            .toList();
    return untimed.isEmpty()
        ? range
        : language.own(Phrase.PLUS_UNTIMED, range, Phrases.counted("step", untimed));
  }

  private static String saved(TimeNeeded time) {
    return time.saved() == 0 ? "" : "shared access saves " + time.saved() + Phrases.NBSP + "min";
  }

  /** What stands in a socket's place stands in the list of sockets. */
  private boolean standsForSocket(ToolLine tool) {
    return sheet.equipment().sockets().stream()
        .anyMatch(
            socket ->
                socket
                    .insert()
                    .map(reach -> ToolNames.crowFoot(socket.head(), reach))
                    .filter(name -> name.equals(tool.name()))
                    .isPresent());
  }

  /** By drive, the smallest first. */
  private List<DriveText> sockets() {
    List<DriveText> drives = new ArrayList<>();
    for (Drive drive : Drive.values()) {
      List<SocketText> own =
          sheet.equipment().sockets().stream()
              .filter(socket -> socket.drive() == drive)
              .map(SheetWords::socket)
              .toList();
      if (!own.isEmpty()) {
        drives.add(new DriveText(drive.print(), own));
      }
    }
    return drives;
  }

  /** Where parts go stands before the first of those that go there. */
  private List<PartText> parts() {
    List<PartText> parts = new ArrayList<>();
    String before = "";
    for (PartLine part : sheet.equipment().parts()) {
      String where = sided(part.places()) ? PlaceWords.words(part.places()) : "";
      String label = where.equals(before) ? "" : where.isEmpty() ? "other" : where;
      String words = language.text(part.part());
      parts.add(new PartText(String.valueOf(part.count()), words, label));
      before = where;
    }
    return parts;
  }

  /** A common socket has six points, and some heads say how many they need. */
  private static SocketText socket(SocketLine socket) {
    List<String> kind = new ArrayList<>();
    socket.insert().map(Language::insertAndReach).ifPresent(kind::add);
    String points = socket.points() + "-point";
    if (socket.points() > 0
        && socket.points() != COMMON
        && !socket.head().form().word().equals(points)) {
      kind.add(points);
    }
    if (socket.deep()) {
      kind.add("deep");
    }
    if (socket.impact()) {
      kind.add("impact");
    }
    return new SocketText(
        socket.head().print(),
        String.join(", ", kind),
        socket.count(),
        String.valueOf(socket.firstStep()),
        !socket.owned());
  }

  /** Whether there is another of it elsewhere on a vehicle. */
  static boolean sided(List<Place> places) {
    return places.stream().anyMatch(place -> place.axle().isPresent() || place.side().isPresent());
  }

  private TallyText tally() {
    List<TallyLine> lines = sheet.tally();
    int off = lines.stream().mapToInt(line -> line.count() * line.places().size()).sum();
    // Of one place all belong to the work; where they differ each line says its own.
    boolean differ =
        lines.stream().map(TallyLine::places).filter(SheetWords::sided).distinct().count() > 1;
    List<TallyLineText> texts = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      TallyLine line = lines.get(i);
      String words = language.text(line.words());
      boolean own = differ && sided(line.places());
      texts.add(
          new TallyLineText(
              Phrases.capital(words),
              own ? PlaceWords.words(line.places()) : "",
              line.count() == 1 ? "" : line.count() + Phrases.NBSP + "×",
              String.valueOf(line.off()),
              String.valueOf(line.on()),
              PlaceWords.boxes("tally." + (i + 1), words + " back on", line.places())));
    }
    return new TallyText(language.own(Phrase.REMOVED_AND_REFITTED), String.valueOf(off), texts);
  }
}
