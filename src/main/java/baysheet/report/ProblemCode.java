package baysheet.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every kind of problem, with its severity and the page that explains it. People see the code in
 * lower case with hyphens; a code that was once printed keeps its name.
 */
public enum ProblemCode {
  ABSENT_AND_GIVEN,
  ABSENT_ITEM,
  ACCESS_LOOP,
  ALIAS_NOT_ALLOWED,
  AMBIGUOUS_PLACE,
  APPRENTICE_ALONE,
  BAD_CLASS,
  BAD_DRIVE,
  BAD_ESCAPE,
  BAD_HEAD,
  BAD_INDENT,
  BAD_ORDER,
  BAD_PASSES,
  BAD_POINTS,
  BAD_QUANTITY,
  BAD_THREAD,
  BAD_TIME,
  BAD_TORQUE,
  BAD_UNIT,
  BAD_VALUE,
  BAD_WRENCH,
  BOTH_ENDS_UP(Severity.WARNING),
  BOX_OPEN,
  CANNOT_READ,
  CHECKED_LATER(Severity.WARNING),
  CONTROL_CHARACTER,
  DATE_DIFFERS,
  DOES_NOT_FIT(Severity.WARNING),
  DONE_TWICE,
  DUPLICATE_KEY,
  EMPTY_FILE,
  EMPTY_TRIGGER,
  EMPTY_VALUE,
  EXAMPLE_LEFT(Severity.WARNING),
  FEWER_STAGES(Severity.WARNING),
  FIGURE_MISSING(Severity.WARNING),
  HEIGHT_OUT_OF_REACH,
  HIGH_TORQUE(Severity.NOTE),
  IGNORED_FILE(Severity.WARNING),
  IN_BRACES,
  IN_TWO_FILES,
  INSIDE_RAISED,
  KEY_NOT_TEXT,
  KEYS_CLASH,
  LAPSED_WRENCH,
  LATE_PROMISE(Severity.WARNING),
  LEDGER_LINE,
  LEDGER_TORN(Severity.WARNING),
  LEFT_OFF,
  LIKE_LOOP,
  LIST_TOO_LONG,
  LISTED_TWICE,
  LOAD_UNKNOWN,
  MISNAMED_FILE,
  MISNAMED_FOLDER,
  MISSING_COLON,
  MISSING_FASTENER,
  MISSING_KEY,
  MISSING_PLACE,
  MORE_PROBLEMS,
  MORE_WARNINGS(Severity.WARNING),
  NAME_DIFFERS,
  NAMES_ITSELF,
  NEAR_NAME,
  NEEDS_QUOTES,
  NEVER_OFF,
  NO_ACCESS,
  NO_DATE,
  NO_GLYPH,
  NO_JOBS,
  NO_REVISION_LEFT,
  NO_SHOP,
  NO_STANDS,
  NO_STEPS,
  NO_WORK,
  NOBODY_LOOKS(Severity.WARNING),
  NOT_A_DATE,
  NOT_A_DAY,
  NOT_A_FILE,
  NOT_A_FOLDER,
  NOT_A_NAME,
  NOT_A_NUMBER,
  NOT_ENOUGH_MEMORY,
  NOT_FOR_THIS_VEHICLE,
  NOT_ISSUED,
  NOT_ONE_OF,
  NOT_QUALIFIED,
  NOT_UTF8,
  NOT_YES_NO,
  NOTHING_TO_DO,
  NUMBER_TWICE,
  ORDER_LOOP,
  ORDER_NOT_PROVEN(Severity.WARNING),
  OTHER_SHEET,
  OUT_OF_RANGE,
  OUTER_FASTENER,
  OUTSIDE_BAND,
  OVERLOADED,
  OVERRIDE_UNUSED,
  PAGE_OVERRUN,
  PAGE_TOO_WIDE,
  PLACE_UNCLEAR,
  POINT_OR_THOUSANDS,
  QUALIFIED_UNUSED,
  RENEWS_UNSTATED(Severity.WARNING),
  RESERVED_NUMBER,
  RIGHT_TO_LEFT,
  SAME_PERSON,
  SAME_SHEET,
  SEVERAL_DOCUMENTS,
  SLACKENED_OR_REMOVED,
  STEP_AT_OTHER_MOMENT,
  STEP_VERB(Severity.WARNING),
  STRAY_COLON,
  TAB_INDENT,
  TAG_NOT_ALLOWED,
  TEMPLATE_ERROR,
  TEMPLATE_MARKUP,
  TEXT_CUT(Severity.WARNING),
  TEXT_TOO_LONG,
  THREAD_TREATMENT(Severity.WARNING),
  TO_BORROW(Severity.WARNING),
  TOO_DEEP,
  TOO_LARGE,
  TOO_MANY_STEPS,
  TOOL_CLASH(Severity.WARNING),
  TOOL_FAULT,
  UNCLOSED_BRACKET,
  UNCLOSED_QUOTE,
  UNDECLARED(Severity.WARNING),
  UNEXPECTED_FILE,
  UNKNOWN_BAY,
  UNKNOWN_BOOK,
  UNKNOWN_BOX,
  UNKNOWN_CAUTION,
  UNKNOWN_CIRCUIT,
  UNKNOWN_FASTENER,
  UNKNOWN_FIGURE,
  UNKNOWN_FLUID,
  UNKNOWN_ITEM,
  UNKNOWN_KEY,
  UNKNOWN_KIND,
  UNKNOWN_LAYOUT,
  UNKNOWN_MEASURE,
  UNKNOWN_PERSON,
  UNKNOWN_PLACE,
  UNKNOWN_PROCEDURE,
  UNKNOWN_PRODUCT,
  UNKNOWN_QUALIFICATION,
  UNKNOWN_STATE,
  UNKNOWN_TOOL,
  UNKNOWN_TORQUE(Severity.WARNING),
  UNKNOWN_TRAIT,
  UNPRINTABLE_PAGE,
  UNUSED_BACK(Severity.WARNING),
  WAIVE_UNUSED,
  WEAKER_ENTRY,
  WORK_TWICE,
  WRENCH(Severity.WARNING),
  WRONG_MOMENT,
  WRONG_SHAPE,
  YAML_SYNTAX;

  private final Severity severity;

  ProblemCode() {
    this(Severity.ERROR);
  }

  ProblemCode(Severity severity) {
    this.severity = severity;
  }

  /** What follows from a problem. */
  public enum Severity {
    /** The job gets no sheet. */
    ERROR,
    /** The job gets its sheet, and the person who prints it should know. */
    WARNING,
    /** Nothing is in doubt; one comparison with the source is asked for. */
    NOTE;

    /** As printed before the sentence. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The code of a word such as {@code unknown-key}. */
  public static Optional<ProblemCode> of(String word) {
    return Stream.of(values()).filter(code -> code.word().equals(word)).findFirst();
  }

  /** The code as people read and type it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public String toString() {
    return word();
  }

  public Severity severity() {
    return severity;
  }

  /** What the problem means, an example of it, and the example corrected; as Markdown. */
  public String page() {
    String resource = "/baysheet/explain/" + word() + ".md";
    try (InputStream page = ProblemCode.class.getResourceAsStream(resource)) {
      if (page == null) {
        throw new IllegalStateException("this build has no " + resource);
      }
      return new String(page.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource + " from the jar", e);
    }
  }
}
