package baysheet.scan;

import baysheet.record.PlacedBoxes;
import baysheet.scan.BlankPage.Area;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.State;
import java.util.ArrayList;
import java.util.List;

/**
 * Decides whether the boxes of a page hold ink. An empty box must never be called marked, so that
 * takes a pen's stroke: long enough, thin enough, dark enough and at home in the box. On a scan in
 * black and white a smudge is as dark and as sharp as a stroke, so its shape must speak for a pen
 * as well, or less clearly so and with strokes of the same pen in other boxes. Any less is
 * doubtful, and a person looks at it.
 */
final class BoxReader {
  /** Around a box, in pixels: 3 mm, enough to see whether a stroke belongs to a neighbour. */
  private static final int AROUND = 3 * BlankPage.PIXELS;

  /** Around a box its print is laid on: 2 mm of borders and words. */
  private static final int PRINT_AROUND = 2 * BlankPage.PIXELS;

  /** 0.6 mm: paper stretches unevenly, and squares are found to a tenth. */
  private static final int SHIFT = 5;

  /** A dot of dust or noise is smaller, the shortest tick is four times as long. In mm. */
  private static final double SPECK = 0.6;

  /** How many pixels of a stroke must lie further in. */
  private static final int CENTRAL = 5;

  /** What must be inside of a stroke that is much longer than it must be, as a part of that. */
  private static final double OVERRUN = 0.6;

  /** The same of the long arm of a tick that no other box can claim. */
  private static final double ARM = 0.4;

  /** A thin stroke breaks where it is pale: of its length, the longest piece is this at least. */
  private static final double BROKEN = 0.6;

  /** Of a tick whose bottom lies under the border, both arms together. */
  private static final double LEAST_ARMS = 2;

  /** A box that is nearly solid was blotted out, or lies under a stain. */
  private static final double SOLID = 0.85;

  /** How many others of the same pen make up for a shape that says little. */
  private static final int MANY = 8;

  /** How many others there must be; one or two may have met a smudge. */
  private static final int SAME = 3;

  /** Two strokes of one hand differ by this part of their width, and straight ones by so much. */
  private static final double WIDTHS = 0.18;

  private static final double DEGREES = 12;

  /** Of words, figures and initials, all strokes by their width; a smudge is short and wide. */
  private static final double SCRIPT = 7.5;

  private static final double SIGNATURE = 25;

  private final Scanned scanned;
  private final Ink ink;
  private final BlankPage blank;
  private final boolean smooth;
  private List<Area> all = List.of();

  /**
   * @param smooth whether the ink was smoothed, which makes a torn smudge look like a stroke: there
   *     a stroke counts only with others like it
   */
  BoxReader(Scanned scanned, boolean smooth) {
    this.scanned = scanned;
    this.smooth = smooth;
    ink = scanned.ink();
    blank = scanned.blank();
  }

  /** The shortest stroke that is meant, in mm: of a tick, a figure, a letter, a name. */
  private static double leastStroke(String kind) {
    return switch (kind) {
      case "signature" -> 5;
      case "initials" -> 2.2;
      case "tick" -> 1.6;
      default -> 1.8;
    };
  }

  /** Reads the boxes of the page, in their order. */
  List<BoxReading> read(List<PlacedBoxes.Box> boxes) {
    all = boxes.stream().map(box -> blank.area(box.place())).toList();
    List<Found> found = boxes.stream().map(this::find).toList();
    List<Piece> sure =
        found.stream()
            .flatMap(it -> it.drawn().stream().filter(piece -> isSure(it, piece)))
            .toList();
    return found.stream().map(it -> decide(it, sure)).toList();
  }

  /**
   * What lies in a box.
   *
   * @param drawn what a pen could have drawn, and for this box
   * @param any whether there is more than a speck
   */
  private record Found(PlacedBoxes.Box box, Pieces pieces, List<Piece> drawn, boolean any) {
    boolean isTick() {
      return box.kind().equals("tick");
    }

    double evidence(Piece piece) {
      return pieces.evidence(piece);
    }

    double share() {
      long inside = pieces.measured().stream().mapToLong(Piece::inside).sum();
      return (double) inside / Math.max(1, pieces.free());
    }
  }

