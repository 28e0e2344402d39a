package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.Column;
import baysheet.box.Items;
import baysheet.box.SimpleVisitor;
import baysheet.box.Text;
import baysheet.box.Width;
import baysheet.layout.Measured.Placed;
import baysheet.layout.Measured.Tagged;
import baysheet.layout.Tag.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Measures lists: labels in one column, bodies in the other. */
record ListMeasurer(Measurer measurer) {
  /** A first line grows to the height of its label by less than one of so many parts. */
  private static final int MUCH_HIGHER = 4;

  Measured measure(Items items, long width) {
    Tag list = Tag.of(Type.L);
    List<Measured> entries = entries(items, width);
    Measured stack = Measurer.stack(entries, measurer.length(items.between()), width);
    return new Tagged(list, stack);
  }

  /** The entries alone, for whoever sets them in columns. */
  List<Measured> entries(Items items, long width) {
    return items.under() ? under(items, width) : beside(items, width);
  }

  private List<Measured> beside(Items items, long width) {
    long gap = measurer.length(items.gap());
    List<Width> wanted = List.of(items.label(), new Width.Share(1));
    Extents extents = measurer.extents();
    List<Extent> needs = List.of(extents.label(items), extents.bodies(items));
    long[] widths = Widths.divide(wanted, needs, width - gap, measurer.setting().body());
    measurer.note("list", items.at(), Widths.sum(widths) + gap - width);
    List<Measured> entries = new ArrayList<>();
    for (Items.Entry entry : items.entries()) {
      Measured label = label(entry.label(), widths[0]);
      Measured body = new Tagged(Tag.of(Type.LBODY), measurer.measure(entry.body(), widths[1]));
      Measured both = level(label, body, widths[0] + gap, width);
      entries.add(new Tagged(Tag.of(Type.LI), both));
    }
    return entries;
  }

  /** Each body's first paragraph begins beside its label and goes on under it. */
  private List<Measured> under(Items items, long width) {
    long gap = measurer.length(items.gap());
    List<Measured> entries = new ArrayList<>();
    for (Items.Entry entry : items.entries()) {
      long wide = Math.min(measurer.extents().of(entry.label()).natural(), width);
      measurer.note("list", items.at(), wide + gap - width);
      Measured label = label(entry.label(), wide);
      List<Box> body =
          entry.body() instanceof Column column ? column.children() : List.of(entry.body());
      Measured both =
          body.get(0) instanceof Text begun
              ? under(label, begun, body.subList(1, body.size()), wide + gap, width)
              : level(label, measurer.measure(entry.body(), width - wide - gap), wide + gap, width);
      entries.add(new Tagged(Tag.of(Type.LI), both));
    }
    return entries;
  }

  private Measured under(Measured label, Text begun, List<Box> rest, long from, long width) {
    long leading = measurer.leading(begun);
    long over = Math.max(0, label.height() - leading);
    boolean grows = over * MUCH_HIGHER < leading;
    int lines = grows ? 1 : (int) ((label.height() + leading - 1) / leading);
    Inset inset = new Inset(from, lines, grows ? over : 0);
    Measured text = measurer.text(begun, width, inset);
    long lowest = lines * leading + inset.below() - label.height();
    long y = Math.max(0, Math.min(lowest, text.middle() - label.middle()));
    List<Measured> body = new ArrayList<>(List.of(text));
    if (!rest.isEmpty()) {
      // Whatever follows takes the whole width, and so begins below the label.
      body.add(
          new Measured.Group(width, Math.max(0, y + label.height() - text.height()), List.of()));
    }
    rest.forEach(box -> body.add(measurer.measure(box, width)));
    Measured stack = new Tagged(Tag.of(Type.LBODY), Measurer.stack(body, 0, width));
    long height = Math.max(stack.height(), y + label.height());
    return new Measured.Group(
        width, height, List.of(new Placed(label, 0, y), new Placed(stack, 0, 0)));
  }

  private Measured label(Box label, long width) {
    Tag tag = Tag.of(Type.LBL);
    return label.accept(
        new SimpleVisitor<Measured>() {
          @Override
          public Measured text(Text text) {
            return measurer.text(text, width, Optional.of(tag));
          }

          @Override
          protected Measured defaultAction(Box box) {
            return new Tagged(tag, measurer.measure(box, width));
          }
        });
  }

  /**
   * A number stands on the baseline of the body's first line; a tick box, which has none, stands
   * level with the middle of its small letters.
   */
  private static Measured level(Measured label, Measured body, long bodyX, long width) {
    boolean both = label.baseline() != Measured.NONE && body.baseline() != Measured.NONE;
    long down = both ? body.baseline() - label.baseline() : body.middle() - label.middle();
    long labelY = Math.max(0, down);
    long bodyY = Math.max(0, -down);
    long height = Math.max(labelY + label.height(), bodyY + body.height());
    return new Measured.Group(
        width, height, List.of(new Placed(label, 0, labelY), new Placed(body, bodyX, bodyY)));
  }
}
