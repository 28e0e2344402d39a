package baysheet.layout;

import baysheet.box.Field;
import baysheet.box.Form;
import baysheet.layout.Tag.Type;
import baysheet.report.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Gathers the items of one page and grows its structure tree in reading order. */
final class PageBuilder {
  /** A tick box must stand out from table rules and still leave its inside white. */
  private static final long PEN_STROKE = 700;

  private static final List<Type> HEADINGS = List.of(Type.H1, Type.H2, Type.H3);

  private final Fonts fonts;
  private final List<Item> items = new ArrayList<>();
  private final List<Span> origins = new ArrayList<>();
  private final Deque<Node> open = new ArrayDeque<>();
  private int nextElement;
  private int headingDepth;
  private Span origin;

  private PageBuilder(Fonts fonts, Span origin) {
    this.fonts = fonts;
    this.origin = origin;
    open.push(new Node(nextElement++, Tag.of(Type.DOCUMENT)));
  }

  /** The page with a measured form's top left corner at the margins. */
  static PlacedPage page(Form form, Measured body, Fonts fonts) {
    PageBuilder builder = new PageBuilder(fonts, form.body().at());
    body.place(form.margin(), form.margin(), builder);
    Page.Element root = builder.open.pop().element();
    Page page = new Page(form.paper().width(), form.paper().height(), builder.items, root);
    return new PlacedPage(page, builder.origins);
  }

  /** Says where in the layout the items that follow were written. */
  void from(Span origin) {
    this.origin = origin;
  }

  /** Goes into an element: a new one, or again the one that was left last if the tag is its. */
  void open(Tag tag) {
    Node parent = open.element();
    if (!parent.endsWith(tag)) {
      parent.children.add(new Node(nextElement++, withoutGap(tag)));
    }
    open.push(parent.last());
  }

  void close() {
    open.pop();
  }

  /** The number of the element that is open. */
  int element() {
    return open.element().id;
  }

  void add(Item item) {
    items.add(item);
    origins.add(origin);
  }

  void text(ParagraphLines.Piece piece, long size, long x, long baseline, boolean read) {
    FontFace face = fonts.face(piece.bold());
    boolean far = FontFace.reachesFar(piece.text());
    add(
        new Item.Glyphs(
            read ? element() : Page.ARTIFACT,
            piece.bold(),
            size,
            x,
            baseline,
            piece.width(),
            Em.at(face.rise(far), size),
            Em.at(face.fall(far), size),
            piece.text()));
  }

  void rule(long x, long y, long width, long thickness) {
    add(new Item.Line(Page.ARTIFACT, x, y, x + width, y, thickness));
  }

  void border(Item.Area edge, long thickness) {
    add(new Item.Rectangle(Page.ARTIFACT, edge, thickness));
  }

  void pen(Field field, Item.Area edge) {
    from(field.at());
    open(new Tag(Type.FORM, field.alternate(), "", 1));
    add(
        new Item.Pen(
            element(),
            field.name(),
            field.kind(),
            field.required(),
            field.choice(),
            edge,
            PEN_STROKE));
    close();
  }

  /** A heading may be one level deeper than the one before it, never two (PDF/UA-1, 7.4.2). */
  private Tag withoutGap(Tag tag) {
    int level = HEADINGS.indexOf(tag.type());
    if (level < 0) {
      return tag;
    }
    int allowed = Math.min(level, headingDepth);
    headingDepth = allowed + 1;
    return tag.as(HEADINGS.get(allowed));
  }

  /** An element that still grows. */
  private static final class Node {
    private final int id;
    private final Tag tag;
    private final List<Node> children = new ArrayList<>();

    Node(int id, Tag tag) {
      this.id = id;
      this.tag = tag;
    }

    /** The very same tag, not an equal one: neighbours may well be equal. */
    boolean endsWith(Tag tag) {
      return !children.isEmpty() && last().tag == tag;
    }

    Node last() {
      return children.get(children.size() - 1);
    }

    Page.Element element() {
      List<Page.Element> elements = new ArrayList<>(children.size());
      for (Node child : children) {
        elements.add(child.element());
      }
      return new Page.Element(id, tag, elements);
    }
  }
}
