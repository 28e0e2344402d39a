package baysheet.template;

import java.util.Objects;

/** A mark of a drawing. */
public sealed interface Mark {
  /** A straight line. */
  record Line(int x1, int y1, int x2, int y2) implements Mark {}

  /** A circle; {@code heavy} with a thicker line. */
  record Circle(int x, int y, int radius, boolean heavy) implements Mark {}

  /** A filled triangle, corners in order. */
  record Triangle(int x1, int y1, int x2, int y2, int x3, int y3) implements Mark {}

  /** Text centred on a point, its height in thousandths of the drawing's width. */
  record Label(int x, int y, int height, String text, boolean bold) implements Mark {
    public Label {
      Objects.requireNonNull(text);
    }
  }
}
