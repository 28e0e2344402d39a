package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Form;
import baysheet.template.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Tries a form at one level of tightness after another. */
final class Fitter {
  /** Finer steps cannot be seen. */
  private static final long STEP = 100;

  private final Form form;
  private final Fonts fonts;
  private final long width;
  private final long height;
  private int measurements;

  Fitter(Form form, Fonts fonts) {
    this.form = form;
    this.fonts = fonts;
    width = form.paper().width() - 2 * form.margin();
    height = form.paper().height() - 2 * form.margin();
  }

  PageFit fit() {
    List<Level> levels = levels();
    for (Level level : levels) {
      Attempt least = attempt(level, form.dropsBelow());
      if (least.fits()) {
        return fitted(largest(level, least, form.largest()));
      }
    }
    Level last = levels.get(levels.size() - 1);
    Attempt least = attempt(last, form.smallest());
    if (!least.fits()) {
      return Overruns.of(least.body(), least.tooWide(), last.body(), height, measurements);
    }
    return fitted(largest(last, least, form.dropsBelow()));
  }

  /** First at ease, then with small boxes for a pen, then with one more group gone each time. */
  private List<Level> levels() {
    Setting.Words words = new Setting.Words(fonts);
    Thinning whole = Thinning.of(List.of());
    Box body = thinned(whole);
    List<Level> levels = new ArrayList<>();
    levels.add(new Level(false, List.of(), body, words));
    levels.add(new Level(true, List.of(), body, words));
    List<String> dropped = new ArrayList<>();
    Set<String> met = new TreeSet<>(whole.met());
    for (String group : form.drops()) {
      if (met.contains(group)) {
        dropped.add(group);
        Thinning thinning = Thinning.of(dropped);
        levels.add(new Level(true, List.copyOf(dropped), thinned(thinning), words));
        met.addAll(thinning.met());
      }
    }
    return levels;
  }

  private Box thinned(Thinning thinning) {
    return thinning.thin(form.body()).orElse(new Box.Space(Length.ZERO, form.body().at()));
  }

  /**
   * Halves the sizes between one that fits and one beyond which none is tried. Text that grows may
   * by luck break into fewer lines, so fitting need not be monotone; what is returned has been
   * measured and does fit.
   */
  private Attempt largest(Level level, Attempt fits, long upTo) {
    Attempt best = fits;
    long low = 0;
    long high = Math.floorDiv(upTo - fits.size(), STEP);
    while (low < high) {
      long middle = low + (high - low + 1) / 2;
      Attempt attempt = attempt(level, fits.size() + middle * STEP);
      if (attempt.fits()) {
        best = attempt;
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return best;
  }

  private Attempt attempt(Level level, long size) {
    measurements++;
    Measurer measurer = new Measurer(new Setting(fonts, size, level.leastPens(), level.words()));
    Measured body = measurer.measure(level.body(), width);
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
  private record Level(boolean leastPens, List<String> dropped, Box body, Setting.Words words) {}

  /** A level at one size. */
  private record Attempt(
      Level level, long size, Measured body, List<TooWide> tooWide, boolean fits) {}
}
