package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.layout.PageCheck;
import baysheet.layout.PageFit;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.sheet.Sheet;
import baysheet.wording.Samples;
import baysheet.wording.SheetText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where layouts come from. */
class LayoutTemplatesTest {
  private static final SheetText SHEET = Samples.text(Samples.oilService());

  @TempDir private Path folder;

  @Test
  void changedLayoutInAnotherFolderMakesAnotherSheet() throws IOException {
    copy("bay-sheet.ftlx", "11pt", "10pt");
    copy("blocks.ftlx", "Found while working", "Seen on the way");
    Problems problems = new Problems();
    Form changed = LayoutTemplates.in(folder).fill("bay-sheet", SHEET, problems).orElseThrow();
    assertEquals(10_000, changed.largest());
    assertTrue(changed.body().toString().contains("Seen on the way"));
  }

  private void copy(String file, String from, String to) throws IOException {
    String shipped = Files.readString(Path.of("templates", file));
    assertTrue(shipped.contains(from), file);
    Files.writeString(folder.resolve(file), shipped.replace(from, to));
  }

  @Test
  void aLayoutAloneHasTheBlocksOfTheTool() throws IOException {
    copy("bay-sheet.ftlx", "<@topCautions/>", "");
    String filled =
        LayoutTemplates.in(folder).write("bay-sheet", SHEET, new Problems()).orElseThrow();
    String shipped =
        LayoutTemplates.builtIn().write("bay-sheet", SHEET, new Problems()).orElseThrow();
    assertTrue(shipped.contains("Wear for this job") && !filled.contains("Wear for this job"));
    assertTrue(filled.contains("Removed and refitted"), filled);
  }

  @Test
  void aBlockWrittenAnewTakesThePlaceOfTheOther() throws IOException {
    copy("bay-sheet.ftlx", "<form ", "<#macro sources><text>Ask us</text></#macro>\n<form ");
    String filled =
        LayoutTemplates.in(folder).write("bay-sheet", SHEET, new Problems()).orElseThrow();
    assertTrue(filled.contains(">Ask us<"), filled);
    assertFalse(filled.contains("take precedence"), filled);
  }

  @Test
  void aMistakeInABlockPointsIntoTheBlocks() throws IOException {
    copy("blocks.ftlx", "<rule thickness=\"1.4pt\"/>", "<rule thickness=\"thin\"/>");
    copy("bay-sheet.ftlx", "<fill/>", "<fill/><fil/>");
    int inBlocks = line("blocks.ftlx", "thin\"");
    int inSheet = line("bay-sheet.ftlx", "<fil/>");
    Problems problems = new Problems();
    assertEquals(Optional.empty(), LayoutTemplates.in(folder).fill("bay-sheet", SHEET, problems));
    List<String> at = problems.all().stream().map(it -> it.at().toString()).toList();
    assertEquals(2, at.size(), at.toString());
    assertTrue(at.get(0).endsWith("blocks.ftlx:" + inBlocks + ":7"), at.toString());
    assertTrue(at.get(1).endsWith("bay-sheet.ftlx:" + inSheet + ":12"), at.toString());
  }

