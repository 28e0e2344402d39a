package baysheet.scan;

import java.util.Arrays;
import java.util.List;

/**
 * The connected pieces of ink around a box, after what is printed was taken away. Pieces on either
 * side of the box's own border are one where they face each other: the border hides what lies under
 * it.
 */
final class Strokes {
  /** The borders of two boxes that touch, and what was taken away beside them, in pixels. */
  private static final int WIDEST_GAP = 20;

  /** How far a stroke goes aside for each pixel across a border, in halves. */
  private static final int[] SLANTS = {0, 1, -1, 2, -2};

  private final int width;
  private final int height;
  private final boolean[] ink;
  private final boolean[] hidden;
  private final int[] labels;

  private Strokes(int width, int height, boolean[] ink, boolean[] hidden) {
    this.width = width;
    this.height = height;
    this.ink = ink;
    this.hidden = hidden;
    labels = new int[ink.length];
  }

  /**
   * Numbers the pieces.
   *
   * @param hidden where print would hide ink
   * @param boxes within the region
   * @return for each pixel the number of its piece, from 1, or 0 where there is no ink; two pieces
   *     that go on across the border have one number
   */
  static int[] labels(
      int width, int height, boolean[] ink, boolean[] hidden, List<BlankPage.Area> boxes) {
    Strokes strokes = new Strokes(width, height, ink, hidden);
    int[] parents = strokes.number();
    boxes.forEach(box -> strokes.bridge(box, parents));
    for (int at = 0; at < ink.length; at++) {
      strokes.labels[at] = root(parents, strokes.labels[at]);
    }
    return strokes.labels;
  }

  /** Two passes: neighbours that meet later become one. */
  private int[] number() {
    int[] parents = new int[64];
    int last = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = y * width + x;
        if (!ink[at]) {
          continue;
        }
        int label = x > 0 ? labels[at - 1] : 0;
        for (int off = -1; off <= 1 && y > 0; off++) {
          boolean on = x + off >= 0 && x + off < width;
          int above = on ? labels[at - width + off] : 0;
          if (label != 0 && above != 0) {
            join(parents, label, above);
          }
          label = label == 0 ? above : label;
        }
        if (label == 0) {
          label = ++last;
          parents = last < parents.length ? parents : Arrays.copyOf(parents, 2 * parents.length);
          parents[last] = last;
        }
        labels[at] = label;
      }
    }
    return parents;
  }

  private static int root(int[] parents, int label) {
    int root = label;
    while (parents[root] != root) {
      root = parents[root];
    }
    return root;
  }

  private static void join(int[] parents, int one, int other) {
    int a = root(parents, one);
    int b = root(parents, other);
    parents[Math.max(a, b)] = Math.min(a, b);
  }

  /** From each edge of the box outwards and inwards. */
  private void bridge(BlankPage.Area box, int[] parents) {
    for (int x = box.left(); x < box.right(); x++) {
      facing(x, box.top(), 0, 1, parents);
      facing(x, box.bottom() - 1, 0, -1, parents);
    }
    for (int y = box.top(); y < box.bottom(); y++) {
      facing(box.left(), y, 1, 0, parents);
      facing(box.right() - 1, y, -1, 0, parents);
    }
  }

  /** Joins ink just inside a border with ink on the other side that a stroke could lead to. */
  private void facing(int x, int y, int inX, int inY, int[] parents) {
    int depth = 0;
    while (depth < WIDEST_GAP && isHidden(x + depth * inX, y + depth * inY)) {
      depth++;
    }
    int fromX = x + depth * inX;
    int fromY = y + depth * inY;
    int inside = label(fromX, fromY);
    for (int i = 0; inside != 0 && i < SLANTS.length; i++) {
      int outside = across(fromX, fromY, inX, inY, SLANTS[i]);
      if (outside != 0) {
        join(parents, inside, outside);
      }
    }
  }

  /** The first ink behind what is hidden; 0 where paper comes first. */
  private int across(int x, int y, int inX, int inY, int slant) {
    for (int step = 1; step <= WIDEST_GAP; step++) {
      int aside = slant * step / 2;
      int toX = x - step * inX + aside * inY;
      int toY = y - step * inY + aside * inX;
      if (!isHidden(toX, toY)) {
        return label(toX, toY);
      }
    }
    return 0;
  }

  private boolean isHidden(int x, int y) {
    return x >= 0 && y >= 0 && x < width && y < height && hidden[y * width + x];
  }

  private int label(int x, int y) {
    return x < 0 || y < 0 || x >= width || y >= height ? 0 : labels[y * width + x];
  }
}
