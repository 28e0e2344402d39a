package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Boxes;
import baysheet.template.Form;
import baysheet.template.Length;
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

  /**
   * The height grows with about this power of the size: lines with the square, boxes for a pen not
   * at all. Measured on the demo sheets.
   */
  private static final double GROWTH = 1.4;

  /** A guess is mostly right to a step or two; what some of them leave is halved. */
  private static final int GUESSES = 2;

  private final Form form;
  private final Fonts fonts;
  private final Setting.Paragraphs paragraphs;
  private final long width;
  private final long height;
  private final Map<List<String>, Box> bodies = new HashMap<>();
  private int measurements;

  Fitter(Form form, Fonts fonts) {
    this.form = form;
    this.fonts = fonts;
    paragraphs = new Setting.Paragraphs(fonts);
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
    while (low < high) {
      int middle = (low + high) / 2;
      Attempt attempt = attempt(rungs.get(middle).level(), rungs.get(middle).floor());
      best = attempt.fits() ? attempt : best;
      high = attempt.fits() ? middle : high;
      low = attempt.fits() ? low : middle + 1;
    }
    return fitted(largest(best, rungs.get(high).upTo()));
  }

  /**
   * The ways of making room, in the order in which they are taken: small boxes for a pen, then one
   * group after another, and a smaller size once the groups that may not see it are gone.
   */
  private List<Rung> rungs() {
    Set<String> met = Boxes.groups(form.body());
    List<String> dropped = new ArrayList<>();
    Level level = new Level(false, dropped);
    List<Rung> rungs = new ArrayList<>();
    rungs.add(new Rung(level, form.dropsBelow(), form.largest()));
    level = new Level(true, dropped);
    long upTo = form.largest();
    for (long floor : floors()) {
      rungs.add(new Rung(level, floor, upTo));
      for (Form.Group group : form.groups()) {
        if (group.until() == floor && met.contains(group.name())) {
          dropped.add(group.name());
          level = new Level(true, dropped);
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
            Thinning.of(dropped)
                .thin(form.body())
                .orElse(new Box.Space(Length.ZERO, form.body().at())));
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
    double room = (double) height / known.body().height();
    double full = known.size() * StrictMath.pow(room, 1 / GROWTH);
    long steps = Math.floorDiv(Math.round(full) - from, STEP);
    return Math.max(least, Math.min(most, steps));
  }

  private Attempt attempt(Level level, long size) {
    measurements++;
    Measurer measurer = new Measurer(new Setting(fonts, size, level.leastPens(), paragraphs));
    Measured body = measurer.measure(body(level), width);
    boolean fits = body.height() <= height && measurer.tooWide().isEmpty();
    return new Attempt(level, size, body, measurer.tooWide(), fits);
  }

  private PageFit fitted(Attempt attempt) {
    Measured body = filled(attempt.body());
    Level level = attempt.level();
    Fit fit = new Fit(attempt.size(), level.leastPens(), level.dropped(), measurements);
    return new PageFit.Fitted(PageBuilder.page(form, body, fonts), fit);
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
  private record Level(boolean leastPens, List<String> dropped) {
    Level {
      dropped = List.copyOf(dropped);
    }
  }

  /** A level, the least size at which it is taken, and the size beyond which none is tried. */
  private record Rung(Level level, long floor, long upTo) {}

  /** A level at one size. */
  private record Attempt(
      Level level, long size, Measured body, List<TooWide> tooWide, boolean fits) {}
}
