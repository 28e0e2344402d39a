package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF file read back. */
record Paper(
    int pages, float width, float height, String text, Map<String, byte[]> attached, String title) {

  static Paper of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDRectangle box = document.getPage(0).getMediaBox();
      Map<String, byte[]> attached = new LinkedHashMap<>();
      PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
      Map<String, PDComplexFileSpecification> files =
          names == null ? Map.of() : names.getEmbeddedFiles().getNames();
      for (Map.Entry<String, PDComplexFileSpecification> file : files.entrySet()) {
        attached.put(
            file.getValue().getFilename(), file.getValue().getEmbeddedFile().toByteArray());
      }
      return new Paper(
          document.getNumberOfPages(),
          box.getWidth(),
          box.getHeight(),
          words(new PDFTextStripper().getText(document)),
          attached,
          document.getDocumentInformation().getTitle());
    } catch (IOException e) {
      throw new UncheckedIOException("no PDF file", e);
    }
  }

  /** One blank between words, whatever lines and spaces the page has there. */
  static String words(String text) {
    return text.replaceAll("[\\s\\u00A0\\u202F]+", " ");
  }
}
