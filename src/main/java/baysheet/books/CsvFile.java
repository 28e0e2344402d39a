package baysheet.books;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.yaml.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table as spreadsheets save it (RFC 4180): lines of cells, which may stand in double quotes.
 * Spreadsheets of countries with a decimal comma put semicolons between cells, and some put tabs;
 * the first line shows which.
 */
final class CsvFile {
  private final Source source;
  private final String text;
  private final char separator;
  private final List<List<Scalar>> rows = new ArrayList<>();
  private List<Scalar> row = new ArrayList<>();
  private int at;
  private int line = 1;
  private int column = 1;

  private CsvFile(Source source) {
    this.source = source;
    this.text = source.text();
    String first = text.lines().findFirst().orElse("");
    this.separator = first.contains("\t") ? '\t' : first.contains(";") ? ';' : ',';
  }

  /** The rows that are not empty; no row, with a problem, where a quote is not closed. */
  static Optional<List<List<Scalar>>> rows(Source source, Problems problems) {
    CsvFile file = new CsvFile(source);
    Optional<Span> open = file.read();
    open.ifPresent(
        quote ->
            problems.add(
                Problem.of(
                        ProblemCode.UNCLOSED_QUOTE,
                        quote,
                        "this cell has a quote that is not closed")
                    .expecting("a double quote before the next separator or line end")));
    return open.isPresent() ? Optional.empty() : Optional.of(file.rows);
  }

  /** Reads all; where a quote is not closed, it is returned. */
  private Optional<Span> read() {
    while (at < text.length()) {
      Span start = source.at(line, column);
      boolean quoted = text.charAt(at) == '"';
      Optional<String> cell = quoted ? quoted() : Optional.of(plain());
      if (cell.isEmpty() || (quoted && !isCellEnd())) {
        return Optional.of(start);
      }
      row.add(
          new Scalar(
              cell.get().strip(),
              quoted,
              new Span(source, start.line(), start.column(), line, column)));
      next();
    }
    endRow();
    return Optional.empty();
  }

  private boolean isCellEnd() {
    return at == text.length() || text.charAt(at) == separator || isLineEnd(text.charAt(at));
  }

  private String plain() {
    int from = at;
    while (!isCellEnd()) {
      step();
    }
    return text.substring(from, at);
  }

  /** Two quotes stand for one. A line end in a cell is a space here. */
  private Optional<String> quoted() {
    StringBuilder cell = new StringBuilder();
    step();
    while (at < text.length()) {
      char character = text.charAt(at);
      boolean quote = character == '"';
      step();
      if (quote && (at == text.length() || text.charAt(at) != '"')) {
        return Optional.of(cell.toString());
      }
      if (quote) {
        step();
      }
      cell.append(isLineEnd(character) ? ' ' : character);
    }
    return Optional.empty();
  }

  /** Goes over what stands behind a cell. */
  private void next() {
    if (at == text.length()) {
      return;
    }
    boolean end = isLineEnd(text.charAt(at));
    step();
    if (end) {
      endRow();
    } else if (at == text.length()) {
      row.add(new Scalar("", false, source.at(line, column)));
    }
  }

  private void endRow() {
    if (row.stream().anyMatch(cell -> !cell.text().isEmpty())) {
      rows.add(row);
    }
    row = new ArrayList<>();
  }

  private void step() {
    char character = text.charAt(at++);
    boolean half = character == '\r' && at < text.length() && text.charAt(at) == '\n';
    if (half) {
      at++;
    }
    if (isLineEnd(character)) {
      line++;
      column = 1;
    } else if (!Character.isLowSurrogate(character)) {
      column++;
    }
  }

  private static boolean isLineEnd(char character) {
    return character == '\n' || character == '\r';
  }
}
