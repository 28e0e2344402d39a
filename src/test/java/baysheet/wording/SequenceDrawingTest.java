package baysheet.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.PageFit;
import baysheet.report.Problems;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.template.LayoutTemplates;
import baysheet.wording.TorqueTableText.DrawingText;
import baysheet.wording.TorqueTableText.PositionText;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every tightening sequence that a book may hold gets on the page, drawn or as a list. */
class SequenceDrawingTest {
  private static final LayoutTemplates LAYOUTS = LayoutTemplates.builtIn();
  private static final int MOST = 99;

  /** 8 pt in thousandths of a point. */
  private static final long LEAST_FIGURE = 8_000;

  static Stream<List<Integer>> rowsOfAllShapes() {
    List<List<Integer>> shapes = new ArrayList<>();
    for (int count : List.of(4, 7, 10, 16, 23, 31, 32, 33, 48, 63, 64, 65, MOST)) {
      shapes.add(List.of(count));
      shapes.add(Collections.nCopies(count, 1));
      shapes.add(List.of(count / 2, count - count / 2));
      shapes.add(List.of(count / 3, count / 3, count - 2 * (count / 3)));
    }
    shapes.add(List.of(1, 9, 1));
    shapes.add(Collections.nCopies(8, 8));
    return shapes.stream().filter(rows -> rows.stream().allMatch(row -> row > 0));
  }

  @Test
  void orderDrawingNumbersEachPositionWithItsTurn() {
    // Five on a circle, from the top: the wheel star 1-3-5-2-4, common practice, no source.
    DrawingText drawing = Samples.text(Samples.brakes()).torque().drawings().get(0);
    assertEquals(
        List.of("1", "4", "2", "5", "3"),
        drawing.positions().stream().map(PositionText::turn).toList());
    assertTrue(drawing.positions().get(0).first());
    assertFalse(drawing.positions().get(1).first());
  }

  @Test
  void rowsOfTheDrawingLieSideBySideInsideIt() {
    TorqueLine line = bolt(10).rows("B", 5, 5).build();
    Sheet brakes = Samples.brakes();
    Sheet sheet = Samples.with(brakes, brakes.sections(), List.of(line));
    DrawingText drawing = Samples.text(sheet).torque().drawings().get(0);
    assertEquals(10, drawing.positions().size());
    assertTrue(
        drawing.positions().stream()
            .allMatch(p -> p.x() >= drawing.radius() && p.x() <= 1000 - drawing.radius()));
    assertTrue(drawing.height() < 600, "two rows of five are flat: " + drawing.height());
  }

  @ParameterizedTest
  @MethodSource("rowsOfAllShapes")
  void rowsAreOnThePage(List<Integer> rows) {
    int count = rows.stream().mapToInt(Integer::intValue).sum();
    assertOnThePage(bolt(count).rows("a", rows.toArray(Integer[]::new)).build());
  }

  @Test
  void circlesAreOnThePage() {
    for (int count = 4; count <= MOST; count++) {
      assertOnThePage(bolt(count).circle("a").build());
    }
  }

  @Test
  void upToSixtyFourOnACircleOrInRowsOfTwoAreDrawnWherePaperAllows() {
    for (int count : List.of(4, 12, 20, 32, 64)) {
      assertEquals(count, drawing(bolt(count).circle("a").build()).positions().size());
      assertEquals(
          count, drawing(bolt(count).rows("a", count / 2, count / 2).build()).positions().size());
    }
    assertEquals(List.of(), drawing(bolt(65).circle("a").build()).positions());
  }

  @Test
  void positionsThatOnlyTheSourceNumbersAreListedAndNeverDrawn() {
    // A drawing would say where the positions are, which the book does not.
    TorqueLine line = bolt(6).given("a", List.of(3, 4, 1, 6, 2, 5)).build();
    assertEquals(List.of(), drawing(line).positions());
    assertEquals(List.of("1–6: 3, 4, 1, 6, 2, 5"), drawing(line).turns());
    assertTrue(words(page(line)).contains("numbered as in the source"), words(page(line)));
  }

