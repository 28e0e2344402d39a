package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Box.Align;
import baysheet.template.Box.Role;
import baysheet.template.Box.Vertical;
import baysheet.template.Box.Where;
import baysheet.template.Form;
import baysheet.template.Length;
import baysheet.template.Mark;
import baysheet.template.PenSize;
import baysheet.template.Width;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Short ways to write boxes down in tests. */
public final class Sketch {
  public static final Where HERE = new Where(1, 1);
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

  public static Box.TextStyle style(Align align) {
    return new Box.TextStyle(1000, 7_000, 30_000, align);
  }

  public static Box.Run run(String text) {
    return new Box.Run(text, false, Optional.empty());
  }

  public static Box.Run bold(String text) {
    return new Box.Run(text, true, Optional.empty());
  }

  public static Box.Text text(String text) {
    return text(Align.LEFT, run(text));
  }

  public static Box.Text text(Align align, Box.Run... runs) {
    return new Box.Text(List.of(runs), style(align), Role.PARAGRAPH, HERE);
  }

  public static Box.Text heading(Role role, int scale, String text) {
    return new Box.Text(
        List.of(bold(text)), new Box.TextStyle(scale, 7_000, 40_000, Align.LEFT), role, HERE);
  }

  public static Box.Column column(Box... children) {
    return new Box.Column(List.of(children), Length.ZERO, false, HERE);
  }

  public static Box.Column column(double gap, Box... children) {
    return new Box.Column(List.of(children), pt(gap), false, HERE);
  }

  public static Box.Row row(double gap, Box.Cell... cells) {
    return new Box.Row(List.of(cells), pt(gap), HERE);
  }

  public static Box.Cell cell(Width width, Box child) {
    return new Box.Cell(width, child, Vertical.TOP);
  }

  public static Box.Cell cell(Width width, Vertical vertical, Box child) {
    return new Box.Cell(width, child, vertical);
  }

  public static Box.TableCell td(Box child) {
    return new Box.TableCell(child, 1, Vertical.MIDDLE, false);
  }

  public static Box.TableCell td(String text) {
    return td(text(text));
  }

  public static Box.TableCell rowHeader(String text) {
    return new Box.TableCell(text(text), 1, Vertical.MIDDLE, true);
  }

  public static Box.TableCell spanning(int span, Box child) {
    return new Box.TableCell(child, span, Vertical.MIDDLE, false);
  }

  public static Box.TableRow tr(Box.TableCell... cells) {
    return new Box.TableRow(List.of(cells), false);
  }

  public static Box.Table table(
      List<Width> widths, List<Box.TableCell> header, Box.TableRow... rows) {
    return new Box.Table(widths, header, List.of(rows), pt(1.5), Length.ZERO, "Sample table", HERE);
  }

  public static Box.Items numbered(String... texts) {
    List<Box.Entry> entries = new ArrayList<>();
    for (String text : texts) {
      entries.add(new Box.Entry(text(Align.RIGHT, bold((entries.size() + 1) + ".")), text(text)));
    }
    return new Box.Items(entries, NATURAL, em(0.5), pt(2), HERE);
  }

  public static Box.Items ticked(String name, String... texts) {
    List<Box.Entry> entries =
        Stream.of(texts)
            .map(text -> new Box.Entry(tick(name + "." + text.length(), text), text(text)))
            .toList();
    return new Box.Items(entries, NATURAL, em(0.5), pt(2), HERE);
  }

  /** 5 mm square, 3.5 mm at the least. */
  public static Box.Field tick(String name, String alternate) {
    PenSize size = new PenSize(14_173, 14_173, 9_921, 9_921);
    return new Box.Field(name, "tick", size, "Tick: " + alternate, HERE);
  }

  /** 20 by 8.5 mm, 16 by 6.5 mm at the least. */
  public static Box.Field value(String name) {
    PenSize size = new PenSize(56_693, 24_094, 45_354, 18_425);
    return new Box.Field(name, "value", size, "Value reached, " + name, HERE);
  }

  public static Box.Field line(String name) {
    PenSize size = new PenSize(60_000, 20_000, 40_000, 16_000);
    return new Box.Field(name, "line", size, "Line to write on, " + name, HERE);
  }

  public static Box.Held held(Box child) {
    return new Box.Held(child, HERE);
  }

  public static Box.Frame frame(Box child) {
    return new Box.Frame(child, pt(0.8), pt(3), HERE);
  }

  public static Box.Rule rule() {
    return new Box.Rule(pt(0.5), HERE);
  }

  public static Box.Space space(double points) {
    return new Box.Space(pt(points), HERE);
  }

  public static Box.Columns columns(int count, Box... children) {
    return new Box.Columns(count, List.of(children), pt(2), pt(12), HERE);
  }

  public static Box.Droppable droppable(String group, Box child) {
    return new Box.Droppable(group, child, Optional.empty(), HERE);
  }

  public static Box.Droppable shrinking(String group, Box child, Box smaller) {
    return new Box.Droppable(group, child, Optional.of(smaller), HERE);
  }

  /** A circle of five holes with their numbers. */
  public static Box.Drawing wheel(double width) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Circle(500, 500, 480, true));
    int[][] holes = {{500, 180}, {804, 401}, {688, 759}, {312, 759}, {196, 401}};
    for (int i = 0; i < holes.length; i++) {
      marks.add(new Mark.Circle(holes[i][0], holes[i][1], 110, false));
      String number = Integer.toString(i + 1);
      marks.add(new Mark.Label(holes[i][0], holes[i][1], 160, number, true));
    }
    marks.add(new Mark.Triangle(500, 400, 600, 570, 400, 570));
    marks.add(new Mark.Line(300, 920, 700, 920));
    return new Box.Drawing(pt(width), pt(width), marks, "Order of five nuts in a star", HERE);
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
        Form.Paper.A4, 25_512, 11_000, 8_000, 9_000, groups, "en-GB", "Sample form", body);
  }
}
