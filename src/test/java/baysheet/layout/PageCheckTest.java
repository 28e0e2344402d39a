package baysheet.layout;

import static baysheet.layout.Sketch.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Box;
import baysheet.box.Column;
import baysheet.box.Columns;
import baysheet.box.Items;
import baysheet.box.Row;
import baysheet.box.Stamp;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import baysheet.box.Vertical;
import baysheet.box.Width;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.junit.jupiter.api.Test;

class PageCheckTest {
  private static final Fonts FONTS = Fonts.builtIn();
  private static final long MARGIN = 25_512;

  @Test
  void sampleMayBePrinted() {
    assertEquals(List.of(), faults(page(Samples.full().body())));
  }

  @Test
  void textOnTextIsFound() {
    assertFault("on one another", glyphs(100_000, 100_000), glyphs(120_000, 105_000));
  }

  @Test
  void textBeyondTheMarginIsFound() {
    assertFault("beyond the margin", glyphs(20_000, 100_000));
  }

  @Test
  void smallTextIsFound() {
    assertFault("smaller than 7", new Item.Glyphs(1, false, 6_900, 99_000, 99_000, 9, 9, 9, "x"));
  }

  @Test
  void ruleThroughTextAndBorderThroughTextAreFound() {
    Item rule = new Item.Line(Page.ARTIFACT, 50_000, 98_000, 300_000, 98_000, 500);
    Item border =
        new Item.Rectangle(Page.ARTIFACT, new Item.Area(110_000, 50_000, 90_000, 90_000), 500);
    assertFault("on one another", rule, glyphs(100_000, 100_000));
    assertFault("on one another", border, glyphs(100_000, 100_000));
  }

  @Test
  void textInsideABorderIsFine() {
    Item border =
        new Item.Rectangle(Page.ARTIFACT, new Item.Area(90_000, 80_000, 90_000, 40_000), 500);
    assertEquals(List.of(), faults(pageOf(border, glyphs(100_000, 100_000))));
  }

  @Test
  void textInABoxForAPenIsFound() {
    Item.Area area = new Item.Area(90_000, 80_000, 90_000, 40_000);
    assertFault(
        "on one another",
        new Item.Pen(2, "v", "value", true, "", area, 700),
        glyphs(100_000, 100_000));
  }

