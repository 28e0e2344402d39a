package baysheet.plan.stage;

import baysheet.books.Job;
import baysheet.plan.stage.RestingPoints.Kind;
import baysheet.plan.stage.RestingPoints.Point;
import baysheet.sheet.Sheet;
import baysheet.verify.StageVerifier;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
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

  /** Stands for the number of any stage while it is asked whether it fits. */
  private static final int WIDEST = 9;

  private static final int MOST_REPEATS = 50;

  /** So many points are first tried for a page. */
  private static final int NEAR = 16;

  /** Beyond that the stages are as long as they can be; no job of a garage comes near. */
  private static final int MOST_ASKED = 1500;

  private final StageSheets sheets;
  private final Fit fit;
  private final int end;
  private final Deque<Answer> answers = new ArrayDeque<>();
  private int asked;

  private Division(StageSheets sheets, Fit fit) {
    this.sheets = sheets;
    this.fit = fit;
    this.end = sheets.end();
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
   * @param tooLong what nothing divides and fits on no page; none as well where it would take too
   *     many sheets
   * @param asked of how many sheets it was asked whether they fit
   */
  public record Divided(List<Sheet> stages, Optional<TooLong> tooLong, int asked) {
    public Divided {
      stages = List.copyOf(stages);
    }
  }

  /**
   * What fits on no page.
   *
   * @param steps none where it is checks alone
   * @param checks whether the checks that are due when every step is done belong to it
   */
  public record TooLong(Optional<Sheet.Stretch> steps, boolean checks) {}

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
    List<Point> amongSteps = all.stream().filter(it -> it.kind() != Kind.ONLY_CHECKS).toList();
    for (int wanted = Math.min(least, amongSteps.size() + 1); wanted >= 1; wanted--) {
      for (Kind worst : EnumSet.range(Kind.SIDES, Kind.LOW)) {
        List<Point> points =
            amongSteps.stream().filter(it -> it.kind().compareTo(worst) <= 0).toList();
        for (boolean shortOnes : worst == Kind.SIDES ? List.of(false) : List.of(false, true)) {
          Optional<List<Sheet>> found = new Search(points, shortOnes).run(wanted);
          if (found.isPresent()) {
            return proved(found.get());
          }
        }
      }
    }
    Optional<List<Sheet>> found =
        all.equals(amongSteps) ? Optional.empty() : new Search(all, true).run(1);
    return found
        .map(this::proved)
        .orElseGet(() -> new Divided(List.of(), new Search(all, true).tooLong(), asked));
  }

  private Divided proved(List<Sheet> stages) {
    if (stages.size() > 1) {
      StageVerifier.prove(sheets.whole(), stages, sheets.resolved);
    }
    return new Divided(stages, Optional.empty(), asked);
  }

  /** What was asked before decides; else it is asked now. */
  private boolean fits(int from, int to, Room room) {
    Optional<Boolean> known = known(from, to, room);
    if (known.isPresent()) {
      return known.get();
    }
    boolean fits = ask(sheet(from, to), room);
    answers.addFirst(new Answer(from, to, room, fits));
    return fits;
  }

  /** What the answers say of a stretch, the newest first; nothing where none decides. */
  private Optional<Boolean> known(int from, int to, Room room) {
    for (Answer answer : answers) {
      if (answer.decides(from, to, room)) {
        return Optional.of(answer.fits());
      }
    }
    return Optional.empty();
  }

  private boolean ask(Sheet sheet, Room room) {
    asked++;
    return fit.fits(sheet, room);
  }

  /**
   * A stage of those steps; any number of one figure takes as much room as another. Where there are
   * ten or more, {@code run} sees whether the sheets fit with their own numbers.
   */
  private Sheet sheet(int from, int to) {
    if (from == 0 && to == end) {
      return sheets.whole();
    }
    int n = from == 0 ? 1 : to == end ? WIDEST : 2;
    return sheets.sheet(from, to, n, WIDEST, step -> step < from ? 1 : WIDEST);
  }

  /** The search among some of the points. */
  private final class Search implements BestCuts.Stretches {
    /** The boundaries, the first and the last of which are the ends of the job. */
    private final List<Point> bounds = new ArrayList<>();

    private final boolean shortOnes;

    Search(List<Point> points, boolean shortOnes) {
      this.shortOnes = shortOnes;
      bounds.add(new Point(0, Kind.WHOLE, 0, true));
      bounds.addAll(points);
      bounds.add(new Point(sheets.whole().steps().size(), Kind.WHOLE, 0, true));
    }

    private int last() {
      return bounds.size() - 1;
    }

    /** Where a bound lies; the last one behind the checks at the end, which have no length. */
    private int boundary(int bound) {
      return bound == last() ? end : bounds.get(bound).after();
    }

    @Override
    public boolean fits(int from, int to, Room room) {
      return Division.this.fits(boundary(from), boundary(to), room);
    }

    @Override
    public boolean isKnownUnfit(int from, int to, Room room) {
      return known(boundary(from), boundary(to), room).equals(Optional.of(false));
    }

    /** The farthest boundary to which a stage from here fits; itself where there is none. */
    private int reach(int from) {
      int low = from;
      int high = last();
      while (low < high) {
        // A page holds some steps however many there are, so it is first sought near its beginning.
        int middle = Math.min((low + high + 1) / 2, low + Math.max(NEAR, low - from));
        boolean fits = fits(from, middle, Room.LEAST);
        low = fits ? middle : low;
        high = fits ? high : middle - 1;
      }
      return low;
    }

    /** The first stretch between two points that fits on no page. */
    Optional<TooLong> tooLong() {
      int at = 0;
      while (at < last() && reach(at) > at) {
        at = reach(at);
      }
      if (at == last()) {
        return Optional.empty();
      }
      Sheet.Stretch steps =
          new Sheet.Stretch(bounds.get(at).after() + 1, bounds.get(at + 1).after());
      return Optional.of(
          new TooLong(Optional.of(steps).filter(it -> it.first() <= it.last()), at + 1 == last()));
    }

    Optional<List<Sheet>> run(int least) {
      for (int repeat = 0; repeat < MOST_REPEATS; repeat++) {
        Optional<List<Integer>> cuts = best(least).or(() -> more(least));
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
        int from = boundary(cuts.get().get(unfit));
        int to = boundary(cuts.get().get(unfit + 1));
        answers.addFirst(new Answer(from, to, Room.LEAST, false));
      }
      return Optional.empty();
    }

    private List<Sheet> sheets(List<Integer> cuts) {
      int of = cuts.size() - 1;
      List<Sheet> made = new ArrayList<>();
      IntUnaryOperator sheetOf =
          step -> (int) cuts.stream().filter(cut -> boundary(cut) <= step).count();
      for (int n = 1; n <= of && of > 1; n++) {
        made.add(sheets.sheet(boundary(cuts.get(n - 1)), boundary(cuts.get(n)), n, of, sheetOf));
      }
      return of == 1 ? List.of(sheets.whole()) : made;
    }

    /** The boundaries when each stage is as long as it can be. */
    private Optional<List<Integer>> fewest() {
      List<Integer> cuts = new ArrayList<>(List.of(0));
      for (int at = 0; at < last(); at = reach(at)) {
        if (reach(at) == at) {
          return Optional.empty();
        }
        cuts.add(reach(at));
      }
      return cuts.size() - 1 > MOST ? Optional.empty() : Optional.of(cuts);
    }

    /** The best boundaries of so many stages, both ends among them. */
    private Optional<List<Integer>> best(int stages) {
      return new BestCuts(bounds, stages, shortOnes, this).find(() -> asked > MOST_ASKED);
    }

    /** The same of the fewest stages that will do, where those that are wanted will not. */
    private Optional<List<Integer>> more(int least) {
      Optional<List<Integer>> longest = fewest().filter(it -> it.size() > least);
      if (longest.isEmpty()) {
        return Optional.empty();
      }
      int stages = longest.get().size() - 1;
      if (stages >= BestCuts.MANY) {
        askFromEach();
      }
      return best(stages).or(() -> longest.filter(it -> asked > MOST_ASKED));
    }

    /**
     * Asks from each boundary how far a stage can go. Where there are many stages, few ways fit at
     * all, and the search for the best one would ask for most of the others.
     */
    private void askFromEach() {
      int to = 1;
      for (int from = 0; from < last(); from++) {
        to = Math.max(to, from + 1);
        while (to < last() && fits(from, to, Room.LEAST)) {
          to++;
        }
      }
    }
  }

  /**
   * Whether a stretch fits, which also decides of shorter stretches with one of its ends, or of
   * longer ones where it does not.
   */
  private record Answer(int from, int to, Room room, boolean fits) {
    boolean decides(int begin, int end, Room wanted) {
      boolean harder = begin <= from && end >= to && wanted.compareTo(room) <= 0;
      boolean easier = begin >= from && end <= to && wanted.compareTo(room) >= 0;
      return (begin == from || end == to) && (fits ? easier : harder);
    }
  }
}
