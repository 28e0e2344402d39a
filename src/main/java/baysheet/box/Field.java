package baysheet.box;

import baysheet.report.Span;
import java.util.List;

/**
 * An empty box for a pen. It never scales with the text: it is drawn at its preferred size, or at
 * its smallest where the page is tight.
 *
 * @param name the name under which the record lists its position
 * @param kind what is written in it: tick, value, initials, signature, line …
 * @param required whether the form is incomplete while it is empty
 * @param choice names the boxes of which exactly one is to be marked; nothing for a box of its own
 * @param alternate what it is for, for a screen reader
 */
public record Field(
    String name,
    String kind,
    PenSize size,
    boolean required,
    String choice,
    String alternate,
    Span at)
    implements Leaf {
  @Override
  public List<Printed> printed() {
    return List.of();
  }

  @Override
  public String element() {
    return "field";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.field(this);
  }
}
