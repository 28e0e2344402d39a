package baysheet.wording;

import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
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

  /** What a sheet says in words, each in its language. */
  public static List<String> texts(Sheet sheet, List<Statement> all) {
    return Language.of(sheet.heading()).statements(all);
  }

  public static List<String> evening(Sheet sheet) {
    return texts(sheet, sheet.evening());
  }

  public static String text(Sheet sheet, Statement statement) {
    return Language.of(sheet.heading()).text(statement);
  }

  public static String title(Sheet sheet) {
    return Language.of(sheet.heading()).title(sheet.heading());
  }

  public static String heading(Sheet sheet, Sheet.Section section) {
    return new StepSentences(sheet).heading(section);
  }
}
