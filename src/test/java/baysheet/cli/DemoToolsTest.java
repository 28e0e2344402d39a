package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.output.MadeSheet;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the sheets of the demo days say is to be laid out. */
class DemoToolsTest {
  private static final List<MadeSheet> ALL = DemoSheets.made(Shop.Paper.A4);
  private static final List<Sheet> WHOLE = DemoSheets.wholes();

  /** It is in the crib with a square of half an inch: so W3 turns it, and not W2 by an adapter. */
  @Test
  void aCrowFootIsTurnedByTheWrenchOfItsSquare() {
    for (String job : List.of("2406", "2410")) {
      Sheet.SocketLine crowFoot =
          sheet(job).equipment().sockets().stream()
              .filter(it -> it.insert().isPresent())
              .findFirst()
              .orElseThrow();
      assertEquals("1/2\u00a0in", crowFoot.drive().print(), job);
      assertFalse(tools(sheet(job)).contains("adapter 3/8 in to 1/2 in"), job);
    }
  }

  @Test
  void whatOnlyWaysOutAskForSaysSo() {
    List<Sheet.ToolLine> tools = sheet("2406").equipment().tools();
    Map<String, Boolean> stuck =
        tools.stream().collect(Collectors.toMap(Sheet.ToolLine::name, Sheet.ToolLine::ifStuck));
    assertEquals(true, stuck.get("nut splitter"));
    assertEquals(true, stuck.get("drill"));
    assertEquals(false, stuck.get("pry bar"));
    assertEquals(false, stuck.get("steel rule"));
  }

  @Test
  void pensAndTagsThatChecksAndMarksNeedAreLaidOut() {
    int marked = 0;
    for (MadeSheet made : ALL) {
      Sheet sheet = made.sheet();
      List<String> checks = sheet.checks().stream().map(CheckLine::name).toList();
      List<String> tools = tools(sheet);
      assertTrue(tools.contains("paint pen") || sheet.torque().isEmpty(), sheet.name());
      assertEquals(checks.contains("no-brakes-tag"), tools.contains("NO BRAKES tag"), sheet.name());
      assertEquals(checks.contains("no-oil-tag"), tools.contains("NO OIL tag"), sheet.name());
      marked += sheet.torque().isEmpty() ? 0 : 1;
    }
    assertTrue(marked >= WHOLE.size(), "each job tightens something: " + marked);
    // Brakes are opened on 2401, 2403, 2408, 2409 and 2411; oil is drained on 2404.
    assertEquals(5, WHOLE.stream().filter(it -> tools(it).contains("NO BRAKES tag")).count());
    assertEquals(1, WHOLE.stream().filter(it -> tools(it).contains("NO OIL tag")).count());
  }

  /** In the list of tools as at the steps. */
  @Test
  void toolsOfWaysOutLeaveThePageWithThem() {
    int left = 0;
    for (MadeSheet made : ALL) {
      boolean gone = made.fit().dropped().contains("if-seized");
      boolean any =
          made.sheet().equipment().tools().stream().anyMatch(Sheet.ToolLine::ifStuck)
              || made.sheet().steps().stream().anyMatch(it -> !it.teaching().ifStuck().isEmpty());
      String words = Paper.of(SheetPdfs.pdf(new PdfWriter(), made)).text();
      assertEquals(any && !gone, words.contains("If seized: "), made.sheet().name());
      left += gone ? 1 : 0;
    }
    assertTrue(left > 0);
  }

  private static Sheet sheet(String job) {
    return WHOLE.stream()
        .filter(sheet -> sheet.heading().job().equals(job))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> tools(Sheet sheet) {
    return sheet.equipment().tools().stream().map(Sheet.ToolLine::name).toList();
  }
}
