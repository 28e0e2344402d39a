package baysheet.torque;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What another treatment of the thread does to the clamp load of the same torque.
 *
 * <p>Friction classes of VDI 2230, table A5. The class of a treatment is the one in which the table
 * has it on plated steel: a judgement, stated here for each.
 */
public final class Friction {
  private static final Map<Treatment, Span> CLASSES = new EnumMap<>(Treatment.class);

  static {
    // Class A: solid lubricants (molybdenum disulphide, graphite) as pastes.
    CLASSES.put(Treatment.ANTI_SEIZE, new Span(0.04, 0.10));
    // Class B: greases and oils; as delivered with its usual top coat.
    CLASSES.put(Treatment.OILED, new Span(0.08, 0.16));
    CLASSES.put(Treatment.GREASE, new Span(0.08, 0.16));
    CLASSES.put(Treatment.AS_DELIVERED, new Span(0.08, 0.16));
    // Class C: plated without lubricant, "also with adhesive".
    CLASSES.put(Treatment.DRY, new Span(0.14, 0.24));
    CLASSES.put(Treatment.LOCKING_COMPOUND, new Span(0.14, 0.24));
  }

  private static final Thread USUAL = Thread.parse("M12x1.5").found().orElseThrow();

  private Friction() {}

  /**
   * How the clamp load of the same torque changes, on an M12x1.5 thread; other sizes differ by less
   * than the classes are wide.
   *
   * @param book the treatment the torque is given for
   * @param used the treatment it gets
   * @return none for like classes, and where table A5 has no class (sealant, not stated)
   */
  public static Optional<Change> change(Treatment book, Treatment used) {
    return change(book, used, USUAL);
  }

  /** The same on another thread. */
  public static Optional<Change> change(Treatment book, Treatment used, Thread thread) {
    Span from = CLASSES.get(book);
    Span to = CLASSES.get(used);
    if (from == null || to == null || from.equals(to)) {
      return Optional.empty();
    }
    double atLow = percent(from.low(), to.low(), thread);
    double atHigh = percent(from.high(), to.high(), thread);
    return Optional.of(new Change(book, used, Math.min(atLow, atHigh), Math.max(atLow, atHigh)));
  }

  /**
   * A sentence whenever the thread gets something else than its torque is given for; none when
   * nothing is said of what it gets.
   */
  public static Optional<String> warning(Treatment book, Treatment used) {
    if (book == used || used == Treatment.NOT_STATED) {
      return Optional.empty();
    }
    String opening =
        book == Treatment.NOT_STATED
            ? "the book does not say what this torque's thread should have on it; here it is "
            : "this torque is for " + book.thread() + "; here it is ";
    String effect =
        change(book, used)
            .map(Change::effect)
            .orElse("how much the clamp load changes is not known");
    return Optional.of(opening + used.phrase() + ": " + effect);
  }

  /** Clamp load is torque over lever, so the levers of like ends of two classes give the change. */
  private static double percent(double from, double to, Thread thread) {
    double before = Preload.torque(1, thread, from);
    double after = Preload.torque(1, thread, to);
    return 100 * (before / after - 1);
  }

  private record Span(double low, double high) {}

  /**
   * A change of clamp load in percent, negative for less.
   *
   * @param book the treatment the torque is given for
   * @param used the treatment it gets
   * @param fromPercent the lesser figure
   * @param toPercent the greater figure
   */
  public record Change(Treatment book, Treatment used, double fromPercent, double toPercent) {
    public Change {
      if (!(fromPercent <= toPercent)) {
        throw new IllegalArgumentException(fromPercent + " % above " + toPercent + " %");
      }
    }

    /** A sentence on what the change does. */
    public String sentence() {
      return "a torque for " + book.thread() + " on one " + used.phrase() + ": " + effect();
    }

    String effect() {
      boolean more = fromPercent > 0;
      long near = inFives(more ? fromPercent : toPercent);
      long far = inFives(more ? toPercent : fromPercent);
      String figures = near == far ? "" + near : near + " to " + far;
      return "the same torque gives about "
          + figures
          + "\u00A0% "
          + (more ? "more" : "less")
          + " clamp load";
    }

    /** To the nearest five: the classes are far coarser than that. */
    private static long inFives(double percent) {
      return 5 * Math.round(Math.abs(percent) / 5);
    }
  }
}
