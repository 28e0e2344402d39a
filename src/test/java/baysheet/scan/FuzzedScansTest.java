package baysheet.scan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever lies in a file of scans, each page of it is handed on or said to be unread.
 * DEVELOPERS.md says how to hunt.
 */
class FuzzedScansTest {
  @TempDir private static Path folder;

  @MethodSource("files")
  @FuzzTest(maxDuration = "10m")
  void anyFileIsReadOrSaidToBeUnread(byte[] bytes) throws IOException {
    Path file =
        Files.write(folder.resolve(bytes.length > 0 && bytes[0] == '%' ? "a.pdf" : "a.png"), bytes);
    List<String> handedOn = new ArrayList<>();
    ScanFile.read(
        file,
        new ScanFile.Pages() {
          @Override
          public void page(int number, Grey picture) {
            handedOn.add(number + " " + picture);
          }

          @Override
          public void unread(int number, String reason) {
            handedOn.add(number + " " + reason);
          }
        });
    assertTrue(!handedOn.isEmpty(), "nothing is read and nothing is said");
  }

  static Stream<byte[]> files() throws IOException {
    List<byte[]> files = new ArrayList<>();
    for (String format : List.of("png", "tiff", "jpg", "gif", "bmp")) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(new BufferedImage(40, 60, BufferedImage.TYPE_BYTE_GRAY), format, out);
      files.add(out.toByteArray());
    }
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage(new PDRectangle(100, 100)));
      PDAcroForm form = new PDAcroForm(document);
      document.getDocumentCatalog().setAcroForm(form);
      PDTextField field = new PDTextField(form);
      field.setPartialName("torque");
      form.getFields().add(field);
      document.getPage(0).getAnnotations().add(field.getWidgets().get(0));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      files.add(out.toByteArray());
    }
    return files.stream();
  }
}
