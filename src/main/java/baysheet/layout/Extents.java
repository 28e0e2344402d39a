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
    Extent content = widest(items.entries().stream().map(Box.Entry::label).toList());
    return column(items.label(), content);
  }

  Extent bodies(Box.Items items) {
    return widest(items.entries().stream().map(Box.Entry::body).toList());
  }

  /** What the figures in a table cell need that are to stand on their decimal points. */
  Figures figures(Box box) {
    if (box instanceof Box.Text text && text.style().align() == Box.Align.DECIMAL) {
      return Figures.of(unbroken(text));
    } else if (box instanceof Box.Column column) {
      return column.children().stream().map(this::figures).reduce(Figures.NONE, Figures::and);
    }
    return Figures.NONE;
  }

  private List<Lines.SetLine> unbroken(Box.Text text) {
    LineBreaker breaker =
        new LineBreaker(
            setting.fonts(),
            setting.size(text.style()),
            Long.MAX_VALUE,
            text.style().align(),
            word -> {});
    return breaker.fill(setting.words(text));
  }

  private Extent widest(List<Box> boxes) {
    return boxes.stream().map(this::of).reduce(Extent.NONE, Extent::or);
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
    long widest = 0;
    long longest = 0;
    long line = 0;
    long space = 0;
    for (Word word : setting.words(text)) {
      widest = Math.max(widest, word.advance());
      line = (word.startsLine() ? 0 : line + space) + word.advance();
      longest = Math.max(longest, line);
      space = setting.fonts().face(word.endsBold()).advance(' ');
    }
    return new Extent(Em.at(widest, size), Em.at(longest, size));
  }

  private long length(Length length) {
    return length.at(setting.body());
  }
}
