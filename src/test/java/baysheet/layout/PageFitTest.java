package baysheet.layout;

import static baysheet.layout.Sketch.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Box;
import baysheet.box.Columns;
import baysheet.box.Drawing;
import baysheet.box.Fill;
import baysheet.box.Form;
import baysheet.box.Items;
import baysheet.box.Length;
import baysheet.box.Mark;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import baysheet.box.Vertical;
import baysheet.box.Width;
import baysheet.layout.PageFit.Fitted;
import baysheet.layout.PageFit.Overrun;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PageFitTest {
  private static final Fonts FONTS = Fonts.builtIn();

  /** A4 less two margins of 9 mm, in points. */
  private static final double ROOM = 841.890 - 2 * 25.512;

  @Test
  void littleContentTakesTheLargestSize() {
    Fitted fitted = fitted(form(text("a")));
    assertEquals(11_000, fitted.fit().bodySize());
    assertFalse(fitted.fit().leastPens());
    assertEquals(List.of(), fitted.fit().dropped());
  }

  @Test
  void largestSizeThatFitsIsTaken() {
    // 66 lines of 1.11 em: 790.866 / 66 / 1.11 = 10.795, and the next tenth under it is 10.7.
    assertEquals(10_700, fitted(form(lines(66))).fit().bodySize());
  }

  @Test
  void pensShrinkBeforeAnythingIsDropped() {
    // Two lines of 9 points are 20 high; the tick box is 14.2, or 9.9 at the least.
    Box tall = droppable("hints", text("hint"));
    Form form = form(column(tick("t", "t"), tall, space(ROOM - 33), text("a")), List.of("hints"));
    Fitted fitted = fitted(form);
    assertTrue(fitted.fit().leastPens());
    assertEquals(List.of(), fitted.fit().dropped());
    assertTrue(words(fitted.page()).contains("hint"));
  }

  @Test
  void groupsGoInOrderAndNoMoreThanNeeded() {
    Box column =
        column(
            droppable("c", space(100)),
            droppable("a", space(100)),
            droppable("b", space(100)),
            space(ROOM - 150),
            text("a"));
    Fitted fitted = fitted(form(column, List.of("a", "b", "c")));
    assertEquals(List.of("a", "b"), fitted.fit().dropped());
    assertTrue(fitted.fit().bodySize() >= 9_000);
  }

  @Test
  void groupThatNobodyIsInIsNotSaidToBeDropped() {
    Box column = column(droppable("b", space(100)), space(ROOM - 50), text("a"));
    assertEquals(List.of("b"), fitted(form(column, List.of("a", "b"))).fit().dropped());
  }

  @Test
  void shrinkingGroupShowsItsSmallerBox() {
    Box both = shrinking("drawings", wheel(300), wheel(60));
    Fitted fitted = fitted(form(column(both, space(ROOM - 100), text("a")), List.of("drawings")));
    long widest =
        fitted.page().items().stream().mapToLong(item -> item.area().width()).max().orElseThrow();
    assertTrue(widest < 60_000, "widest " + widest);
  }

  @Test
  void runsOfADroppedGroupGoToo() {
    Text.Run hint = new Text.Run(" hint", false, Optional.of("hints"));
    Box text = text(TextStyle.Align.LEFT, run("step"), hint);
    Box column = column(droppable("hints", space(100)), text, space(ROOM - 50));
    assertEquals("step", words(fitted(form(column, List.of("hints"))).page()));
  }

  @Test
  void underTheLimitEverythingGivesWayTogether() {
    // 81 lines need 790.866 / 81 / 1.11 = 8.796.
    Box column = column(droppable("hints", space(1)), lines(81));
    Fitted fitted = fitted(form(column, List.of("hints")));
    assertEquals(8_700, fitted.fit().bodySize());
    assertEquals(List.of("hints"), fitted.fit().dropped());
  }

  @Test
  void groupWithALowerLimitStaysWhileTextGetsSmaller() {
    // Three lines more than 81 need 790.866 / 84 / 1.11 = 8.482: over the limit of 8 points.
    Box column = column(droppable("hints", lines(9)), droppable("reasons", lines(3)), lines(81));
    List<Form.Group> groups =
        List.of(new Form.Group("hints", 9_000), new Form.Group("reasons", 8_000));
    Fitted fitted = assertInstanceOf(Fitted.class, PageFit.fit(grouped(column, groups), FONTS));
    assertEquals(8_400, fitted.fit().bodySize());
    assertEquals(List.of("hints"), fitted.fit().dropped());
  }

  @Test
  void groupWithALowerLimitGoesWhenNotEvenThatHoldsIt() {
    // 90 lines need 790.866 / 90 / 1.11 = 7.917; without the reasons 81 lines take 8.796.
    Box column = column(droppable("reasons", lines(9)), droppable("hints", lines(1)), lines(81));
    List<Form.Group> groups =
        List.of(new Form.Group("reasons", 8_000), new Form.Group("hints", 9_000));
    Fitted fitted = assertInstanceOf(Fitted.class, PageFit.fit(grouped(column, groups), FONTS));
    assertEquals(8_700, fitted.fit().bodySize());
    assertEquals(List.of("hints", "reasons"), fitted.fit().dropped());
  }

  @Test
  void textReadInTheHandShrinksBeforeAnythingIsDropped() {
    // At 9 points 18 lines of the body are 179.82 high, at 9.1 they are 181.82; 18 in the hand are
    // 169.83 high at 8.5 points, 154.85 at 7.75 and 149.85 at 7.5.
    Box column =
        column(droppable("hints", text("hint")), space(ROOM - 331), lines(17), handLines(18));
    Fit fit = fitted(form(column, List.of("hints"))).fit();
    assertEquals(List.of(), fit.dropped());
    assertEquals(9_000, fit.bodySize());
    assertEquals(7_500, fit.handSize());
  }

  @Test
  void textReadInTheHandTakesWhatRoomTheBodyLeaves() {
    // The body stands at the largest of 11 points; 80 lines in the hand would be 754.8 high at 8.5
    // points, 688.2 at 7.75 and 710.4 at 8; 790.866 - 85 is between the last two.
    Box column =
        column(droppable("hints", space(300)), space(85 - 12.21), text("a"), handLines(80));
    Fit fit = fitted(form(column, List.of("hints"))).fit();
    assertEquals(11_000, fit.bodySize());
    assertEquals(7_750, fit.handSize());
  }

  private static Box handLines(int count) {
    TextStyle style = new TextStyle(true, 1000, 7_000, 30_000, TextStyle.Align.LEFT);
    List<Box> lines =
        IntStream.range(0, count)
            .mapToObj(i -> (Box) new Text(List.of(run("x")), style, Text.Role.PARAGRAPH, HERE))
            .toList();
    return column(lines.toArray(Box[]::new));
  }

  @Test
  void textGoesOnUnderItsLabel() {
    // A box of 14.173 points makes the first line of 12.21 as high, and the second goes under it.
    List<Item.Glyphs> beside = under(tick("t", "t"));
    assertEquals(25_512 + 14_173 + 2_000, beside.get(0).x());
    assertEquals(25_512, beside.get(1).x());
    assertEquals(14_173, beside.get(1).baseline() - beside.get(0).baseline());
    // A figure of 24.42 points stands beside two lines.
    List<Item.Glyphs> two = under(heading(Text.Role.PARAGRAPH, 2000, "1"));
    assertTrue(two.get(1).x() > 30_000, two.toString());
    assertEquals(two.get(1).x(), two.get(2).x());
    assertEquals(25_512, two.get(3).x());
    assertEquals(12_210, two.get(3).baseline() - two.get(2).baseline());
  }

  /** What follows a single line takes the whole width, and so begins below the label. */
  @Test
  void whatFollowsASingleLineBeginsBelowItsLabel() {
    Box label = heading(Text.Role.PARAGRAPH, 2000, "1");
    List<Item.Glyphs> found = under(label, column(text("one"), text("two")));
    assertEquals(25_512, found.get(2).x());
    assertTrue(found.get(2).baseline() - found.get(1).baseline() > 20_000, found.toString());
  }

  private static List<Item.Glyphs> under(Box label) {
    return under(label, text("twelve words and more that go on for a second line and a third"));
  }

  private static List<Item.Glyphs> under(Box label, Box body) {
    Items items =
        new Items(List.of(new Items.Entry(label, body)), NATURAL, pt(2), pt(0), true, HERE);
    Page page = fitted(form(row(0, cell(new Width.Fixed(pt(120)), items)))).page();
    assertEquals(List.of(), PageCheck.faults(page, 25_512, 7_000));
    return page.items().stream()
        .filter(Item.Glyphs.class::isInstance)
        .map(Item.Glyphs.class::cast)
        .toList();
  }

  @Test
  void ofSeveralNumbersOfColumnsTheLowestIsTaken() {
    Box[] short6 = IntStream.range(0, 6).mapToObj(i -> text("a")).toArray(Box[]::new);
    for (List<Integer> counts : List.of(List.of(2, 3), List.of(3, 2))) {
      Columns columns = new Columns(counts, List.of(short6), pt(0), pt(0), HERE);
      Page page = fitted(form(column(columns))).page();
      assertEquals(3, page.items().stream().mapToLong(it -> it.area().x()).distinct().count());
    }
    // One long word has room in two columns and not in three.
    Columns wide =
        new Columns(List.of(3, 2), List.of(text("w".repeat(35)), text("a")), pt(0), pt(0), HERE);
    Page page = fitted(form(column(wide))).page();
    assertEquals(2, page.items().stream().mapToLong(it -> it.area().x()).distinct().count());
  }

  @Test
  void overrunSaysByHowMuchAndWhatIsTallest() {
    Box table = table(List.of(SHARE), List.of(), tr(td(space(700))));
    Overrun overrun = assertInstanceOf(Overrun.class, fit(form(column(table, space(200)))));
    // 700 + 2 x 1.5 padding + 2 x 1.2 rules + 200 - 790.866, and 25.4 mm are 72 points.
    assertEquals(114_534, overrun.by());
    assertEquals(41, overrun.byMillimetres());
    assertEquals("table “Sample table”", overrun.tallest().get(0).what());
    assertEquals(249, overrun.tallest().get(0).millimetres());
    assertEquals("space", overrun.tallest().get(1).what());
  }

  @Test
  void wordWiderThanItsCellIsReportedAndNothingIsCut() {
    Box narrow = row(0, cell(fixed(10), text("synchroniser")));
    Overrun overrun = assertInstanceOf(Overrun.class, fit(form(narrow)));
    assertEquals(0, overrun.by());
    assertEquals("synchroniser", overrun.tooWide().get(0).what());
  }

  @Test
  void wordThatFitsOnlySmallMakesTheTextSmall() {
    long width = Em.at(FONTS.regular().advance("synchroniser"), 10_000);
    Width exactly = new Width.Fixed(new Length(width, false));
    assertEquals(
        10_000, fitted(form(row(0, cell(exactly, text("synchroniser"))))).fit().bodySize());
  }

  @Test
  void fillPinsWhatFollowsToTheFootOfThePage() {
    Page page = fitted(form(column(text("top"), new Fill(HERE), text("foot")))).page();
    Item.Area top = page.items().get(0).area();
    Item.Area foot = page.items().get(1).area();
    assertEquals(25_512, top.y(), 300);
    assertEquals(841_890 - 25_512, foot.bottom(), 300);
  }

  @Test
  void lineToWriteOnFillsItsRoomAndTextStandsOnIt() {
    Box label = text("Seen by");
    Page page =
        fitted(
                form(
                    row(
                        5,
                        cell(NATURAL, Vertical.BASELINE, label),
                        cell(SHARE, Vertical.BASELINE, line("seen")))))
            .page();
    Item.Area line = page.pens().get(0).edge();
    assertEquals(595_276 - 25_512, line.right());
    assertEquals(line.bottom(), ((Item.Glyphs) page.items().get(0)).baseline());
  }

  @Test
  void firstLinesOfDifferentSizesStandOnOneBaseline() {
    Page page =
        fitted(
                form(
                    row(
                        5,
                        cell(NATURAL, Vertical.BASELINE, text("small")),
                        cell(NATURAL, Vertical.BASELINE, heading(Text.Role.TITLE, 2000, "Big")))))
            .page();
    assertEquals(
        ((Item.Glyphs) page.items().get(0)).baseline(),
        ((Item.Glyphs) page.items().get(1)).baseline());
  }

  @Test
  void numberOfMeasurementsIsBounded() {
    // Up to four levels, then up to five guesses, then what they leave of the 20 sizes halved, then
    // five sizes of text read in the hand halved: 4 + 5 + 2 + 3.
    List<Integer> counts = new ArrayList<>();
    for (int lines = 1; lines < 95; lines++) {
      Box column = column(droppable("hints", space(1)), lines(lines));
      PageFit fit = fit(form(column, List.of("hints")));
      counts.add(
          fit instanceof Fitted fitted
              ? fitted.fit().measurements()
              : ((Overrun) fit).measurements());
    }
    assertTrue(counts.stream().allMatch(n -> n <= 14), counts.toString());
  }

  @Test
  void missingCharacterIsFoundWhereverItStands() {
    Drawing drawing =
        new Drawing(pt(10), pt(10), List.of(new Mark.Label(0, 0, 500, "\u4E00", false)), "x", HERE);
    Box items =
        new Items(
            List.of(new Items.Entry(text("ok"), frame(text("bad \u4E01")))),
            NATURAL,
            pt(1),
            pt(1),
            false,
            HERE);
    Box dropped = droppable("g", table(List.of(SHARE), List.of(td("\u4E02"))));
    List<MissingGlyph> missing = MissingGlyph.in(form(column(drawing, items, dropped)), FONTS);
    assertEquals(
        List.of(0x4E00, 0x4E01, 0x4E02), missing.stream().map(MissingGlyph::codePoint).toList());
    assertEquals("bad \u4E01", missing.get(1).text());
  }

  private static Box lines(int count) {
    return column(Collections.nCopies(count, text("a")).toArray(Box[]::new));
  }

  private static PageFit fit(Form form) {
    return PageFit.fit(form, FONTS);
  }

  private static Fitted fitted(Form form) {
    return assertInstanceOf(Fitted.class, fit(form));
  }

  private static String words(Page page) {
    StringBuilder words = new StringBuilder();
    for (Item item : page.items()) {
      words.append(item instanceof Item.Glyphs glyphs ? glyphs.text() : "");
    }
    return words.toString();
  }
}
