package baysheet.template;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A piece of a form before it is measured: what stands in what, nothing of where. Boxes know
 * nothing of cars; any one-page form is made of them.
 */
public sealed interface Box {
  /** Where in the layout this box was written. */
  Where at();

  /**
   * A paragraph.
   *
   * @param style size, weight, alignment
   * @param role what the paragraph is to a screen reader
   */
  record Text(List<Run> runs, TextStyle style, Role role, Where at) implements Box {
    public Text {
      runs = List.copyOf(runs);
      Objects.requireNonNull(style);
      Objects.requireNonNull(role);
      Objects.requireNonNull(at);
    }
  }

  /** Boxes beside one another, on a common top edge unless a cell says otherwise. */
  record Row(List<Cell> cells, Length gap, Where at) implements Box {
    public Row {
      cells = List.copyOf(cells);
      Objects.requireNonNull(gap);
      Objects.requireNonNull(at);
    }
  }

  /**
   * Boxes under one another.
   *
   * @param keepTogether whether a break between columns may not fall inside
   */
  record Column(List<Box> children, Length gap, boolean keepTogether, Where at) implements Box {
    public Column {
      children = List.copyOf(children);
      Objects.requireNonNull(gap);
      Objects.requireNonNull(at);
    }
  }

  /**
   * Boxes that flow down one column and go on at the top of the next; the breaks are chosen so that
   * the tallest column is as short as can be. A child is never broken; one that {@link Held} keeps
   * with its follower is never last in a column.
   */
  record Columns(int count, List<Box> children, Length gap, Length between, Where at)
      implements Box {
    public Columns {
      children = List.copyOf(children);
      Objects.requireNonNull(gap);
      Objects.requireNonNull(between);
      Objects.requireNonNull(at);
      if (count < 1) {
        throw new IllegalArgumentException("columns: " + count);
      }
    }
  }

  /** A box that stays with the one after it: a heading, a caution above its step. */
  record Held(Box child, Where at) implements Box {
    public Held {
      Objects.requireNonNull(child);
      Objects.requireNonNull(at);
    }
  }

  /**
   * A table with one header row, ruled between rows.
   *
   * @param widths one for each column
   * @param header the header cells
   * @param rows body rows; a row may have fewer cells than columns when cells span
   * @param padding around the content of every cell
   * @param between further distance between two columns
   * @param title what the table is, for a screen reader
   */
  record Table(
      List<Width> widths,
      List<TableCell> header,
      List<TableRow> rows,
      Length padding,
      Length between,
      String title,
      Where at)
      implements Box {
    public Table {
      widths = List.copyOf(widths);
      header = List.copyOf(header);
      rows = List.copyOf(rows);
      Objects.requireNonNull(padding);
      Objects.requireNonNull(between);
      Objects.requireNonNull(title);
      Objects.requireNonNull(at);
    }
  }

  /** A list; each item has a label (a number, a tick box) and a body. */
  record Items(List<Entry> entries, Width label, Length gap, Length between, Where at)
      implements Box {
    public Items {
      entries = List.copyOf(entries);
      Objects.requireNonNull(label);
      Objects.requireNonNull(gap);
      Objects.requireNonNull(between);
      Objects.requireNonNull(at);
    }
  }

  /** A line across the width it is given; decoration. */
  record Rule(Length thickness, Where at) implements Box {
    public Rule {
      Objects.requireNonNull(thickness);
      Objects.requireNonNull(at);
    }
  }

  /** A border and a distance around a box. */
  record Frame(Box child, Length border, Length padding, Where at) implements Box {
    public Frame {
      Objects.requireNonNull(child);
      Objects.requireNonNull(border);
      Objects.requireNonNull(padding);
      Objects.requireNonNull(at);
    }
  }

  /**
   * An empty box for a pen. It never scales with the text: it is drawn at its preferred size, or at
   * its smallest where the page is tight.
   *
   * @param name the name under which the record lists its position
   * @param kind what is written in it: tick, value, initials, signature, line …
   * @param alternate what it is for, for a screen reader
   */
  record Field(String name, String kind, PenSize size, String alternate, Where at) implements Box {
    public Field {
      Objects.requireNonNull(name);
      Objects.requireNonNull(kind);
      Objects.requireNonNull(size);
      Objects.requireNonNull(alternate);
      Objects.requireNonNull(at);
    }
  }