  @Test
  void aLongJobHasTheListInsteadOfAWideDrawing() {
    TorqueLine line = bolt(64).circle("a").build();
    Sheet brakes = Samples.brakes();
    Sheet half = Samples.with(brakes, brakes.sections().subList(0, 2), List.of(line));
    Page page = page(half);
    assertEquals(line.method().order(), listed(page));
    assertEquals(0, labels(page).size());
  }

  private static void assertOnThePage(TorqueLine line) {
    Page page = page(line);
    List<Item.Glyphs> labels = labels(page);
    if (labels.isEmpty()) {
      assertEquals(line.method().order(), listed(page), line.method().drawing().toString());
      return;
    }
    assertTrue(labels.stream().allMatch(label -> label.size() >= LEAST_FIGURE));
    List<String> turns = IntStream.rangeClosed(1, line.count()).mapToObj(String::valueOf).toList();
    assertEquals(
        turns.stream().sorted().toList(),
        labels.stream().map(Item.Glyphs::text).sorted().toList(),
        line.method().drawing().toString());
    for (PositionText position : drawing(line).positions()) {
      int at = drawing(line).positions().indexOf(position) + 1;
      assertEquals(at, line.method().order().get(Integer.parseInt(position.turn()) - 1));
    }
  }

  private static LineMaker bolt(int count) {
    return new LineMaker(1, "bolt", Samples.ENGINE, count)
        .stages(SampleLines.torque("25", "18", "W2"));
  }

  private static DrawingText drawing(TorqueLine line) {
    return Samples.text(sheet(line)).torque().drawings().get(0);
  }

  private static Sheet sheet(TorqueLine line) {
    Sheet service = Samples.oilService();
    return Samples.with(service, service.sections(), List.of(line));
  }

  private static Page page(TorqueLine line) {
    return page(sheet(line));
  }

  private static Page page(Sheet sheet) {
    Problems problems = new Problems();
    Form form =
        LAYOUTS
            .fill("bay-sheet", Samples.text(sheet), problems)
            .orElseThrow(() -> new AssertionError(problems.all()));
    PageFit fit = PageFit.fit(form, Fonts.builtIn());
    return assertInstanceOf(PageFit.Fitted.class, fit, () -> sheet.torque().toString()).page();
  }

  /** The figures that belong to the drawing's own element, not to any paragraph. */
  private static List<Item.Glyphs> labels(Page page) {
    List<Integer> figures =
        page.items().stream()
            .filter(Item.Circle.class::isInstance)
            .map(Item::element)
            .distinct()
            .toList();
    return page.items().stream()
        .filter(item -> figures.contains(item.element()))
        .filter(Item.Glyphs.class::isInstance)
        .map(Item.Glyphs.class::cast)
        .toList();
  }

  /** The positions of the list, read from the page. */
  private static List<Integer> listed(Page page) {
    List<Integer> positions = new ArrayList<>();
    page.items().stream()
        .filter(Item.Glyphs.class::isInstance)
        .collect(
            Collectors.groupingBy(
                Item::element,
                java.util.TreeMap::new,
                Collectors.mapping(item -> ((Item.Glyphs) item).text(), Collectors.joining(" "))))
        .values()
        .stream()
        .filter(line -> line.matches("[0-9]+(–[0-9]+)?: [0-9, ]+"))
        .forEach(
            line -> {
              for (String position : line.substring(line.indexOf(':') + 2).split(",\\s*")) {
                positions.add(Integer.valueOf(position.strip()));
              }
            });
    return positions;
  }

  private static String words(Page page) {
    return page.items().stream()
        .filter(Item.Glyphs.class::isInstance)
        .map(item -> ((Item.Glyphs) item).text())
        .collect(Collectors.joining(" "));
  }
}
