package baysheet.layout;

import baysheet.template.Mark;

/** Puts the marks of a drawing on a page. */
record Strokes(long x, long y, long width, Fonts fonts, PageBuilder page) {
  /** Thick enough to survive a tired toner cartridge, thin enough for numbers beside it. */
  private static final long THIN = 600;

  private static final long HEAVY = 1300;

  /** Lines and outlines are thousandths of the width, as all of a drawing's coordinates. */
  void add(Mark mark) {
    int element = page.element();
    if (mark instanceof Mark.Line line) {
      page.add(
          new Item.Line(element, x(line.x1()), y(line.y1()), x(line.x2()), y(line.y2()), THIN));
    } else if (mark instanceof Mark.Circle circle) {
      long thickness = circle.heavy() ? HEAVY : THIN;
      page.add(
          new Item.Circle(
              element, x(circle.x()), y(circle.y()), scaled(circle.radius()), thickness));
    } else if (mark instanceof Mark.Triangle t) {
      page.add(
          new Item.Triangle(
              element, x(t.x1()), y(t.y1()), x(t.x2()), y(t.y2()), x(t.x3()), y(t.y3())));
    } else if (mark instanceof Mark.Label label) {
      label(label);
    }
  }

  /** Centred on the middle of its capitals, for the labels are numbers and letters. */
  private void label(Mark.Label label) {
    FontFace face = fonts.face(label.bold());
    long size = scaled(label.height());
    long wide = Em.at(face.advance(label.text()), size);
    long baseline = y(label.y()) + Em.at(face.capHeight(), size) / 2;
    page.add(
        new Item.Glyphs(
            page.element(),
            label.bold(),
            size,
            x(label.x()) - wide / 2,
            baseline,
            wide,
            Em.at(face.capHeight(), size),
            Em.at(face.descent(), size),
            Characters.drawn(label.text())));
  }

  private long x(int thousandths) {
    return x + scaled(thousandths);
  }

  private long y(int thousandths) {
    return y + scaled(thousandths);
  }

  private long scaled(int thousandths) {
    return Math.floorDiv(thousandths * width, 1000L);
  }
}
