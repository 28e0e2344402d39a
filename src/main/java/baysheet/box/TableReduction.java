package baysheet.box;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Takes the groups that give way out of a table. A column all of whose cells are gone goes with
 * them, and cells that span it become narrower; any other cell that is gone leaves an empty one.
 */
final class TableReduction {
  private final Table table;
  private final Set<String> groups;
  private final boolean[] gone;

  TableReduction(Table table, Set<String> groups) {
    this.table = table;
    this.groups = groups;
    gone = new boolean[table.widths().size()];
  }

  Table table() {
    List<List<Slot>> rows = new ArrayList<>();
    rows.add(slots(table.header()));
    table.rows().forEach(row -> rows.add(slots(row.cells())));
    if (rows.stream().flatMap(List::stream).allMatch(Slot::isWhole)) {
      return table;
    }
    findGone(rows);
    List<Width> widths = new ArrayList<>();
    for (int i = 0; i < gone.length; i++) {
      if (!gone[i]) {
        widths.add(table.widths().get(i));
      }
    }
    List<Table.Line> body = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      body.add(new Table.Line(cells(rows.get(i + 1)), table.rows().get(i).heavyRuleAbove()));
    }
    return new Table(
        widths,
        cells(rows.get(0)),
        body,
        table.padding(),
        table.between(),
        table.title(),
        table.at());
  }

  private List<Slot> slots(List<Table.Cell> cells) {
    List<Slot> slots = new ArrayList<>();
    int column = 0;
    for (Table.Cell cell : cells) {
      slots.add(new Slot(column, cell, cell.child().without(groups)));
      column += cell.span();
    }
    if (column > gone.length) {
      throw new IllegalArgumentException(
          "a row of %s columns in a table of %s at %s".formatted(column, gone.length, table.at()));
    }
    return slots;
  }

  private void findGone(List<List<Slot>> rows) {
    boolean[] met = new boolean[gone.length];
    Arrays.fill(gone, true);
    for (List<Slot> row : rows) {
      for (Slot slot : row) {
        if (slot.cell().span() == 1) {
          met[slot.column()] = true;
          gone[slot.column()] &= slot.child().isEmpty();
        }
      }
    }
    for (int i = 0; i < gone.length; i++) {
      gone[i] &= met[i];
    }
  }

  private List<Table.Cell> cells(List<Slot> slots) {
    List<Table.Cell> cells = new ArrayList<>();
    for (Slot slot : slots) {
      int span = 0;
      for (int i = slot.column(); i < slot.column() + slot.cell().span(); i++) {
        span += gone[i] ? 0 : 1;
      }
      if (span > 0) {
        cells.add(slot.with(span));
      }
    }
    return cells;
  }

  /** A cell, the column it starts in, and what is left in it. */
  private record Slot(int column, Table.Cell cell, Optional<Box> child) {
    boolean isWhole() {
      return child.isPresent() && child.get() == cell.child();
    }

    Table.Cell with(int span) {
      Box kept = child.orElse(new Space(Length.ZERO, cell.child().at()));
      return new Table.Cell(kept, span, cell.vertical(), cell.rowHeader());
    }
  }
}
