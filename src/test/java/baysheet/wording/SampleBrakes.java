package baysheet.wording;

import static baysheet.wording.SampleLines.caution;
import static baysheet.wording.SampleLines.check;
import static baysheet.wording.SampleLines.torque;
import static baysheet.wording.SampleLines.turn;
import static baysheet.wording.Samples.BOTH;
import static baysheet.wording.Samples.CAR;
import static baysheet.wording.Samples.kilograms;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Shop;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Heading;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.Support;
import baysheet.sheet.TimeNeeded;
import baysheet.sheet.TorqueLine;
import baysheet.sheet.TorqueLine.Reuse;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import baysheet.torque.Treatment;
import baysheet.torque.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A middle sheet with a bit of everything: both sides, an apprentice, stands, hold points. */
final class SampleBrakes {
  private SampleBrakes() {}

  static Sheet sheet() {
    return new Sheet(
        Samples.heading(
            "2401",
            "Discs and pads, front",
            Optional.of(new Heading.Person("A1", "N. Tepperly", Shop.Grade.APPRENTICE))),
        Samples.safety(
            cautions(),
            List.of(
                new Support(
                    "front",
                    new Statement.Written("two axle stands"),
                    kilograms("858"),
                    Optional.of(kilograms("429")),
                    Optional.empty(),
                    kilograms("2000"),
                    SampleLines.written("the flat behind the front seam notch")))),
        SampleLines.written(
            "Soak the carrier bolts and disc screws, front left and right, with penetrating fluid"),
        SampleBrakeSteps.sections(),
        torqueLines(),
        new Sheet.Equipment(
            List.of(
                new Sheet.WrenchLine("W3", LocalDate.of(2026, 1, 15), LocalDate.of(2027, 1, 15))),
            sockets(),
            List.of(
                new Sheet.ToolLine("piston press", true, true, false),
                new Sheet.ToolLine("hub puller", true, false, false),
                new Sheet.ToolLine("wire brush", false, true, false),
                new Sheet.ToolLine("micrometer", false, true, false)),
            List.of(
                new PartLine(
                    "brake disc", 2, BOTH, false, Optional.empty(), Map.of("sample-work", 1)),
                new PartLine(
                    "brake pad", 4, BOTH, false, Optional.empty(), Map.of("sample-work", 1)),
                new PartLine(
                    "pad clip", 8, BOTH, false, Optional.empty(), Map.of("sample-work", 1)),
                new PartLine(
                    "carrier bolt", 4, BOTH, true, Optional.empty(), Map.of("sample-work", 1)),
                new PartLine(
                    "drive nut", 2, BOTH, true, Optional.empty(), Map.of("sample-work", 1))),
            SampleLines.written(
                "brake cleaner", "brake grease", "locking compound", "penetrating fluid")),
        List.of(
            new Sheet.TallyLine("wheel-speed-sensor", "wheel speed sensor plug", BOTH, 1, 7, 20),
            new Sheet.TallyLine("brake-pads", "brake pads", BOTH, 2, 9, 18),
            new Sheet.TallyLine("pad-clips", "pad clips", BOTH, 4, 12, 17),
            new Sheet.TallyLine("caliper-carrier", "caliper carrier", BOTH, 1, 10, 16),
            new Sheet.TallyLine("undertray", "undertray", CAR, 1, 3, 21)),
        checks(),
        new TimeNeeded(70, 95, 150, 12, 0),
        Optional.of("Steering wheel shakes when braking from speed"),
        SampleLines.written(
            "Larkfell works data sheet 4, 2016", "Larkfell chassis bulletin 17, 2018"),
        Optional.empty());
  }

