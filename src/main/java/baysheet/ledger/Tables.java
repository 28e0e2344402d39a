package baysheet.ledger;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Answers as tables for the terminal and as data. */
public final class Tables {
  private static final int GAP = 2;

  private Tables() {}

  /**
   * An answer.
   *
   * @param rows texts, numbers, {@link Quantity quantities} and {@link Band bands}; an empty text
   *     where there is nothing
   */
  public record Table(List<Column> columns, List<List<Object>> rows) {
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /** A column: what stands above it, and its key in JSON. */
  public record Column(String heading, String key) {}

  /** Columns from headings and keys in turn. */
  public static List<Column> columns(String... words) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < words.length; i += 2) {
      columns.add(new Column(words[i], words[i + 1]));
    }
    return columns;
  }

  /** A cell for what may be absent. */
  static Object cell(Optional<?> value) {
    return value.isPresent() ? value.get() : "";
  }

  /** A figure with its unit, a plain blank between them: it can be searched for and copied. */
  public static String plain(Quantity quantity) {
    return quantity.print().replace('\u00A0', ' ');
  }

  /** {@code 28.5..31.5 N·m}. */
  public static String band(Band band) {
    return band.low().figure() + ".." + plain(band.high());
  }

  /** Columns as wide as their widest word. */
  public static String text(Table table) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(table.columns().stream().map(Column::heading).toList());
    table.rows().forEach(row -> lines.add(row.stream().map(Tables::shown).toList()));
    int[] widths = new int[table.columns().size()];
    for (List<String> line : lines) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], length(line.get(i)) + GAP);
      }
    }
    StringBuilder text = new StringBuilder();
    for (List<String> line : lines) {
      StringBuilder out = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        out.append(line.get(i)).append(" ".repeat(widths[i] - length(line.get(i))));
      }
      text.append(out.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private static String shown(Object cell) {
    if (cell instanceof Quantity quantity) {
      return plain(quantity);
    }
    return cell instanceof Band band ? band(band) : cell.toString();
  }

  /**
   * Each row as an object; empty cells are left out.
   *
   * @param about further keys before the rows
   */
  public static String json(Table table, Map<String, Object> about) {
    JsonObject whole = new JsonObject().put("format", 1);
    about.forEach(whole::put);
    return JsonText.indented(whole.list("rows", table.rows(), row -> object(table.columns(), row)));
  }

  private static JsonObject object(List<Column> columns, List<Object> row) {
    JsonObject out = new JsonObject();
    for (int i = 0; i < row.size(); i++) {
      Object cell = row.get(i);
      if (!cell.equals("")) {
        out.put(columns.get(i).key(), cell instanceof Band band ? Joint.json(band) : cell);
      }
    }
    return out;
  }
}
