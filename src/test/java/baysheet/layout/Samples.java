package baysheet.layout;

import static baysheet.layout.Sketch.*;

import baysheet.box.Box;
import baysheet.box.Columns;
import baysheet.box.Fill;
import baysheet.box.Form;
import baysheet.box.Table;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import baysheet.box.Width;
import java.util.ArrayList;
import java.util.List;

/** Forms with a bit of everything. */
public final class Samples {
  private Samples() {}

  /** A form that is about as full as a real one. */
  public static Form full() {
    return form(
        column(4, header(), cautions(), sequence(), torques(), diagrams(), new Fill(HERE), foot()),
        List.of("drawings", "second-unit", "hints"));
  }

  /** A form that fits only when it is tight. */
  public static Form tight() {
    return form(
        column(
            4,
            header(),
            cautions(),
            sequence(),
            sequence(),
            torques(),
            sequence(),
            diagrams(),
            foot()),
        List.of("drawings", "second-unit", "hints"));
  }

  private static Box header() {
    Box left =
        column(
            heading(Text.Role.TITLE, 1700, "Job 2417 · Front lower arm"),
            text(
                TextStyle.Align.LEFT,
                bold("Larkfell Pipit "),
                run("2015 to 2019, plate LP 15 KFT")));
    Box right = text(TextStyle.Align.RIGHT, run("Monday 2 March 2026\nBay 1, T1 with A1"));
    return column(row(10, cell(SHARE, left), cell(NATURAL, right)), rule());
  }

  private static Box cautions() {
    return frame(
        column(
            1,
            held(heading(Text.Role.HEADING, 1100, "⚠ DANGER")),
            text(
                "Set the stands under the sill seams: a car that slips off crushes who is"
                    + " below.")));
  }

  private static Box sequence() {
    List<Box> flow = new ArrayList<>();
    flow.add(held(heading(Text.Role.HEADING, 1100, "Open")));
    flow.add(
        ticked(
            "open",
            "Loosen the wheel nuts by half a turn with the wheel on the ground",
            "Raise the front and set two stands",
            "Take off the wheel",
            "Unclip the ride-height sensor rod from the arm; press the clip and never pull the rod",
            "Take out the pinch bolt and spread the clamp a hair with a wedge"));
    flow.add(held(frame(text("WARNING B: The spring pushes the arm down. Keep clear of it."))));
    flow.add(
        ticked(
            "work",
            "Lever the arm down and the joint out of the clamp",
            "Take out the two bush bolts and lift the arm away",
            "Clean the clamp bore and the bush seats to bright metal"));
    flow.add(held(heading(Text.Role.HEADING, 1100, "Close")));
    flow.add(
        ticked(
            "close",
            "Lift the arm in and run both bush bolts up by hand",
            "Push the joint in and drive the new pinch bolt home: 30 N·m, then 60°",
            "Plug the sensor rod in",
            "Fit the wheel, nuts snug in the order of drawing A"));
    flow.add(droppable("hints", text("Stuck? Penetrating fluid and ten minutes, then both ways.")));
    return new Columns(List.of(2), flow, pt(3), pt(14), HERE);
  }

  private static Box torques() {
    List<Width> widths = List.of(NATURAL, SHARE, NATURAL, NATURAL, NATURAL, fixed(60), fixed(20));
    List<Table.Cell> header =
        List.of(
            td(""),
            td(text(TextStyle.Align.LEFT, bold("Fastener and place"))),
            td(text(TextStyle.Align.LEFT, bold("Thread"))),
            td(text(TextStyle.Align.LEFT, bold("Target, N·m"))),
            td(droppable("second-unit", text(TextStyle.Align.LEFT, bold("lbf·ft")))),
            td(text(TextStyle.Align.LEFT, bold("Reached"))),
            td(text("✓")));
    return table(
        widths,
        header,
        torque("1", "Pinch bolt, front left", "M10×1.5", "30 → +60°", "22"),
        torque("2", "Carrier bolt, front left", "M12×1.5", "102.5", "75.6"),
        torque("3", "Lower arm bush bolt, front left, at ride height", "M12×1.75", "95 ± 5", "70"),
        new Table.Line(
            List.of(spanning(7, text(TextStyle.Align.LEFT, bold("On the ground")))), true),
        torque("4", "Wheel nut, front left", "M12×1.5", "110", "81"),
        tr(spanning(7, text("Marked ____ of 4"))));
  }

  private static Table.Line torque(
      String number, String fastener, String thread, String target, String second) {
    return tr(
        td(text(TextStyle.Align.RIGHT, run(number))),
        rowHeader(fastener),
        td(thread),
        td(
            new Text(
                List.of(bold(target)),
                new TextStyle(false, 1200, 10_500, 14_000, TextStyle.Align.DECIMAL),
                Text.Role.PARAGRAPH,
                HERE)),
        td(droppable("second-unit", text(TextStyle.Align.DECIMAL, run(second)))),
        td(value("torque." + number)),
        td(tick("mark." + number, "witness mark on line " + number)));
  }

  private static Box diagrams() {
    return column(
        held(heading(Text.Role.HEADING, 1100, "Order")),
        shrinking(
            "drawings", row(20, cell(NATURAL, wheel(90)), cell(NATURAL, wheel(90))), wheel(60)));
  }

  private static Box foot() {
    Box signature = column(text("Technician"), line("signature.technician"));
    Box second = column(text("Second person"), line("signature.second"));
    return column(
        row(12, cell(SHARE, signature), cell(SHARE, second)),
        text("≤ ≥ ½ ⌀ ☐ ° ± × – Left and right as seen from the driver’s seat."));
  }
}
