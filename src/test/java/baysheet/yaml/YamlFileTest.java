package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlFileTest {
  /** Each of these is something other than a text to a reader of YAML 1.1 types. */
  @ParameterizedTest
  @ValueSource(
      strings = {"no", "on", "1:30", "010", "1.10", "~", "null", "2026-03-02", "0x1F", "1_000"})
  void aPlainTextStaysAsItIsWritten(String written) {
    assertEquals(written, scalar("key: " + written).text());
    assertFalse(scalar("key: " + written).quoted());
  }

  @Test
  void aKeyThatOthersTakeForAWordOfLogicStaysAKey() {
    Mapping mapping = assertInstanceOf(Mapping.class, Texts.tree("on: no\n"));
    assertEquals("on", mapping.entries().get(0).key().text());
    assertEquals("no", ((Scalar) mapping.entries().get(0).value()).text());
  }

  @Test
  void quotesAreNotPartOfTheTextButOfItsPlace() {
    Scalar scalar = scalar("class: \"10.9\"\n");
    assertEquals("10.9", scalar.text());
    assertTrue(scalar.quoted());
    assertEquals("1:8-1:14", place(scalar.at()));
  }

  @Test
  void entriesAndItemsKeepTheirOrder() {
    assertEquals(
        "{zeta: [3, 1, 2], alpha: {b: x, a: y}}",
        shape(Texts.tree("zeta: [3, 1, 2]\nalpha:\n  b: x\n  a: y\n")));
  }

  @Test
  void columnsCountCodePointsNotBytesOrCharUnits() {
    // The spanner sign is one code point, two chars and four bytes.
    assertEquals("1:8-1:11", place(scalar("\"🔧é車\": nut\n").at()));
  }

  @Test
  void aMapInLinesEndsWithItsLastValueNotBehindTheCommentsThatFollow() {
    Mapping outer = (Mapping) Texts.tree("a:\n  b: 1\n  c: 22\n\n# about d\nd: 3\n");
    assertEquals("2:3-3:8", place(outer.entries().get(0).value().at()));
    assertEquals("1:1-6:5", place(outer.at()));
  }

  @Test
  void aMapOrListInBracketsEndsWithItsBracket() {
    Mapping outer = (Mapping) Texts.tree("a: {x: 1 ,  y: 2 }\nb: [1,\n  2 ]\nc: []\n");
    assertEquals("1:4-1:19", place(outer.entries().get(0).value().at()));
    assertEquals("2:4-3:6", place(outer.entries().get(1).value().at()));
    assertEquals(
        "3:4-3:6",
        place(((Mapping) Texts.tree("a: 1\nb: 2\nc: []\n")).entries().get(2).value().at()));
  }

  @Test
  void aLongTextEndsWithItsLastLineThatHasText() {
    Scalar scalar = scalar("notes: |\n  one\n  two\n\n# end\n");
    assertEquals("one\ntwo\n", scalar.text());
    assertEquals("1:8-3:6", place(scalar.at()));
  }

  @Test
  void aTextMayGoOnOnIndentedLines() {
    assertEquals("one two", scalar("notes: one\n  two\n").text());
  }

  @Test
  void anEmptyValueIsEmptyAndAQuotedEmptyOneIsNot() {
    assertTrue(scalar("bay:\n").isEmpty());
    assertFalse(scalar("bay: ''\n").isEmpty());
  }

  @Test
  void linesMayEndAsOnAnySystem() {
    String text = "a: 1\nb:\n  - x\n  - y\n";
    assertEquals(Texts.tree(text).shape(), Texts.tree(text.replace("\n", "\r\n")).shape());
    for (String end : List.of("\n", "\r\n", "\r")) {
      Node node = Texts.tree(text.replace("\n", end));
      assertEquals("{a: 1, b: [x, y]}", shape(node));
      assertEquals("1:1-4:6", place(node.at()));
    }
  }

  @Test
  void fortyLevelsAreReadAndOneMoreIsReported() {
    assertEquals(List.of(), Texts.faults("[".repeat(40) + "]".repeat(40)));
    assertEquals(List.of("1:41 too-deep"), Texts.faults("[".repeat(41) + "]".repeat(41)));
  }

  private static Scalar scalar(String text) {
    Mapping mapping = (Mapping) Texts.tree(text);
    return (Scalar) mapping.entries().get(0).value();
  }

  private static String place(Span at) {
    return at.line() + ":" + at.column() + "-" + at.endLine() + ":" + at.endColumn();
  }

  private static String shape(Node node) {
    if (node instanceof Mapping mapping) {
      return mapping.entries().stream()
          .map(entry -> entry.key().text() + ": " + shape(entry.value()))
          .toList()
          .toString()
          .replaceAll("^\\[(.*)]$", "{$1}");
    }
    return node instanceof Sequence sequence
        ? sequence.items().stream().map(YamlFileTest::shape).toList().toString()
        : ((Scalar) node).text();
  }
}
