package baysheet.plan.stage;

import baysheet.books.Job;
import baysheet.plan.stage.RestingPoints.Kind;
import baysheet.plan.stage.RestingPoints.Point;
import baysheet.sheet.Sheet;
import baysheet.verify.StageVerifier;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/**
 * Divides a job at points where the work may rest: into as few sheets as will do, each of which
 * fits its page; of these at the best points to rest; then with the fewest things off between two
 * sheets; then with as few small-lettered sheets as can be; then where one kind of work ends and
 * another begins; then evenly.
 *
 * <p>Whether a stretch fits is only asked of the stretches that decide something: a longer stretch
 * is taken to need more room, so that the longest one that fits is found by halving. What is
 * returned was asked for itself.
 */
public final class Division {
  private static final int MOST = Job.MOST_STAGES;

  /** A stage is not shorter than this share of an even one, where that can be avoided. */
  private static final double SHORT = 0.5;

  private static final int MOST_REPEATS = 50;

  /** So many points are first tried for a page. */
  private static final int NEAR = 16;

  /** Beyond that the stages are as long as they can be; no job of a garage comes near. */
  private static final int MOST_ASKED = 1500;

  private final StageSheets sheets;
  private final Fit fit;
  private final int end;
  private final Map<Room, Map<Sheet.Stretch, Boolean>> known = new EnumMap<>(Room.class);
  private int asked;

  private Division(StageSheets sheets, Fit fit) {
    this.sheets = sheets;
    this.fit = fit;
    this.end = sheets.whole().steps().size();
    for (Room room : Room.values()) {
      known.put(room, new HashMap<>());
    }
  }

  /** How large the letters of a sheet can be. */
  public enum Room {
    /** As large as is good to read. */
    GOOD,
    /** As small as they may be. */
    LEAST
  }

  /** Whether a sheet fits its page. */
  public interface Fit {
    boolean fits(Sheet sheet, Room room);
  }

  /**
   * What came of dividing a job.
   *
   * @param stages their sheets in order; none where there is no division
   * @param tooLong steps that nothing divides and that fit on no page; none as well where it would
   *     take too many sheets
   * @param asked of how many sheets it was asked whether they fit
   */
  public record Divided(List<Sheet> stages, Optional<Sheet.Stretch> tooLong, int asked) {
    public Divided {
      stages = List.copyOf(stages);
    }
  }

  /**
   * Divides a job.
   *
   * @param least how many stages are wanted; fewer where there are not so many points to rest at
   */
  public static Divided of(StageSheets sheets, int least, Fit fit) {
    return new Division(sheets, fit).run(least);
  }

  private Divided run(int least) {
    List<Point> all = sheets.restingPoints();
    for (int wanted = Math.min(least, all.size() + 1); wanted >= 1; wanted--) {
      for (Kind worst : EnumSet.range(Kind.SIDES, Kind.LOW)) {
        List<Point> points = all.stream().filter(it -> it.kind().compareTo(worst) <= 0).toList();
        for (boolean shortOnes : worst == Kind.SIDES ? List.of(false) : List.of(false, true)) {
          Optional<List<Sheet>> found = new Search(points, shortOnes).run(wanted);
          if (found.isPresent()) {
            return proved(found.get());
          }
        }
      }
    }
    return new Divided(List.of(), new Search(all, true).tooLong(), asked);
  }

  private Divided proved(List<Sheet> stages) {
    if (stages.size() > 1) {
      StageVerifier.prove(sheets.whole(), stages, sheets.resolved);
    }
    return new Divided(stages, Optional.empty(), asked);
  }

  private boolean fits(int from, int to, Room room) {
    return known
        .get(room)
        .computeIfAbsent(new Sheet.Stretch(from, to), key -> ask(sheet(from, to), room));
  }

  private boolean ask(Sheet sheet, Room room) {
    asked++;
    return fit.fits(sheet, room);
  }

