package baysheet.box;

import java.util.List;

/** A mark of a drawing; coordinates are thousandths of the drawing's width. */
public sealed interface Mark {
  /** What a font must be able to print. */
  List<Printed> printed();

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** Treats each kind of mark in its own way. */
  interface Visitor {
    void line(Line mark);

    void circle(Circle mark);

    void triangle(Triangle mark);

    void label(Label mark);
  }

  /** A straight line; {@code heavy} with a thicker one. */
  record Line(int x1, int y1, int x2, int y2, boolean heavy) implements Mark {
    @Override
    public List<Printed> printed() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.line(this);
    }
  }

  /** A circle; {@code heavy} with a thicker line. */
  record Circle(int x, int y, int radius, boolean heavy) implements Mark {
    @Override
    public List<Printed> printed() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.circle(this);
    }
  }

  /** A filled triangle, corners in order. */
  record Triangle(int x1, int y1, int x2, int y2, int x3, int y3) implements Mark {
    @Override
    public List<Printed> printed() {
      return List.of();
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.triangle(this);
    }
  }

  /** Text centred on a point, its height in thousandths of the drawing's width. */
  record Label(int x, int y, int height, String text, boolean bold) implements Mark {
    @Override
    public List<Printed> printed() {
      return List.of(new Printed(text, bold));
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.label(this);
    }
  }
}
