package baysheet.layout;

import baysheet.box.Row;
import baysheet.box.Vertical;
import baysheet.box.Width;
import baysheet.layout.Measured.Placed;
import java.util.ArrayList;
import java.util.List;

/** Measures boxes that stand beside one another. */
record RowMeasurer(Measurer measurer) {
  Measured row(Row row, long width) {
    long gap = measurer.length(row.gap());
    long gaps = Math.max(0, row.cells().size() - 1) * gap;
    long[] widths = widths(row, width - gaps);
    measurer.note("row", row.at(), Widths.sum(widths) + gaps - width);
    List<Measured> boxes = new ArrayList<>();
    List<Vertical> verticals = new ArrayList<>();
    long[] xs = new long[widths.length];
    long x = 0;
    for (int i = 0; i < widths.length; i++) {
      boxes.add(measurer.measure(row.cells().get(i).child(), widths[i]));
      verticals.add(row.cells().get(i).vertical());
      xs[i] = x;
      x += widths[i] + gap;
    }
    return beside(boxes, verticals, xs, width);
  }

  private long[] widths(Row row, long room) {
    List<Width> wanted = new ArrayList<>(row.cells().size());
    List<Extent> extents = new ArrayList<>(row.cells().size());
    for (Row.Cell cell : row.cells()) {
      wanted.add(cell.width());
      extents.add(measurer.extents().of(cell.child()));
    }
    return Widths.divide(wanted, extents, room, measurer.setting().body());
  }

  /** Places boxes beside one another, each where it wants to be in the common height. */
  static Measured.Group beside(
      List<Measured> boxes, List<Vertical> verticals, long[] xs, long width) {
    long baseline = 0;
    for (int i = 0; i < boxes.size(); i++) {
      if (verticals.get(i) == Vertical.BASELINE) {
        baseline = Math.max(baseline, boxes.get(i).baseline());
      }
    }
    long height = 0;
    for (int i = 0; i < boxes.size(); i++) {
      long drop = drop(boxes.get(i), verticals.get(i), baseline);
      height = Math.max(height, drop + boxes.get(i).height());
    }
    List<Placed> placed = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      placed.add(
          new Placed(boxes.get(i), xs[i], y(boxes.get(i), verticals.get(i), baseline, height)));
    }
    return new Measured.Group(width, height, placed);
  }

  private static long y(Measured box, Vertical vertical, long baseline, long height) {
    return switch (vertical) {
      case TOP, BASELINE -> drop(box, vertical, baseline);
      case MIDDLE -> (height - box.height()) / 2;
      case BOTTOM -> height - box.height();
    };
  }

  private static long drop(Measured box, Vertical vertical, long baseline) {
    boolean hangs = vertical == Vertical.BASELINE && box.baseline() != Measured.NONE;
    return hangs ? baseline - box.baseline() : 0;
  }
}