  /** The ink in a box, apart from what is printed there. */
  private Pieces pieces(PlacedBoxes.Box box) {
    Area edge = blank.area(box.place());
    Area region = edge.grown(AROUND).within(blank.width(), blank.rows());
    int[] shift = shift(edge.grown(PRINT_AROUND).within(blank.width(), blank.rows()));
    boolean[] hidden = hidden(region);
    boolean[] written = written(region, shift, hidden);
    Area inside = edge.from(region);
    List<Area> others =
        all.stream()
            .filter(it -> !it.equals(edge) && it.meets(region))
            .map(it -> it.from(region))
            .toList();
    List<Area> boxes = new ArrayList<>(others);
    boxes.add(inside);
    int[] labels = Strokes.labels(region.width(), region.height(), written, hidden, boxes);
    return new Pieces(scanned, region, inside, others, labels, shift);
  }

  /** How far print lies off its place here: where most of it meets ink. */
  private int[] shift(Area area) {
    int[] print = new int[area.width() * area.height()];
    int count = 0;
    for (int y = area.top(); y < area.bottom(); y++) {
      for (int x = area.left(); x < area.right(); x++) {
        if (blank.ink()[y * blank.width() + x]) {
          print[count++] = y * blank.width() + x;
        }
      }
    }
    int[] best = {0, 0};
    int most = met(print, count, 0, 0);
    for (int dy = -SHIFT; dy <= SHIFT; dy++) {
      for (int dx = -SHIFT; dx <= SHIFT; dx++) {
        int met = met(print, count, dx, dy);
        if (met > most || met == most && Math.hypot(dx, dy) < Math.hypot(best[0], best[1])) {
          most = met;
          best = new int[] {dx, dy};
        }
      }
    }
    return best;
  }

  private int met(int[] print, int count, int dx, int dy) {
    boolean[] dark = ink.dark();
    int off = dy * blank.width() + dx;
    int met = 0;
    for (int i = 0; i < count; i++) {
      int at = print[i] + off;
      met += at >= 0 && at < dark.length && dark[at] ? 1 : 0;
    }
    return met;
  }

  /** Where print would hide ink. */
  private boolean[] hidden(Area region) {
    boolean[] hidden = new boolean[region.width() * region.height()];
    for (int y = 0; y < region.height(); y++) {
      int from = (region.top() + y) * blank.width() + region.left();
      System.arraycopy(blank.near(), from, hidden, y * region.width(), region.width());
    }
    return hidden;
  }

  /** Ink that no print explains. */
  private boolean[] written(Area region, int[] shift, boolean[] hidden) {
    boolean[] written = new boolean[region.width() * region.height()];
    int off = shift[1] * blank.width() + shift[0];
    for (int y = region.top(); y < region.bottom(); y++) {
      for (int x = region.left(); x < region.right(); x++) {
        int there = y * blank.width() + x + off;
        int at = (y - region.top()) * region.width() + x - region.left();
        boolean dark = there >= 0 && there < ink.dark().length && ink.dark()[there];
        written[at] = dark && !hidden[at];
      }
    }
    return written;
  }

  private Found find(PlacedBoxes.Box box) {
    Pieces pieces = pieces(box);
    List<Piece> drawn = new ArrayList<>();
    boolean any = false;
    for (Piece piece : pieces.measured()) {
      boolean home = pieces.isAtHome(piece, true);
      any |= piece.extent() >= (home ? SPECK : 2 * SPECK);
      if (home
          && piece.extent() >= SPECK
          && piece.central() >= CENTRAL
          && pieces.isStroke(piece)
          && (box.kind().equals("tick") || !pieces.isPale(piece))
          && !pieces.comesIn(piece, box.kind())) {
        drawn.add(piece);
      }
    }
    return new Found(box, pieces, drawn, any);
  }

  /** The decision, in one place. */
  private BoxReading decide(Found found, List<Piece> sure) {
    PlacedBoxes.Box box = found.box();
    boolean meant = found.isTick() ? isTicked(found, sure) : isWritten(found, sure);
    boolean marked = meant && found.share() < SOLID;
    State state = marked ? State.MARKED : found.any() ? State.DOUBTFUL : State.EMPTY;
    double share = Math.round(found.share() * 1000) / 1000.0;
    return new BoxReading(box.name(), box.kind(), box.required(), state, share);
  }

  private boolean isTicked(Found found, List<Piece> sure) {
    List<Piece> strokes = found.drawn().stream().filter(it -> isOfAPen(found, it, sure)).toList();
    return isLongEnough(found, strokes)
        || hasArms(found) && (!scanned.twoTone() || !sure.isEmpty());
  }

  /** A tick whose bottom lies under the border leaves two short arms in its box. */
  private static boolean hasArms(Found found) {
    List<Piece> pieces =
        found.pieces().measured().stream().filter(it -> it.extent() >= SPECK).toList();
    return pieces.stream()
        .anyMatch(
            left ->
                pieces.stream()
                    .filter(it -> left.extent() + it.extent() >= LEAST_ARMS)
                    .anyMatch(it -> found.pieces().areArms(left, it)));
  }

