package baysheet.template;

import freemarker.core.Environment;
import freemarker.core.LayoutLanguage;
import freemarker.template.TemplateException;

/** The work that one filling of a layout may take, counted and not timed. */
final class FillBudget implements LayoutLanguage.Budget {
  /** The largest sheet of the tests takes 53,000; a layout that takes more does not end. */
  static final int UNITS = 1_000_000;

  private int left = UNITS;

  @Override
  public void spend(int units, Environment at) throws TemplateException {
    left -= units;
    if (left < 0) {
      throw new TemplateException("it takes too many steps; does a list or a macro never end?", at);
    }
  }
}
