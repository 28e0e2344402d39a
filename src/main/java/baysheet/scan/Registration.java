package baysheet.scan;

import baysheet.record.PlacedBoxes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds how a page lies on a picture: the code says roughly where the squares must be, the squares
 * say it exactly. Printers and scanners stretch pages, each direction by itself, so nothing is
 * taken for granted but that straight lines stay straight.
 */
final class Registration {
  /** Three squares say how a page lies where a staple or a stain hides the fourth. */
  private static final int LEAST_SQUARES = 3;

  /** Points of the page further off than this, in mm, would take boxes for their neighbours. */
  private static final double LARGEST_RESIDUAL = 1;

  /** A feeder that slips shears a page; more than this, in mm, is a square taken for another. */
  private static final double LARGEST_SHEAR = 2.5;

  /** Half of the range between paper and toner is left by a stain or a stroke across a square. */
  private static final double LEAST_CONTRAST = 90;

  /** Bold print of that size, as the number of the job beside a corner, stays below this. */
  private static final double SURE_CONTRAST = 130;

  /** The white that a square keeps around itself, in mm. */
  private static final double RING = 0.8;

  private final Grey picture;
  private final Layout layout;
  private final List<Point> from = new ArrayList<>();
  private final List<Point> to = new ArrayList<>();
  private final List<Double> contrasts = new ArrayList<>();

  /** A dark square on white, with how much darker it is. */
  private record Square(Point middle, double contrast) {}

  /**
   * Where things stand on the page, in mm from its top left corner.
   *
   * @param finders the middles of the large squares of the code: below, corner, beside
   * @param squares their middles
   * @param edge of a square
   */
  record Layout(List<Point> finders, List<Point> squares, double edge) {
    /** Of the middles of its large squares, a code of 21 modules has 3.5 to either edge. */
    private static final double INSET = 3.5 / 21;

    static Layout of(PlacedBoxes boxes, double pageHeight) {
      PlacedBoxes.Place code = boxes.code();
      double in = code.w() * INSET;
      List<Point> finders =
          List.of(
              point(code.x() + in, code.y() + in, pageHeight),
              point(code.x() + in, code.y() + code.h() - in, pageHeight),
              point(code.x() + code.w() - in, code.y() + code.h() - in, pageHeight));
      List<Point> squares =
          boxes.squares().stream()
              .map(it -> point(it.x() + it.w() / 2, it.y() + it.h() / 2, pageHeight))
              .toList();
      return new Layout(finders, squares, boxes.squares().get(0).w() / BlankPage.POINTS);
    }

    private static Point point(double x, double y, double pageHeight) {
      return new Point(x / BlankPage.POINTS, (pageHeight - y) / BlankPage.POINTS);
    }
  }

  private Registration(Grey picture, Layout layout, CodeFinder.Found code) {
    this.picture = picture;
    this.layout = layout;
    from.addAll(layout.finders());
    to.addAll(code.finders());
  }

  /** Where the page's points lie; empty when too few squares are where they should be. */
  static Optional<Projection> find(Grey picture, Layout layout, CodeFinder.Found code) {
    Registration registration = new Registration(picture, layout, code);
    return registration.find();
  }

  private Optional<Projection> find() {
    Point middle = from.get(1);
    List<Point> nearestFirst =
        layout.squares().stream().sorted(Comparator.comparing(middle::distance)).toList();
    for (Point square : nearestFirst) {
      Projection rough = Projection.of(from, to, true);
      double known =
          from.subList(3, from.size()).stream().mapToDouble(square::distance).min().orElse(300);
      square(rough, square, 2 + 0.035 * Math.min(known, square.distance(middle)))
          .ifPresent(
              found -> {
                from.add(square);
                to.add(found.middle());
                contrasts.add(found.contrast());
              });
    }
    return projection();
  }

