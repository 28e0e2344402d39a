package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.Boxes;
import baysheet.box.Form;
import baysheet.box.Length;
import baysheet.box.Space;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Tries a form at one level of tightness after another. */
final class Fitter {
  /** Finer steps cannot be seen. */
  private static final long STEP = 100;

  /** Of text read in the hand no finer steps are worth a further measurement. */
  private static final long HAND_STEP = 250;

  /**
   * The height grows with about this power of the size: lines with the square, boxes for a pen not
   * at all. Measured on the demo sheets.
   */
  private static final double GROWTH = 1.4;

  /** A guess is mostly right to a step or two; what some of them leave is halved. */
  private static final int GUESSES = 5;

  private static final int NO_GUESS = -1;

  private final Form form;
  private final Fonts fonts;
  private final MeasureSettings.Paragraphs paragraphs;
  private final long width;
  private final long height;
  private final Map<List<String>, Box> bodies = new HashMap<>();
  private final Map<MeasureSettings, Measurer> measurers = new HashMap<>();
  private int measurements;

  Fitter(Form form, Fonts fonts) {
    this.form = form;
    this.fonts = fonts;
    paragraphs = new MeasureSettings.Paragraphs(fonts);
    width = form.paper().width() - 2 * form.margin();
    height = form.paper().height() - 2 * form.margin();
  }

  /**
   * The first rung that fits at its least size, at the largest size it allows. Each rung is tighter
   * than the one before; so the first is found by halving.
   */
  PageFit fit() {
    List<Rung> rungs = rungs();
    Rung last = rungs.get(rungs.size() - 1);
    Attempt tightest = attempt(last.level(), last.floor());
    if (!tightest.fits()) {
      return Overruns.of(
          tightest.body(), tightest.tooWide(), body(last.level()), height, measurements);
    }
    Attempt best = tightest;
    int low = 0;
    int high = rungs.size() - 1;
    int guess = likely(rungs, tightest);
    while (low < high) {
      // The guess is first seen to fit, and then the rung before it not to.
      int middle = low <= guess && guess < high ? guess : (low + high) / 2;
      guess = middle == guess ? middle - 1 : guess;
      Attempt attempt = attempt(rungs.get(middle).level(), rungs.get(middle).floor());
      best = attempt.fits() ? attempt : best;
      high = attempt.fits() ? middle : high;
      low = attempt.fits() ? low : middle + 1;
    }
    return fitted(withLargestHand(largest(best, rungs.get(high).upTo())));
  }

  boolean fitsAt(long size) {
    List<Rung> rungs = rungs().stream().filter(rung -> rung.floor() >= size).toList();
    Rung last = rungs.get(rungs.size() - 1);
    return attempt(last.level(), last.floor()).fits();
  }

  /**
   * The rung to try first: where even the tightest would hardly fit at a greater size, the first of
   * the smallest size; none, as most fit sooner, where it might.
   */
  private int likely(List<Rung> rungs, Attempt tightest) {
    int first = rungs.size() - 1;
    while (first > 0 && rungs.get(first - 1).floor() == tightest.size()) {
      first--;
    }
    boolean roomy = first == 0 || size(tightest) >= rungs.get(first - 1).floor();
    return roomy ? NO_GUESS : first;
  }

  /**
   * The ways of making room, in the order in which they are taken: small boxes for a pen, small
   * text read in the hand, then one group after another, and a smaller size once the groups that
   * may not see it are gone.
   */
  private List<Rung> rungs() {
    Set<String> met = Boxes.groups(form.body());
    List<String> dropped = new ArrayList<>();
    List<Rung> rungs = new ArrayList<>();
    for (Level roomy : List.of(new Level(false, false, dropped), new Level(true, false, dropped))) {
      rungs.add(new Rung(roomy, form.dropsBelow(), form.largest()));
    }
    Level level = new Level(true, true, dropped);
    long upTo = form.largest();
    for (long floor : floors()) {
      rungs.add(new Rung(level, floor, upTo));
      for (Form.Group group : form.groups()) {
        if (group.until() == floor && met.contains(group.name())) {
          dropped.add(group.name());
          level = new Level(true, true, dropped);
          rungs.add(new Rung(level, floor, upTo));
        }
      }
      upTo = floor;
    }
    return rungs;
  }