  /**
   * A line drawing in a square of its own, coordinates in thousandths of its width from its top
   * left corner.
   *
   * @param alternate what it shows, for a screen reader
   */
  record Drawing(Length width, Length height, List<Mark> marks, String alternate, Where at)
      implements Box {
    public Drawing {
      Objects.requireNonNull(width);
      Objects.requireNonNull(height);
      marks = List.copyOf(marks);
      Objects.requireNonNull(alternate);
      Objects.requireNonNull(at);
    }
  }

  /**
   * A box that gives way when the page is tight: it leaves, or shrinks to {@code smaller}, when its
   * group's turn comes in {@link Form#groups}.
   */
  record Droppable(String group, Box child, Optional<Box> smaller, Where at) implements Box {
    public Droppable {
      Objects.requireNonNull(group);
      Objects.requireNonNull(child);
      Objects.requireNonNull(smaller);
      Objects.requireNonNull(at);
    }
  }

  /** Empty height. */
  record Space(Length height, Where at) implements Box {
    public Space {
      Objects.requireNonNull(height);
      Objects.requireNonNull(at);
    }
  }

  /**
   * What height the page has left, among the outermost column's children: boxes after it stand at
   * the foot of the page. Elsewhere it has no height.
   */
  record Fill(Where at) implements Box {
    public Fill {
      Objects.requireNonNull(at);
    }
  }

  /**
   * A stretch of text in one weight.
   *
   * @param group the group with which it is dropped, if any
   */
  record Run(String text, boolean bold, Optional<String> group) {
    public Run {
      Objects.requireNonNull(text);
      Objects.requireNonNull(group);
    }
  }

  /**
   * How text is set.
   *
   * @param scale thousandths of the body size
   * @param floor never smaller, in thousandths of a point
   * @param ceiling never larger, in thousandths of a point
   */
  record TextStyle(int scale, long floor, long ceiling, Align align) {
    public TextStyle {
      Objects.requireNonNull(align);
      if (scale < 1 || floor < 1 || ceiling < floor) {
        throw new IllegalArgumentException("style " + scale + ", " + floor + ".." + ceiling);
      }
    }
  }

  /** Where text stands in its width; {@code DECIMAL} lines up on the decimal point of a column. */
  enum Align {
    LEFT,
    CENTRE,
    RIGHT,
    DECIMAL
  }

  /** What a paragraph is to a screen reader. */
  enum Role {
    TITLE,
    HEADING,
    SUBHEADING,
    PARAGRAPH,
    DECORATION
  }

  /** A cell of a row: its width, its box, and where it stands in the row's height. */
  record Cell(Width width, Box child, Vertical vertical) {
    public Cell {
      Objects.requireNonNull(width);
      Objects.requireNonNull(child);
      Objects.requireNonNull(vertical);
    }
  }

  /**
   * Where a box stands in a greater height; {@code BASELINE} puts its first line on one baseline
   * with its neighbours that ask for the same.
   */
  enum Vertical {
    TOP,
    MIDDLE,
    BOTTOM,
    BASELINE
  }

  /** A cell of a table; {@code rowHeader} marks the cell that names its row. */
  record TableCell(Box child, int span, Vertical vertical, boolean rowHeader) {
    public TableCell {
      Objects.requireNonNull(child);
      Objects.requireNonNull(vertical);
      if (span < 1) {
        throw new IllegalArgumentException("span " + span);
      }
    }
  }

  /** A row of a table; {@code heavyRuleAbove} starts a new block of rows. */
  record TableRow(List<TableCell> cells, boolean heavyRuleAbove) {
    public TableRow {
      cells = List.copyOf(cells);
    }
  }

  /** An entry of a list. */
  record Entry(Box label, Box body) {
    public Entry {
      Objects.requireNonNull(label);
      Objects.requireNonNull(body);
    }
  }

  /** Line and column in a layout file, counted from 1. */
  record Where(int line, int column) {}
}
