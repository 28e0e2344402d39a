package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.Column;
import baysheet.box.Columns;
import baysheet.box.Drawing;
import baysheet.box.Droppable;
import baysheet.box.Field;
import baysheet.box.Form;
import baysheet.box.Frame;
import baysheet.box.Items;
import baysheet.box.KeepWithNext;
import baysheet.box.Length;
import baysheet.box.Mark;
import baysheet.box.PenSize;
import baysheet.box.Row;
import baysheet.box.Rule;
import baysheet.box.Space;
import baysheet.box.Table;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import baysheet.box.Vertical;
import baysheet.box.Width;
import baysheet.report.Source;
import baysheet.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Short ways to write boxes down in tests. */
public final class Sketch {
  public static final Span HERE = new Source("form.ftlx", "").whole();
  public static final Width SHARE = new Width.Share(1);
  public static final Width NATURAL = new Width.Natural();

  private Sketch() {}

  public static Length pt(double points) {
    return new Length(Math.round(points * 1000), false);
  }

  public static Length em(double ems) {
    return new Length(Math.round(ems * 1000), true);
  }

  public static Width fixed(double points) {
    return new Width.Fixed(pt(points));
  }

  public static TextStyle style(TextStyle.Align align) {
    return new TextStyle(false, 1000, 7_000, 30_000, align);
  }

  public static Text.Run run(String text) {
    return new Text.Run(text, false, Optional.empty());
  }

  public static Text.Run bold(String text) {
    return new Text.Run(text, true, Optional.empty());
  }

  public static Text text(String text) {
    return text(TextStyle.Align.LEFT, run(text));
  }

  public static Text text(TextStyle.Align align, Text.Run... runs) {
    return new Text(List.of(runs), style(align), Text.Role.PARAGRAPH, HERE);
  }

  public static Text heading(Text.Role role, int scale, String text) {
    return new Text(
        List.of(bold(text)),
        new TextStyle(false, scale, 7_000, 40_000, TextStyle.Align.LEFT),
        role,
        HERE);
  }

  public static Column column(Box... children) {
    return new Column(List.of(children), Length.ZERO, false, HERE);
  }

  public static Column column(double gap, Box... children) {
    return new Column(List.of(children), pt(gap), false, HERE);
  }

  public static Row row(double gap, Row.Cell... cells) {
    return new Row(List.of(cells), pt(gap), HERE);
  }

  public static Row.Cell cell(Width width, Box child) {
    return new Row.Cell(width, child, Vertical.TOP);
  }

  public static Row.Cell cell(Width width, Vertical vertical, Box child) {
    return new Row.Cell(width, child, vertical);
  }

  public static Table.Cell td(Box child) {
    return new Table.Cell(child, 1, Vertical.MIDDLE, false);
  }

  public static Table.Cell td(String text) {
    return td(text(text));
  }

  public static Table.Cell rowHeader(String text) {
    return new Table.Cell(text(text), 1, Vertical.MIDDLE, true);
  }

  public static Table.Cell spanning(int span, Box child) {
    return new Table.Cell(child, span, Vertical.MIDDLE, false);
  }

  public static Table.Line tr(Table.Cell... cells) {
    return new Table.Line(List.of(cells), false);
  }

  public static Table table(List<Width> widths, List<Table.Cell> header, Table.Line... rows) {
    return new Table(widths, header, List.of(rows), pt(1.5), Length.ZERO, "Sample table", HERE);
  }

  public static Items numbered(String... texts) {
    List<Items.Entry> entries = new ArrayList<>();
    for (String text : texts) {
      entries.add(
          new Items.Entry(
              text(TextStyle.Align.RIGHT, bold((entries.size() + 1) + ".")), text(text)));
    }
    return new Items(entries, NATURAL, em(0.5), pt(2), false, HERE);
  }

  public static Items ticked(String name, String... texts) {
    List<Items.Entry> entries =
        Stream.of(texts)
            .map(text -> new Items.Entry(tick(name + "." + text.length(), text), text(text)))
            .toList();
    return new Items(entries, NATURAL, em(0.5), pt(2), false, HERE);
  }

  /** 5 mm square, 3.5 mm at the least. */
  public static Field tick(String name, String alternate) {
    PenSize size = new PenSize(14_173, 14_173, 9_921, 9_921);
    return new Field(name, "tick", size, true, "", "Tick: " + alternate, HERE);
  }

  /** 20 by 8.5 mm, 16 by 6.5 mm at the least. */
  public static Field value(String name) {
    PenSize size = new PenSize(56_693, 24_094, 45_354, 18_425);
    return new Field(name, "value", size, true, "", "Value reached, " + name, HERE);
  }

  public static Field line(String name) {
    PenSize size = new PenSize(60_000, 20_000, 40_000, 16_000);
    return new Field(name, "line", size, false, "", "Line to write on, " + name, HERE);
  }

  public static KeepWithNext held(Box child) {
    return new KeepWithNext(child, HERE);
  }

  public static Frame frame(Box child) {
    return new Frame(child, pt(0.8), pt(3), HERE);
  }

  public static Rule rule() {
    return new Rule(pt(0.5), HERE);
  }

  public static Space space(double points) {
    return new Space(pt(points), HERE);
  }

  public static Columns columns(int count, Box... children) {
    return new Columns(List.of(count), List.of(children), pt(2), pt(12), HERE);
  }

  public static Droppable droppable(String group, Box child) {
    return new Droppable(group, child, Optional.empty(), HERE);
  }

  public static Droppable shrinking(String group, Box child, Box smaller) {
    return new Droppable(group, child, Optional.of(smaller), HERE);
  }

  /** A circle of five holes with their numbers. */
  public static Drawing wheel(double width) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Circle(500, 500, 480, true));
    int[][] holes = {{500, 180}, {804, 401}, {688, 759}, {312, 759}, {196, 401}};
    for (int i = 0; i < holes.length; i++) {
      marks.add(new Mark.Circle(holes[i][0], holes[i][1], 110, false));
      String number = Integer.toString(i + 1);
      marks.add(new Mark.Label(holes[i][0], holes[i][1], 160, number, true));
    }
    marks.add(new Mark.Triangle(500, 400, 600, 570, 400, 570));
    marks.add(new Mark.Line(300, 920, 700, 920, false));
    return new Drawing(pt(width), pt(width), marks, "Order of five nuts in a star", HERE);
  }

  public static Form form(Box body) {
    return form(body, List.of());
  }

  /** A4, 9 mm margins, 11 to 8 points, groups go before 9 points are undercut. */
  public static Form form(Box body, List<String> drops) {
    return grouped(body, drops.stream().map(name -> new Form.Group(name, 9_000)).toList());
  }

  public static Form grouped(Box body, List<Form.Group> groups) {
    return new Form(
        Form.Paper.A4,
        25_512,
        11_000,
        8_000,
        9_000,
        Form.Hand.USUAL,
        groups,
        "en-GB",
        "Sample form",
        body);
  }
}
