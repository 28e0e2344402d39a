package baysheet.wording;

import static baysheet.wording.Samples.BOTH;
import static baysheet.wording.Samples.CAR;
import static baysheet.wording.Samples.section;
import static baysheet.wording.Samples.step;

import baysheet.books.Moment;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.Sheet.Section;
import java.util.List;

/** The sequence of {@link SampleBrakes}: raised, taken apart, worked at, put together, lowered. */
final class SampleBrakeSteps {
  private SampleBrakeSteps() {}

  static List<Section> sections() {
    return List.of(opening(), stripping(), work(), closing(), lowering(), last());
  }

  private static Section opening() {
    return section(
        Phase.OPEN,
        CAR,
        step("Chock the rear wheels, select neutral and release the parking brake", 1),
        step("Loosen the wheel nuts one turn with the car on its wheels", 2)
            .why("a hard pull rocks a raised car"),
        step("Raise the front, set the stands under the flats, lower on to them and push", 3)
            .tools("429\u00a0kg a stand, rated 2000\u00a0kg")
            .good("the car does not move")
            .hold());
  }

  private static Section stripping() {
    return section(
        Phase.OPEN,
        BOTH,
        step("Take off the wheel nuts and the wheel", 4).tools("5 nuts"),
        step("Unplug the wheel speed sensor; press the clip and never pull on the wire", 5)
            .why("the clip breaks and the plug then shakes loose"),
        step("Measure the old disc and write the thickness on it", 6),
        step("Take out the caliper bolts while holding the guide pins", 7)
            .tools("2 bolts, counter-hold 15\u00a0mm")
            .stuck("Penetrating fluid and ten minutes", "Six-point socket, steady pull"),
        step("Lift the caliper off and hang it from a hook", 8).above("C", "E"),
        step("Slide the old pads out and note how evenly they are worn", 9)
            .why("a tapered pad means a seized guide pin"),
        step("Take out the carrier bolts and lift the carrier away", 10)
            .tools("2 bolts, discard")
            .minutes(2, 3, 12)
            .stuck(
                "Six-point socket and a steady long bar",
                "Warm the carrier lug to loosen the locking compound"),
        step("Pull the old disc straight off the hub", 11)
            .minutes(1, 2, 15)
            .stuck(
                "Penetrating fluid round the hub and a soft hammer between the studs",
                "Press it off with bolts through the carrier holes"),
        step("Pull the old pad clips out of the carrier", 12).tools("4 clips"));
  }

  private static Section work() {
    return section(
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
        Phase.CLOSE,
        BOTH,
        step("Wire-brush the carrier faces and fit the carrier with its new bolts", 16)
            .tools("2 new bolts, locking compound")
            .torque(1),
        step("Press the new pad clips into the bare carrier until they snap", 17).tools("4 clips"),
        step("Fit the new pads, wear indicator on the side it came from", 18)
            .good("each pad slides by hand in its clips"),
        step("Fit the caliper and its bolts while holding the guide pins", 19).torque(2),
        step("Plug the wheel speed sensor in until the clip snaps", 20),
        step("Tighten the drive nut with the brake held", 21).torque(3).tools("new nut, stake it"),
        step("Fit the wheel and run the nuts on by hand, then snug crosswise", 22)
            .torque(5)
            .tools("5 nuts, dry"));
  }

  private static Section lowering() {
    return section(
        Phase.CLOSE,
        CAR,
        step("Show the second person both corners: bolts marked, hose untwisted, boots whole", 23)
            .hold(),
        step("Lower the car on to its wheels and take the chocks away last", 24));
  }

  private static Section last() {
    return section(
        Phase.FINAL,
        Moment.ON_THE_GROUND,
        BOTH,
        step("Bounce the front once and tighten the arm rear bolt", 25).torque(4),
        step("Tighten the wheel nuts in the order of drawing A", 26).torque(5));
  }
}
