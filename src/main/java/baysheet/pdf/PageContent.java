package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes a page's items as a content stream. Every stretch of items that belong to one structure
 * element is a marked-content sequence with a number of its own; the rest is marked as artifact.
 */
final class PageContent {
  /** How far along a quarter circle's tangents its Bézier control points stand, in 1/100000. */
  private static final long KAPPA = 55_228;

  private final Page page;
  private final UsedFonts fonts;
  private final boolean form;
  private final Map<Integer, Tag.Type> types = new HashMap<>();
  private final Operators out = new Operators();
  private final List<Integer> owners = new ArrayList<>();
  private int pictures;

  /**
   * @param form whether boxes for a pen are only the frames of form fields
   */
  PageContent(Page page, UsedFonts fonts, boolean form) {
    this.page = page;
    this.fonts = fonts;
    this.form = form;
    collect(page.structure());
  }

  private void collect(Page.Element element) {
    types.put(element.id(), element.tag().type());
    element.children().forEach(this::collect);
  }

  Bytes write() {
    List<Item> items = page.items();
    for (int from = 0; from < items.size(); ) {
      int to = from + 1;
      while (to < items.size() && element(items.get(to)) == element(items.get(from))) {
        to++;
      }
      sequence(items.subList(from, to));
      from = to;
    }
    return out.bytes();
  }

  /** The element numbers of the marked-content sequences, by the sequences' own numbers. */
  List<Integer> owners() {
    return owners;
  }

  private int element(Item item) {
    return form && item instanceof Item.Pen ? Page.ARTIFACT : item.element();
  }

  private void sequence(List<Item> items) {
    int element = element(items.get(0));
    if (element == Page.ARTIFACT) {
      out.raw("/Artifact BMC");
    } else {
      out.marked(StructureNames.name(types.get(element)), owners.size());
      owners.add(element);
    }
    for (int i = 0; i < items.size(); i++) {
      draw(items.get(i), i + 1 < items.size() && startsNewLine(items.get(i), items.get(i + 1)));
    }
    out.raw("EMC");
  }

  private static boolean startsNewLine(Item item, Item next) {
    return item instanceof Item.Glyphs before
        && next instanceof Item.Glyphs after
        && before.baseline() != after.baseline();
  }

  /**
   * @param spaced whether a space follows that nobody sees: without it, the last word of a line and
   *     the first of the next would be read as one
   */
  private void draw(Item item, boolean spaced) {
    if (item instanceof Item.Glyphs glyphs) {
      text(glyphs, spaced ? glyphs.text() + " " : glyphs.text());
    } else if (item instanceof Item.Line line) {
      out.op("w", line.thickness());
      out.op("m", line.x1(), up(line.y1())).op("l", line.x2(), up(line.y2())).raw("S");
    } else if (item instanceof Item.Rectangle rectangle) {
      out.op("w", rectangle.thickness());
      rectangle(rectangle.edge());
    } else if (item instanceof Item.Circle circle) {
      circle(circle);
    } else if (item instanceof Item.Triangle t) {
      out.op("m", t.x1(), up(t.y1())).op("l", t.x2(), up(t.y2())).op("l", t.x3(), up(t.y3()));
      out.raw("f");
    } else if (item instanceof Item.Pen pen) {
      pen(pen);
    } else if (item instanceof Item.Modules modules) {
      modules(modules);
    } else if (item instanceof Item.Picture picture) {
      Item.Area edge = picture.edge();
      out.raw("q");
      out.op("cm", edge.width(), 0, 0, edge.height(), edge.x(), up(edge.bottom()));
      out.raw("/" + Pictures.name(pictures++) + " Do").raw("Q");
    } else {
      throw new IllegalStateException("not known how to draw " + item);
    }
  }

  /** Black stretches of each row as rectangles of one path, so that no seam shows between them. */
  private void modules(Item.Modules modules) {
    List<String> rows = modules.rows();
    Item.Area edge = modules.edge();
    for (int row = 0; row < rows.size(); row++) {
      long top = edge.y() + edge.height() * row / rows.size();
      long bottom = edge.y() + edge.height() * (row + 1) / rows.size();
      for (int from = 0; from < rows.size(); from++) {
        int to = from;
        while (to < rows.size() && rows.get(row).charAt(to) == '#') {
          to++;
        }
        if (to > from) {
          long left = edge.x() + edge.width() * from / rows.size();
          long right = edge.x() + edge.width() * to / rows.size();
          out.op("re", left, up(bottom), right - left, bottom - top);
          from = to;
        }
      }
    }
    out.raw("f");
  }

  private void text(Item.Glyphs glyphs, String text) {
    out.raw("BT");
    out.op("Td", glyphs.x(), up(glyphs.baseline()));
    for (UsedFonts.Stretch stretch : UsedFonts.stretches(text, glyphs.bold())) {
      out.font(stretch.face().label(), glyphs.size());
      out.show(fonts.encode(stretch));
    }
    out.raw("ET");
  }

  private void pen(Item.Pen pen) {
    Item.Area edge = pen.edge();
    long half = pen.thickness() / 2;
    out.op("w", pen.thickness());
    if (pen.kind().equals(Page.LINE)) {
      long y = up(edge.bottom() - half);
      out.op("m", edge.x(), y).op("l", edge.right(), y).raw("S");
    } else {
      rectangle(edge.grown(-half));
    }
  }

  private void rectangle(Item.Area area) {
    out.op("re", area.x(), up(area.bottom()), area.width(), area.height()).raw("S");
  }

  private void circle(Item.Circle circle) {
    long x = circle.x();
    long y = up(circle.y());
    long r = circle.radius();
    long k = r * KAPPA / 100_000;
    out.op("w", circle.thickness());
    out.op("m", x + r, y);
    out.op("c", x + r, y + k, x + k, y + r, x, y + r);
    out.op("c", x - k, y + r, x - r, y + k, x - r, y);
    out.op("c", x - r, y - k, x - k, y - r, x, y - r);
    out.op("c", x + k, y - r, x + r, y - k, x + r, y);
    out.raw("s");
  }

  /** Pages measure downwards, PDF files upwards. */
  private long up(long y) {
    return page.height() - y;
  }

  /** Writes the operators of a content stream (ISO 32000-1, annex A). Lengths are thousandths. */
  private static final class Operators {
    private final Bytes out = new Bytes(65_536);

    private String font = "";
    private long fontSize;

    Operators op(String operator, long... operands) {
      for (long operand : operands) {
        out.thousandths(operand).add(' ');
      }
      out.add(operator).add('\n');
      return this;
    }

    Operators raw(String line) {
      out.add(line).add('\n');
      return this;
    }

    /** Begins a marked-content sequence (14.6). */
    Operators marked(String tag, int number) {
      out.add('/').add(tag).add(" <</MCID ").number(number).add(">> BDC\n");
      return this;
    }

    /** Sets the font, by its name among the page's resources, unless it is set already. */
    Operators font(String name, long size) {
      if (!name.equals(font) || size != fontSize) {
        font = name;
        fontSize = size;
        out.add('/').add(name).add(' ');
        op("Tf", size);
      }
      return this;
    }

    /** Shows text. */
    Operators show(byte[] codes) {
      ObjectText.string(codes, out);
      out.add(" Tj\n");
      return this;
    }

    Bytes bytes() {
      return out;
    }
  }
}
