package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.BoxVisitor;
import baysheet.box.Column;
import baysheet.box.Columns;
import baysheet.box.Drawing;
import baysheet.box.Droppable;
import baysheet.box.Field;
import baysheet.box.Fill;
import baysheet.box.Frame;
import baysheet.box.Items;
import baysheet.box.KeepWithNext;
import baysheet.box.Length;
import baysheet.box.Row;
import baysheet.box.Rule;
import baysheet.box.SimpleVisitor;
import baysheet.box.Space;
import baysheet.box.Stamp;
import baysheet.box.Table;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import baysheet.box.Width;
import java.util.List;

/** Finds how wide boxes must be and would like to be. */
record Extents(MeasureSettings setting) implements BoxVisitor<Extent> {
  Extent of(Box box) {
    return box.accept(this);
  }

  @Override
  public Extent text(Text box) {
    long size = setting.size(box.style());
    Paragraph paragraph = setting.paragraph(box);
    return new Extent(Em.at(paragraph.widest(), size), Em.at(paragraph.longest(), size));
  }

  @Override
  public Extent row(Row box) {
    Extent sum = Extent.NONE.plus(Math.max(0, box.cells().size() - 1) * length(box.gap()));
    for (Row.Cell cell : box.cells()) {
      sum = sum.and(column(cell.width(), of(cell.child())));
    }
    return sum;
  }

  @Override
  public Extent column(Column box) {
    return widest(box.children());
  }

  @Override
  public Extent columns(Columns box) {
    Extent one = widest(box.children());
    int count = box.counts().stream().min(Integer::compare).orElseThrow();
    long between = (count - 1) * length(box.between());
    return new Extent(one.least() * count, one.natural() * count).plus(between);
  }

  @Override
  public Extent held(KeepWithNext box) {
    return of(box.child());
  }

  @Override
  public Extent table(Table box) {
    return TableColumns.of(box, this).total();
  }

  @Override
  public Extent items(Items box) {
    return label(box).and(bodies(box)).plus(length(box.gap()));
  }

  @Override
  public Extent rule(Rule box) {
    return Extent.NONE;
  }

  @Override
  public Extent frame(Frame box) {
    return of(box.child()).plus(2 * (length(box.border()) + length(box.padding())));
  }

  @Override
  public Extent field(Field box) {
    return Extent.fixed(setting.penWidth(box));
  }

  @Override
  public Extent drawing(Drawing box) {
    return Extent.fixed(length(box.width()));
  }

  @Override
  public Extent stamp(Stamp box) {
    return Extent.fixed(box.size());
  }

  @Override
  public Extent droppable(Droppable box) {
    return of(box.child());
  }

  @Override
  public Extent space(Space box) {
    return Extent.NONE;
  }

  @Override
  public Extent fill(Fill box) {
    return Extent.NONE;
  }

  Extent column(Width width, Extent content) {
    return width instanceof Width.Fixed fixed ? Extent.fixed(length(fixed.length())) : content;
  }

  Extent label(Items items) {
    Extent content = Extent.NONE;
    for (Items.Entry entry : items.entries()) {
      content = content.or(of(entry.label()));
    }
    return column(items.label(), content);
  }

  Extent bodies(Items items) {
    Extent content = Extent.NONE;
    for (Items.Entry entry : items.entries()) {
      content = content.or(of(entry.body()));
    }
    return content;
  }

  /** What the figures in a table cell need that are to stand on their decimal points. */
  DecimalColumn figures(Box box) {
    return box.accept(
        new SimpleVisitor<DecimalColumn>() {
          @Override
          public DecimalColumn text(Text text) {
            return text.style().align() == TextStyle.Align.DECIMAL
                ? unbroken(text)
                : DecimalColumn.NONE;
          }

          @Override
          public DecimalColumn column(Column column) {
            DecimalColumn all = DecimalColumn.NONE;
            for (Box child : column.children()) {
              all = all.and(figures(child));
            }
            return all;
          }

          @Override
          protected DecimalColumn defaultAction(Box other) {
            return DecimalColumn.NONE;
          }
        });
  }

  private DecimalColumn unbroken(Text text) {
    Paragraph paragraph = setting.paragraph(text);
    if (paragraph.words().isEmpty()) {
      return DecimalColumn.NONE;
    }
    long size = setting.size(text.style());
    Fonts fonts = setting.fonts();
    LineBreaker breaker = new LineBreaker(fonts, size, Long.MAX_VALUE, word -> {});
    LineSetter setter =
        new LineSetter(fonts, size, Long.MAX_VALUE, text.style().align(), Inset.NONE);
    return DecimalColumn.of(setter.set(breaker.fill(paragraph)));
  }

  private Extent widest(List<Box> boxes) {
    Extent widest = Extent.NONE;
    for (Box box : boxes) {
      widest = widest.or(of(box));
    }
    return widest;
  }

  private long length(Length length) {
    return length.at(setting.body());
  }
}
