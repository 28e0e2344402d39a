package baysheet.books;

import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Reach;

/** Names of tools that follow from a tightening, as shop files and vocabularies write them. */
public final class ToolNames {
  public static final String ANGLE_GAUGE = "angle gauge";
  public static final String PAINT_PEN = "paint pen";
  public static final String SOLID_BLOCKS = "solid wheel blocks";
  public static final String WHEEL_CHOCKS = "wheel chocks";

  private ToolNames() {}

  public static String adapter(Drive from, Drive to) {
    return typed("adapter " + from.print() + " to " + to.print());
  }

  /** With its size and length, for another length needs another setting. */
  public static String crowFoot(Head head, Reach reach) {
    return typed(
        "%s %s, reach %s".formatted(reach.tool().print(), head.print(), reach.length().print()));
  }

  public static String socket(Drive square) {
    return square.print() + " socket";
  }

  /** Names are typed, so without the space that does not break. */
  private static String typed(String printed) {
    return printed.replace('\u00a0', ' ');
  }
}