  private Optional<Projection> projection() {
    List<Point> squares = from.subList(3, from.size());
    List<Point> found = to.subList(3, to.size());
    boolean all = squares.size() > LEAST_SQUARES;
    // Nothing shows whether the last of three is a square, so each has to be a clear one.
    boolean sure = contrasts.stream().allMatch(contrast -> contrast >= SURE_CONTRAST);
    if (squares.size() < LEAST_SQUARES || !all && !sure) {
      return Optional.empty();
    }
    Projection affine = Projection.of(squares, found, true);
    // Four points share what one of them is off.
    if (all && residual(affine, squares, found) > LARGEST_SHEAR / 4) {
      return withoutTheFaintest();
    }
    Projection projection = all ? Projection.of(squares, found, false) : affine;
    boolean fits = residual(projection, from, to) <= LARGEST_RESIDUAL;
    return fits ? Optional.of(projection) : Optional.empty();
  }

  /** A square that is clearly one and stands elsewhere means that the page is torn. */
  private Optional<Projection> withoutTheFaintest() {
    double least = Collections.min(contrasts);
    if (least >= SURE_CONTRAST) {
      return Optional.empty();
    }
    int faintest = contrasts.indexOf(least);
    contrasts.remove(faintest);
    from.remove(3 + faintest);
    to.remove(3 + faintest);
    return projection();
  }

  /** The largest distance of a point from where it should be, in mm. */
  private static double residual(Projection projection, List<Point> from, List<Point> to) {
    double largest = 0;
    for (int i = 0; i < from.size(); i++) {
      double off = projection.of(from.get(i)).distance(to.get(i));
      largest = Math.max(largest, off / projection.scale(from.get(i)));
    }
    return largest;
  }

  /** The middle of the darkest square with the whitest ring near where one should be. */
  private Optional<Square> square(Projection rough, Point where, double radius) {
    Point about = rough.of(where);
    double scale = rough.scale(where);
    int half = (int) Math.round(layout.edge() * scale / 2);
    int ring = Math.max(1, (int) Math.round(RING * scale));
    int reach = (int) Math.ceil(radius * scale) + half + ring;
    int left = (int) about.x() - reach;
    int top = (int) about.y() - reach;
    if (about.x() < 0
        || about.y() < 0
        || about.x() >= picture.width()
        || about.y() >= picture.height()) {
      return Optional.empty();
    }
    Grey part = picture.crop(left, top, 2 * reach, 2 * reach);
    Sums sums = new Sums(part);
    double best = 0;
    Point found = null;
    for (int y = half + ring; y + half + ring <= part.height(); y++) {
      for (int x = half + ring; x + half + ring <= part.width(); x++) {
        double score = score(sums, x, y, half, ring);
        if (score > best) {
          best = score;
          found = new Point(x, y);
        }
      }
    }
    if (found == null || best < LEAST_CONTRAST) {
      return Optional.empty();
    }
    Point exact = middle(part, found, half + ring / 2);
    Point middle = new Point(Math.max(0, left) + exact.x(), Math.max(0, top) + exact.y());
    return Optional.of(new Square(middle, best));
  }

  private static double score(Sums sums, int x, int y, int half, int ring) {
    int out = half + ring;
    long inside = sums.sum(x - half, y - half, x + half, y + half);
    long whole = sums.sum(x - out, y - out, x + out, y + out);
    double area = 4.0 * half * half;
    return (whole - inside) / (4.0 * out * out - area) - inside / area;
  }

  /** The balance point of what is dark around a point, as a pixel's middle. */
  private static Point middle(Grey part, Point about, int reach) {
    double weight = 0;
    double across = 0;
    double down = 0;
    for (int y = (int) about.y() - reach; y < about.y() + reach; y++) {
      for (int x = (int) about.x() - reach; x < about.x() + reach; x++) {
        boolean inside = x >= 0 && y >= 0 && x < part.width() && y < part.height();
        int dark = inside && part.at(x, y) < 128 ? 255 - part.at(x, y) : 0;
        weight += dark;
        across += dark * (double) x;
        down += dark * (double) y;
      }
    }
    return weight == 0 ? about : new Point(across / weight, down / weight);
  }
}
