package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A piece of a form before it is measured: what stands in what, nothing of where. Boxes know
 * nothing of cars; any one-page form is made of them.
 *
 * <p>Every kind says here what it holds and what is left of it when groups give way; whoever treats
 * kinds differently is a {@link BoxVisitor}. So a new kind does not compile until everything
 * handles it.
 */
public sealed interface Box permits Leaf, Container, Text {
  /** Where in the layout this box was written. */
  Span at();

  /** The name of its element in the markup. */
  String element();

  /** The boxes directly in this one, in reading order, those that may give way included. */
  List<Box> children();

  /**
   * This box without what gives way with some groups. What is left holds no {@link Droppable}. A
   * box in which nothing gives way stays the very same one, so that what is known of it stays
   * known.
   *
   * @return nothing if all of it gives way
   */
  Optional<Box> without(Set<String> groups);

  /** The groups with which this box gives way, or parts of it that are no boxes. */
  List<String> groups();

  /** What is printed in this box, outside its children. */
  List<Printed> printed();

  /** Calls the visitor's method for this kind. */
  <R> R accept(BoxVisitor<R> visitor);
}