  /** The sizes under which something more gives way, and the smallest of all. */
  private List<Long> floors() {
    Stream<Long> limits = form.groups().stream().map(Form.Group::until);
    return Stream.concat(Stream.of(form.dropsBelow(), form.smallest()), limits)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  /** The form without what a level drops; most levels are never looked at. */
  private Box body(Level level) {
    return bodies.computeIfAbsent(
        level.dropped(),
        dropped ->
            form.body()
                .without(Set.copyOf(dropped))
                .orElse(new Space(Length.ZERO, form.body().at())));
  }

  /**
   * Narrows the sizes between one that fits and one beyond which none is tried. Text that grows may
   * by luck break into fewer lines, so fitting need not be monotone; what is returned has been
   * measured and does fit.
   */
  private Attempt largest(Attempt fits, long upTo) {
    Attempt best = fits;
    Attempt last = fits;
    long low = 0;
    long high = Math.floorDiv(upTo - fits.size(), STEP);
    for (int tried = 0; low < high; tried++) {
      long half = low + (high - low + 1) / 2;
      long steps = tried < GUESSES ? guess(last, fits.size(), low + 1, high) : half;
      last = attempt(fits.level(), fits.size() + steps * STEP);
      if (last.fits()) {
        best = last;
        low = steps;
      } else {
        high = steps - 1;
      }
    }
    return best;
  }

  /** How many steps above a size the page might just be full. */
  private long guess(Attempt known, long from, long least, long most) {
    long steps = Math.floorDiv(size(known) - from, STEP);
    return Math.max(least, Math.min(most, steps));
  }

  /** The size at which the page might just be full. */
  private long size(Attempt known) {
    double room = (double) height / known.body().height();
    return Math.round(known.size() * StrictMath.pow(room, 1 / GROWTH));
  }

  /** What room is left goes to the text read in the hand. */
  private Attempt withLargestHand(Attempt fits) {
    Attempt best = fits;
    long low = 0;
    long high = Math.floorDiv(form.hand().largest() - fits.hand(), HAND_STEP);
    while (low < high) {
      long steps = low + (high - low + 1) / 2;
      Attempt next = attempt(fits.level(), fits.size(), fits.hand() + steps * HAND_STEP);
      best = next.fits() ? next : best;
      low = next.fits() ? steps : low;
      high = next.fits() ? high : steps - 1;
    }
    return best;
  }

  private Attempt attempt(Level level, long size) {
    Form.Hand hand = form.hand();
    return attempt(level, size, level.leastHand() ? hand.smallest() : hand.largest());
  }

  private Attempt attempt(Level level, long size, long hand) {
    measurements++;
    MeasureSettings setting = new MeasureSettings(fonts, size, hand, level.leastPens(), paragraphs);
    Measurer measurer = measurers.computeIfAbsent(setting, Measurer::new);
    Measured body = measurer.whole(body(level), width);
    boolean fits = body.height() <= height && measurer.tooWide().isEmpty();
    return new Attempt(level, size, hand, body, measurer.tooWide(), fits);
  }

  private PageFit fitted(Attempt attempt) {
    Measured body = filled(attempt.body());
    Level level = attempt.level();
    Fit fit =
        new Fit(attempt.size(), attempt.hand(), level.leastPens(), level.dropped(), measurements);
    PlacedPage placed = PageBuilder.page(form, body, fonts);
    List<PageCheck.Fault> faults = PageCheck.faults(placed, form.margin(), Form.LEAST_TEXT);
    return faults.isEmpty()
        ? new PageFit.Fitted(placed.page(), fit)
        : new PageFit.Unprintable(faults);
  }

  /** Gives the height that is left to the first fill among the outermost boxes. */
  private Measured filled(Measured body) {
    if (!(body instanceof Measured.Group group)) {
      return body;
    }
    List<Measured.Placed> children = new ArrayList<>();
    long down = 0;
    for (Measured.Placed child : group.children()) {
      children.add(new Measured.Placed(child.box(), child.x(), child.y() + down));
      if (child.box() instanceof Measured.Blank blank && blank.fill()) {
        down = height - group.height();
      }
    }
    return new Measured.Group(group.width(), group.height() + down, children);
  }

  /** A way of making room. */
  private record Level(boolean leastPens, boolean leastHand, List<String> dropped) {
    Level {
      dropped = List.copyOf(dropped);
    }
  }

  /** A level, the least size at which it is taken, and the size beyond which none is tried. */
  private record Rung(Level level, long floor, long upTo) {}

  /** A level at one size. */
  private record Attempt(
      Level level, long size, long hand, Measured body, List<TooWide> tooWide, boolean fits) {}
}
