package baysheet.template;

import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.sheet.Heading;
import baysheet.sheet.Heading.Person;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SocketLine;
import baysheet.sheet.Sheet.Support;
import baysheet.sheet.Sheet.TallyLine;
import baysheet.sheet.Sheet.TimeNeeded;
import baysheet.sheet.Sheet.ToolLine;
import baysheet.template.SheetText.HeadText;
import baysheet.template.SheetText.PartText;
import baysheet.template.SheetText.SocketText;
import baysheet.template.SheetText.SupportText;
import baysheet.template.SheetText.TallyLineText;
import baysheet.template.SheetText.TallyText;
import baysheet.template.SheetText.ToolText;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns a sheet into the words and figures that a layout prints. */
final class SheetWords {
  private final Sheet sheet;
  private final Heading heading;
  private final CautionWords cautions;

  private SheetWords(Sheet sheet) {
    this.sheet = sheet;
    this.heading = sheet.heading();
    this.cautions = new CautionWords(sheet.cautions());
  }

  static SheetText of(Sheet sheet) {
    return new SheetWords(sheet).text();
  }

  private SheetText text() {
    CheckWords checks = new CheckWords(sheet.checks(), sheet.steps());
    StepWords steps = new StepWords(cautions, checks);
    return new SheetText(
        heading.paper().word(),
        heading.terms() == Shop.Terms.AMERICAN ? "en-US" : "en-GB",
        "Bay sheet " + heading.job() + ", " + heading.title(),
        heading.with().isPresent(),
        head(),
        cautions.onTop(),
        cautions.also(),
        sheet.qualified().stream().map(QualifiedWords::sentence).toList(),
        cautions.waived(),
        cautions.protect(),
        sheet.evening().stream().map(Phrases::sentence).toList(),
        sheet.steps().size(),
        sheet.sections().stream().map(steps::section).toList(),
        new TorqueWords(sheet.torque(), heading.torqueUnits().get(0)).table(),
        sheet.sockets().stream().map(SheetWords::socket).toList(),
        sheet.tools().stream()
            .filter(tool -> !standsForSocket(tool))
            .map(tool -> new ToolText(tool.name(), tool.special(), !tool.owned(), tool.ifStuck()))
            .toList(),
        sheet.parts().stream()
            .map(
                part ->
                    new PartText(
                        String.valueOf(part.count()),
                        part.part(),
                        sided(part.places()) ? PlaceWords.words(part.places()) : "",
                        part.fastener()))
            .toList(),
        sheet.consumables(),
        tally(),
        checks.byMoment(),
        sheet.support().stream().map(SheetWords::support).toList(),
        checks.openItems(),
        checks.releasedBy(),
        CheckWords.rechecks(sheet.torque()),
        Phrases.sentence(Phrases.orNothing(sheet.notes())),
        sheet.sources());
  }

  private HeadText head() {
    return new HeadText(
        heading.shop(),
        heading.job(),
        heading.date().toString(),
        heading.revision(),
        heading.id(),
        sheet.code(),
        heading.title(),
        Phrases.orNothing(heading.customer()),
        heading.vehicle(),
        Phrases.orNothing(heading.years()),
        Phrases.orNothing(heading.plate()),
        heading.odometer().map(Quantity::print).orElse(""),
        heading.odometer().map(Quantity::unit).orElse(heading.distance()).symbol(),
        heading.bay(),
        heading.bayEquipment(),
        person(Optional.of(heading.by())),
        person(heading.with()),
        person(heading.second()),
        heading.state().stream().map(Phrases::spaced).collect(Collectors.joining(", ")),
        heading.works(),
        time(sheet.time()),
        saved(sheet.time()));
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

  /** {@code 70…150 min, likely 95 min}, and what it leaves out. */
  private static String time(TimeNeeded time) {
    String range =
        "%s…%s%smin, likely %s%smin"
            .formatted(time.low(), time.high(), Phrases.NBSP, time.mean(), Phrases.NBSP);
    return time.untimed() == 0 ? range : range + "; " + time.untimed() + " steps untimed";
  }

  private static String saved(TimeNeeded time) {
    return time.saved() == 0 ? "" : "shared access saves " + time.saved() + Phrases.NBSP + "min";
  }

  /** What stands in a socket's place stands in the list of sockets. */
  private boolean standsForSocket(ToolLine tool) {
    return sheet.sockets().stream()
        .anyMatch(
            socket ->
                socket
                    .insert()
                    .map(insert -> insert.replaceFirst(",", " " + socket.head() + ","))
                    .filter(name -> name.replace(Phrases.NBSP, " ").equals(tool.name()))
                    .isPresent());
  }

  private static SocketText socket(SocketLine socket) {
    List<String> kind = new ArrayList<>();
    socket.insert().ifPresent(kind::add);
    if (socket.points() > 0) {
      kind.add(socket.points() + "-point");
    }
    if (socket.deep()) {
      kind.add("deep");
    }
    if (socket.impact()) {
      kind.add("impact");
    }
    return new SocketText(
        socket.drive(),
        socket.head(),
        String.join(", ", kind),
        String.valueOf(socket.count()),
        String.valueOf(socket.firstStep()),
        !socket.owned());
  }

  /** Whether there is another of it elsewhere on a vehicle. */
  private static boolean sided(List<Place> places) {
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
      boolean own = differ && sided(line.places());
      texts.add(
          new TallyLineText(
              Phrases.capital(line.words()),
              own ? PlaceWords.words(line.places()) : "",
              line.count() == 1 ? "" : line.count() + Phrases.NBSP + "×",
              String.valueOf(line.off()),
              String.valueOf(line.on()),
              PlaceWords.boxes("tally." + (i + 1), line.words() + " back on", line.places())));
    }
    return new TallyText(String.valueOf(off), texts);
  }

  private static SupportText support(Support support) {
    return new SupportText(
        support.raised(),
        support.on(),
        support.load().print(),
        support.each().map(Quantity::print).orElse(""),
        support.rated().print(),
        support.points());
  }
}
