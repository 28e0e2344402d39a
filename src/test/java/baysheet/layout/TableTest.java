package baysheet.layout;

import static baysheet.layout.Sketch.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Box;
import baysheet.box.Table;
import baysheet.box.TextStyle;
import baysheet.box.Width;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TableTest {
  private static final Fonts FONTS = Fonts.builtIn();

  @Test
  void figuresStandOnTheirDecimalPoints() {
    Page page = page(column("9.5 N·m", "102.25 N·m", "30"));
    long digit = Em.at(FONTS.regular().advance('0'), 11_000);
    assertEquals(2 * digit, x(page, "9.5 N·m") - x(page, "102.25 N·m"), 2);
    assertEquals(digit, x(page, "30") - x(page, "102.25 N·m"), 2);
  }

  @Test
  void lineWithoutAFigureStandsAtTheLeft() {
    Page page = page(column("102.25", "not stated"));
    assertEquals(x(page, "102.25"), x(page, "not stated"));
  }

  @Test
  void figuresInARowWithinACellStayInTheirOwnRoom() {
    Box inRow = row(4, cell(NATURAL, decimal("1")), cell(NATURAL, decimal("a1")));
    Page page = page(table(List.of(NATURAL), List.of(), tr(td(inRow)), tr(td(decimal("12345")))));
    long end = item(page, "1").area().right();
    assertEquals(end + 4_000, x(page, "a1"));
  }

  @Test
  void columnsKeepTheirDistance() {
    Table close = table(List.of(fixed(50), fixed(60)), List.of(), tr(td("a"), td("b")));
    Table apart =
        new Table(close.widths(), List.of(), close.rows(), close.padding(), pt(7), "Apart", HERE);
    assertEquals(x(page(close), "b") + 7_000, x(page(apart), "b"));
    assertEquals(x(page(close), "a"), x(page(apart), "a"));
  }

  @Test
  void emptyColumnsMakeRoomForACellAcrossThem() {
    Table table =
        table(
            List.of(NATURAL, NATURAL, SHARE),
            List.of(spanning(2, text("Handgriffe")), td("Rest")),
            tr(td(""), td(""), td("rest")));
    Item heading = item(page(table), "Handgriffe");
    assertTrue(x(page(table), "Rest") >= heading.area().right());
  }

  @Test
  void sentenceAcrossTheTableDoesNotPushItsColumnsApart() {
    List<Width> widths = List.of(NATURAL, NATURAL, SHARE);
    Table plain = table(widths, List.of(), tr(td("a"), td("b"), td("c")));
    Table said =
        table(widths, List.of(), tr(td("a"), td("b"), td("c")), tr(spanning(2, text("i i i i"))));
    assertEquals(x(page(plain), "c"), x(page(said), "c"));
  }

  @Test
  void columnWhoseCellsAreAllDroppedIsGone() {
    Table table =
        table(
            List.of(SHARE, fixed(100), fixed(50)),
            List.of(td("A"), td(droppable("g", text("B"))), td("C")),
            tr(td("a"), td(droppable("g", text("b"))), td("c")),
            tr(spanning(3, text("all"))));
    Box thin = table.without(Set.of("g")).orElseThrow();
    Table thinned = (Table) thin;
    assertEquals(List.of(SHARE, fixed(50)), thinned.widths());
    assertEquals(2, thinned.header().size());
    assertEquals(2, thinned.rows().get(1).cells().get(0).span());
  }

  @Test
  void columnWithOneCellLeftStays() {
    Table table =
        table(
            List.of(SHARE, SHARE),
            List.of(),
            tr(td("a"), td(droppable("g", text("b")))),
            tr(td("c"), td("d")));
    Table thinned = (Table) table.without(Set.of("g")).orElseThrow();
    assertEquals(2, thinned.widths().size());
    assertEquals(2, thinned.rows().get(0).cells().size());
  }

  @Test
  void headerCellsNameColumnsAndRows() {
    Page page =
        page(table(List.of(SHARE, SHARE), List.of(td("A"), td("B")), tr(rowHeader("a"), td("b"))));
    Page.Element table = page.structure().children().get(0);
    assertEquals("Sample table", table.tag().title());
    Page.Element head = table.children().get(0).children().get(0);
    Page.Element row = table.children().get(1).children().get(0);
    assertEquals(Tag.Type.TH_COLUMN, head.children().get(1).tag().type());
    assertEquals(Tag.Type.TH_ROW, row.children().get(0).tag().type());
    assertEquals(Tag.Type.TD, row.children().get(1).tag().type());
  }

  @Test
  void shortRowIsFilledWithAnEmptyCell() {
    Page page = page(table(List.of(SHARE, SHARE, SHARE), List.of(), tr(td("a"))));
    Page.Element row = page.structure().children().get(0).children().get(0).children().get(0);
    assertEquals(2, row.children().size());
    assertEquals(2, row.children().get(1).tag().span());
  }

  @Test
  void cellInTheMiddleHasAsMuchAboveAsBelow() {
    Page page = page(table(List.of(SHARE, SHARE), List.of(), tr(td(space(40)), td("a"))));
    // The rule of 1.2, padding of 1.5, and the line of 12.2 in the middle of 40.
    long top = 25_512 + 1_200 + 1_500 + (40_000 - 12_200) / 2;
    assertTrue(Math.abs(item(page, "a").area().y() - top) < 300, PageText.print(page));
  }

  private static Table column(String... texts) {
    Table.Line[] rows =
        List.of(texts).stream().map(t -> tr(td(decimal(t)))).toArray(Table.Line[]::new);
    return table(List.of(NATURAL), List.of(), rows);
  }

  private static Box decimal(String text) {
    return text(TextStyle.Align.DECIMAL, run(text));
  }

  private static Page page(Box box) {
    return ((PageFit.Fitted) PageFit.fit(form(box), FONTS)).page();
  }

  private static Item item(Page page, String text) {
    return page.items().stream()
        .filter(item -> item instanceof Item.Glyphs g && g.text().equals(text))
        .findFirst()
        .orElseThrow();
  }

  private static long x(Page page, String text) {
    return item(page, text).area().x();
  }
}
