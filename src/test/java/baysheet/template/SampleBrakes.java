package baysheet.template;

import static baysheet.template.SampleLines.caution;
import static baysheet.template.SampleLines.check;
import static baysheet.template.SampleLines.torque;
import static baysheet.template.SampleLines.turn;
import static baysheet.template.Samples.BOTH;
import static baysheet.template.Samples.CAR;
import static baysheet.template.Samples.kilograms;
import static baysheet.template.Samples.section;
import static baysheet.template.Samples.step;

import baysheet.books.Moment;
import baysheet.books.Shop;
import baysheet.plan.CautionLine;
import baysheet.plan.CheckLine;
import baysheet.plan.Heading;
import baysheet.plan.Sheet;
import baysheet.plan.Sheet.Phase;
import baysheet.plan.Sheet.Section;
import baysheet.plan.TorqueLine;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.util.List;
import java.util.Optional;

/** A middle sheet with a bit of everything: both sides, an apprentice, stands, hold points. */
final class SampleBrakes {
  private SampleBrakes() {}

  static Sheet sheet() {
    return new Sheet(
        Samples.heading(
            "2401",
            "Discs and pads, front",
            List.of("discs and pads at front"),
            Optional.of(new Heading.Person("A1", "N. Tepperly", Shop.Grade.APPRENTICE))),
        cautions(),
        List.of(
            "Soak the carrier bolts and disc screws, front left and right, with penetrating fluid"),
        List.of(opening(), stripping(), work(), closing(), lowering(), last()),
        torqueLines(),
        sockets(),
        List.of(
            new Sheet.ToolLine("piston press", true, true),
            new Sheet.ToolLine("hub puller", true, false),
            new Sheet.ToolLine("wire brush", false, true),
            new Sheet.ToolLine("micrometer", false, true)),
        List.of(
            new Sheet.PartLine("brake disc", 2, false),
            new Sheet.PartLine("brake pad", 4, false),
            new Sheet.PartLine("pad clip", 8, false),
            new Sheet.PartLine("carrier bolt", 4, true),
            new Sheet.PartLine("drive nut", 2, true)),
        List.of("brake cleaner", "brake grease", "locking compound", "penetrating fluid"),
        List.of(
            new Sheet.TallyLine("wheel-speed-sensor", "wheel speed sensor plug", BOTH, 1, 7, 20),
            new Sheet.TallyLine("brake-pads", "brake pads", BOTH, 2, 9, 18),
            new Sheet.TallyLine("pad-clips", "pad clips", BOTH, 4, 12, 17),
            new Sheet.TallyLine("caliper-carrier", "caliper carrier", BOTH, 1, 10, 16),
            new Sheet.TallyLine("undertray", "undertray", CAR, 1, 3, 21)),
        checks(),
        List.of(
            new Sheet.Support(
                "front",
                "two axle stands",
                kilograms("858"),
                Optional.of(kilograms("429")),
                kilograms("2000"),
                List.of("the flat behind the front seam notch"))),
        new Sheet.TimeNeeded(70, 95, 150, 12, 0),
        Optional.of("Steering wheel shakes when braking from speed"),
        List.of("Larkfell works data sheet 4, 2016", "Larkfell chassis bulletin 17, 2018"));
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
            List.of("respirator (M017)", "gloves (M009)"),
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

  private static Section opening() {
    return section(
        "Raise the front on stands",
        Phase.OPEN,
        CAR,
        step("Chock the rear wheels, select neutral and release the parking brake", 1),
        step("Loosen the wheel nuts one turn with the car on its wheels", 2)
            .why("a hard pull rocks a raised car"),
        step("Raise the front, set the stands under the flats, lower on to them and push", 3)
            .details("429\u00a0kg a stand, rated 2000\u00a0kg")
            .good("the car does not move")
            .hold());
  }

  private static Section stripping() {
    return section(
        "Wheel off, caliper aside, disc off",
        Phase.OPEN,
        BOTH,
        step("Take off the wheel nuts and the wheel", 4).details("5 nuts"),
        step("Unplug the wheel speed sensor; press the clip and never pull on the wire", 5)
            .why("the clip breaks and the plug then shakes loose"),
        step("Measure the old disc and write the thickness on it", 6),
        step("Take out the caliper bolts while holding the guide pins", 7)
            .details("2 bolts, counter-hold 15\u00a0mm")
            .stuck("Penetrating fluid and ten minutes", "Six-point socket, steady pull"),
        step("Lift the caliper off and hang it from a hook", 8).above("C", "E"),
        step("Slide the old pads out and note how evenly they are worn", 9)
            .why("a tapered pad tells of a seized guide pin"),
        step("Take out the carrier bolts and lift the carrier away", 10)
            .details("2 bolts, discard")
            .minutes(2, 3, 12)
            .stuck(
                "Six-point socket and a steady long bar",
                "Warm the carrier lug to loosen the locking compound"),
        step("Pull the old disc straight off the hub", 11)
            .minutes(1, 2, 15)
            .stuck(
                "Penetrating fluid round the hub and a soft hammer between the studs",
                "Press it off with bolts through the carrier holes"),
        step("Pull the old pad clips out of the carrier", 12).details("4 clips"));
  }

  private static Section work() {
    return section(
        "Clean and free",
        Phase.WORK,
        BOTH,
        step("Clean the hub face to bare metal right up to the spigot", 13)
            .letters("C")
            .why("a speck under the disc becomes pedal shake")
            .good("a straight edge sits flat all round"),
        step("Slide each guide pin in and out; it must move freely and its boot be whole", 14)
            .why("a dry pin wears one pad and overheats the disc")
            .good("pin springs back, grease clean"),
        step("Press the piston back slowly and watch the fluid level rise", 15)
            .above("D")
            .why("the new pads are thicker and the reservoir may overflow")
            .good("boot dry and folded evenly"));
  }

  private static Section closing() {
    return section(
        "Build up",
        Phase.CLOSE,
        BOTH,
        step("Wire-brush the carrier faces and fit the carrier with its new bolts", 16)
            .details("2 new bolts, locking compound")
            .torque(1),
        step("Press the new pad clips into the bare carrier until they snap", 17)
            .details("4 clips"),
        step("Fit the new pads, wear indicator on the side it came from", 18)
            .good("each pad slides by hand in its clips"),
        step("Fit the caliper and its bolts while holding the guide pins", 19).torque(2),
        step("Plug the wheel speed sensor in until the clip snaps", 20),
        step("Tighten the drive nut with the brake held", 21)
            .torque(3)
            .details("new nut, stake it"),
        step("Fit the wheel and run the nuts on by hand, then snug crosswise", 22)
            .torque(5)
            .details("5 nuts, dry"));
  }

  private static Section lowering() {
    return section(
        "Lower the car",
        Phase.CLOSE,
        CAR,
        step("Show the second person both corners: bolts marked, hose untwisted, boots whole", 23)
            .hold(),
        step("Lower the car on to its wheels and take the chocks away last", 24));
  }

  private static Section last() {
    return section(
        "Wheels on the ground",
        Phase.FINAL,
        Moment.ON_THE_GROUND,
        BOTH,
        step("Bounce the front once and tighten the arm rear bolt", 25).torque(4),
        step("Tighten the wheel nuts in the order of drawing A", 26).torque(5));
  }

  private static List<TorqueLine> torqueLines() {
    return List.of(
        new LineMaker(1, "carrier bolt", BOTH, 2)
            .thread("M12x1.5", "10.9")
            .head("hex 15 mm", "1/2 in", 6)
            .stages(torque("108", "80", "W3"))
            .threads("locking compound")
            .reuse("new")
            .overridden()
            .build(),
        new LineMaker(2, "caliper bolt", BOTH, 2)
            .thread("M8x1.25", "8.8")
            .head("hex 13 mm", "3/8 in", 6)
            .stages(torque("27.5", "20.3", "W2"))
            .threads("not stated")
            .warning("brake grease on this thread would raise the clamp load by about a third")
            .build(),
        new LineMaker(3, "drive nut", BOTH, 1)
            .thread("M24x1.5", "")
            .head("12-point 36 mm", "3/4 in", 12)
            .stages(torque("70", "52", "W3", "0.1", Band.Origin.BOOK), turn("60"))
            .reuse("new")
            .lock("stake")
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
        new Sheet.SocketLine("3/8 in", "hex 13 mm", 6, false, false, 4, 7, true, Optional.empty()),
        new Sheet.SocketLine("1/2 in", "hex 15 mm", 6, false, false, 4, 10, true, Optional.empty()),
        new Sheet.SocketLine("1/2 in", "hex 19 mm", 6, true, false, 10, 2, true, Optional.empty()),
        new Sheet.SocketLine("1/2 in", "hex 21 mm", 6, false, true, 2, 25, true, Optional.empty()),
        new Sheet.SocketLine(
            "3/4 in", "12-point 36 mm", 12, false, false, 2, 21, false, Optional.empty()));
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
