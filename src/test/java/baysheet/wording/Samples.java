package baysheet.wording;

import static baysheet.wording.SampleLines.caution;
import static baysheet.wording.SampleLines.check;
import static baysheet.wording.SampleLines.torque;

import baysheet.books.Glossary;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.plan.content.Cautions;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Heading;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.Sheet.Section;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Statement;
import baysheet.sheet.Support;
import baysheet.sheet.TimeNeeded;
import baysheet.sheet.TorqueLine;
import baysheet.sheet.TorqueLine.Reuse;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import baysheet.wording.SampleLines.StepMaker;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Sheets of an invented garage and an invented car: a small one, a middle one and a big one. */
public final class Samples {
  public static final List<Place> BOTH = List.of(Place.FRONT_LEFT, Place.FRONT_RIGHT);
  public static final List<Place> CAR = List.of(Place.VEHICLE);
  public static final List<Place> ENGINE = List.of(Place.ENGINE);

  private Samples() {}

  /** The words of a sheet under some id. */
  public static SheetText text(Sheet sheet) {
    return SheetText.of(sheet, sheet.heading().job() + "-A-7f3c9a", "ABCDEFGHIJKLMNOP");
  }

  /** An oil service on a lift: few steps, one torque line, no second person. */
  public static Sheet oilService() {
    return oilService("Engine oil service");
  }

  public static Sheet oilService(String title) {
    return new Sheet(
        heading("2404", title, Optional.empty()),
        safety(
            List.of(
                caution(
                    "A",
                    "WARNING",
                    "Lift a hand's breadth, push the car hard, then go up and lower on to the locks",
                    "the car slides off pads that sit badly",
                    "people under or beside it are crushed",
                    List.of("safety footwear (M008)")),
                caution(
                    "B",
                    "CAUTION",
                    "Wear gloves and keep the arm out of the stream",
                    "hot oil runs down the sleeve",
                    "burned skin",
                    List.of("gloves (M009)"),
                    4)),
            List.of(
                new Support(
                    "whole",
                    new Statement.Written("two-post lift, bay 1"),
                    kilograms("1480"),
                    Optional.empty(),
                    Optional.empty(),
                    kilograms("3200"),
                    SampleLines.written("sill seam, four marked points")))),
        List.of(),
        List.of(
            section(
                Phase.OPEN,
                CAR,
                step("Set the lift pads under the sill seam at the four marked points", 1),
                step("Raise, push, raise to working height and lower on to the locks", 2)),
            section(
                Phase.WORK,
                ENGINE,
                step("Unclip the undertray flap and swing it down", 3),
                step("Take out the sump plug and let the oil run until it only drips", 4)
                    .above("B")
                    .minutes(8, 10, 12)
                    .stuck("Six-point socket and a steady long bar"),
                step("Fit the sump plug with its new washer", 5).torque(1),
                step("Screw the new filter on by hand until the seal touches", 6)
                    .tools("filter strap"),
                step("Close the flap; both clips must snap", 7)),
            section(
                Phase.CLOSE,
                CAR,
                step("Lower the car and fill 4.2\u00a0L of the oil in the list", 8))),
        List.of(
            new LineMaker(1, "sump plug", ENGINE, 1)
                .thread("M14x1.5", "")
                .head("hex 17 mm", "3/8 in", 6)
                .stages(torque("25", "18", "W2"))
                .reuse(Reuse.NEW)
                .build()),
        new Sheet.Equipment(
            List.of(
                new Sheet.WrenchLine("W2", LocalDate.of(2026, 1, 15), LocalDate.of(2027, 1, 15))),
            List.of(SampleLines.socket("3/8 in", "hex 17 mm", false, 1, 4, true)),
            List.of(new Sheet.ToolLine("drain tray 8\u00a0L", false, true, false)),
            List.of(
                new PartLine(
                    "sump plug with washer",
                    1,
                    ENGINE,
                    true,
                    Optional.empty(),
                    Map.of("sample-work", 1)),
                new PartLine(
                    "oil filter", 1, ENGINE, false, Optional.empty(), Map.of("sample-work", 1))),
            SampleLines.written("engine oil 5W-30, 4.2\u00a0L", "rags")),
        List.of(new Sheet.TallyLine("undertray-flap", "undertray flap", ENGINE, 1, 3, 7)),
        List.of(
            check(Moment.BEFORE_LOWERING, "Wipe round plug and filter; both stay dry", 5, 6),
            check(Moment.BEFORE_MOVING, "Run the engine one minute; lamp out, no drip", 4),
            check(Moment.HAND_OVER, "Set the service display back and hang the oil tag")),
        new TimeNeeded(25, 31, 38, 0, 0),
        Optional.empty(),
        SampleLines.written("Larkfell works data sheet 2, 2016"),
        Optional.empty());
  }

  /** Discs and pads on both sides with an apprentice, on stands. */
  public static Sheet brakes() {
    return SampleBrakes.sheet();
  }

