package baysheet.torque;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * How far friction in a thread and under its head may lie, by what is on the thread and what the
 * fastener is made of, and what that does to the clamp load of one torque.
 *
 * <p>Friction classes of VDI 2230, table A5. The table gives spans, so all that follows is a span.
 */
public final class Friction {
  // VDI 2230, table A5. Class E begins at 0.30 and has no end there; 0.50 is common practice, no
  // source.
  private static final Span A = new Span(0.04, 0.10);
  private static final Span B = new Span(0.08, 0.16);
  private static final Span C = new Span(0.14, 0.24);
  private static final Span D = new Span(0.20, 0.35);
  private static final Span E = new Span(0.30, 0.50);

  /** Nothing is known of the thread: steel from greased to plated without lubricant. */
  private static final Span STEEL = B.and(C);

  /** Stainless steel seizes: from oiled to dry. */
  private static final Span STAINLESS = D.and(E);

  private static final double USUAL_STAINLESS = STAINLESS.low();
  private static final Map<Treatment, Span> ON_STEEL = new EnumMap<>(Treatment.class);
  private static final Map<Treatment, Span> ON_STAINLESS = new EnumMap<>(Treatment.class);

  static {
    // Solid lubricants (molybdenum disulphide, graphite) as pastes.
    ON_STEEL.put(Treatment.ANTI_SEIZE, A);
    ON_STEEL.put(Treatment.OILED, B);
    ON_STEEL.put(Treatment.GREASE, B);
    // The table has "as delivered" in both: with a top coat in B, lightly oiled in C.
    ON_STEEL.put(Treatment.AS_DELIVERED, STEEL);
    // Plated without lubricant, "also with adhesive".
    ON_STEEL.put(Treatment.DRY, C);
    ON_STEEL.put(Treatment.LOCKING_COMPOUND, C);
    // Austenitic steel: pastes stand in B and in C, oil in D, no lubricant in E.
    ON_STAINLESS.put(Treatment.ANTI_SEIZE, B.and(C));
    ON_STAINLESS.put(Treatment.OILED, D);
    ON_STAINLESS.put(Treatment.GREASE, D);
    ON_STAINLESS.put(Treatment.DRY, E);
  }

  private static final ScrewThread USUAL = ScrewThread.parse("M12x1.5").found().orElseThrow();

  private Friction() {}

  /**
   * Coefficients of friction from the lowest to the highest.
   *
   * @param low lowest coefficient
   * @param high highest coefficient
   */
  public record Span(double low, double high) {
    public Span {
      if (!(low > 0 && low <= high)) {
        throw new IllegalArgumentException("friction from " + low + " to " + high);
      }
    }

    private Span and(Span other) {
      return new Span(Math.min(low, other.low), Math.max(high, other.high));
    }
  }

  /** The friction that a thread may have; for sealant and where nothing is stated, a wide span. */
  public static Span span(Treatment treatment, Optional<StrengthClass> strength) {
    return isStainless(strength)
        ? ON_STAINLESS.getOrDefault(treatment, STAINLESS)
        : ON_STEEL.getOrDefault(treatment, STEEL);
  }

  /**
   * The friction of an ordinary surface: the figure of most torque tables for steel; for stainless
   * steel the lowest of its span, for tables give 0.2 and 0.3 there.
   */
  public static double usual(Optional<StrengthClass> strength) {
    return isStainless(strength) ? USUAL_STAINLESS : Preload.USUAL_FRICTION;
  }

  private static boolean isStainless(Optional<StrengthClass> strength) {
    return strength.filter(StrengthClass::isStainless).isPresent();
  }

  /**
   * How the clamp load of the same torque may change when a thread gets another treatment.
   *
   * @param book the treatment the torque is given for
   * @param used the treatment it gets
   * @param thread its thread; without one an M12x1.5, for other sizes differ by less than the
   *     classes are wide
   * @return empty where table A5 has no class for one of the two (sealant, not stated)
   */
  public static Optional<Change> change(
      Treatment book,
      Treatment used,
      Optional<ScrewThread> thread,
      Optional<StrengthClass> strength) {
    Map<Treatment, Span> classes = isStainless(strength) ? ON_STAINLESS : ON_STEEL;
    Span from = classes.get(book);
    Span to = classes.get(used);
    if (from == null || to == null) {
      return Optional.empty();
    }
    ScrewThread cut = thread.orElse(USUAL);
    return Optional.of(
        from.equals(to)
            ? new Change(0, 0)
            : new Change(percent(from.low(), to.high(), cut), percent(from.high(), to.low(), cut)));
  }

  /**
   * A sentence whenever the thread gets something else than its torque is given for; none when
   * nothing is said of what it gets.
   */
  public static Optional<String> warning(
      Treatment book,
      Treatment used,
      Optional<ScrewThread> thread,
      Optional<StrengthClass> strength) {
    if (book == used || used == Treatment.NOT_STATED) {
      return Optional.empty();
    }
    String opening =
        book == Treatment.NOT_STATED
            ? "the book does not say what this torque's thread should have on it; here it is "
            : "this torque is for " + book.thread() + "; here it is ";
    String effect =
        change(book, used, thread, strength)
            .map(Change::effect)
            .orElse("how much the clamp load changes is not known");
    return Optional.of(opening + used.phrase() + ": " + effect);
  }

  /** Clamp load is torque over lever, so the levers at two frictions give the change. */
  private static double percent(double from, double to, ScrewThread thread) {
    double before = Preload.torque(1, thread, from);
    double after = Preload.torque(1, thread, to);
    return 100 * (before / after - 1);
  }

  /**
   * A change of clamp load in percent, negative for less; nothing either way within one class.
   *
   * @param fromPercent the lesser figure
   * @param toPercent the greater figure
   */
  public record Change(double fromPercent, double toPercent) {
    public Change {
      if (!(fromPercent <= toPercent)) {
        throw new IllegalArgumentException(fromPercent + " % above " + toPercent + " %");
      }
    }

    /** What it does, from both ends, as part of a sentence. */
    public String effect() {
      long least = inTens(fromPercent);
      long most = inTens(toPercent);
      if (least == 0 && most == 0) {
        return "with the same torque the clamp load stays about the same";
      }
      return "with the same torque the clamp load could be " + span(least, most);
    }

    private static String span(long least, long most) {
      if (least < 0 && most > 0) {
        return percent(most) + " more or " + percent(least) + " less";
      }
      boolean more = most > 0;
      long near = more ? least : most;
      long far = more ? most : least;
      String figures = near == far ? percent(far) : upTo(near) + percent(far);
      return figures + (more ? " more" : " less");
    }

    private static String upTo(long near) {
      return near == 0 ? "up to " : percent(near) + " to ";
    }

    private static String percent(long figure) {
      return Math.abs(figure) + "\u00A0%";
    }

    /** To the nearest ten: the classes are far coarser than that. */
    private static long inTens(double percent) {
      return 10 * Math.round(percent / 10);
    }
  }
}
