package baysheet.wording;

import baysheet.wording.SheetText.BoxText;
import java.util.List;

/**
 * The torque table in words and figures, and the drawings that go with it.
 *
 * @param blocks lines by the moment of their final torque
 * @param marks how many witness marks the foot counts to
 * @param unit the unit in which every value is written down; nothing where lines differ
 * @param shopBand what the word "shop" at a band means, where it is used
 */
public record TorqueTableText(
    List<TorqueBlock> blocks,
    List<DrawingText> drawings,
    String marks,
    String unit,
    String shopBand) {
  public TorqueTableText {
    blocks = List.copyOf(blocks);
    drawings = List.copyOf(drawings);
  }

  /** Torque lines with one moment. */
  public record TorqueBlock(String heading, List<TorqueLineText> lines) {
    public TorqueBlock {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A line of the torque table.
   *
   * @param set count, thread, class, head and drive: {@code 2 × M12×1.75 · 10.9 · hex 18 mm, 1/2
   *     in}
   * @param kind {@code published}, {@code snug} or {@code unknown}
   * @param rounds passes, or nothing where there is one
   * @param threads what goes on the thread
   * @param order letter of the drawing that shows the order, or nothing
   * @param unit the unit in which a value is written down
   * @param values a box for each place
   * @param turns further turns, in order
   * @param snug a box for each place where the line is visited twice
   * @param marks a box for each place
   * @param borrow whether the crib has no wrench for it
   * @param ask whether its figure is in doubt, so that wrench and setting are written in once
   *     somebody has been asked
   */
  public record TorqueLineText(
      String n,
      String words,
      String places,
      String set,
      String kind,
      List<StageText> stages,
      String rounds,
      String threads,
      String reuse,
      String lock,
      String order,
      List<RemarkText> remarks,
      String unit,
      List<BoxText> values,
      List<TurnText> turns,
      List<BoxText> snug,
      List<BoxText> marks,
      List<String> warnings,
      List<String> notes,
      boolean borrow,
      boolean ask,
      boolean rideHeight,
      String override) {
    public TorqueLineText {
      stages = List.copyOf(stages);
      values = List.copyOf(values);
      remarks = List.copyOf(remarks);
      turns = List.copyOf(turns);
      snug = List.copyOf(snug);
      marks = List.copyOf(marks);
      warnings = List.copyOf(warnings);
      notes = List.copyOf(notes);
    }
  }

  /** What a book says of a fastener; the kind is its key there. */
  public record RemarkText(String kind, String words) {}

  /**
   * A torque and the further turns after it.
   *
   * @param target what to reach: {@code 70 N·m +60°}, or {@code loosen}
   * @param band what is accepted, in the target's unit
   * @param shopBand whether that is the shop's own band
   * @param reading the same as the wrench shows it, where that is something else
   * @param second the target in the shop's second unit
   * @param wrench the wrench of the crib that reaches it, {@code W3}, or nothing
   * @param setting what to set on that wrench: {@code 70 N·m}
   * @param remark what else to do
   * @param set what is done, for the largest figure of the row: the setting with the turns after
   *     it, {@code 70 N·m +60°}, or the target where nothing is set
   * @param once whether that says the target, so that it need not be printed again
   */
  public record StageText(
      String target,
      String band,
      boolean shopBand,
      String reading,
      String second,
      String wrench,
      String setting,
      String remark,
      String set,
      boolean once) {}

  /**
   * A further turn after a torque.
   *
   * @param angle {@code +60°}
   * @param boxes a box for each place, ticked when it has been turned so far
   */
  public record TurnText(String angle, List<BoxText> boxes) {
    public TurnText {
      boxes = List.copyOf(boxes);
    }
  }

  /**
   * The order of tightening, seen from the front of the fasteners. Coordinates are thousandths of
   * the drawing's width.
   *
   * @param lines the torque lines that it belongs to
   * @param height thousandths of the width
   * @param least the least width at which its figures can be read, in millimetres
   * @param positions none where the sequence is not drawn but only listed
   * @param wide whether it needs the width of the page
   * @param turns the sequence as a list, ten turns a line
   * @param numbering how the list numbers the positions
   * @param says what it shows, for a screen reader
   */
  public record DrawingText(
      String letter,
      String lines,
      int height,
      int least,
      int radius,
      int figure,
      List<PositionText> positions,
      boolean wide,
      List<String> turns,
      String numbering,
      String says) {
    public DrawingText {
      positions = List.copyOf(positions);
      turns = List.copyOf(turns);
    }
  }

  /** A fastener of a drawing, with its turn. */
  public record PositionText(int x, int y, String turn, boolean first) {}
}
