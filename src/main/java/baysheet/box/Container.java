package baysheet.box;

import java.util.List;

/** A box that is there for the boxes in it. */
public sealed interface Container extends Box
    permits Row, Column, Columns, KeepWithNext, Table, Items, Frame, Droppable {
  @Override
  default List<Printed> printed() {
    return List.of();
  }
}
