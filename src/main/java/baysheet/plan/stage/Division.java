package baysheet.plan.stage;

import baysheet.books.Job;
import baysheet.plan.stage.RestingPoints.Kind;
import baysheet.plan.stage.RestingPoints.Point;
import baysheet.sheet.Sheet;
import baysheet.verify.StageVerifier;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Divides a job at points where the work may rest: into as few sheets as will do, each of which
 * fits its page; of these with as few small-lettered ones as can be; then with the fewest things
 * off between two sheets; then where one kind of work ends and another begins; then evenly.
 *
 * <p>Whether a stretch fits is only asked of the stretches that decide something: a longer stretch
 * is taken to need more room, so that the longest one that fits is found by halving. What is
 * returned was asked for itself.
 */
public final class Division {
  private static final int MOST = Job.MOST_STAGES;

  /** A stage is not shorter than this share of an even one, where that can be avoided. */
  private static final double SHORT = 0.4;

  private static final int MOST_REPEATS = 50;

  private final StageSheets sheets;
  private final Fit fit;
  private final int end;
  private final Map<Room, Map<Sheet.Stretch, Boolean>> known = new EnumMap<>(Room.class);

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
   */
  public record Divided(List<Sheet> stages, Optional<Sheet.Stretch> tooLong) {
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
      for (boolean shortOnes : List.of(false, true)) {
        for (Kind worst : List.of(Kind.SIDES, Kind.WITHIN, Kind.PROPPED, Kind.WAITING, Kind.JACKED, Kind.LOW)) {
          List<Point> points = all.stream().filter(it -> it.kind().compareTo(worst) <= 0).toList();
          Optional<List<Sheet>> found = new Search(points, shortOnes).run(wanted);
          if (found.isPresent() && found.get().size() == 1) {
            return new Divided(found.get(), Optional.empty());
          } else if (found.isPresent()) {
            StageVerifier.prove(sheets.whole(), found.get(), sheets.resolved());
            return new Divided(found.get(), Optional.empty());
          }
        }
      }
    }
    return new Divided(List.of(), new Search(all, true).tooLong());
  }

  private boolean fits(int from, int to, Room room) {
    return known
        .get(room)
        .computeIfAbsent(new Sheet.Stretch(from, to), key -> fit.fits(sheet(from, to), room));
  }

  /** A stage of those steps; any number takes as much room as another. */
  private Sheet sheet(int from, int to) {
    if (from == 0 && to == end) {
      return sheets.whole();
    }
    return sheets.sheet(from, to, from == 0 ? 1 : to == end ? MOST : 2, MOST);
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
        int middle = high == last() && low == from ? high : (low + high + 1) / 2;
        if (fits(from, middle, room)) {
          low = middle;
        } else {
          high = middle - 1;
        }
      }
      reach.get(room).put(from, low);
      return low;
    }

    /** The first steps between two points that fit on no page. */
    Optional<Sheet.Stretch> tooLong() {
      return IntStream.range(0, last())
          .filter(from -> !fits(from, from + 1, Room.LEAST))
          .mapToObj(
              from ->
                  new Sheet.Stretch(
                      bounds.get(from).after() + 1, bounds.get(from + 1).after()))
          .findFirst();
    }

    Optional<List<Sheet>> run(int least) {
      for (int repeat = 0; repeat < MOST_REPEATS; repeat++) {
        Optional<List<Integer>> cuts = fewest(least).flatMap(this::best);
        if (cuts.isEmpty()) {
          return Optional.empty();
        }
        List<Sheet> made = sheets(cuts.get());
        Optional<Integer> unfit =
            IntStream.range(0, made.size())
                .boxed()
                .filter(i -> !fit.fits(made.get(i), Room.LEAST))
                .findFirst();
        if (unfit.isEmpty()) {
          return Optional.of(made);
        }
        reach.get(Room.LEAST).clear();
        known
            .get(Room.LEAST)
            .put(
            new Sheet.Stretch(
                bounds.get(cuts.get().get(unfit.get())).after(),
                bounds.get(cuts.get().get(unfit.get() + 1)).after()),
            false);
      }
      return Optional.empty();
    }

    private List<Sheet> sheets(List<Integer> cuts) {
      int of = cuts.size() - 1;
      return of == 1
          ? List.of(sheets.whole())
          : IntStream.range(0, of)
          .mapToObj(
              i ->
                  sheets.sheet(
                      bounds.get(cuts.get(i)).after(),
                      bounds.get(cuts.get(i + 1)).after(),
                      i + 1,
                      of))
          .toList();
    }

    /** How many stages it takes when each is as long as it can be. */
    private Optional<Integer> fewest(int least) {
      int stages = 0;
      int at = 0;
      while (at < last()) {
        int next = reach(at, Room.LEAST);
        if (next == at) {
          return Optional.empty();
        }
        at = next;
        stages++;
      }
      int wanted = Math.max(stages, least);
      return wanted > Math.min(MOST, last()) ? Optional.empty() : Optional.of(wanted);
    }

    /** The best boundaries for so many stages, both ends among them. */
    private Optional<List<Integer>> best(int stages) {
      Map<Integer, Way> ways = Map.of(0, new Way(List.of(0), Cost.NONE));
      for (int n = 1; n <= stages; n++) {
        Map<Integer, Way> longer = new TreeMap<>();
        for (Way way : ways.values()) {
          int from = way.cuts().get(way.cuts().size() - 1);
          int first = n == stages ? last() : from + 1;
          int most = Math.min(reach(from, Room.LEAST), n == stages ? last() : last() - 1);
          for (int next = first; next <= most; next++) {
            if (shortOnes || !isShort(from, next, stages)) {
              longer.merge(next, way.to(next, cost(from, next, stages)), Way::better);
            }
          }
        }
        ways = longer;
      }
      return Optional.ofNullable(ways.get(last())).map(Way::cuts);
    }

    private double share(int from, int to, int stages) {
      int steps = bounds.get(to).after() - bounds.get(from).after();
      return (double) steps * stages / end;
    }

    private boolean isShort(int from, int to, int stages) {
      return share(from, to, stages) < SHORT;
    }

    private Cost cost(int from, int to, int stages) {
      Point at = bounds.get(to);
      double uneven = share(from, to, stages) - 1;
      int small = to <= reach(from, Room.GOOD) ? 0 : 1;
      return new Cost(small, at.kind().ordinal(), at.off(), at.between() ? 0 : 1, uneven * uneven);
    }
  }

  /** What a division costs, the worst first. */
  private record Cost(int small, int kind, int off, int within, double uneven) implements Comparable<Cost> {
    static final Cost NONE = new Cost(0, 0, 0, 0, 0);

    Cost plus(Cost more) {
      return new Cost(
          small + more.small, kind + more.kind, off + more.off, within + more.within, uneven + more.uneven);
    }

    @Override
    public int compareTo(Cost other) {
      int first = Integer.compare(small, other.small);
      first = first == 0 ? Integer.compare(kind, other.kind) : first;
      first = first == 0 ? Integer.compare(off, other.off) : first;
      first = first == 0 ? Integer.compare(within, other.within) : first;
      return first == 0 ? Double.compare(uneven, other.uneven) : first;
    }
  }

  /** Boundaries from the first on, and what they cost. */
  private record Way(List<Integer> cuts, Cost cost) {
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