  /** The brakes and what goes with taking both arms and struts out: many steps, many lines. */
  public static Sheet big() {
    Sheet brakes = brakes();
    List<Section> sections = new ArrayList<>(brakes.sections());
    int next = brakes.steps().size() + 1;
    for (String what : List.of("Lower arm", "Spring strut", "Track rod end")) {
      int first = next;
      List<SheetStep> steps =
          IntStream.range(first, first + 9).mapToObj(n -> again(n, what)).toList();
      sections.add(new Section(Sheet.Title.WORK, BOTH, Optional.empty(), steps));
      next += 9;
    }
    List<TorqueLine> lines =
        Stream.concat(
                brakes.torque().stream(),
                IntStream.rangeClosed(brakes.torque().size() + 1, 14).mapToObj(Samples::bush))
            .toList();
    return with(brakes, sections, lines);
  }

  private static SheetStep again(int n, String what) {
    return new StepMaker(n, "Take out the bolts of the " + what + " and lift it clear of the hose")
        .torque(n % 5 == 0 ? 7 : 8)
        .minutes(2, 4, 9)
        .stuck("Penetrating fluid and ten minutes")
        .at(Phase.WORK, Moment.RAISED, BOTH);
  }

  private static TorqueLine bush(int n) {
    LineMaker line =
        new LineMaker(n, "arm bush bolt " + n, BOTH, 2)
            .thread("M12x1.75", "10.9")
            .head("hex 18 mm", "1/2 in", 6)
            .stages(torque("95", "70", "W3"))
            .reuse(n % 2 == 0 ? Reuse.NEW : Reuse.AGAIN);
    return (n > 11 ? line.atRideHeight() : line).build();
  }

  static Sheet.Safety safety(List<CautionLine> cautions, List<Support> support) {
    return new Sheet.Safety(List.of(), cautions, Cautions.protect(cautions), support);
  }

  /** The same sheet with another sequence and another torque table. */
  public static Sheet with(Sheet sheet, List<Section> sections, List<TorqueLine> torque) {
    return with(sheet, sections, torque, sheet.safety().cautions());
  }

  public static Sheet with(
      Sheet sheet, List<Section> sections, List<TorqueLine> torque, List<CautionLine> cautions) {
    return new Sheet(
        sheet.heading(),
        new Sheet.Safety(
            sheet.safety().qualified(),
            cautions,
            sheet.safety().protect(),
            sheet.safety().support()),
        sheet.evening(),
        sections,
        torque,
        sheet.equipment(),
        sheet.tally(),
        sheet.checks(),
        sheet.time(),
        sheet.notes(),
        sheet.sources(),
        sheet.stage());
  }

  public static StepMaker step(String text, int n) {
    return new StepMaker(n, text);
  }

  public static Section section(Phase phase, List<Place> places, StepMaker... steps) {
    return section(phase, Moment.RAISED, places, steps);
  }

  public static Section section(
      Phase phase, Moment moment, List<Place> places, StepMaker... steps) {
    Sheet.Title title =
        switch (phase) {
          case OPEN -> Sheet.Title.REMOVAL;
          case WORK -> Sheet.Title.WORK;
          case CLOSE, CHECK -> Sheet.Title.REFITTING;
          case FINAL -> Sheet.Title.ON_THE_GROUND;
          case HEIGHT -> Sheet.Title.RAISE;
        };
    return new Section(
        title,
        phase == Phase.FINAL ? List.of() : places,
        Optional.empty(),
        Stream.of(steps).map(step -> step.at(phase, moment, places)).toList());
  }

  public static Heading heading(String job, String title, Optional<Heading.Person> with) {
    return new Heading(
        "Tarnwick Yard Garage",
        job,
        LocalDate.of(2026, 3, 2),
        "A",
        new Heading.Request(
            Optional.of("G. Olmarsh"),
            Optional.of("It pulls to the left when I brake"),
            Optional.of(LocalTime.of(16, 30))),
        new Heading.Vehicle(
            "larkfell-pipit-2015",
            "Larkfell Pipit 1.4",
            Optional.of("2015–2019"),
            Optional.of("QX 41-207"),
            Optional.of("ZZ9AA1B2C3D456789"),
            Optional.of(Quantity.of("81240", Unit.KILOMETRE)),
            List.of("rusty")),
        new Heading.Bay("1", "two-post lift"),
        new Heading.Crew(
            new Heading.Person("T1", "I. Quillow", Shop.Grade.TECHNICIAN), with, Optional.empty()),
        SampleLines.written(title),
        new Heading.Style(
            Shop.Paper.A4,
            Shop.Terms.BRITISH,
            Glossary.of(Map.of()),
            List.of(Unit.NEWTON_METRE, Unit.POUND_FORCE_FOOT),
            Unit.KILOMETRE),
        new Heading.Before(Optional.empty(), Optional.empty(), List.of()));
  }

  public static Quantity kilograms(String figure) {
    return Quantity.of(figure, Unit.KILOGRAM);
  }
}
