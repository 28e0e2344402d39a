package baysheet.plan.stage;

import baysheet.plan.stage.Division.Room;
import baysheet.plan.stage.RestingPoints.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * The best points at which a number of stages end. The way that costs least if all its stages fit
 * their pages is looked at first, and only of its stages it is asked whether they do. Each answer
 * that makes it dearer may make another way the cheapest, which is then looked at in turn.
 */
final class BestCuts {
  /** So many stages that few ways of dividing a job fit. */
  static final int MANY = 5;

  private final List<Point> bounds;
  private final int stages;
  private final Stretches stretches;

  /** What a stage between two bounds costs: until all is known, the least that it can. */
  private final Cost[][] costs;

  private final Asked[][] asked;

  /** How much is known of a stage. */
  private enum Asked {
    NOTHING,
    /** It does not fit in letters that are good to read. */
    IF_GOOD,
    ALL
  }

  /** Whether the steps between two of the bounds fit a page. */
  interface Stretches {
    boolean fits(int from, int to, Room room);

    /** Whether an earlier answer says that they do not. */
    default boolean isKnownUnfit(int from, int to, Room room) {
      return false;
    }
  }

  /**
   * @param bounds the points, between both ends of the job
   * @param shortOnes whether a stage may be shorter than half an even one
   */
  BestCuts(List<Point> bounds, int stages, boolean shortOnes, Stretches stretches) {
    this.bounds = bounds;
    this.stages = stages;
    this.stretches = stretches;
    int last = bounds.size() - 1;
    this.costs = new Cost[last][last + 1];
    this.asked = new Asked[last][last + 1];
    for (int from = 0; from < last; from++) {
      Arrays.fill(asked[from], Asked.NOTHING);
      for (int to = from + 1; to <= last; to++) {
        boolean isLongEnough = 2 * stages * length(from, to) >= length(0, last);
        costs[from][to] = shortOnes || isLongEnough ? cost(from, to) : Cost.NEVER;
        for (Room room : Room.values()) {
          if (stages >= MANY && stretches.isKnownUnfit(from, to, room)) {
            isUnfit(from, to, room);
          }
        }
      }
    }
  }

  /** The bounds between which the stages lie; none where there is no way, or it is given up. */
  Optional<List<Integer>> find(BooleanSupplier givesUp) {
    Optional<List<Integer>> way = cheapest();
    while (way.isPresent() && !givesUp.getAsBoolean()) {
      List<Integer> cuts = way.get();
      // The longest is the likeliest not to fit.
      Optional<Integer> doubtful =
          IntStream.range(0, stages)
              .filter(n -> asked[cuts.get(n)][cuts.get(n + 1)] != Asked.ALL)
              .boxed()
              .max(Comparator.comparingInt(n -> length(cuts.get(n), cuts.get(n + 1))));
      if (doubtful.isEmpty()) {
        return way;
      }
      boolean fits = fits(cuts.get(doubtful.get()), cuts.get(doubtful.get() + 1));
      way = fits ? way : cheapest();
    }
    return Optional.empty();
  }

  /**
   * Whether a stage fits at what it was assumed to cost; if not, it costs more. Of many stages an
   * answer also speaks for the longer ones that begin or end with this one, for the search would
   * else ask for most of them; but not for the first, which needs no state on arrival, or the last.
   * Of few stages each is asked for itself: a shorter one that ends where more is off can need more
   * room.
   */
  private boolean fits(int from, int to) {
    Room room = asked[from][to] == Asked.NOTHING ? Room.GOOD : Room.LEAST;
    boolean fits = stretches.fits(from, to, room);
    if (fits) {
      asked[from][to] = Asked.ALL;
    } else {
      isUnfit(from, to, room);
    }
    if (!fits && stages >= MANY) {
      IntStream.range(to, bounds.size() - 1).forEach(longer -> isUnfit(from, longer, room));
      IntStream.range(1, from).forEach(longer -> isUnfit(longer, to, room));
    }
    return fits;
  }

  private void isUnfit(int from, int to, Room room) {
    if (room == Room.LEAST && asked[from][to] != Asked.ALL) {
      asked[from][to] = Asked.ALL;
      costs[from][to] = Cost.NEVER;
    } else if (asked[from][to] == Asked.NOTHING) {
      asked[from][to] = Asked.IF_GOOD;
      costs[from][to] = costs[from][to].plus(Cost.SMALL);
    }
  }

  /**
   * The way that costs least, as far as is known; of ways that cost the same the one that ends its
   * stages sooner.
   */
  private Optional<List<Integer>> cheapest() {
    int last = bounds.size() - 1;
    int[][] next = new int[stages + 1][last + 1];
    // What the stages from each bound to the end cost at least.
    Cost[] rest = new Cost[last + 1];
    Arrays.fill(rest, Cost.NEVER);
    rest[last] = Cost.NONE;
    for (int n = stages; n > 0; n--) {
      for (int from = 0; from <= last; from++) {
        // Only bounds further on are read, which still hold what one stage less costs.
        Cost least = Cost.NEVER;
        for (int to = from + 1; to <= last; to++) {
          Cost way = costs[from][to].plus(rest[to]);
          if (way.compareTo(least) < 0) {
            least = way;
            next[n][from] = to;
          }
        }
        rest[from] = least;
      }
    }
    if (rest[0] == Cost.NEVER) {
      return Optional.empty();
    }
    List<Integer> cuts = new ArrayList<>(List.of(0));
    for (int n = 1; n <= stages; n++) {
      cuts.add(next[n][cuts.get(n - 1)]);
    }
    return Optional.of(cuts);
  }

  private int length(int from, int to) {
    return bounds.get(to).after() - bounds.get(from).after();
  }

  /** What a stage costs whose letters are good to read. */
  private Cost cost(int from, int to) {
    Point at = bounds.get(to);
    long uneven = (long) stages * length(from, to) - length(0, bounds.size() - 1);
    return new Cost(at.kind().ordinal(), 0, at.off(), at.between() ? 0 : 1, uneven * uneven);
  }

  /** What stages cost, the worst first. */
  private record Cost(int kind, int small, int off, int within, long uneven)
      implements Comparable<Cost> {
    static final Cost NONE = new Cost(0, 0, 0, 0, 0);
    static final Cost SMALL = new Cost(0, 1, 0, 0, 0);
    static final Cost NEVER = new Cost(Integer.MAX_VALUE, 0, 0, 0, 0);

    private static final Comparator<Cost> WORST_FIRST =
        Comparator.comparingInt(Cost::kind)
            .thenComparingInt(Cost::small)
            .thenComparingInt(Cost::off)
            .thenComparingInt(Cost::within)
            .thenComparingLong(Cost::uneven);

    Cost plus(Cost more) {
      return this == NEVER || more == NEVER
          ? NEVER
          : new Cost(
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
}
