package baysheet.bench;

import baysheet.layout.FontFile;
import baysheet.layout.Fonts;
import baysheet.layout.Tag;
import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Element;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The words of a page as paragraphs and nested tables. */
final class TablePage {
  /** Small enough for one page. */
  private static final float SIZE = 5.5f;

  private static final float MARGIN = 24;
  private static final int COLUMNS = 3;

  private final Outline outline;
  private final Optional<Outline> sequence;
  private final Font regular;
  private final Font bold;

  TablePage(Outline outline) throws IOException {
    this.outline = outline;
    sequence = outline.longestList();
    regular = new Font(base(Fonts.REGULAR), SIZE);
    bold = new Font(base(Fonts.BOLD), SIZE);
  }

  private static BaseFont base(String resource) throws IOException {
    return BaseFont.createFont(
        "face.ttf", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, FontFile.trueType(resource), null);
  }

  byte[] write() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
    Document document = new Document(PageSize.A4, MARGIN, MARGIN, MARGIN, MARGIN);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    document.open();
    add(outline, document);
    int pages = writer.getPageNumber();
    document.close();
    if (pages != 1) {
      throw new IllegalStateException(pages + " pages");
    }
    return out.toByteArray();
  }

  private void add(Outline part, Document document) throws DocumentException {
    if (sequence.filter(list -> list == part).isPresent()) {
      document.add(inColumns(part));
    } else if (part.type() == Tag.Type.TABLE) {
      document.add(table(part));
    } else {
      if (!part.words().isEmpty()) {
        document.add(paragraph(part));
      }
      for (Outline child : part.children()) {
        add(child, document);
      }
    }
  }

  private Paragraph paragraph(Outline part) {
    return new Paragraph(SIZE * 1.172f, part.words(), isHeading(part.type()) ? bold : regular);
  }

  private static boolean isHeading(Tag.Type type) {
    return List.of(Tag.Type.H1, Tag.Type.H2, Tag.Type.H3).contains(type);
  }

  private PdfPTable inColumns(Outline list) {
    PdfPTable columns = full(COLUMNS);
    List<Outline> entries = list.children();
    for (int i = 0; i < COLUMNS; i++) {
      PdfPCell cell = new PdfPCell();
      cell.setBorder(0);
      int from = entries.size() * i / COLUMNS;
      int to = entries.size() * (i + 1) / COLUMNS;
      entries.subList(from, to).forEach(entry -> cell.addElement(step(entry)));
      columns.addCell(cell);
    }
    return columns;
  }

  /** A tick box and a sentence. */
  private PdfPTable step(Outline entry) {
    PdfPTable row = full(2);
    row.setWidths(new float[] {1, 9});
    row.addCell(new PdfPCell(new Phrase("", regular)));
    PdfPCell cell = new PdfPCell(new Phrase(SIZE * 1.172f, entry.allWords(), regular));
    cell.setBorder(0);
    row.addCell(cell);
    return row;
  }

  private PdfPTable table(Outline table) {
    List<Outline> rows = table.rows();
    PdfPTable drawn = full(wide(rows.get(0)));
    for (Outline row : rows) {
      for (Outline cell : row.children()) {
        boolean heading = cell.type() != Tag.Type.TD;
        PdfPCell made =
            new PdfPCell(new Phrase(SIZE * 1.172f, cell.allWords(), heading ? bold : regular));
        made.setColspan(cell.span());
        made.setHorizontalAlignment(Element.ALIGN_LEFT);
        drawn.addCell(made);
      }
    }
    return drawn;
  }

  private static int wide(Outline row) {
    return row.children().stream().mapToInt(Outline::span).sum();
  }

  private static PdfPTable full(int columns) {
    PdfPTable table = new PdfPTable(columns);
    table.setWidthPercentage(100);
    return table;
  }
}
