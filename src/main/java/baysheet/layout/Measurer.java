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
import baysheet.box.Space;
import baysheet.box.Stamp;
import baysheet.box.Table;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import baysheet.layout.Measured.Placed;
import baysheet.layout.Tag.Type;
import baysheet.report.Span;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Measures boxes in one setting, and notes what is too wide for its room. */
final class Measurer {
  private final MeasureSettings setting;
  private final Extents extents;

  /** What was measured and had room; by identity, as {@link MeasureSettings.Paragraphs} are. */
  private final Map<Box, Known> known = new IdentityHashMap<>(256);

  private final List<TooWide> tooWide = new ArrayList<>();

  Measurer(MeasureSettings setting) {
    this.setting = setting;
    extents = new Extents(setting);
  }

  /**
   * Measures a whole page. Boxes that stood on an earlier page of this measurer are not measured
   * again: where something more gives way, most of the rest stays.
   */
  Measured whole(Box body, long width) {
    tooWide.clear();
    return measure(body, width);
  }

  /** What of the last page was too wide for its room. */
  List<TooWide> tooWide() {
    return List.copyOf(tooWide);
  }

  MeasureSettings setting() {
    return setting;
  }

  Extents extents() {
    return extents;
  }

  long length(Length length) {
    return length.at(setting.body());
  }

  /**
   * Measures a box.
   *
   * @param width of the room it may take
   */
  Measured measure(Box box, long width) {
    return box.accept(new AtWidth(width));
  }

  /** Measures each kind of box in a room of one width. */
  private final class AtWidth implements BoxVisitor<Measured> {
    private final long width;

    AtWidth(long width) {
      this.width = width;
    }

    @Override
    public Measured text(Text box) {
      return once(box, () -> Measurer.this.text(box, width, paragraphTag(box.role())));
    }

    @Override
    public Measured row(Row box) {
      return once(box, () -> new RowMeasurer(Measurer.this).row(box, width));
    }

    @Override
    public Measured column(Column box) {
      return once(box, () -> Measurer.this.column(box, width));
    }

    @Override
    public Measured columns(Columns box) {
      return once(box, () -> new ColumnFlow(Measurer.this).measure(box, width));
    }

    @Override
    public Measured held(KeepWithNext box) {
      return once(box, () -> measure(box.child(), width));
    }

    @Override
    public Measured table(Table box) {
      return once(box, () -> new TableMeasurer(Measurer.this, box, width).measure());
    }

    @Override
    public Measured items(Items box) {
      return once(box, () -> new ListMeasurer(Measurer.this).measure(box, width));
    }

    @Override
    public Measured rule(Rule box) {
      return new Measured.Ruled(width, length(box.thickness()));
    }

    @Override
    public Measured frame(Frame box) {
      return once(box, () -> Measurer.this.frame(box, width));
    }

    @Override
    public Measured field(Field box) {
      return Measurer.this.field(box, width);
    }

    @Override
    public Measured drawing(Drawing box) {
      return Measurer.this.drawing(box, width);
    }

    @Override
    public Measured stamp(Stamp box) {
      note(box.element(), box.at(), box.size() - width);
      return new Measured.Stamped(box);
    }

    @Override
    public Measured droppable(Droppable box) {
      return measure(box.child(), width);
    }

    @Override
    public Measured space(Space box) {
      return new Measured.Blank(0, length(box.height()), false);
    }

    @Override
    public Measured fill(Fill box) {
      return new Measured.Blank(0, 0, true);
    }

    /** As it was measured before at this width, where it had room. */
    private Measured once(Box box, Supplier<Measured> anew) {
      Known first = known.get(box);
      for (Known before = first; before != null; before = before.next) {
        if (before.width == width) {
          return before.box;
        }
      }
      int notes = tooWide.size();
      Measured measured = anew.get();
      if (tooWide.size() == notes) {
        known.put(box, new Known(width, measured, first));
      }
      return measured;
    }
  }

  /**
   * Measures a paragraph.
   *
   * @param tag its element; none for decoration
   */
  Measured text(Text text, long width, Optional<Tag> tag) {
    return text(text, width, tag, Inset.NONE);
  }

  /** Measures a paragraph at whose beginning something stands; it keeps that to itself. */
  Measured text(Text text, long width, Inset inset) {
    Optional<Tag> tag = paragraphTag(text.role());
    return new AtWidth(width).once(text, () -> text(text, width, tag, inset));
  }