  /** A stage of those steps; any number takes as much room as another. */
  private Sheet sheet(int from, int to) {
    if (from == 0 && to == end) {
      return sheets.whole();
    }
    int n = from == 0 ? 1 : to == end ? MOST : 2;
    return sheets.sheet(from, to, n, MOST, step -> step < from ? 1 : MOST);
  }

  /** The search among some of the points. */
  private final class Search {
    /** The boundaries, the first and the last of which are the ends of the job. */
    private final List<Point> bounds = new ArrayList<>();

    private final boolean shortOnes;
    private final Map<Room, Map<Integer, Integer>> reach = new EnumMap<>(Room.class);

    Search(List<Point> points, boolean shortOnes) {
      this.shortOnes = shortOnes;
      for (Room room : Room.values()) {
        reach.put(room, new HashMap<>());
      }
      bounds.add(new Point(0, Kind.WHOLE, 0, true));
      bounds.addAll(points);
      bounds.add(new Point(end, Kind.WHOLE, 0, true));
    }

    private int last() {
      return bounds.size() - 1;
    }

    private boolean fits(int from, int to, Room room) {
      return Division.this.fits(bounds.get(from).after(), bounds.get(to).after(), room);
    }

    /** The farthest boundary to which a stage from here fits; itself where there is none. */
    private int reach(int from, Room room) {
      Integer before = reach.get(room).get(from);
      if (before != null) {
        return before;
      }
      int low = from;
      int high = last();
      while (low < high) {
        // A page holds some steps however many there are, so it is first sought near its beginning.
        int middle = Math.min((low + high + 1) / 2, low + Math.max(NEAR, low - from));
        boolean fits = fits(from, middle, room);
        low = fits ? middle : low;
        high = fits ? high : middle - 1;
      }
      reach.get(room).put(from, low);
      return low;
    }

    /** The earliest boundary from which a stage to there fits; itself where there is none. */
    private int back(int to, Room room) {
      int low = 0;
      int high = to;
      while (low < high) {
        int middle = Math.max((low + high) / 2, high - Math.max(NEAR, to - high));
        boolean fits = fits(middle, to, room);
        high = fits ? middle : high;
        low = fits ? low : middle + 1;
      }
      return high;
    }

    /** The first steps between two points that fit on no page. */
    Optional<Sheet.Stretch> tooLong() {
      int at = 0;
      while (at < last() && reach(at, Room.LEAST) > at) {
        at = reach(at, Room.LEAST);
      }
      return at == last()
          ? Optional.empty()
          : Optional.of(new Sheet.Stretch(bounds.get(at).after() + 1, bounds.get(at + 1).after()));
    }

    Optional<List<Sheet>> run(int least) {
      for (int repeat = 0; repeat < MOST_REPEATS; repeat++) {
        Optional<List<Integer>> cuts = fewest().flatMap(longest -> best(longest, least));
        if (cuts.isEmpty()) {
          return Optional.empty();
        }
        List<Sheet> made = sheets(cuts.get());
        int unfit = 0;
        while (unfit < made.size() && ask(made.get(unfit), Room.LEAST)) {
          unfit++;
        }
        if (unfit == made.size()) {
          return Optional.of(made);
        }
        reach.get(Room.LEAST).clear();
        Point from = bounds.get(cuts.get().get(unfit));
        Point to = bounds.get(cuts.get().get(unfit + 1));
        known.get(Room.LEAST).put(new Sheet.Stretch(from.after(), to.after()), false);
      }
      return Optional.empty();
    }

    private List<Sheet> sheets(List<Integer> cuts) {
      int of = cuts.size() - 1;
      List<Sheet> made = new ArrayList<>();
      IntUnaryOperator sheetOf =
          step -> (int) cuts.stream().filter(cut -> bounds.get(cut).after() <= step).count();
      for (int n = 1; n <= of && of > 1; n++) {
        int from = bounds.get(cuts.get(n - 1)).after();
        made.add(sheets.sheet(from, bounds.get(cuts.get(n)).after(), n, of, sheetOf));
      }
      return of == 1 ? List.of(sheets.whole()) : made;
    }

