package baysheet.layout;

import static baysheet.layout.Sketch.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Box;
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
    // 66 lines of 1.172 em: 790.866 / 66 / 1.172 = 10.224, and the next tenth under it is 10.2.
    assertEquals(10_200, fitted(form(lines(66))).fit().bodySize());
  }

  @Test
  void pensShrinkBeforeAnythingIsDropped() {
    // Two lines of 9 points are 21.1 high; the tick box is 14.2, or 9.9 at the least.
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
    // 77 lines need 790.866 / 77 / 1.172 = 8.764.
    Box column = column(droppable("hints", space(1)), lines(77));
    Fitted fitted = fitted(form(column, List.of("hints")));
    assertEquals(8_700, fitted.fit().bodySize());
    assertEquals(List.of("hints"), fitted.fit().dropped());
  }

  @Test
  void groupWithALowerLimitStaysWhileTextGetsSmaller() {
    // Three lines more than 77 need 790.866 / 80 / 1.172 = 8.435: over the limit of 8 points.
    Box column = column(droppable("hints", lines(9)), droppable("reasons", lines(3)), lines(77));
    List<Form.Group> groups =
        List.of(new Form.Group("hints", 9_000), new Form.Group("reasons", 8_000));
    Fitted fitted = assertInstanceOf(Fitted.class, PageFit.fit(grouped(column, groups), FONTS));
    assertEquals(8_400, fitted.fit().bodySize());
    assertEquals(List.of("hints"), fitted.fit().dropped());
  }

  @Test
  void groupWithALowerLimitGoesWhenNotEvenThatHoldsIt() {
    // 85 lines need 790.866 / 85 / 1.172 = 7.939; without the reasons 77 lines take 8.764.
    Box column = column(droppable("reasons", lines(8)), droppable("hints", lines(1)), lines(77));
    List<Form.Group> groups =
        List.of(new Form.Group("reasons", 8_000), new Form.Group("hints", 9_000));
    Fitted fitted = assertInstanceOf(Fitted.class, PageFit.fit(grouped(column, groups), FONTS));
    assertEquals(8_700, fitted.fit().bodySize());
    assertEquals(List.of("hints", "reasons"), fitted.fit().dropped());
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
    // Up to three levels, then up to five guesses, then what they leave of the 20 sizes halved: 3 +
    // 5 + 2.
    List<Integer> counts = new ArrayList<>();
    for (int lines = 1; lines < 90; lines++) {
      Box column = column(droppable("hints", space(1)), lines(lines));
      PageFit fit = fit(form(column, List.of("hints")));
      counts.add(
          fit instanceof Fitted fitted
              ? fitted.fit().measurements()
              : ((Overrun) fit).measurements());
    }
    assertTrue(counts.stream().allMatch(n -> n <= 10), counts.toString());
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