  /** From one line of a paragraph to the next. */
  long leading(Text text) {
    boolean far = setting.paragraph(text).reachesFar();
    FontFace face = setting.fonts().regular();
    long size = setting.size(text.style());
    return Em.at(face.rise(far), size) + Em.at(face.fall(far), size);
  }

  private Measured text(Text text, long width, Optional<Tag> tag, Inset inset) {
    Paragraph paragraph = setting.paragraph(text);
    if (paragraph.words().isEmpty()) {
      return Measured.nothing(width);
    }
    Fonts fonts = setting.fonts();
    long size = setting.size(text.style());
    LineBreaker breaker =
        new LineBreaker(
            fonts,
            size,
            width,
            word ->
                note(word.text(), text.at(), Em.at(word.advance(), size) + inset.width() - width));
    long rise = Em.at(fonts.regular().rise(paragraph.reachesFar()), size);
    long fall = Em.at(fonts.regular().fall(paragraph.reachesFar()), size);
    TextStyle.Align align = text.style().align();
    LineBreaker.Broken broken = breaker.fill(paragraph, inset);
    return new ParagraphLines(
        width, size, rise + fall, rise, align, broken, inset, Measured.NONE, tag, text.at(), fonts);
  }

  private static Optional<Tag> paragraphTag(Text.Role role) {
    return switch (role) {
      case TITLE -> Optional.of(Tag.of(Type.H1));
      case HEADING -> Optional.of(Tag.of(Type.H2));
      case SUBHEADING -> Optional.of(Tag.of(Type.H3));
      case PARAGRAPH -> Optional.of(Tag.of(Type.P));
      case DECORATION -> Optional.empty();
    };
  }

  /** A line to write on grows to its room; every other box for a pen keeps its size. */
  private Measured field(Field field, long width) {
    long least = setting.penWidth(field);
    if (least > width) {
      note("box for a pen " + field.name(), field.at(), least - width);
    }
    long wide = field.kind().equals(Page.LINE) ? Math.max(least, width) : least;
    return new Measured.PenBox(wide, setting.penHeight(field), field);
  }

  private Measured drawing(Drawing drawing, long width) {
    long wide = length(drawing.width());
    note("drawing", drawing.at(), wide - width);
    return new Measured.Sketch(wide, length(drawing.height()), drawing, setting.fonts());
  }

  private Measured frame(Frame frame, long width) {
    long border = length(frame.border());
    long edge = border + length(frame.padding());
    note("frame", frame.at(), 2 * edge - width);
    Measured child = measure(frame.child(), Math.max(0, width - 2 * edge));
    long height = child.height() + 2 * edge;
    Measured outline = new Measured.Border(Math.max(width, 2 * edge), height, border);
    return new Measured.Group(
        width, height, List.of(new Placed(child, edge, edge), new Placed(outline, 0, 0)));
  }

  private Measured column(Column column, long width) {
    List<Measured> children = new ArrayList<>(column.children().size());
    for (Box child : column.children()) {
      children.add(measure(child, width));
    }
    return stack(children, length(column.gap()), width);
  }

  /** Boxes under one another. Boxes without height take no gap. */
  static Measured stack(List<Measured> boxes, long gap, long width) {
    List<Placed> placed = new ArrayList<>(boxes.size());
    long y = 0;
    boolean first = true;
    for (Measured box : boxes) {
      y += first || box.height() == 0 ? 0 : gap;
      placed.add(new Placed(box, 0, y));
      y += box.height();
      first &= box.height() == 0;
    }
    return new Measured.Group(width, y, placed);
  }

  /** Of several ways, the first that needs the least height; one too wide only where all are. */
  <T> Measured lowest(List<T> ways, Function<T, Measured> measure) {
    List<TooWide> before = List.copyOf(tooWide);
    List<TooWide> notes = List.of();
    Measured best = null;
    for (T way : ways) {
      tooWide.clear();
      Measured next = measure.apply(way);
      boolean lower = best != null && next.height() < best.height();
      if (best == null || (tooWide.isEmpty() && (lower || !notes.isEmpty()))) {
        best = next;
        notes = List.copyOf(tooWide);
      }
    }
    tooWide.clear();
    tooWide.addAll(before);
    tooWide.addAll(notes);
    return best;
  }

  /** Notes what is wider than its room. */
  void note(String what, Span at, long by) {
    if (by > 0) {
      tooWide.add(new TooWide(what, at, by));
    }
  }

  /** A box as it was measured for a room, and for others before. */
  private record Known(long width, Measured box, Known next) {}
}
