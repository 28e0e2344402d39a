package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a layout of one's own is said at the line where it was written. */
class LayoutProblemsTest {
  private static final String HEAD =
      """
      <form largest="9pt" smallest="8pt" language="en" title="T">
      <pen name="tick" width="4mm" height="4mm"/>
      <column>
      """;
  private static final String FOOT = "</column>\n</form>\n";

  @TempDir private Path folder;

  @Test
  void labelsOnOneAnotherAreRefused() throws IOException {
    Garage.Run run =
        sheets(
            """
            <text>fine</text>
            <drawing width="20mm" height="20mm" says="two">
              <label x="300" y="500" height="200" text="1"/><label x="320" y="500" height="200" text="2"/>
            </drawing>
            """);
    refused(run, "bay-sheet.ftlx:5:1", "unprintable-page");
    run.says("on one another");
  }

  @Test
  void markThatLiesOnTheTextBelowIsRefused() throws IOException {
    Garage.Run run =
        sheets(
            """
            <drawing width="20mm" height="5mm" says="too tall">
              <label x="100" y="400" height="200" text="8"/>
            </drawing>
            <text>covered text</text>
            """);
    refused(run, "bay-sheet.ftlx:4:1", "unprintable-page");
  }

  @Test
  void markBeyondTheMarginIsRefused() throws IOException {
    Garage.Run run =
        sheets(
            """
            <row><cell width="150mm"><text>x</text></cell><cell width="20mm">
            <drawing width="20mm" height="20mm" says="too wide"><circle x="3000" y="500" radius="100"/></drawing>
            </cell></row>
            """);
    refused(run, "bay-sheet.ftlx:5:1", "unprintable-page");
    run.says("beyond the margin");
  }

  @Test
  void labelTooSmallToReadIsRefused() throws IOException {
    Garage.Run run =
        sheets(
            """
            <drawing width="20mm" height="20mm" says="small">
              <label x="500" y="500" height="100" text="1"/>
            </drawing>
            """);
    refused(run, "bay-sheet.ftlx:4:1", "unprintable-page");
    run.says("smaller than 7");
  }

  @Test
  void styleTooSmallToReadIsRefusedWhereItIsDeclared() throws IOException {
    Garage.Run run = sheets("</column>\n<style name=\"x\" floor=\"5pt\"/>\n<column>");
    refused(run, "bay-sheet.ftlx:5:1", "template-markup");
  }

  @Test
  void characterThatTheFontLacksIsNamedAtItsLine() throws IOException {
    refused(sheets("<text>fine</text>\n<text>\u4e2d</text>\n"), "bay-sheet.ftlx:5:1", "no-glyph");
  }

  @Test
  void wordWiderThanItsPlaceNamesTheLayoutsLine() throws IOException {
    Garage.Run run = sheets("<row><cell width=\"5mm\"><text>extraordinarily</text></cell></row>\n");
    assertEquals(1, run.exit());
    run.says("\"extraordinarily\" is ");
    run.says("bay-sheet.ftlx, line 4");
    assertFalse(run.err().contains("TooWide["), run.err());
    nothingWritten();
  }

  private Garage.Run sheets(String body) throws IOException {
    Path layouts = Files.createDirectories(folder.resolve("layouts"));
    Files.writeString(layouts.resolve("bay-sheet.ftlx"), HEAD + body + FOOT);
    return Garage.in(folder).sheets("--templates", layouts.toString());
  }

  private void refused(Garage.Run run, String where, String code) throws IOException {
    assertEquals(1, run.exit(), run.err());
    run.reports(where, code);
    nothingWritten();
  }

  private void nothingWritten() throws IOException {
    Path out = folder.resolve("out");
    if (Files.exists(out)) {
      try (var files = Files.walk(out)) {
        // The lock of the ledger stays; it holds nothing.
        assertEquals(
            List.of(), files.filter(Files::isRegularFile).filter(file -> size(file) > 0).toList());
      }
    }
  }

  private static long size(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      throw new UncheckedIOException(file.toString(), e);
    }
  }
}
