package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.output.MadeSheet;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What a library that did not write a sheet reads out of it. It follows the content stream, which
 * must therefore stand in the order of the structure tree.
 */
class ReadingOrderTest {
  private static final PdfWriter WRITER = new PdfWriter();

  @Test
  void everyWordAndFigureComesOutInReadingOrder() throws IOException {
    for (MadeSheet made : DemoSheets.made(Shop.Paper.A4)) {
      String read = closedUp(extracted(SheetPdfs.pdf(WRITER, made)));
      assertEquals(closedUp(printed(made.page())), read, made.sheet().heading().job());
    }
  }

  @Test
  void contentFollowsTheStructure() {
    for (MadeSheet made : DemoSheets.made(Shop.Paper.A4)) {
      List<Integer> elements =
          made.page().items().stream()
              .map(Item::element)
              .filter(element -> element != Page.ARTIFACT)
              .toList();
      assertTrue(elements.size() > 60, "only " + elements.size() + " items");
      assertEquals(elements.stream().sorted().toList(), elements, made.sheet().heading().job());
    }
  }

  private static String extracted(byte[] pdf) throws IOException {
    try (PdfReader reader = new PdfReader(pdf)) {
      assertEquals(1, reader.getNumberOfPages());
      return new PdfTextExtractor(reader).getTextFromPage(1);
    }
  }

  private static String printed(Page page) {
    return page.items().stream()
        .filter(Item.Glyphs.class::isInstance)
        .map(item -> ((Item.Glyphs) item).text())
        .collect(Collectors.joining(" "));
  }

  /** Where words part is for the reading library to guess; that they stand in order is not. */
  private static String closedUp(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "");
  }
}