  private static List<CautionLine> cautions() {
    return List.of(
        caution(
            "A",
            "DANGER",
            "Set the car on rated stands before reaching under it; never trust the jack",
            "a car held by a jack alone drops",
            "whoever is under it is crushed",
            List.of("safety footwear (M008)")),
        caution(
            "B",
            "WARNING",
            "Chock both sides of every wheel that stays on the floor",
            "the car rolls off its stands",
            "people under or beside it are crushed",
            List.of()),
        caution(
            "C",
            "WARNING",
            "Wet the dust and wipe it up; never blow or brush it dry",
            "brake dust in the air, asbestos on old cars",
            "lung disease that shows years later",
            List.of("M017", "M009"),
            8,
            13),
        caution(
            "D",
            "WARNING",
            "Hang a NO BRAKES tag on the steering wheel until the pedal is firm",
            "the pedal goes to the floor on the first press",
            "the car cannot be stopped and hits somebody",
            List.of(),
            15),
        caution(
            "E",
            "NOTICE",
            "Hang the caliper from a hook, never from its hose",
            "the hose tears inside where nobody sees it",
            "the hose must be replaced",
            List.of(),
            8));
  }

  private static List<TorqueLine> torqueLines() {
    return List.of(
        new LineMaker(1, "carrier bolt", BOTH, 2)
            .thread("M12x1.5", "10.9")
            .head("hex 15 mm", "1/2 in", 6)
            .stages(torque("108", "80", "W3"))
            .threads(Treatment.LOCKING_COMPOUND)
            .reuse(Reuse.NEW)
            .overridden()
            .build(),
        new LineMaker(2, "caliper bolt", BOTH, 2)
            .thread("M8x1.25", "8.8")
            .head("hex 13 mm", "3/8 in", 6)
            .stages(torque("27.5", "20.3", "W2"))
            .threads(Treatment.NOT_STATED)
            .warning("brake grease on this thread would raise the clamp load by about a third")
            .build(),
        new LineMaker(3, "drive nut", BOTH, 1)
            .thread("M24x1.5", "")
            .head("12-point 36 mm", "3/4 in", 12)
            .stages(torque("70", "52", "W3", "0.1", Band.Origin.BOOK), turn("60"))
            .reuse(Reuse.NEW)
            .lock(Fastener.Lock.STAKE)
            .build(),
        new LineMaker(4, "arm rear bolt", BOTH, 1)
            .thread("M14x1.5", "10.9")
            .head("hex 21 mm", "1/2 in", 6)
            .unknown()
            .atRideHeight()
            .build(),
        new LineMaker(5, "wheel nut", BOTH, 5)
            .thread("M12x1.5", "10")
            .head("hex 19 mm", "1/2 in", 6)
            .stages(torque("110", "81", "W3"))
            .circle("A")
            .onTheGround()
            .recheck(Quantity.of("80", Unit.KILOMETRE))
            .build());
  }

  private static List<Sheet.SocketLine> sockets() {
    return List.of(
        SampleLines.socket("3/8 in", "hex 13 mm", false, 4, 7, true),
        SampleLines.socket("1/2 in", "hex 15 mm", false, 4, 10, true),
        SampleLines.socket("1/2 in", "hex 19 mm", false, 10, 2, true),
        SampleLines.socket("1/2 in", "hex 21 mm", true, 2, 25, true),
        SampleLines.socket("3/4 in", "12-point 36 mm", false, 2, 21, false));
  }

  private static List<CheckLine> checks() {
    return List.of(
        check(Moment.BEFORE_LOWERING, "Spin each disc by hand; it turns free and runs true", 16),
        check(
            Moment.BEFORE_LOWERING,
            "Turn the steering from lock to lock; nothing touches the hose",
            8),
        check(
            Moment.BEFORE_MOVING,
            "Pump the pedal until it is high and firm, and keep it pressed ten seconds",
            "the first press only brings the pads to the disc",
            true,
            "",
            "",
            15),
        check(
            Moment.BEFORE_MOVING,
            "Fluid between the marks, cap on, no drip at hose or caliper",
            15),
        check(Moment.BEFORE_MOVING, "Take the NO BRAKES tag off the steering wheel", 15),
        check(
            Moment.ROAD_TEST,
            "Brake gently from low speed first; straight, no pulling, no noise",
            16),
        check(
            Moment.ROAD_TEST,
            "Bed the pads in as their data says",
            "",
            false,
            "bed-in recipe",
            "",
            18),
        check(
            Moment.HAND_OVER,
            "Tell the customer to come back for the wheel nuts and hand out the slip",
            "",
            false,
            "",
            "wheel alignment",
            25));
  }
}
