package baysheet.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

  private final JsonGenerator json;

  private ProblemJson(JsonGenerator json) {
    this.json = json;
  }

  /** The problems and their summary. */
  public static String print(List<Problem> problems, Summary summary) {
    return print(problems, summary, List.of());
  }

  /**
   * The same with what a run made.
   *
   * @param sheets keys and values of each sheet, under {@code sheets}; left out where there is none
   */
  public static String print(
      List<Problem> problems, Summary summary, List<Map<String, String>> sheets) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(indented());
      new ProblemJson(json).all(InOrder.of(problems), summary, sheets);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write to memory", e);
    }
    return out.append('\n').toString();
  }

  /** The library's own indenter ends lines as the system does. */
  private static PrettyPrinter indented() {
    return new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
  }

  private void all(List<Problem> problems, Summary summary, List<Map<String, String>> sheets)
      throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    if (!sheets.isEmpty()) {
      json.writeArrayFieldStart("sheets");
      for (Map<String, String> sheet : sheets) {
        json.writeStartObject();
        for (Map.Entry<String, String> entry : sheet.entrySet()) {
          json.writeStringField(entry.getKey(), entry.getValue());
        }
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeArrayFieldStart("problems");
    for (Problem problem : problems) {
      problem(problem);
    }
    json.writeEndArray();
    json.writeNumberField("errors", summary.errors());
    json.writeNumberField("warnings", summary.warnings());
    json.writeNumberField("notes", summary.notes());
    json.writeNumberField("files", summary.files());
    json.writeStringField("consequence", summary.consequence());
    json.writeEndObject();
  }

  private void problem(Problem problem) throws IOException {
    json.writeStartObject();
    json.writeStringField("code", problem.code().word());
    json.writeStringField("severity", problem.code().severity().word());
    place(problem.at());
    json.writeStringField("what", TerminalText.plainSpaces(problem.what()));
    optional("expected", problem.expected());
    optional("line", problem.line());
    optional("nearest", problem.nearest());
    json.writeArrayFieldStart("related");
    for (Located<String> related : problem.related()) {
      json.writeStartObject();
      json.writeStringField("word", related.value());
      place(related.at());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void optional(String key, Optional<String> value) throws IOException {
    if (value.isPresent()) {
      json.writeStringField(key, TerminalText.plainSpaces(value.get()));
    }
  }

  private void place(Span at) throws IOException {
    json.writeObjectFieldStart("at");
    json.writeStringField("file", at.source().name());
    json.writeNumberField("line", at.line());
    json.writeNumberField("column", at.column());
    json.writeNumberField("endLine", at.endLine());
    json.writeNumberField("endColumn", at.endColumn());
    json.writeEndObject();
  }
}
