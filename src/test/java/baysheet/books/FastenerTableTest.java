package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as spreadsheets save them. */
class FastenerTableTest {
  private final Problems problems = new Problems();

  private List<FastenerTable.Row> rows(String text) {
    return FastenerTable.read(new Source("t.csv", text), problems);
  }

  private List<String> found() {
    return problems.all().stream()
        .map(it -> it.at().line() + ":" + it.at().column() + " " + it.code().word())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void theFirstLineShowsWhatStandsBetweenCells(String separator) {
    String text = "fastener,place,count,torque (N·m)\r\ncarrier-bolt,front-wheels,2,102\r\n";
    FastenerTable.Row row = rows(text.replace(",", separator)).get(0);
    assertEquals(List.of(), found());
    assertEquals("front-wheels", row.group().value().word());
    assertEquals(
        "{count=2, thread=unknown, head=unknown, torque=102 N·m}", row.values().toString());
  }

  @Test
  void quotesHoldSeparatorsQuotesAndLineEnds() {
    List<FastenerTable.Row> rows =
        rows("fastener,place,note,torque\nx-nut,engine,\"a, \"\"b\"\"\nc\",\"30 N·m, +60°\"\n");
    assertEquals(List.of(), found());
    assertEquals("a, \"b\" c", rows.get(0).values().get("note"));
    assertEquals("30 N·m, +60°", rows.get(0).values().get("torque"));
  }

  /** A decimal comma is one only where the whole column has it, and never before three digits. */
  @ParameterizedTest
  @CsvSource({
    "'22,5', '30', '22.5 N·m', ''",
    "'22,5 N·m', '30 ± 2,5', '22.5 N·m', ''",
    "'22,5', '30.5', '', '2:14 bad-torque'",
    "'1,000', '30', '', '2:14 bad-torque'",
    "'unknown', '30', 'unknown', ''",
    "'20..25', '30', '20..25 N·m', ''",
  })
  void aDecimalCommaHoldsForTheWholeColumn(String one, String other, String read, String wrong) {
    String text = "fastener;place;torque [N·m]\nx-nut;engine;%s\ny-nut;engine;%s\n";
    List<FastenerTable.Row> rows = rows(text.formatted(one, other));
    assertEquals(wrong == null || wrong.isEmpty() ? List.of() : List.of(wrong), found());
    if (read != null && !read.isEmpty()) {
      assertEquals(read, rows.get(0).values().get("torque"));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "'fastener,place,torque\nWheel Nut,wheels,110 N·m\n', '2:1 not-a-name'",
    "'fastener,place,torque\nwheel-nut,wheel,110 N·m\n', '2:11 unknown-place'",
    "'fastener,place,torque\nwheel-nut,wheels,110\n', '2:18 bad-torque'",
    "'fastener,place,count\nwheel-nut,wheels,5.0\n', '2:18 not-a-number'",
    "'fastener,place,torqe\nwheel-nut,wheels,110 N·m\n', '1:16 unknown-key'",
    "'fastener,torque\nwheel-nut,110 N·m\n', '1:1 missing-key'",
    "'fastener,place\nwheel-nut,wheels,110 N·m\n', '2:18 wrong-shape'",
    "'fastener,place\nwheel-nut,wheels\nwheel-nut,wheels\n', '3:1 listed-twice'",
    "'fastener,place,place\nwheel-nut,wheels,engine\n', '1:16 listed-twice'",
    "'fastener,place\n\"wheel-nut,wheels\n', '2:1 unclosed-quote'",
    "'fastener,place\nwheel-nut\n', '2:1 empty-value'",
    "'', '1:1 empty-file'",
    "'fastener,place,torque\n', '1:1 empty-file'",
  })
  void aFaultyCellIsNamedByRowAndColumn(String text, String where) {
    List<FastenerTable.Row> rows = rows(text);
    assertTrue(found().contains(where), found().toString());
    assertEquals(1, problems.all().stream().filter(Problem::isError).count(), found().toString());
    assertTrue(rows.size() < 2);
  }
}