    /** The boundaries when each stage is as long as it can be. */
    private Optional<List<Integer>> fewest() {
      List<Integer> cuts = new ArrayList<>(List.of(0));
      for (int at = 0; at < last(); at = reach(at, Room.LEAST)) {
        if (reach(at, Room.LEAST) == at) {
          return Optional.empty();
        }
        cuts.add(reach(at, Room.LEAST));
      }
      return cuts.size() - 1 > MOST ? Optional.empty() : Optional.of(cuts);
    }

    /** The best boundaries, both ends among them. */
    private Optional<List<Integer>> best(List<Integer> longest, int least) {
      int stages = Math.max(longest.size() - 1, least);
      if (stages > last()) {
        return Optional.empty();
      }
      List<Integer> earliest = earliest(stages);
      int good = back(last(), Room.GOOD);
      Map<Integer, Way> ways = Map.of(0, new Way(List.of(0), Cost.NONE));
      for (int n = 1; n < stages; n++) {
        Map<Integer, Way> longer = new TreeMap<>();
        for (Way way : ways.values()) {
          int to = Math.min(reach(way.end(), Room.LEAST), last() - stages + n);
          for (int next = Math.max(way.end() + 1, earliest.get(n)); next <= to; next++) {
            boolean small = next > reach(way.end(), Room.GOOD);
            add(longer, way, next, stages, small);
          }
          if (asked > MOST_ASKED) {
            return Optional.of(longest).filter(it -> stages == it.size() - 1);
          }
        }
        ways = longer;
      }
      Map<Integer, Way> whole = new TreeMap<>();
      ways.values().forEach(way -> add(whole, way, last(), stages, way.end() < good));
      return Optional.ofNullable(whole.get(last())).map(Way::cuts);
    }

    private void add(Map<Integer, Way> ways, Way way, int next, int stages, boolean small) {
      if (shortOnes || share(way.end(), next, stages) >= SHORT) {
        ways.merge(next, way.to(next, cost(way.end(), next, stages, small)), Way::better);
      }
    }

    /** The earliest end of each stage from which those that follow it can reach the last step. */
    private List<Integer> earliest(int stages) {
      Integer[] earliest = new Integer[stages + 1];
      earliest[stages] = last();
      for (int n = stages - 1; n >= 0; n--) {
        earliest[n] = Math.max(n, back(earliest[n + 1], Room.LEAST));
      }
      return List.of(earliest);
    }

    private double share(int from, int to, int stages) {
      int steps = bounds.get(to).after() - bounds.get(from).after();
      return (double) steps * stages / end;
    }

    private Cost cost(int from, int to, int stages, boolean small) {
      Point at = bounds.get(to);
      double uneven = share(from, to, stages) - 1;
      return new Cost(
          at.kind().ordinal(), at.off(), small ? 1 : 0, at.between() ? 0 : 1, uneven * uneven);
    }
  }

  /** What a division costs, the worst first. */
  private record Cost(int kind, int off, int small, int within, double uneven)
      implements Comparable<Cost> {
    static final Cost NONE = new Cost(0, 0, 0, 0, 0);

    Cost plus(Cost more) {
      return new Cost(
          kind + more.kind,
          off + more.off,
          small + more.small,
          within + more.within,
          uneven + more.uneven);
    }

    @Override
    public int compareTo(Cost other) {
      int first = Integer.compare(kind, other.kind);
      first = first == 0 ? Integer.compare(small, other.small) : first;
      first = first == 0 ? Integer.compare(off, other.off) : first;
      first = first == 0 ? Integer.compare(within, other.within) : first;
      return first == 0 ? Double.compare(uneven, other.uneven) : first;
    }
  }

  /** Boundaries from the first on, and what they cost. */
  private record Way(List<Integer> cuts, Cost cost) {
    int end() {
      return cuts.get(cuts.size() - 1);
    }

    Way to(int next, Cost more) {
      List<Integer> longer = new ArrayList<>(cuts);
      longer.add(next);
      return new Way(List.copyOf(longer), cost.plus(more));
    }

    Way better(Way other) {
      return other.cost.compareTo(cost) < 0 ? other : this;
    }
  }
}
