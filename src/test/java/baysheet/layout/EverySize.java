package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A form at every size that fitting may try, on paper as long as it takes: what is placed well at
 * the size that was chosen could still lie on something at another.
 */
public final class EverySize {
  /** The steps of the fit, in thousandths of a point. */
  private static final long STEP = 100;

  private EverySize() {}

  /** What is wrong at any of the sizes: first at ease, then with everything gone that may go. */
  public static List<String> faults(Form form, Fonts fonts, long leastText) {
    List<String> gone = form.groups().stream().map(Form.Group::name).toList();
    Box whole = form.body().without(Set.of()).orElseThrow();
    Box least = form.body().without(Set.copyOf(gone)).orElseThrow();
    List<String> faults = new ArrayList<>();
    for (long size = form.smallest(); size <= form.largest(); size += STEP) {
      for (String fault : at(form, whole, fonts, size, false, leastText)) {
        faults.add(size + ", whole: " + fault);
      }
      for (String fault : at(form, least, fonts, size, true, leastText)) {
        faults.add(size + ", least: " + fault);
      }
    }
    return faults;
  }

  /** A size at which something is wider than its cell is one that fitting refuses. */
  private static List<String> at(
      Form form, Box body, Fonts fonts, long size, boolean leastPens, long leastText) {
    MeasureSettings setting =
        new MeasureSettings(
            fonts, size, form.hand().smallest(), leastPens, new MeasureSettings.Paragraphs(fonts));
    Measurer measurer = new Measurer(setting);
    Measured measured = measurer.measure(body, form.paper().width() - 2 * form.margin());
    if (!measurer.tooWide().isEmpty()) {
      return size == form.smallest() ? List.of("too wide: " + measurer.tooWide()) : List.of();
    }
    Page page = PageBuilder.page(form, measured, fonts).page();
    long height = measured.height() + 2 * form.margin();
    Page scroll = new Page(page.width(), height, page.items(), page.structure());
    return PageCheck.faults(scroll, form.margin(), leastText);
  }
}
