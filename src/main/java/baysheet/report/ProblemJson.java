package baysheet.report;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import java.util.List;

/**
 * Prints problems for programs, as one JSON object (RFC 8259) with a line end behind it.
 *
 * <pre>{@code
 * {"format": 1,
 *  "problems": [{"code", "severity": "error" | "warning" | "note", "at", "what", "expected"?, "line"?, "nearest"?,
 *                "related": [{"word", "at"}]}],
 *  "errors", "warnings", "notes", "files", "consequence"}
 * at: {"file", "line", "column", "endLine", "endColumn"}
 * }</pre>
 *
 * <p>Lines and columns count from 1, columns in code points, the end column is the one behind the
 * last character. The key {@code format} grows when a key changes its meaning or goes; new keys may
 * come at any time. All problems are printed, in file order.
 */
public final class ProblemJson {
  private static final int FORMAT = 1;

  private ProblemJson() {}

  /** The problems and their summary. */
  public static String print(List<Problem> problems, Summary summary) {
    return print(problems, summary, List.of());
  }

  /**
   * The same with what a run made.
   *
   * @param sheets keys and values of each sheet, under {@code sheets}; left out where there is none
   */
  public static String print(List<Problem> problems, Summary summary, List<JsonObject> sheets) {
    return JsonText.indented(
        new JsonObject()
            .put("format", FORMAT)
            .listIfAny("sheets", sheets)
            .list("problems", InOrder.of(problems), ProblemJson::problem)
            .put("errors", summary.errors())
            .put("warnings", summary.warnings())
            .put("notes", summary.notes())
            .put("files", summary.files())
            .put("consequence", summary.consequence()));
  }

  private static JsonObject problem(Problem problem) {
    return new JsonObject()
        .put("code", problem.code().word())
        .put("severity", problem.code().severity().word())
        .put("at", place(problem.at()))
        .put("what", TerminalText.plainSpaces(problem.what()))
        .put("expected", problem.expected().map(TerminalText::plainSpaces))
        .put("line", problem.line().map(TerminalText::plainSpaces))
        .put("nearest", problem.nearest().map(TerminalText::plainSpaces))
        .list(
            "related",
            problem.related(),
            it -> new JsonObject().put("word", it.value()).put("at", place(it.at())));
  }

  private static JsonObject place(Span at) {
    return new JsonObject()
        .put("file", at.source().name())
        .put("line", at.line())
        .put("column", at.column())
        .put("endLine", at.endLine())
        .put("endColumn", at.endColumn());
  }
}