  private static boolean isSure(Found found, Piece piece) {
    PenEvidence needed = found.isTick() ? PenEvidence.SURE : PenEvidence.SURE_ALONE;
    return needed.isReachedBy(found.evidence(piece))
        && !found.pieces().isPale(piece)
        && found.pieces().isAtHome(piece, false);
  }

  private boolean isOfAPen(Found found, Piece piece, List<Piece> sure) {
    double evidence = found.evidence(piece);
    return isPenByItself(found, piece, evidence) || isPenOfOthers(found, piece, evidence, sure);
  }

  private boolean isPenByItself(Found found, Piece piece, double evidence) {
    return !smooth
        && !found.pieces().isPale(piece)
        && found.pieces().isAtHome(piece, false)
        && neededAlone(found, piece).isReachedBy(evidence);
  }

  /** In black and white a smudge is as dark and as sharp as a stroke. */
  private PenEvidence neededAlone(Found found, Piece piece) {
    if (scanned.twoTone()) {
      return PenEvidence.SURE_ALONE;
    }
    boolean dark = found.pieces().contrast(piece) >= Piece.DARK;
    return dark ? PenEvidence.NOT_AGAINST : PenEvidence.NOT_AGAINST_PALE;
  }

  /** The less its shape says, the more sure strokes of the same pen there must be. */
  private static boolean isPenOfOthers(
      Found found, Piece piece, double evidence, List<Piece> sure) {
    // A sure stroke is itself among them.
    int others = PenEvidence.LIKELY.isReachedBy(evidence) ? SAME : MANY;
    int same = others + (isSure(found, piece) ? 1 : 0);
    return PenEvidence.POSSIBLE.isReachedBy(evidence)
        && sure.stream().filter(it -> isOfOnePen(piece, it)).limit(same).count() == same;
  }

  private static boolean isAsWide(Piece one, Piece other) {
    return Math.abs(Math.log(one.width() / other.width())) <= WIDTHS;
  }

  private static boolean isOfOnePen(Piece one, Piece other) {
    double turned = Math.abs(one.angle() - other.angle());
    boolean bent = !one.isStraight() && !other.isStraight();
    return isAsWide(one, other) && (bent || Math.min(turned, 180 - turned) <= DEGREES);
  }

  /** Figures, letters and names: they bend, so one straight line is a streak of dirt. */
  private boolean isWritten(Found found, List<Piece> sure) {
    List<Piece> strokes = found.drawn();
    boolean several = found.box().kind().equals("value") && strokes.size() > 1;
    boolean bent = several || strokes.stream().anyMatch(it -> !it.isFlat());
    return bent && isLongEnough(found, strokes) && (!scanned.twoTone() || isScript(found, sure));
  }

  /** Whether its strokes are longer and smoother than a smudge's. */
  private static boolean isScript(Found found, List<Piece> sure) {
    double slender = found.drawn().stream().mapToDouble(Piece::smoothSlender).sum();
    boolean signs = found.box().kind().equals("signature");
    boolean known = !signs && found.drawn().stream().allMatch(it -> isKnown(it, sure));
    double least = signs ? SIGNATURE : known ? SCRIPT / 2 : SCRIPT;
    PenEvidence needed = known ? PenEvidence.LIKELY : PenEvidence.OF_SCRIPT;
    return slender >= least
        && found.drawn().stream().anyMatch(it -> needed.isReachedBy(found.evidence(it)));
  }

  /** Whether many other strokes of the page are as wide, as those of a thick pen are. */
  private static boolean isKnown(Piece piece, List<Piece> sure) {
    return sure.stream().filter(it -> it != piece && isAsWide(piece, it)).count() >= MANY;
  }

  private static boolean isLongEnough(Found found, List<Piece> strokes) {
    double least = leastStroke(found.box().kind());
    double longest = 0;
    double all = 0;
    for (Piece piece : strokes) {
      double whole = piece.wholeExtent();
      boolean arm = piece.isAlone() && Arms.isLong(piece);
      boolean own =
          whole >= 3 * least
              || whole >= 2 * least && found.pieces().spans(piece)
              || whole >= 1.5 * least && arm;
      double extent = piece.extent();
      boolean far = extent >= (arm ? ARM : OVERRUN) * least;
      extent = own && far ? Math.max(extent, least) : extent;
      longest = Math.max(longest, extent);
      all += extent;
    }
    return longest >= least || longest >= least * BROKEN && all >= least / BROKEN;
  }
}
