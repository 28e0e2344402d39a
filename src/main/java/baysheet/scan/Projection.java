package baysheet.scan;

import java.util.List;

/**
 * Where a point of the page lies on the picture: a homography, as eight figures of the matrix whose
 * ninth is 1.
 */
record Projection(double[] figures) {
  private static final int AFFINE = 6;
  private static final int FULL = 8;

  /**
   * The projection that takes points nearest to others, by least squares: an affine one from three
   * points, a homography from four or more.
   */
  static Projection of(List<Point> from, List<Point> to, boolean affine) {
    int unknown = affine ? AFFINE : FULL;
    double[][] normal = new double[unknown][unknown + 1];
    for (int i = 0; i < from.size(); i++) {
      double x = from.get(i).x();
      double y = from.get(i).y();
      double u = to.get(i).x();
      double v = to.get(i).y();
      add(normal, new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y}, u);
      add(normal, new double[] {0, 0, 0, x, y, 1, -v * x, -v * y}, v);
    }
    double[] figures = new double[FULL];
    System.arraycopy(solve(normal), 0, figures, 0, unknown);
    return new Projection(figures);
  }

  private static void add(double[][] normal, double[] row, double value) {
    for (int i = 0; i < normal.length; i++) {
      for (int j = 0; j < normal.length; j++) {
        normal[i][j] += row[i] * row[j];
      }
      normal[i][normal.length] += row[i] * value;
    }
  }

  /** Elimination with the largest pivot of each column. */
  private static double[] solve(double[][] rows) {
    int n = rows.length;
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int row = column + 1; row < n; row++) {
        pivot = Math.abs(rows[row][column]) > Math.abs(rows[pivot][column]) ? row : pivot;
      }
      double[] swapped = rows[column];
      rows[column] = rows[pivot];
      rows[pivot] = swapped;
      for (int row = 0; row < n; row++) {
        double factor = row == column ? 0 : rows[row][column] / rows[column][column];
        for (int j = column; j <= n && factor != 0; j++) {
          rows[row][j] -= factor * rows[column][j];
        }
      }
    }
    double[] solved = new double[n];
    for (int i = 0; i < n; i++) {
      solved[i] = rows[i][n] / rows[i][i];
    }
    return solved;
  }

  Point of(Point point) {
    double x = point.x();
    double y = point.y();
    double[] f = figures;
    double w = f[6] * x + f[7] * y + 1;
    return new Point((f[0] * x + f[1] * y + f[2]) / w, (f[3] * x + f[4] * y + f[5]) / w);
  }

  /** How many pixels a millimetre takes at a point, averaged over both directions. */
  double scale(Point at) {
    Point here = of(at);
    Point right = of(new Point(at.x() + 1, at.y()));
    Point down = of(new Point(at.x(), at.y() + 1));
    double across = (right.x() - here.x()) * (down.y() - here.y());
    return Math.sqrt(Math.abs(across - (right.y() - here.y()) * (down.x() - here.x())));
  }
}
