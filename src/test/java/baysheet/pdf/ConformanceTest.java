package baysheet.pdf;

import static baysheet.layout.Sketch.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Box;
import baysheet.box.Drawing;
import baysheet.box.Items;
import baysheet.box.Mark;
import baysheet.box.Text;
import baysheet.layout.Page;
import baysheet.layout.Samples;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConformanceTest {
  private static final PdfWriter WRITER = new PdfWriter();

  @Test
  void fullSampleKeepsToBothStandards() throws Exception {
    Page page = PdfWriterTest.page(Samples.full());
    assertConforms(List.of(page), List.of(PdfWriterTest.record("2417.json")));
  }

  @Test
  void tightSampleKeepsToBothStandards() throws Exception {
    assertConforms(List.of(PdfWriterTest.page(Samples.tight())), List.of());
  }

  @Test
  void rareCharactersKeepToBothStandards() throws Exception {
    Box text = text("Ärger, Žižkov, Ελλάδα, Україна ≠ ½ Ω µ ☐");
    assertConforms(List.of(PdfWriterTest.page(form(text))), List.of());
  }

  @Test
  void manyPagesWithAllAttachmentsKeepToBothStandards() throws Exception {
    Page page = PdfWriterTest.page(Samples.full());
    Page other = PdfWriterTest.page(form(table(List.of(SHARE), List.of(td("One")), tr(td("1")))));
    List<Attachment> records =
        List.of(PdfWriterTest.record("2418.json"), PdfWriterTest.record("2417.json"));
    assertConforms(List.of(page, other, page), records);
  }

  @Test
  void pageWithoutAttachmentsAndInOneWeightKeepsToBothStandards() throws Exception {
    assertConforms(List.of(PdfWriterTest.page(form(text("Only this")))), List.of());
  }

  @Test
  void shortRowsAndSpannedColumnsMakeARegularTable() throws Exception {
    Box table =
        table(
            List.of(SHARE, SHARE, NATURAL),
            List.of(td("One"), td("Two")),
            tr(rowHeader("a"), td("b"), td("c")),
            tr(spanning(3, text("over all"))),
            tr(td("short")));
    assertConforms(List.of(PdfWriterTest.page(form(table))), List.of());
  }

  @Test
  void headingLevelsAreNeverSkipped() throws Exception {
    Box first = heading(Text.Role.SUBHEADING, 1100, "A small heading comes first");
    Box second = heading(Text.Role.SUBHEADING, 1100, "and another");
    assertConforms(List.of(PdfWriterTest.page(form(column(first, second)))), List.of());
  }

  @Test
  void listsInListsAndFieldsInListsKeepToBothStandards() throws Exception {
    Box inner = ticked("i", "one", "three", "seven");
    Box outer =
        new Items(
            List.of(
                new Items.Entry(
                    row(2, cell(NATURAL, text("1.")), cell(NATURAL, tick("t", "t"))), inner)),
            NATURAL,
            pt(2),
            pt(2),
            false,
            HERE);
    assertConforms(List.of(PdfWriterTest.page(form(outer))), List.of());
  }

  @Test
  void checksSeeADrawingWithoutWords() throws Exception {
    Drawing drawing =
        new Drawing(pt(9), pt(9), List.of(new Mark.Line(100, 100, 900, 900, false)), "", HERE);
    byte[] pdf =
        WRITER.write(PdfWriterTest.page(form(drawing)), PdfWriterTest.info("one"), List.of());
    List<String> failures = Conformance.failures(pdf);
    assertTrue(failures.stream().anyMatch(f -> f.contains("7.3")), failures.toString());
  }

  private static void assertConforms(List<Page> pages, List<Attachment> records) throws Exception {
    byte[] pdf = WRITER.writeAll(pages, PdfWriterTest.info("one"), records);
    assertEquals(List.of(), Conformance.failures(pdf));
  }
}
