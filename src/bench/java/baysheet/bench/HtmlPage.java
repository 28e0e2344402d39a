package baysheet.bench;

import baysheet.layout.FontFile;
import baysheet.layout.Fonts;
import baysheet.layout.Tag;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The words of a page as HTML with a sheet of styles. */
final class HtmlPage {
  private static final int COLUMNS = 3;

  private static final String STYLES =
      """
      @page { size: A4; margin: 8mm }
      body { font-family: sheet; font-size: 5.5pt; line-height: 1.172 }
      body, h1, h2, h3, p, ul { margin: 0; padding: 0 }
      h1, h2, h3 { font-size: 6pt; font-weight: bold }
      table { width: 100%; border-collapse: collapse }
      .t td, .t th { border: 0.5pt solid black; padding: 1pt; text-align: left }
      .box { display: inline-block; width: 10pt; height: 10pt; border: 0.5pt solid black }
      td { vertical-align: top }
      """;

  private final byte[] regular = FontFile.trueType(Fonts.REGULAR);
  private final byte[] bold = FontFile.trueType(Fonts.BOLD);
  private final Optional<Outline> sequence;
  private final String html;

  HtmlPage(Outline outline) {
    XRLog.setLoggingEnabled(false);
    sequence = outline.longestList();
    StringBuilder out = new StringBuilder();
    out.append("<html><head><style>").append(STYLES).append("</style></head><body>");
    add(outline, out);
    html = out.append("</body></html>").toString();
  }

  byte[] write() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useFont(() -> new ByteArrayInputStream(regular), "sheet");
    builder.useFont(
        () -> new ByteArrayInputStream(bold),
        "sheet",
        700,
        PdfRendererBuilder.FontStyle.NORMAL,
        true);
    builder.withHtmlContent(html, null);
    builder.toStream(out);
    builder.run();
    return out.toByteArray();
  }

  private void add(Outline part, StringBuilder out) {
    if (sequence.filter(list -> list == part).isPresent()) {
      inColumns(part, out);
      return;
    }
    String element = element(part.type());
    String attributes = part.type() == Tag.Type.TABLE ? " class=\"t\"" : span(part);
    out.append('<').append(element).append(attributes).append('>').append(escaped(part.words()));
    part.children().forEach(child -> add(child, out));
    out.append("</").append(element).append('>');
  }

  private static String span(Outline part) {
    return part.span() > 1 ? " colspan=\"" + part.span() + "\"" : "";
  }

  private void inColumns(Outline list, StringBuilder out) {
    out.append("<table><tr>");
    List<Outline> entries = list.children();
    for (int i = 0; i < COLUMNS; i++) {
      out.append("<td><ul>");
      int from = entries.size() * i / COLUMNS;
      int to = entries.size() * (i + 1) / COLUMNS;
      for (Outline entry : entries.subList(from, to)) {
        out.append("<li><span class=\"box\"></span> ");
        out.append(escaped(entry.allWords())).append("</li>");
      }
      out.append("</ul></td>");
    }
    out.append("</tr></table>");
  }

  private static String element(Tag.Type type) {
    return switch (type) {
      case H1, H2, H3, P, THEAD, TBODY, TR, TD, TABLE -> type.name().toLowerCase(java.util.Locale.ROOT);
      case TH_COLUMN, TH_ROW -> "th";
      case L -> "ul";
      case LI -> "li";
      default -> "div";
    };
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