  /** The number of the first line of a copied file with these words in it. */
  private int line(String file, String words) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve(file));
    int line = 1;
    while (!lines.get(line - 1).contains(words)) {
      line++;
    }
    return line;
  }

  @Test
  void aValueMissingInABlockPointsIntoTheBlocks() throws IOException {
    copy("blocks.ftlx", "${sheet.head.vehicle.plate}", "${sheet.head.vehicle.plat}");
    Problems problems = new Problems();
    Files.writeString(
        folder.resolve("bay-sheet.ftlx"),
        "<form largest=\"11pt\" smallest=\"8pt\" language=\"en-GB\""
            + " title=\"T\"><@sizes/><column><@head/></column></form>");
    assertEquals(Optional.empty(), LayoutTemplates.in(folder).fill("bay-sheet", SHEET, problems));
    assertTrue(
        problems.all().get(0).at().toString().contains("blocks.ftlx:"), problems.all().toString());
  }

  @Test
  void unknownLayoutSaysWhatThereIs() throws IOException {
    Files.writeString(folder.resolve("poster.ftlx"), "<form/>");
    Problems problems = new Problems();
    assertEquals(Optional.empty(), LayoutTemplates.in(folder).fill("bay-sheet", SHEET, problems));
    Problem problem = problems.all().get(0);
    assertEquals("unknown-layout", problem.code().word());
    assertEquals(Optional.of("one of poster"), problem.expected());
  }

  @Test
  void mistakeNamesTheFile() throws IOException {
    Files.writeString(folder.resolve("bay-sheet.ftlx"), "<form>\n</form>");
    Problems problems = new Problems();
    LayoutTemplates.in(folder).fill("bay-sheet", SHEET, problems);
    assertTrue(problems.all().get(0).at().toString().endsWith("bay-sheet.ftlx:1:1"));
  }

  @Test
  void folderThatIsNotThereIsNamed() {
    Path missing = folder.resolve("nowhere");
    UncheckedIOException e =
        assertThrows(UncheckedIOException.class, () -> LayoutTemplates.in(missing));
    assertTrue(e.getMessage().contains("nowhere"));
  }

  @Test
  void linkOutOfTheFolderIsNotFollowed() throws IOException {
    Path outside = Files.writeString(folder.resolve("outside.txt"), "<form/>");
    Path inside = Files.createDirectory(folder.resolve("in"));
    Files.createSymbolicLink(inside.resolve("bay-sheet.ftlx"), outside);
    Problems problems = new Problems();
    LayoutTemplates.in(inside).fill("bay-sheet", SHEET, problems);
    assertEquals("unknown-layout", problems.all().get(0).code().word());
  }

  @Test
  void fileTooLargeForALayoutIsNotRead() throws IOException {
    Files.writeString(folder.resolve("bay-sheet.ftlx"), " ".repeat(500_000));
    assertThrows(UncheckedIOException.class, () -> LayoutTemplates.in(folder));
  }

  @Test
  void sheetsFilledAtTheSameTimeAreTheSame() {
    LayoutTemplates layouts = LayoutTemplates.builtIn();
    List<String> filled =
        IntStream.range(0, 16)
            .parallel()
            .mapToObj(i -> layouts.write("bay-sheet", SHEET, new Problems()).orElseThrow())
            .distinct()
            .toList();
    assertEquals(1, filled.size());
  }

  @Test
  void smallJobIsSetAtFullSizeWithNothingLeftOut() {
    Form form = LayoutTemplates.builtIn().fill("bay-sheet", SHEET, new Problems()).orElseThrow();
    PageFit.Fitted fitted =
        assertInstanceOf(PageFit.Fitted.class, PageFit.fit(form, Fonts.builtIn()));
    assertEquals(11_000, fitted.fit().bodySize());
    assertEquals(List.of(), fitted.fit().dropped());
  }

  static List<Sheet> sheetsThatFit() {
    Sheet brakes = Samples.brakes();
    Sheet half = Samples.with(brakes, brakes.sections().subList(0, 2), brakes.torque());
    return List.of(Samples.oilService(), half);
  }

  @ParameterizedTest
  @MethodSource("sheetsThatFit")
  void nothingIsCutOrCovered(Sheet sheet) {
    Form form =
        LayoutTemplates.builtIn()
            .fill("bay-sheet", Samples.text(sheet), new Problems())
            .orElseThrow();
    PageFit.Fitted fitted =
        assertInstanceOf(PageFit.Fitted.class, PageFit.fit(form, Fonts.builtIn()));
    // Only sources and footer may go down to 7 pt.
    assertEquals(List.of(), PageCheck.faults(fitted.page(), form.margin(), 7_000));
  }

  @Test
  void nothingThatMustBeReadIsInAGroupThatGivesWay() {
    Form form =
        LayoutTemplates.builtIn()
            .fill("bay-sheet", Samples.text(Samples.brakes()), new Problems())
            .orElseThrow();
    assertEquals(
        List.of(
            "drawings",
            "second-units",
            "check-causes",
            "second-found-line",
            "minutes",
            "if-seized",
            "check-reasons",
            "ok-if",
            "reasons",
            "hold-reasons",
            "seen"),
        form.groups().stream().map(Form.Group::name).toList());
    String dropped = DroppedWords.of(form.body());
    for (String kept :
        List.of("108\u00a0N·m", "Hold point", "DANGER", "WARNING", "signature", "If seized")) {
      assertTrue(!dropped.contains(kept), kept + " in " + dropped);
    }
  }
}
