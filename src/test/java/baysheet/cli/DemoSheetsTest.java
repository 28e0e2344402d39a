package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.box.Form;
import baysheet.layout.EverySize;
import baysheet.layout.Item;
import baysheet.layout.PageCheck;
import baysheet.output.MadeSheet;
import baysheet.output.SheetPdfs;
import baysheet.pdf.Conformance;
import baysheet.pdf.PdfWriter;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.template.LayoutTemplates;
import baysheet.torque.Quantity;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sheet of the demo days, on both sizes of paper, walked item by item. */
class DemoSheetsTest {
  // In thousandths of a point, rounded down: 2834.6.
  private static final long MILLIMETRE = 2834;
  private static final long MARGIN = 8 * MILLIMETRE;
  private static final long SOURCES = 7000;
  private static final long BODY = 9000;

  /** Letter is 18 mm shorter, and no job is refused for it. */
  private static final long BODY_ON_LETTER = 8400;

  private static final long FIGURES = 10_500;

  private static final LayoutTemplates LARGE_PRINT =
      LayoutTemplates.in(Path.of("templates", "large-print"));

  /** What a wrench is set to. */
  private static final long SETTINGS = 13_000;

  /** The least sizes at which gloves and a ballpoint still do, in tenths of a millimetre. */
  private static final Map<String, long[]> LEAST_PENS =
      Map.of(
          "tick", new long[] {35, 35},
          "value", new long[] {160, 65},
          "initials", new long[] {120, 70},
          "signature", new long[] {450, 110});

  @ParameterizedTest
  @EnumSource(Shop.Paper.class)
  void nothingIsCutCoveredOrTooSmall(Shop.Paper paper) {
    for (MadeSheet sheet : DemoSheets.made(paper)) {
      String job = sheet.sheet().heading().job();
      assertEquals(List.of(), PageCheck.faults(sheet.page(), MARGIN, SOURCES), job);
      assertTrue(sheet.fit().bodySize() >= (paper == Shop.Paper.A4 ? BODY : BODY_ON_LETTER), job);
      sheet.page().pens().forEach(pen -> bigEnough(job, pen));
    }
  }

  /** What is read at the wing is larger than it must be on half of the sheets. */
  @Test
  void halfOfTheSheetsAreReadWithEase() {
    List<MadeSheet> made = DemoSheets.made(Shop.Paper.A4);
    long easy = made.stream().filter(it -> it.fit().bodySize() >= 9_400).count();
    assertTrue(2 * easy >= made.size(), easy + " of " + made.size());
  }

  @Test
  void nothingIsCoveredAtAnyOtherSizeEither() {
    for (LayoutTemplates layouts : List.of(LayoutTemplates.builtIn(), LARGE_PRINT)) {
      for (Form form : DemoSheets.forms(layouts)) {
        assertEquals(List.of(), EverySize.faults(form, DemoSheets.FONTS, SOURCES), form.title());
      }
    }
  }

  private static void bigEnough(String job, Item.Pen pen) {
    long[] least = LEAST_PENS.get(pen.kind());
    if (least != null) {
      String which = job + " " + pen.name();
      assertTrue(pen.edge().width() * 10 >= least[0] * MILLIMETRE, which);
      assertTrue(pen.edge().height() * 10 >= least[1] * MILLIMETRE, which);
    }
  }

  @ParameterizedTest
  @EnumSource(Shop.Paper.class)
  void everyCheckHasItsBoxWhereverItStands(Shop.Paper paper) {
    for (MadeSheet made : DemoSheets.made(paper)) {
      List<String> boxes = made.page().pens().stream().map(Item.Pen::name).toList();
      for (int n = 1; n <= made.sheet().checks().size(); n++) {
        boolean isStep = !made.sheet().checks().get(n - 1).steps().isEmpty();
        assertTrue(
            isStep || boxes.contains("check." + n), made.sheet().heading().job() + " check " + n);
      }
    }
  }

