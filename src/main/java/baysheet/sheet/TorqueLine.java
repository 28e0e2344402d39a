package baysheet.sheet;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Remark;
import baysheet.report.ProblemCode;
import baysheet.torque.Band;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.TighteningPasses;
import baysheet.torque.Treatment;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A row of the torque table: one set of fasteners, at one place or at mirrored places.
 *
 * @param n its number
 * @param words what the sheet calls it
 * @param count at one place
 * @param kind whether there is a figure
 */
public record TorqueLine(
    int n,
    String fastener,
    String words,
    List<Place> places,
    int count,
    Kind kind,
    Hardware hardware,
    Method method,
    Refitting refitting,
    Visits visits,
    Origin origin) {

  public TorqueLine {
    places = List.copyOf(places);
  }

  /** The same line for some of its places. */
  public TorqueLine at(List<Place> some) {
    return new TorqueLine(
        n, fastener, words, some, count, kind, hardware, method, refitting, visits, origin);
  }

  /** Whether something has to be put on the thread; not on one that goes on dry or as it comes. */
  public boolean isTreated() {
    return refitting.threads().product().isPresent();
  }

  /** Names of the wrenches that are set for it, in any of its rounds. */
  public Set<String> wrenches() {
    Stream<Optional<String>> full =
        method.stages().stream()
            .filter(StageLine.Torque.class::isInstance)
            .map(stage -> ((StageLine.Torque) stage).wrench());
    return Stream.concat(full, method.rounds().stream().map(Round::wrench))
        .flatMap(Optional::stream)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Whether somebody else has to look at the figure before it is used. */
  public boolean inDoubt() {
    return origin.warnings().stream()
        .anyMatch(warning -> warning.code() == ProblemCode.DOES_NOT_FIT);
  }

  /** What the fastener is, and what turns it. */
  public record Hardware(
      Optional<String> thread,
      Optional<String> strength,
      Optional<Head> head,
      Optional<SocketNeed> socket) {}

  /**
   * How the set is tightened.
   *
   * @param stages what is done to each fastener, in order; empty unless the kind is PUBLISHED
   * @param passes the rounds in which the set is tightened
   * @param rounds what those come to on a wrench; empty where there is only one
   * @param order positions in the order of tightening; empty for fewer than three or where none is
   *     known
   * @param drawing letter of the drawing that shows the order, where there is one
   */
  public record Method(
      List<StageLine> stages,
      TighteningPasses passes,
      List<Round> rounds,
      List<Integer> order,
      Optional<OrderDrawing> drawing) {
    public Method {
      stages = List.copyOf(stages);
      rounds = List.copyOf(rounds);
      order = List.copyOf(order);
    }
  }

  /**
   * How it goes on again.
   *
   * @param threads what is on the thread
   * @param lock how it is secured
   */
  public record Refitting(
      Treatment threads, Reuse reuse, Optional<Fastener.Lock> lock, List<Remark> remarks) {
    public Refitting {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * When it is tightened.
   *
   * @param moment when the final torque is given
   * @param two whether it is only made snug when it goes on
   */
  public record Visits(
      Moment moment, boolean rideHeight, boolean two, Optional<Quantity> recheck) {}

  /**
   * Where its figure comes from.
   *
   * @param overridden whether the job replaced the book's value
   * @param replaced the torque of the book itself, as printed, where the job gives another
   */
  public record Origin(
      String source, boolean overridden, Optional<String> replaced, List<Warning> warnings) {
    public Origin {
      warnings = List.copyOf(warnings);
    }
  }

  /** Whether new fasteners go on. */
  public enum Reuse {
    NEW,
    AGAIN,
    NOT_STATED
  }

  /** Whether there is a figure for it. */
  public enum Kind {
    /** The book gives one. */
    PUBLISHED,
    /** None is published: it is made snug. */
    SNUG,
    /** The book does not know it: an empty box asks for value and source. */
    UNKNOWN
  }

  /**
   * The socket for it.
   *
   * @param insert what takes its place
   */
  public record SocketNeed(
      Drive drive,
      int points,
      boolean impact,
      boolean deep,
      boolean owned,
      Optional<Reach> insert) {}

  /**
   * One round over the set.
   *
   * @param percent share of the full torque
   * @param torque what that comes to at the fastener, in the book's unit, unrounded
   * @param wrench name of the wrench, empty when none will do
   * @param setting the mark to set on it
   * @param with what goes on that wrench besides the set's own socket
   */
  public record Round(
      BigDecimal percent,
      Quantity torque,
      Optional<String> wrench,
      Optional<Quantity> setting,
      Optional<String> with) {}

  /** One thing done to each fastener of the set. */
  public sealed interface StageLine {
    /** As the sheet puts it: the book's own figure, the angle, or {@code loosen}. */
    String print();

    /**
     * A torque.
     *
     * @param target the book's figure
     * @param written how the book put it
     * @param second the same in the shop's second unit, rounded inside the band
     * @param band what is accepted
     * @param reading the same as the wrench shows it, where that is something else
     * @param wrench name of the wrench; empty when none will do, and where the figure is in doubt
     * @param setting what to set on it
     * @param arrives what then arrives at the fastener
     * @param insideBand whether the wrench's accuracy stays inside the band
     * @param trouble why there is no wrench, or what is wrong with the one there is
     */
    record Torque(
        Quantity target,
        String written,
        Optional<Quantity> second,
        Band band,
        Optional<Band> reading,
        Optional<String> wrench,
        Optional<Quantity> setting,
        Optional<Quantity> arrives,
        boolean insideBand,
        Optional<Statement> trouble)
        implements StageLine {
      @Override
      public String print() {
        return written;
      }
    }

    /** A further turn. */
    record Angle(Quantity angle) implements StageLine {
      @Override
      public String print() {
        return "+" + angle.print();
      }
    }

    /** Back to loose. */
    record Loosen() implements StageLine {
      @Override
      public String print() {
        return "loosen";
      }
    }
  }

  /**
   * Where the positions are, seen from the front of the fasteners; lines with one order share it.
   *
   * @param rows how many fasteners stand in each row, front row first; none for other arrangements
   */
  public record OrderDrawing(String letter, Arrangement arrangement, List<Integer> rows) {
    public OrderDrawing {
      rows = List.copyOf(rows);
    }
  }

  /** How the positions of a tightening sequence are numbered. */
  public enum Arrangement {
    /** On a circle, clockwise from the top. */
    CIRCLE,
    /** Row by row, from the front left. */
    ROWS,
    /** As the source numbers them; it does not say where they are. */
    NUMBERED_BY_THE_SOURCE
  }

  /** Something to think about before using the figure. */
  public record Warning(ProblemCode code, Statement text) {}
}
