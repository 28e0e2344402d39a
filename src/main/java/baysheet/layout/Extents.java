package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Length;
import baysheet.template.Width;
import java.util.List;

/** Finds how wide boxes must be and would like to be. */
record Extents(Setting setting) {
  Extent of(Box box) {
    if (box instanceof Box.Text text) {
      return text(text);
    } else if (box instanceof Box.Field field) {
      return Extent.fixed(setting.penWidth(field));
    } else if (box instanceof Box.Drawing drawing) {
      return Extent.fixed(length(drawing.width()));
    } else if (box instanceof Box.Frame frame) {
      return of(frame.child()).plus(2 * (length(frame.border()) + length(frame.padding())));
    } else if (box instanceof Box.Held held) {
      return of(held.child());
    } else if (box instanceof Box.Droppable droppable) {
      return of(droppable.child());
    }
    return ofMany(box);
  }

  private Extent ofMany(Box box) {
    if (box instanceof Box.Column column) {
      return widest(column.children());
    } else if (box instanceof Box.Row row) {
      return row(row);
    } else if (box instanceof Box.Columns columns) {
      Extent one = widest(columns.children());
      long between = (columns.count() - 1) * length(columns.between());
      return new Extent(one.least() * columns.count(), one.natural() * columns.count())
          .plus(between);
    } else if (box instanceof Box.Items items) {
      return label(items).and(bodies(items)).plus(length(items.gap()));
    } else if (box instanceof Box.Table table) {
      return TableColumns.of(table, this).total();
    }
    return Extent.NONE;
  }

  Extent column(Width width, Extent content) {
    return width instanceof Width.Fixed fixed ? Extent.fixed(length(fixed.length())) : content;
  }

  Extent label(Box.Items items) {
    Extent content = Extent.NONE;
    for (Box.Entry entry : items.entries()) {
      content = content.or(of(entry.label()));
    }
    return column(items.label(), content);
  }

  Extent bodies(Box.Items items) {
    Extent content = Extent.NONE;
    for (Box.Entry entry : items.entries()) {
      content = content.or(of(entry.body()));
    }
    return content;
  }

  /** What the figures in a table cell need that are to stand on their decimal points. */
  Figures figures(Box box) {
    if (box instanceof Box.Text text && text.style().align() == Box.Align.DECIMAL) {
      return unbroken(text);
    } else if (box instanceof Box.Column column) {
      Figures all = Figures.NONE;
      for (Box child : column.children()) {
        all = all.and(figures(child));
      }
      return all;
    }
    return Figures.NONE;
  }

  private Figures unbroken(Box.Text text) {
    Paragraph paragraph = setting.paragraph(text);
    if (paragraph.words().isEmpty()) {
      return Figures.NONE;
    }
    long size = setting.size(text.style());
    Fonts fonts = setting.fonts();
    LineBreaker breaker = new LineBreaker(fonts, size, Long.MAX_VALUE, word -> {});
    LineSetter setter = new LineSetter(fonts, size, Long.MAX_VALUE, text.style().align());
    return Figures.of(setter.set(breaker.fill(paragraph)));
  }

  private Extent widest(List<Box> boxes) {
    Extent widest = Extent.NONE;
    for (Box box : boxes) {
      widest = widest.or(of(box));
    }
    return widest;
  }

  private Extent row(Box.Row row) {
    Extent sum = Extent.NONE.plus(Math.max(0, row.cells().size() - 1) * length(row.gap()));
    for (Box.Cell cell : row.cells()) {
      sum = sum.and(column(cell.width(), of(cell.child())));
    }
    return sum;
  }

  private Extent text(Box.Text text) {
    long size = setting.size(text.style());
    Paragraph paragraph = setting.paragraph(text);
    return new Extent(Em.at(paragraph.widest(), size), Em.at(paragraph.longest(), size));
  }

  private long length(Length length) {
    return length.at(setting.body());
  }
}
