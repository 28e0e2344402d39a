package baysheet.plan.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.stage.Division.Room;
import baysheet.plan.stage.RestingPoints.Kind;
import baysheet.plan.stage.RestingPoints.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Test;

/** The best cuts of made-up jobs against every way that there is. */
class BestCutsTest {
  private static final int JOBS = 400;

  private int asked;

  @Test
  void noOtherWayIsBetter() {
    int none = 0;
    for (int seed = 0; seed < JOBS; seed++) {
      Random random = new Random(seed * 7919L);
      List<Point> bounds = bounds(random);
      int stages = 1 + random.nextInt(4);
      boolean shortOnes = random.nextBoolean();
      int good = 3 + random.nextInt(40);
      int least = good + random.nextInt(8);
      BestCuts.Stretches stretches =
          (from, to, room) -> length(bounds, from, to) <= (room == Room.GOOD ? good : least);
      Optional<List<Integer>> best =
          ways(bounds.size() - 1, stages).stream()
              .filter(way -> fits(bounds, way, shortOnes ? 0 : 0.5, least))
              .min(order(bounds, good));
      none += best.isEmpty() ? 1 : 0;
      assertEquals(
          best,
          new BestCuts(bounds, stages, shortOnes, stretches).find(() -> false),
          "job " + seed);
    }
    assertTrue(none > JOBS / 10 && none < JOBS / 2, "without a way: " + none);
  }

  /** Where all stages fit, only those of the best way are asked for, each once. */
  @Test
  void whatDecidesNothingIsNotAskedFor() {
    List<Point> bounds = bounds(new Random(1));
    new BestCuts(bounds, 3, true, (from, to, room) -> ++asked > 0).find(() -> false);
    assertEquals(3, asked);
  }

  /**
   * With no page large enough for two steps, a longer stage is not asked for when a part of it was.
   */
  @Test
  void aStageThatIsLongerThanOneThatDoesNotFitIsNotAskedFor() {
    List<Point> bounds = bounds(new Random(1));
    List<int[]> unfit = new ArrayList<>();
    int last = bounds.size() - 1;
    BestCuts.Stretches none =
        (from, to, room) -> {
          for (int[] it : unfit) {
            boolean longer =
                (from == it[0] && to >= it[1] && (to == it[1] || to < last))
                    || (to == it[1] && from < it[0] && from > 0);
            assertTrue(!longer || it[2] < room.ordinal(), from + " to " + to + " was known");
          }
          unfit.add(new int[] {from, to, room.ordinal()});
          return false;
        };
    assertEquals(
        Optional.empty(), new BestCuts(bounds, BestCuts.MANY, true, none).find(() -> false));
    assertTrue(unfit.size() > 2, unfit.size() + " asked");
  }

  @Test
  void whatIsKnownNotToFitIsNotAskedFor() {
    List<Point> bounds = bounds(new Random(1));
    BestCuts.Stretches known =
        new BestCuts.Stretches() {
          @Override
          public boolean fits(int from, int to, Room room) {
            asked++;
            return true;
          }

          @Override
          public boolean isKnownUnfit(int from, int to, Room room) {
            return from == 0;
          }
        };
    assertEquals(
        Optional.empty(), new BestCuts(bounds, BestCuts.MANY, true, known).find(() -> false));
    assertEquals(0, asked);
  }

  @Test
  void itGivesUp() {
    List<Point> bounds = bounds(new Random(1));
    BestCuts cuts = new BestCuts(bounds, 3, true, (from, to, room) -> ++asked < 0);
    assertEquals(Optional.empty(), cuts.find(() -> asked >= 5));
    assertEquals(5, asked);
  }

  private static List<Point> bounds(Random random) {
    List<Point> bounds = new ArrayList<>(List.of(new Point(0, Kind.WHOLE, 0, true)));
    int after = 0;
    for (int i = 0; i < 9; i++) {
      after += 1 + random.nextInt(6);
      Kind kind = Kind.values()[random.nextInt(3)];
      bounds.add(new Point(after, kind, random.nextInt(3), random.nextBoolean()));
    }
    bounds.add(new Point(after + 1 + random.nextInt(6), Kind.WHOLE, 0, true));
    return bounds;
  }

  private static int length(List<Point> bounds, int from, int to) {
    return bounds.get(to).after() - bounds.get(from).after();
  }

  /** Every list of so many stages, in lexical order. */
  private static List<List<Integer>> ways(int last, int stages) {
    List<List<Integer>> ways = List.of(List.of(0));
    for (int n = 1; n <= stages; n++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> way : ways) {
        int first = n == stages ? last : way.get(n - 1) + 1;
        for (int to = first; to <= last - (stages - n); to++) {
          if (to > way.get(n - 1)) {
            List<Integer> more = new ArrayList<>(way);
            more.add(to);
            longer.add(more);
          }
        }
      }
      ways = longer;
    }
    return ways;
  }

  private static boolean fits(List<Point> bounds, List<Integer> way, double share, int least) {
    double even = (double) length(bounds, 0, bounds.size() - 1) / (way.size() - 1);
    for (int n = 1; n < way.size(); n++) {
      int length = length(bounds, way.get(n - 1), way.get(n));
      if (length > least || length < share * even) {
        return false;
      }
    }
    return true;
  }

  /** By what stages cost; of equal ways the first remains, which ends its stages sooner. */
  private static Comparator<List<Integer>> order(List<Point> bounds, int good) {
    return Comparator.<List<Integer>>comparingInt(
            way -> points(bounds, way, it -> it.kind().ordinal()))
        .thenComparingInt(way -> small(bounds, way, good))
        .thenComparingInt(way -> points(bounds, way, Point::off))
        .thenComparingInt(way -> points(bounds, way, it -> it.between() ? 0 : 1))
        .thenComparingInt(way -> squares(bounds, way));
  }

  private static int points(List<Point> bounds, List<Integer> way, ToIntFunction<Point> cost) {
    return way.stream().skip(1).map(bounds::get).mapToInt(cost).sum();
  }

  private static int small(List<Point> bounds, List<Integer> way, int good) {
    int small = 0;
    for (int n = 1; n < way.size(); n++) {
      small += length(bounds, way.get(n - 1), way.get(n)) > good ? 1 : 0;
    }
    return small;
  }

  /** Stages of one sum are the more even the smaller the sum of their squares is. */
  private static int squares(List<Point> bounds, List<Integer> way) {
    int squares = 0;
    for (int n = 1; n < way.size(); n++) {
      int length = length(bounds, way.get(n - 1), way.get(n));
      squares += length * length;
    }
    return squares;
  }
}
