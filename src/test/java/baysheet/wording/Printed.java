package baysheet.wording;

import baysheet.sheet.Sheet;
import java.util.List;

/** What a sheet prints, for tests that look for it. */
public final class Printed {
  private static final StepSentences BRITISH = new StepSentences(Language.BRITISH, List.of());

  private Printed() {}

  /** The sentence of a step in British terms. */
  public static String text(Sheet.SheetStep step) {
    return BRITISH.text(step.source());
  }

  public static List<String> details(Sheet sheet, Sheet.SheetStep step) {
    return new StepSentences(sheet).details(step);
  }

  public static String heading(Sheet sheet, Sheet.Section section) {
    return new StepSentences(sheet).heading(section);
  }
}
