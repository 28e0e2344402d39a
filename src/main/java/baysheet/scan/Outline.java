package baysheet.scan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * The outline of a connected piece of ink. A stroke of a pen has smooth edges and, unless it is one
 * straight dash, leaves most of the room between its ends white. A smudge on a scan in black and
 * white ends where it happens to cross the threshold: its edge is ragged, and it fills its hull.
 */
final class Outline {
  private final List<int[]> edge = new ArrayList<>();
  private int ragged;

  /** Adds a pixel of the edge. */
  void add(int x, int y) {
    edge.add(new int[] {x, y});
  }

  /** Adds a hair of ink or a pinhole. */
  void ragged() {
    ragged++;
  }

  /** Hairs and pinholes by the length of the edge, in pixels, near the box. */
  double raggedness(int length) {
    return (double) ragged / Math.max(1, length);
  }

  /** How much of its convex hull a piece of this area fills: 1 for a dash, a third for a tick. */
  double solidity(int area) {
    return area / hull();
  }

  /** The area of the convex hull in pixels, by the monotone chain of Andrew (1979). */
  private double hull() {
    edge.sort(Comparator.<int[]>comparingInt(at -> at[0]).thenComparingInt(at -> at[1]));
    List<int[]> round = new ArrayList<>(chain(edge));
    List<int[]> back = new ArrayList<>(edge);
    Collections.reverse(back);
    round.addAll(chain(back));
    double twice = 0;
    double length = 0;
    for (int i = 0; i < round.size(); i++) {
      int[] from = round.get(i);
      int[] to = round.get((i + 1) % round.size());
      twice += (double) from[0] * to[1] - (double) to[0] * from[1];
      length += Math.hypot(to[0] - from[0], to[1] - from[1]);
    }
    // Points are the middles of pixels: half a pixel more all around.
    return Math.abs(twice) / 2 + length / 2 + 1;
  }

  /** One side of the hull, from the first point to the one before the last. */
  private static List<int[]> chain(List<int[]> points) {
    List<int[]> chain = new ArrayList<>();
    for (int[] point : points) {
      while (chain.size() > 1 && !turns(chain, point)) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    return chain.subList(0, Math.max(0, chain.size() - 1));
  }

  /** Whether the way from the last two points to another one turns left. */
  private static boolean turns(List<int[]> chain, int[] to) {
    int[] from = chain.get(chain.size() - 2);
    int[] over = chain.get(chain.size() - 1);
    long across = (long) (over[0] - from[0]) * (to[1] - from[1]);
    return across > (long) (over[1] - from[1]) * (to[0] - from[0]);
  }
}
