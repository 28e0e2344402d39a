package baysheet.plan.stage;

import baysheet.plan.stage.Division.Room;
import baysheet.plan.stage.RestingPoints.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * The best points at which a number of stages end. The way that would cost least if all its stages
 * fitted their pages is followed first, so it is only asked of stages on such ways whether they do.
 */
final class BestCuts {
  /** A stage is not shorter than this share of an even one, where that can be avoided. */
  private static final double SHORT = 0.5;

  private final List<Point> bounds;
  private final int stages;
  private final boolean shortOnes;
  private final Stretches stretches;

  /** Whether the steps between two of the bounds fit a page. */
  interface Stretches {
    boolean fit(int from, int to, Room room);
  }

  /**
   * @param bounds the points, between both ends of the job
   * @param shortOnes whether a stage may be short
   */
  BestCuts(List<Point> bounds, int stages, boolean shortOnes, Stretches stretches) {
    this.bounds = bounds;
    this.stages = stages;
    this.shortOnes = shortOnes;
    this.stretches = stretches;
  }

  /** The bounds between which the stages lie; none where there is no way, or it is given up. */
  Optional<List<Integer>> find(BooleanSupplier givesUp) {
    Cost[][] rest = rest();
    Set<List<Integer>> reached = new HashSet<>();
    PriorityQueue<Way> open = new PriorityQueue<>();
    open.add(new Way(List.of(0), Cost.NONE, rest[stages][0], true));
    while (!open.isEmpty() && !givesUp.getAsBoolean()) {
      Way way = open.remove();
      if (!way.fits()) {
        fitted(way).ifPresent(open::add);
      } else if (way.count() == stages) {
        return Optional.of(way.cuts());
      } else if (reached.add(List.of(way.count(), way.end()))) {
        longer(way, rest[stages - way.count() - 1], open);
      }
    }
    return Optional.empty();
  }

  /** Adds each way with one stage more. */
  private void longer(Way way, Cost[] rest, PriorityQueue<Way> open) {
    for (int next = way.end() + 1; next < rest.length; next++) {
      if (isLongEnough(way.end(), next) && rest[next] != Cost.NEVER) {
        open.add(way.to(next, cost(way.end(), next), rest[next]));
      }
    }
  }

  /** A way whose last stage fits, in letters of which size; none where it does not. */
  private Optional<Way> fitted(Way way) {
    int from = way.cuts().get(way.count() - 1);
    if (stretches.fit(from, way.end(), Room.GOOD)) {
      return Optional.of(way.fitting(Cost.NONE));
    }
    return stretches.fit(from, way.end(), Room.LEAST)
        ? Optional.of(way.fitting(Cost.SMALL))
        : Optional.empty();
  }

  /** For each number of stages the least that those from each bound to the end can cost. */
  private Cost[][] rest() {
    int last = bounds.size() - 1;
    Cost[][] rest = new Cost[stages + 1][last + 1];
    Arrays.fill(rest[0], Cost.NEVER);
    rest[0][last] = Cost.NONE;
    for (int n = 1; n <= stages; n++) {
      Arrays.fill(rest[n], Cost.NEVER);
      for (int from = 0; from < last; from++) {
        for (int to = from + 1; to <= last; to++) {
          if (isLongEnough(from, to) && rest[n - 1][to] != Cost.NEVER) {
            Cost way = cost(from, to).plus(rest[n - 1][to]);
            rest[n][from] = way.compareTo(rest[n][from]) < 0 ? way : rest[n][from];
          }
        }
      }
    }
    return rest;
  }

  private boolean isLongEnough(int from, int to) {
    return shortOnes || share(from, to) >= SHORT;
  }

  private double share(int from, int to) {
    int all = bounds.get(bounds.size() - 1).after();
    return (double) (bounds.get(to).after() - bounds.get(from).after()) * stages / all;
  }

  /** What a stage costs whose letters are good to read. */
  private Cost cost(int from, int to) {
    Point at = bounds.get(to);
    double uneven = share(from, to) - 1;
    return new Cost(at.kind().ordinal(), 0, at.off(), at.between() ? 0 : 1, uneven * uneven);
  }

  /** What stages cost, the worst first. */
  private record Cost(int kind, int small, int off, int within, double uneven)
      implements Comparable<Cost> {
    static final Cost NONE = new Cost(0, 0, 0, 0, 0);
    static final Cost SMALL = new Cost(0, 1, 0, 0, 0);
    static final Cost NEVER = new Cost(Integer.MAX_VALUE, 0, 0, 0, 0);

    private static final Comparator<Cost> WORST_FIRST =
        Comparator.comparingInt(Cost::kind)
            .thenComparingInt(Cost::small)
            .thenComparingInt(Cost::off)
            .thenComparingInt(Cost::within)
            .thenComparingDouble(Cost::uneven);

    Cost plus(Cost more) {
      return new Cost(
          kind + more.kind,
          small + more.small,
          off + more.off,
          within + more.within,
          uneven + more.uneven);
    }

    @Override
    public int compareTo(Cost other) {
      return WORST_FIRST.compare(this, other);
    }
  }

  /**
   * Bounds from the first on.
   *
   * @param cost of the stages between them
   * @param whole the least that all stages can cost
   * @param fits whether the last of its stages is known to fit
   */
  private record Way(List<Integer> cuts, Cost cost, Cost whole, boolean fits)
      implements Comparable<Way> {
    /** How many stages it has. */
    int count() {
      return cuts.size() - 1;
    }

    int end() {
      return cuts.get(count());
    }

    Way to(int next, Cost stage, Cost rest) {
      List<Integer> longer = new ArrayList<>(cuts);
      longer.add(next);
      Cost sum = cost.plus(stage);
      return new Way(List.copyOf(longer), sum, sum.plus(rest), false);
    }

    Way fitting(Cost more) {
      return new Way(cuts, cost.plus(more), whole.plus(more), true);
    }

    /** Of ways that cost the same the one that ends its stages sooner comes first. */
    @Override
    public int compareTo(Way other) {
      int order = whole.compareTo(other.whole);
      for (int i = 0; order == 0 && i < Math.min(cuts.size(), other.cuts.size()); i++) {
        order = Integer.compare(cuts.get(i), other.cuts.get(i));
      }
      return order;
    }
  }
}
