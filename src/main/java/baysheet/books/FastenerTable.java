package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import baysheet.yaml.ValueReaders;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Fasteners from a table that a garage keeps in a spreadsheet: a row for each, the columns named as
 * the keys of a spec book, a unit in the heading or in each cell. What a row does not say is
 * written {@code unknown}.
 */
public final class FastenerTable {
  private static final String FASTENER = "fastener";
  private static final String PLACE = "place";
  private static final String TORQUE = "torque";

  /** What stands between the stages of a torque. */
  public static final Pattern STAGES = Pattern.compile("[,;]\\s+");

  /**
   * The keys of a fastener that fit into a cell; those without which it is not known come first.
   */
  private static final List<String> NEEDED =
      List.of(
          FastenerText.Pieces.COUNT, FastenerText.Pieces.THREAD, FastenerText.Pieces.HEAD, TORQUE);

  private static final List<String> KEYS =
      Stream.of(
              Stream.of(
                  "count", "thread", "class", "head", "torque", "order", "threads", "reuse", "lock",
                  "final", "recheck", "deep"),
              Remark.KEYS.stream().map(Remark.Key::word),
              Stream.of("source"))
          .flatMap(keys -> keys)
          .toList();

  private static final Set<String> WITH_FIGURES =
      Set.of("thread", "class", "head", "torque", "recheck");

  private static final Pattern HEADING =
      Pattern.compile("(?<key>[A-Za-z-]+)\\s*(?:[(\\[]\\s*(?<unit>[^)\\]]+?)\\s*[)\\]])?");

  private static final Pattern BARE = Pattern.compile("[0-9][0-9.,\\s±+/-]*");

  /** A comma in a figure; before three digits it may as well stand between thousands. */
  private static final Pattern COMMA = Pattern.compile("(?<=[0-9]),(?=[0-9])(?![0-9]{3}(?![0-9]))");

  private static final Pattern POINT = Pattern.compile("[0-9]\\.[0-9]");

  /**
   * A row.
   *
   * @param values keys with their texts, in the order in which a book has them
   */
  public record Row(
      Located<PlaceGroup> group, Located<String> fastener, Map<String, String> values) {}

  /** A column with its heading and the unit in it. */
  private record Column(int index, String key, String unit, Scalar heading, boolean commas) {}

  private final Problems problems;

  private FastenerTable(Problems problems) {
    this.problems = problems;
  }

  /** The rows; what is wrong is a problem at the cell. */
  public static List<Row> read(Source source, Problems problems) {
    Optional<List<List<Scalar>>> cells = CsvFile.rows(source, problems);
    if (cells.isPresent() && cells.get().size() < 2) {
      problems.add(
          Problem.of(ProblemCode.EMPTY_FILE, source.whole(), "the table has no rows")
              .expecting("a heading for each column, and a row for each fastener"));
    }
    return cells
        .filter(all -> all.size() > 1)
        .map(all -> new FastenerTable(problems).rows(all))
        .orElse(List.of());
  }

  private List<Row> rows(List<List<Scalar>> cells) {
    Map<String, Column> columns = columns(cells);
    for (String needed : List.of(FASTENER, PLACE)) {
      if (!columns.containsKey(needed)) {
        problems.add(
            Problem.of(
                    ProblemCode.MISSING_KEY,
                    cells.get(0).get(0).at(),
                    "the table has no column \"" + needed + '"')
                .expecting(
                    needed.equals(PLACE)
                        ? "a column with front-wheels, engine or another place of a spec book"
                        : "a column with the names that procedures use"));
        return List.of();
      }
    }
    List<Row> rows = new ArrayList<>();
    Map<String, Located<String>> seen = new LinkedHashMap<>();
    for (List<Scalar> row : cells.subList(1, cells.size())) {
      row(row, columns, cells.get(0).size()).ifPresent(it -> add(it, rows, seen));
    }
    return rows;
  }

  private void add(Row row, List<Row> rows, Map<String, Located<String>> seen) {
    String key = row.group().value() + " " + row.fastener().value();
    Located<String> first = seen.putIfAbsent(key, row.fastener());
    if (first == null) {
      rows.add(row);
    } else {
      problems.add(BookSentences.listedTwice(row.fastener(), first));
    }
  }