  @Test
  void printTooNearToACodeIsFound() {
    Stamp code = new Stamp(Stamp.Kind.CODE, "A", 28_000, 5_000, List.of("#"), Sketch.HERE);
    Item.Area edge = new Item.Area(200_000, 90_000, 28_000, 28_000);
    Item modules = new Item.Modules(code, edge);
    assertEquals(List.of(), faults(pageOf(modules, glyphs(100_000, 100_000))));
    Item rule = new Item.Line(Page.ARTIFACT, 50_000, 122_500, 300_000, 122_500, 500);
    assertFault("on one another", modules, rule);
    // The code's white may reach into the margin, and its neighbour's into its own.
    Item corner = new Item.Modules(code, new Item.Area(30_000, 30_000, 28_000, 28_000));
    Item beside = new Item.Modules(code, new Item.Area(63_500, 30_000, 28_000, 28_000));
    assertEquals(List.of(), faults(pageOf(corner, beside)));
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  @StatisticsReport(StatisticsReport.StatisticsReportMode.OFF)
  void whateverFitsMayBePrinted(@ForAll("boxes") Box box) {
    if (PageFit.fit(form(box, List.of("a", "b")), FONTS) instanceof PageFit.Fitted fitted) {
      assertEquals(List.of(), faults(fitted.page()), () -> PageText.print(fitted.page()));
      Statistics.collect("fits");
    } else {
      Statistics.collect("does not fit");
    }
    Statistics.coverage(c -> c.check("fits").percentage(p -> p > 50));
  }

  /** Boxes in boxes, three deep. */
  @Provide
  Arbitrary<Box> boxes() {
    Arbitrary<Box> boxes = leaves();
    for (int depth = 0; depth < 3; depth++) {
      boxes =
          Arbitraries.frequencyOf(List.of(Tuple.of(1, leaves()), Tuple.of(4, containers(boxes))));
    }
    return boxes;
  }

  private static Arbitrary<Box> leaves() {
    Arbitrary<Box> texts =
        Combinators.combine(
                Arbitraries.strings().withChars("abc e/-\u00A0 12.5 ").ofMaxLength(60),
                Arbitraries.of(TextStyle.Align.values()),
                Arbitraries.integers().between(700, 1800),
                Arbitraries.of(true, false))
            .as(
                (text, align, scale, bold) ->
                    new Text(
                        List.of(new Text.Run(text, bold, Optional.empty()), run("x")),
                        new TextStyle(false, scale, 7_000, 30_000, align),
                        Text.Role.PARAGRAPH,
                        HERE));
    return Arbitraries.oneOf(
        List.of(
            texts,
            texts,
            Arbitraries.of(tick("t", "t"), value("v"), line("l"), wheel(50), rule(), space(7))));
  }

  private static Arbitrary<Box> containers(Arbitrary<Box> inner) {
    Arbitrary<Width> widths = Arbitraries.of(NATURAL, SHARE, new Width.Share(3), fixed(60));
    Arbitrary<List<Box>> some = inner.list().ofMinSize(1).ofMaxSize(5);
    Arbitrary<Row.Cell> cells =
        Combinators.combine(widths, inner, Arbitraries.of(Vertical.values())).as(Row.Cell::new);
    Arbitrary<Box> rows = cells.list().ofMinSize(1).ofMaxSize(4).map(c -> new Row(c, pt(4), HERE));
    Arbitrary<Box> columns =
        some.map(children -> new Column(children, pt(2), children.size() > 3, HERE));
    Arbitrary<Box> flows =
        Combinators.combine(Arbitraries.integers().between(1, 3), some)
            .as((n, children) -> new Columns(List.of(n), children, pt(2), pt(9), HERE));
    Arbitrary<Box> frames = inner.map(Sketch::frame);
    Arbitrary<Box> dropping =
        Combinators.combine(Arbitraries.of("a", "b"), inner).as(Sketch::droppable);
    Arbitrary<Box> held = inner.map(Sketch::held);
    Arbitrary<Box> lists =
        Combinators.combine(widths, inner, inner, inner)
            .as(
                (width, label, one, two) ->
                    new Items(
                        List.of(new Items.Entry(label, one), new Items.Entry(text("2."), two)),
                        width,
                        pt(3),
                        pt(2),
                        false,
                        HERE));
    Arbitrary<Box> tables =
        Combinators.combine(widths, widths, inner, inner, inner)
            .as(
                (first, second, a, b, c) ->
                    table(
                        List.of(first, second),
                        List.of(td("One"), td("Two")),
                        tr(td(a), td(b)),
                        tr(spanning(2, c)),
                        tr(td("short"))));
    return Arbitraries.oneOf(List.of(rows, columns, flows, frames, dropping, held, lists, tables));
  }

  private static Item.Glyphs glyphs(long x, long baseline) {
    return new Item.Glyphs(1, false, 10_000, x, baseline, 40_000, 9_280, 2_360, "text");
  }

  private static void assertFault(String kind, Item... items) {
    List<String> faults = faults(pageOf(items));
    assertTrue(faults.stream().anyMatch(f -> f.startsWith(kind)), faults.toString());
  }

  private static Page pageOf(Item... items) {
    return new Page(
        595_276,
        841_890,
        List.of(items),
        new Page.Element(0, Tag.of(Tag.Type.DOCUMENT), List.of()));
  }

  private static List<String> faults(Page page) {
    return PageCheck.faults(page, MARGIN, 7_000);
  }

  private static Page page(Box box) {
    return ((PageFit.Fitted) PageFit.fit(form(box), FONTS)).page();
  }
}
