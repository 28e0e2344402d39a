package baysheet.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.image.CCITTFactory;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class ScanFileTest {
  private static final int WIDTH = 200;
  private static final int HEIGHT = 283;

  @TempDir private Path folder;

  /** What was read of a file. */
  private static final class Read implements ScanFile.Pages {
    final List<Grey> pages = new ArrayList<>();
    final List<String> unread = new ArrayList<>();

    static Read of(Path file) {
      Read read = new Read();
      ScanFile.read(file, read);
      return read;
    }

    @Override
    public void page(int number, Grey picture) {
      pages.add(picture);
    }

    @Override
    public void unread(int number, String reason) {
      unread.add(number + " " + reason);
    }
  }

  /** Three bars of known places, so that a turned, mirrored or inverted picture is noticed. */
  private static BufferedImage bars(int type) {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, type);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, WIDTH, HEIGHT);
    graphics.setColor(Color.BLACK);
    graphics.fillRect(16, 24, 96, 16);
    graphics.fillRect(16, 24, 16, 120);
    graphics.fillRect(144, 240, 32, 32);
    graphics.dispose();
    return image;
  }

  private static boolean isBar(int x, int y) {
    return x >= 16 && x < 112 && y >= 24 && y < 40
        || x >= 16 && x < 32 && y >= 24 && y < 144
        || x >= 144 && x < 176 && y >= 240 && y < 272;
  }

  private static void assertBars(Grey picture, String what) {
    assertEquals(WIDTH + " x " + HEIGHT, picture.toString(), what);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int shade = picture.at(x, y);
        assertTrue(isBar(x, y) ? shade < 40 : shade > 215, what + " at " + x + ", " + y);
      }
    }
  }

  @Test
  void everyWayInWhichScannersPackPicturesIsRead() throws IOException {
    Path file = folder.resolve("stack.pdf");
    BufferedImage black = bars(BufferedImage.TYPE_BYTE_BINARY);
    try (PDDocument document = new PDDocument()) {
      add(document, CCITTFactory.createFromImage(document, black));
      add(document, jbig2(document, black));
      add(document, JPEGFactory.createFromImage(document, bars(BufferedImage.TYPE_INT_RGB), 0.9f));
      add(
          document,
          JPEGFactory.createFromImage(document, bars(BufferedImage.TYPE_BYTE_GRAY), 0.9f));
      add(document, LosslessFactory.createFromImage(document, bars(BufferedImage.TYPE_BYTE_GRAY)));
      document.save(file.toFile());
    }
    Read read = Read.of(file);
    assertEquals(List.of(), read.unread);
    assertEquals(5, read.pages.size());
    for (int i = 0; i < 5; i++) {
      assertBars(read.pages.get(i), "page " + (i + 1));
    }
  }

  private static void add(PDDocument document, PDImageXObject image) throws IOException {
    PDPage page = new PDPage(PDRectangle.A4);
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.drawImage(image, 0, 0, PDRectangle.A4.getWidth(), PDRectangle.A4.getHeight());
    }
  }

  /**
   * ITU-T T.88: a page (segment type 48) and a generic region (39) whose bits are packed as in T.6.
   */
  private static PDImageXObject jbig2(PDDocument document, BufferedImage black) throws IOException {
    byte[] t6;
    try (var raw =
        CCITTFactory.createFromImage(document, black).getCOSObject().createRawInputStream()) {
      t6 = raw.readAllBytes();
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    segment(out, 0, 48, 19);
    out.writeInt(WIDTH);
    out.writeInt(HEIGHT);
    out.write(new byte[11]);
    segment(out, 1, 39, 18 + t6.length);
    out.writeInt(WIDTH);
    out.writeInt(HEIGHT);
    out.write(new byte[9]);
    out.writeByte(1);
    out.write(t6);
    return new PDImageXObject(
        document,
        new ByteArrayInputStream(bytes.toByteArray()),
        COSName.JBIG2_DECODE,
        WIDTH,
        HEIGHT,
        1,
        PDDeviceGray.INSTANCE);
  }

  private static void segment(DataOutputStream out, int number, int type, int length)
      throws IOException {
    out.writeInt(number);
    out.writeByte(type);
    out.writeByte(0);
    out.writeByte(1);
    out.writeInt(length);
  }

  @Test
  void drawnPageIsReadAsAScannerWouldSeeIt() throws IOException {
    Path file = folder.resolve("drawn.pdf");
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(72, 144));
      document.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.addRect(0, 72, 36, 72);
        content.fill();
      }
      document.save(file.toFile());
    }
    Grey drawn = Read.of(file).pages.get(0);
    assertEquals("200 x 400", drawn.toString());
    assertEquals(0, drawn.at(50, 100));
    assertEquals(255, drawn.at(150, 100));
    assertEquals(255, drawn.at(50, 300));
  }

  @Test
  void tiffOfSeveralPagesAndSinglePicturesAreRead() throws IOException {
    Path tiff = folder.resolve("stack.tif");
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    try (ImageOutputStream out = ImageIO.createImageOutputStream(tiff.toFile())) {
      writer.setOutput(out);
      writer.prepareWriteSequence(null);
      for (String how : List.of("CCITT T.6", "LZW", "Deflate")) {
        param.setCompressionType(how);
        int type =
            how.startsWith("CCITT") ? BufferedImage.TYPE_BYTE_BINARY : BufferedImage.TYPE_BYTE_GRAY;
        writer.writeToSequence(new IIOImage(bars(type), null, null), param);
      }
      writer.endWriteSequence();
    }
    Path png = folder.resolve("one.png");
    ImageIO.write(bars(BufferedImage.TYPE_INT_RGB), "png", png.toFile());
    Path jpeg = folder.resolve("one.jpg");
    ImageIO.write(bars(BufferedImage.TYPE_BYTE_GRAY), "jpeg", jpeg.toFile());
    assertEquals(3, Read.of(tiff).pages.size());
    for (Path file : List.of(tiff, png, jpeg)) {
      Read read = Read.of(file);
      assertEquals(List.of(), read.unread);
      read.pages.forEach(page -> assertBars(page, file.getFileName().toString()));
    }
  }

  @Test
  void brokenFilesSayWhyAndNothingIsThrown() throws IOException {
    Path good = folder.resolve("good.pdf");
    try (PDDocument document = new PDDocument()) {
      add(document, LosslessFactory.createFromImage(document, bars(BufferedImage.TYPE_BYTE_GRAY)));
      document.save(good.toFile());
    }
    byte[] whole = Files.readAllBytes(good);
    List<byte[]> broken =
        List.of(
            new byte[0],
            "no picture at all".getBytes(StandardCharsets.US_ASCII),
            Arrays.copyOf(whole, 40),
            "%PDF-1.7\n%%EOF".getBytes(StandardCharsets.US_ASCII),
            Arrays.copyOf(png(WIDTH, HEIGHT), 60));
    for (byte[] bytes : broken) {
      Path file = folder.resolve("broken");
      Files.write(file, bytes);
      Read read = Read.of(file);
      assertEquals(List.of(), read.pages);
      assertEquals(1, read.unread.size(), read.unread.toString());
      assertTrue(
          read.unread
              .get(0)
              .endsWith("cannot be read: it is damaged, or not a PDF, TIFF, PNG or JPEG"),
          read.unread.toString());
    }
    assertTrue(Read.of(folder.resolve("absent.pdf")).unread.get(0).contains("cannot be read: "));
  }

  @Test
  void aFileWithoutPagesIsSaid() throws IOException {
    Path pdf = folder.resolve("empty.pdf");
    try (PDDocument document = new PDDocument()) {
      document.save(pdf.toFile());
    }
    Path gif = folder.resolve("empty.gif");
    Files.writeString(gif, "GIF89a\1\0\1\0\0\0\0;", StandardCharsets.ISO_8859_1);
    for (Path file : List.of(pdf, gif)) {
      assertEquals(
          List.of("0 the file cannot be read: it has no page"), Read.of(file).unread, file + "");
    }
  }

  /** Reading a pipe waits for a writer that may never come. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsNotWaitedFor() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe.pdf");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    assertEquals(
        List.of("0 the file cannot be read: it is neither a file nor a folder"),
        Read.of(pipe).unread);
  }

  /** A disk that is full is no fault of the scan, and stops the run. */
  @Test
  void whatTheTakerOfThePagesThrowsIsNoFaultOfTheFile() throws IOException {
    Path file = folder.resolve("one.png");
    ImageIO.write(bars(BufferedImage.TYPE_BYTE_GRAY), "png", file.toFile());
    UncheckedIOException full = new UncheckedIOException(new IOException("no space left"));
    ScanFile.Pages pages =
        new ScanFile.Pages() {
          @Override
          public void page(int number, Grey picture) {
            throw full;
          }

          @Override
          public void unread(int number, String reason) {
            throw new AssertionError(reason);
          }
        };
    assertSame(full, assertThrows(UncheckedIOException.class, () -> ScanFile.read(file, pages)));
  }

  @Test
  void pictureThatIsTooLargeIsNotUnpacked() throws IOException {
    Path file = folder.resolve("large.png");
    Files.write(file, png(60_000, 60_000));
    Read read = Read.of(file);
    assertEquals(List.of(), read.pages);
    assertEquals(
        List.of(
            "1 the page cannot be read: 60000 by 60000 pixels, where at most 40 million are read"),
        read.unread);
  }

  /** A PNG that says how large it is, and holds nothing. */
  private static byte[] png(int width, int height) {
    byte[] head =
        ByteBuffer.allocate(17)
            .put("IHDR".getBytes(StandardCharsets.US_ASCII))
            .putInt(width)
            .putInt(height)
            .put(new byte[] {8, 0, 0, 0, 0})
            .array();
    CRC32 crc = new CRC32();
    crc.update(head);
    return ByteBuffer.allocate(60)
        .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10})
        .putInt(13)
        .put(head)
        .putInt((int) crc.getValue())
        .array();
  }
}