  /**
   * Two people sign the last sheet of a job, one releases it or not; a stage before is handed on.
   */
  @ParameterizedTest
  @EnumSource(Shop.Paper.class)
  void signOffIsWholeOnTheLastSheetAndOnlyThere(Shop.Paper paper) {
    for (MadeSheet made : DemoSheets.made(paper)) {
      String name = made.sheet().name();
      boolean last = made.sheet().stage().filter(it -> !it.isLast()).isEmpty();
      Set<String> required =
          pens(made).filter(Item.Pen::required).map(Item.Pen::name).collect(Collectors.toSet());
      for (String box : List.of("sign.%s", "%s.name", "%s.date", "%s.time")) {
        assertTrue(required.contains(box.formatted("technician")), name + " " + box);
        assertEquals(last, required.contains(box.formatted("second")), name + " " + box);
      }
      assertTrue(required.containsAll(List.of("started", "finished")), name);
      boolean complains = last && made.sheet().heading().request().complaint().isPresent();
      assertEquals(
          last ? List.of("release.yes", "release.no") : List.of(), choice(made, "release"));
      assertEquals(complains ? List.of("cured.yes", "cured.no") : List.of(), choice(made, "cured"));
      assertFalse(required.contains("release.yes") || required.contains("release.no"), name);
    }
  }

  private static List<String> choice(MadeSheet made, String choice) {
    return pens(made).filter(it -> it.choice().equals(choice)).map(Item.Pen::name).toList();
  }

  private static Stream<Item.Pen> pens(MadeSheet made) {
    return made.page().pens().stream();
  }

  @ParameterizedTest
  @EnumSource(Shop.Paper.class)
  void figuresThatGoOnAWrenchAreBigAndBold(Shop.Paper paper) {
    for (MadeSheet made : DemoSheets.made(paper)) {
      String largest = bold(made, SETTINGS);
      String large = bold(made, FIGURES);
      Set<Optional<String>> settings =
          torques(made.sheet())
              .map(it -> it.setting().map(Quantity::print))
              .collect(Collectors.toSet());
      torques(made.sheet())
          .forEach(
              torque -> {
                String where = torque.setting().isPresent() ? largest : large;
                String figure = spaced(torque.setting().orElse(torque.target()).print());
                assertTrue(where.contains(figure), figure + " in " + where);
                // The book's own figure stands beside it in smaller print, if it is another.
                String own = spaced(torque.target().print());
                boolean isSet = settings.contains(Optional.of(torque.target().print()));
                assertTrue(
                    isSet || torque.setting().isEmpty() || !largest.contains(" " + own), own);
              });
    }
  }

  private static String bold(MadeSheet made, long size) {
    return spaced(
        glyphs(made)
            .filter(text -> text.bold() && text.size() >= size)
            .map(Item.Glyphs::text)
            .collect(Collectors.joining(" ")));
  }

  private static String spaced(String text) {
    return text.replace('\u00a0', ' ');
  }

  private static Stream<TorqueLine.StageLine.Torque> torques(Sheet sheet) {
    // A figure in doubt is only said in the reason why it is.
    return sheet.torque().stream()
        .filter(line -> !line.inDoubt())
        .flatMap(line -> line.method().stages().stream())
        .filter(TorqueLine.StageLine.Torque.class::isInstance)
        .map(TorqueLine.StageLine.Torque.class::cast);
  }

  private static Stream<Item.Glyphs> glyphs(MadeSheet made) {
    return made.page().items().stream()
        .filter(Item.Glyphs.class::isInstance)
        .map(Item.Glyphs.class::cast);
  }

  @ParameterizedTest
  @ValueSource(strings = {"torque-card", "torque-first"})
  void theOtherLayoutsThatShipHoldEveryTorqueLineAndAreAsSound(String layout) throws Exception {
    List<MadeSheet> cards =
        DemoSheets.made(Shop.Paper.A4, LayoutTemplates.in(Path.of("templates", layout)));
    for (MadeSheet card : cards) {
      String job = card.sheet().heading().job();
      assertEquals(List.of(), PageCheck.faults(card.page(), MARGIN, SOURCES), job);
      card.page().pens().forEach(pen -> bigEnough(job, pen));
      long values =
          card.page().pens().stream().filter(pen -> pen.name().startsWith("mark.")).count();
      assertEquals(
          card.sheet().torque().stream().mapToLong(line -> line.places().size()).sum(),
          values,
          job);
    }
    // One stands for all: what differs between sheets is checked with the layout above.
    assertEquals(List.of(), Conformance.failures(SheetPdfs.pdf(new PdfWriter(), cards.get(0))));
  }

  @Test
  void anArchiveAndAScreenReaderTakeThem() throws Exception {
    PdfWriter writer = new PdfWriter();
    List<MadeSheet> made = DemoSheets.made(Shop.Paper.A4);
    for (MadeSheet sheet : made) {
      byte[] pdf = SheetPdfs.pdf(writer, sheet);
      assertEquals(List.of(), Conformance.failures(pdf), sheet.sheet().heading().job());
    }
    assertEquals(List.of(), Conformance.failures(SheetPdfs.all(writer, made)));
  }
}
