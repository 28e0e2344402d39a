package baysheet.layout;

import baysheet.box.Form;
import java.util.List;

/** What came of fitting a form on its page. */
public sealed interface PageFit {
  /** The page, and what it took. */
  record Fitted(Page page, Fit fit) implements PageFit {}

  /**
   * The form does not fit even at its smallest.
   *
   * @param by how much too tall it is, in thousandths of a point; 0 if only its width is at fault
   * @param tallest its blocks, tallest first
   * @param tooWide what is wider than its cell
   */
  record Overrun(long by, List<Tall> tallest, List<TooWide> tooWide, int measurements)
      implements PageFit {
    public Overrun {
      tallest = List.copyOf(tallest);
      tooWide = List.copyOf(tooWide);
    }

    /** How much too tall, in whole millimetres; a part of one counts as one. */
    public long byMillimetres() {
      return millimetresUp(by);
    }
  }

  /**
   * The form fits, but its page must not be printed.
   *
   * @param faults at least one
   */
  record Unprintable(List<PageCheck.Fault> faults) implements PageFit {
    public Unprintable {
      faults = List.copyOf(faults);
      if (faults.isEmpty()) {
        throw new IllegalArgumentException("a page without a fault may be printed");
      }
    }
  }

  /**
   * A block and its height.
   *
   * @param what the kind of block and its first words
   * @param height in thousandths of a point
   */
  record Tall(String what, long height) {
    /** In whole millimetres; a part of one counts as one. */
    public long millimetres() {
      return millimetresUp(height);
    }
  }

  /**
   * Finds the largest body size at which a form fits its page, in steps of a tenth of a point. Down
   * to {@link Form#dropsBelow} it first takes boxes for a pen at the size they would like to have,
   * then at their smallest, then drops one group after another. Under that size boxes for a pen are
   * at their smallest, and each group is gone under its own limit.
   *
   * @throws IllegalArgumentException if the form holds a character that the fonts lack; {@link
   *     MissingGlyph#in} finds those beforehand
   */
  static PageFit fit(Form form, Fonts fonts) {
    return new Fitter(form, fonts).fit();
  }

  /**
   * Whether a form fits its page at a size or a larger one, with everything gone that may give way
   * at that size; measured once.
   *
   * @param size in thousandths of a point, from {@link Form#smallest} to {@link Form#dropsBelow}
   * @throws IllegalArgumentException as {@link #fit} does
   */
  static boolean fitsAt(Form form, Fonts fonts, long size) {
    return new Fitter(form, fonts).fitsAt(size);
  }

  /** A point is 1/72 of an inch of 25.4 mm. */
  static long millimetresUp(long thousandths) {
    return -Math.floorDiv(-thousandths * 254, 720_000L);
  }
}
