package baysheet.layout;

import baysheet.box.Width;
import java.util.List;
import java.util.function.ToLongFunction;

/** Divides a width among columns. */
final class Widths {
  private final List<Width> wanted;
  private final List<Extent> extents;
  private final long[] solved;

  private Widths(List<Width> wanted, List<Extent> extents) {
    this.wanted = wanted;
    this.extents = extents;
    solved = new long[wanted.size()];
  }

  /**
   * Fixed columns first, then natural ones as wide as they ask while every other column keeps its
   * least, then shares. Where not even the least of all fits, what is left is divided in proportion
   * to it, so that the sum never exceeds the room unless fixed columns alone do.
   *
   * @param extents what each column's content needs and asks for
   * @param room for all columns together, gaps already taken off
   * @param body the body size
   */
  static long[] divide(List<Width> wanted, List<Extent> extents, long room, long body) {
    Widths widths = new Widths(wanted, extents);
    long left = widths.fix(room, body);
    left = widths.natural(left);
    widths.share(left);
    return widths.solved;
  }

  private long fix(long room, long body) {
    long left = room;
    for (int i = 0; i < solved.length; i++) {
      if (wanted.get(i) instanceof Width.Fixed fixed) {
        solved[i] = fixed.length().at(body);
        left -= solved[i];
      }
    }
    return Math.max(0, left);
  }

  private long natural(long room) {
    long leastOfShares = sum(Width.Share.class, Extent::least);
    long least = sum(Width.Natural.class, Extent::least);
    long natural = sum(Width.Natural.class, Extent::natural);
    if (least + leastOfShares > room) {
      return squeeze(room, least + leastOfShares);
    }
    long give = Math.min(natural - least, room - least - leastOfShares);
    long left = room;
    for (int i = 0; i < solved.length; i++) {
      if (wanted.get(i) instanceof Width.Natural) {
        long wish = extents.get(i).natural() - extents.get(i).least();
        long more = natural == least ? 0 : Math.floorDiv(wish * give, natural - least);
        solved[i] = extents.get(i).least() + more;
        left -= solved[i];
      }
    }
    return left;
  }

  /** Natural columns in proportion to their least; what is left is for the shares. */
  private long squeeze(long room, long least) {
    long left = room;
    for (int i = 0; i < solved.length; i++) {
      if (wanted.get(i) instanceof Width.Natural) {
        solved[i] = Math.floorDiv(extents.get(i).least() * room, least);
        left -= solved[i];
      }
    }
    return left;
  }

  /** Shares by their parts, but none under its least while another has room to give. */
  private void share(long room) {
    boolean[] settled = new boolean[solved.length];
    boolean again = sum(Width.Share.class, Extent::least) <= room;
    while (again) {
      again = settleOne(settled, room);
    }
    divideByParts(settled, room);
  }

  private boolean settleOne(boolean[] settled, long room) {
    long left = leftFor(settled, room);
    long parts = partsOf(settled);
    for (int i = 0; i < solved.length; i++) {
      if (wanted.get(i) instanceof Width.Share share && !settled[i]) {
        if (Math.floorDiv(left * share.parts(), parts) < extents.get(i).least()) {
          settled[i] = true;
          solved[i] = extents.get(i).least();
          return true;
        }
      }
    }
    return false;
  }

  private void divideByParts(boolean[] settled, long room) {
    long left = leftFor(settled, room);
    long parts = partsOf(settled);
    for (int i = 0; i < solved.length; i++) {
      if (wanted.get(i) instanceof Width.Share share && !settled[i]) {
        solved[i] = Math.floorDiv(left * share.parts(), parts);
        left -= solved[i];
        parts -= share.parts();
      }
    }
  }

  private long leftFor(boolean[] settled, long room) {
    long left = room;
    for (int i = 0; i < solved.length; i++) {
      left -= settled[i] ? solved[i] : 0;
    }
    return left;
  }

  private long partsOf(boolean[] settled) {
    long parts = 0;
    for (int i = 0; i < solved.length; i++) {
      parts += wanted.get(i) instanceof Width.Share share && !settled[i] ? share.parts() : 0;
    }
    return parts;
  }

  private long sum(Class<? extends Width> kind, ToLongFunction<Extent> of) {
    long sum = 0;
    for (int i = 0; i < solved.length; i++) {
      sum += kind.isInstance(wanted.get(i)) ? of.applyAsLong(extents.get(i)) : 0;
    }
    return sum;
  }

  /** The sum of widths. */
  static long sum(long[] widths) {
    long sum = 0;
    for (long width : widths) {
      sum += width;
    }
    return sum;
  }
}