  private Map<String, Column> columns(List<List<Scalar>> cells) {
    Map<String, Column> columns = new LinkedHashMap<>();
    List<String> known = Stream.concat(Stream.of(FASTENER, PLACE), KEYS.stream()).toList();
    for (int i = 0; i < cells.get(0).size(); i++) {
      Scalar heading = cells.get(0).get(i);
      Matcher parts = HEADING.matcher(heading.text());
      String key = parts.matches() ? parts.group("key").toLowerCase(Locale.ROOT) : "";
      if (!known.contains(key)) {
        problems.add(
            Problem.of(
                    ProblemCode.UNKNOWN_KEY,
                    heading.at(),
                    "no column of this table can have the heading \"" + heading.text() + '"')
                .expecting(
                    "one of " + String.join(", ", known) + ", with a unit in brackets or without")
                .near(Nearest.of(key.isEmpty() ? heading.text() : key, known)));
        continue;
      }
      String unit = Optional.ofNullable(parts.group("unit")).orElse("");
      Column column = new Column(i, key, unit, heading, hasCommas(cells, i, key));
      if (columns.putIfAbsent(key, column) != null) {
        problems.add(
            BookSentences.listedTwice(
                new Located<>(key, heading.at()),
                new Located<>(key, columns.get(key).heading().at())));
      }
    }
    return columns;
  }

  /** Whether all figures of a column that have a fraction have it behind a comma. */
  private static boolean hasCommas(List<List<Scalar>> cells, int column, String key) {
    List<String> texts =
        cells.stream()
            .skip(1)
            .filter(it -> it.size() > column)
            .map(it -> it.get(column).text())
            .toList();
    return WITH_FIGURES.contains(key)
        && texts.stream().anyMatch(it -> COMMA.matcher(it).find())
        && texts.stream().noneMatch(it -> POINT.matcher(it).find());
  }

  private Optional<Row> row(List<Scalar> cells, Map<String, Column> columns, int headings) {
    for (Scalar cell : cells.stream().skip(headings).toList()) {
      if (!cell.text().isEmpty()) {
        problems.add(
            Problem.of(ProblemCode.WRONG_SHAPE, cell.at(), "this cell has no heading above it")
                .expecting("as many cells as the first line has headings"));
      }
    }
    Optional<Located<String>> name = cell(cells, columns.get(FASTENER), ValueReaders::nameOf);
    Optional<Located<PlaceGroup>> group = cell(cells, columns.get(PLACE), PlaceText::group);
    Map<String, String> values = new LinkedHashMap<>();
    List<Entry> entries = new ArrayList<>();
    for (String key : KEYS) {
      Optional<Scalar> given =
          Optional.ofNullable(columns.get(key)).flatMap(it -> figure(cells, it));
      given.ifPresent(
          it -> {
            values.put(key, it.text());
            entries.add(new Entry(new Scalar(key, false, it.at()), stages(key, it)));
          });
      if (given.isEmpty() && NEEDED.contains(key)) {
        values.put(key, "unknown");
      }
    }
    Problems own = new Problems();
    FastenerReader.PARTIAL.read(new Mapping(entries, cells.get(0).at()), own);
    problems.addAll(own);
    return !own.hasErrors() && name.isPresent() && group.isPresent()
        ? Optional.of(new Row(group.get(), name.get(), values))
        : Optional.empty();
  }

  /** Several stages of a torque stand in one cell, as in a message: with commas between them. */
  private static Node stages(String key, Scalar cell) {
    List<Node> stages =
        STAGES.splitAsStream(cell.text()).<Node>map(it -> new Scalar(it, true, cell.at())).toList();
    return key.equals(TORQUE) && stages.size() > 1 ? new Sequence(stages, cell.at()) : cell;
  }

  private <T> Optional<Located<T>> cell(
      List<Scalar> cells, Column column, Function<String, ParseOutcome<T>> parse) {
    Scalar cell =
        column.index() < cells.size()
            ? cells.get(column.index())
            : new Scalar("", false, cells.get(cells.size() - 1).at());
    return ValueReaders.value(parse).read(cell, problems);
  }

  /** A cell with the unit of its heading, and with a point for a comma. */
  private static Optional<Scalar> figure(List<Scalar> cells, Column column) {
    Optional<Scalar> cell =
        Optional.of(column.index()).filter(it -> it < cells.size()).map(cells::get);
    return cell.filter(it -> !it.text().isEmpty())
        .map(
            it -> {
              String text = column.commas() ? COMMA.matcher(it.text()).replaceAll(".") : it.text();
              boolean bare = !column.unit().isEmpty() && BARE.matcher(text).matches();
              return new Scalar(bare ? text + " " + column.unit() : text, true, it.at());
            });
  }
}
