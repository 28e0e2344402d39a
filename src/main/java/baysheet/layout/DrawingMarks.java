package baysheet.layout;

import baysheet.box.Mark;

/** Puts the marks of a drawing on a page. */
record DrawingMarks(long x, long y, long width, Fonts fonts, PageBuilder page)
    implements Mark.Visitor {
  /** Thick enough to survive a tired toner cartridge, thin enough for numbers beside it. */
  private static final long THIN = 600;

  private static final long HEAVY = 1300;

  @Override
  public void line(Mark.Line line) {
    long thickness = line.heavy() ? HEAVY : THIN;
    page.add(
        new Item.Line(
            page.element(), x(line.x1()), y(line.y1()), x(line.x2()), y(line.y2()), thickness));
  }

  @Override
  public void circle(Mark.Circle circle) {
    long thickness = circle.heavy() ? HEAVY : THIN;
    page.add(
        new Item.Circle(
            page.element(), x(circle.x()), y(circle.y()), scaled(circle.radius()), thickness));
  }

  @Override
  public void triangle(Mark.Triangle t) {
    page.add(
        new Item.Triangle(
            page.element(), x(t.x1()), y(t.y1()), x(t.x2()), y(t.y2()), x(t.x3()), y(t.y3())));
  }

  /** Centred on the middle of its capitals, for the labels are numbers and letters. */
  @Override
  public void label(Mark.Label label) {
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
            BreakCharacters.drawn(label.text())));
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
