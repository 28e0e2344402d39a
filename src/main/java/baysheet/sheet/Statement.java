package baysheet.sheet;

import baysheet.books.Place;
import baysheet.torque.Drive;
import baysheet.torque.Quantity;
import baysheet.torque.Wrench;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Something that a sheet says: what somebody wrote in a file, or what the planner adds to it, as
 * data. The package {@code wording} makes the sentence of it.
 */
public sealed interface Statement {
  /** As it stands in a file, or as the mechanics put it. */
  record Written(String text) implements Statement {}

  /** Whether it stands so in a file, with rows of the table or without. */
  default boolean isWritten(String text) {
    return equals(new Written(text)) || this instanceof OfRows of && of.text().equals(text);
  }

  /** As it stands in a file, with the rows of the table that it is about, by their numbers. */
  record OfRows(String text, List<Integer> rows) implements Statement {
    public OfRows {
      rows = List.copyOf(rows);
    }
  }

  /** What needs no data. */
  enum Plain implements Statement {
    SOAK_ON_LIFT,
    SOAK_FROM_OUTSIDE,
    NO_OIL_ON_LININGS,
    CLEAN_THREADS,
    TORQUE_NOT_GUESSED,
    FLUID_NOT_GUESSED,
    NO_WRENCH,
    HIGH_TORQUE,
    OF_THE_BOOK,
    /** The shop has nobody who may look at a hold point. */
    SECOND_PERSON,
    HEIGHT_NOW,
    LARGEST_DIFFERENCE,
    SAME_HEIGHT
  }

  /** A torque line, by its number and its fasteners. */
  record Row(int n, String words, int count) {
    public static Row of(TorqueLine line) {
      return new Row(line.n(), line.words(), line.count());
    }
  }

  /** Things at the same places. */
  record Things(List<String> words, List<Place> places) {
    public Things {
      words = List.copyOf(words);
      places = List.copyOf(places);
    }
  }

  /** Fasteners get penetrating oil the evening before. */
  record SoakThreads(List<Things> fasteners) implements Statement {
    public SoakThreads {
      fasteners = List.copyOf(fasteners);
    }
  }

  /** Parts get penetrating oil where they are seated. */
  record SoakSeats(List<Things> parts) implements Statement {
    public SoakSeats {
      parts = List.copyOf(parts);
    }
  }

  /** A socket by all that distinguishes it. */
  record Socket(Sheet.SocketLine line) implements Statement {}

  /** A torque wrench for the stages of a row, in the square of its socket. */
  record WrenchFor(Row row, List<String> torques, Optional<Drive> drive) implements Statement {
    public WrenchFor {
      torques = List.copyOf(torques);
    }
  }

  /** A tool, a socket or a wrench that the shop lacks. */
  record Borrow(Statement tool) implements Statement {}

  /** No book gives the torque of a row. */
  record FindTorque(Row row) implements Statement {}

  /** The torque of a row does not fit its thread. */
  record AskTorque(Row row) implements Statement {}

  /** No book gives a figure, which a step needs. */
  record FindFigure(MissingFigure figure, int step) implements Statement {}

  /** A torque that no book gives is recorded before anything is opened. */
  record TorqueRecorded(Row row) implements Statement {}

  /** So is another figure. */
  record FigureRecorded(MissingFigure figure) implements Statement {}

  /** A row is checked again after a distance; where that is absent, the vehicle's data gives it. */
  record Recheck(Row row, Optional<Quantity> distance) implements Statement {}

  /** What is written in for a check: it is looked up, or it is what was found, done or booked. */
  static Statement writtenIn(String figure) {
    return figure.matches(".*, as (found|done|booked)")
        ? new Written(figure)
        : new FromData(figure);
  }

  /** A figure that is looked up in the vehicle's data and written in. */
  record FromData(String figure) implements Statement {}

  /** The same for a figure that a book should give. */
  record MissingFromData(MissingFigure figure) implements Statement {}

  /**
   * Wrenches that could be set to a torque if their calibration held on the job's day.
   *
   * @param lapsed calibrated too long before it
   * @param later calibrated only after it; nobody wrote down how they were before
   */
  record Uncalibrated(List<Calibrated> lapsed, List<Calibrated> later) implements Statement {
    public Uncalibrated {
      lapsed = List.copyOf(lapsed);
      later = List.copyOf(later);
    }
  }

  /** A wrench with the day of its last calibration and the last day on which that holds. */
  record Calibrated(String wrench, LocalDate on, LocalDate due) {
    public static Calibrated of(Wrench wrench, int months) {
      return new Calibrated(wrench.name(), wrench.calibrated(), wrench.due(months));
    }
  }

  /** The accuracy of a wrench is wider than the accepted band. */
  record WiderThanBand(String wrench) implements Statement {}

  /** No catalogue says what a product does to the friction of a thread. */
  record UndeclaredProduct(String product) implements Statement {}

  /** A fluid that is used up, as the book describes it. */
  record Fluid(Detail.Fluid fluid) implements Statement {}

  /** A fluid of which the book says nothing. */
  record FluidAsRecorded(String name) implements Statement {}

  /** The lift that carries the vehicle. */
  record Lift(String description) implements Statement {}

  /** Axle stands that carry an end of the vehicle. */
  record Stands(int count) implements Statement {}

  /** Where the jack goes. */
  record JackUnder(String point) implements Statement {}

  /** Where the axle stands go. */
  record StandsUnder(String point) implements Statement {}

  /** Where the lift carries an axle. */
  record CarriedAt(Place axle, String point) implements Statement {}

  /** A work of the job at its places; none where it belongs to the whole vehicle. */
  record Work(String procedure, String title, List<Place> places, boolean placed)
      implements Statement {
    public Work {
      places = List.copyOf(places);
    }
  }

  /** A check that a procedure asks for. */
  record OfProcedure(String name) implements Statement {}

  /** Who compared a book with its source; the book is named where there are several. */
  record Checked(Optional<String> book, String by, LocalDate on) implements Statement {}
}
