package baysheet.bench;

import java.util.ArrayList;
import java.util.List;

/** A table of plain text: the first column to the left, the others to the right. */
final class Table {
  private final String title;
  private final List<List<String>> rows = new ArrayList<>();

  Table(String title, String... headings) {
    this.title = title;
    rows.add(List.of(headings));
  }

  void row(String... cells) {
    rows.add(List.of(cells));
  }

  void print() {
    StringBuilder text = new StringBuilder(title).append(System.lineSeparator());
    for (List<String> row : rows) {
      text.append("  ");
      for (int i = 0; i < row.size(); i++) {
        text.append(padded(row.get(i), i));
      }
      text.append(System.lineSeparator());
    }
    System.out.println(text);
  }

  private String padded(String cell, int column) {
    int wide = rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    String blank = " ".repeat(wide - cell.length());
    return column == 0 ? cell + blank : "  " + blank + cell;
  }
}
