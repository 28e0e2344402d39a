package baysheet.scan;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A grey picture: a byte a pixel, row by row from the top, 0 for black. The pixels are not copied;
 * whoever makes one leaves them alone afterwards.
 */
public record Grey(int width, int height, byte[] pixels) {
  /** Pixels a millimetre of a page that was set straight. */
  public static final int PIXELS = BlankPage.PIXELS;

  /** A picture with more pixels along its longer edge than this is halved: 300 dpi on A4 do. */
  private static final int LONGEST_EDGE = 4_200;

  private static final int OPAQUE = 0xff000000;

  /** Fine pen strokes stay clear, and a page takes half a megabyte. */
  private static final float QUALITY = 0.8f;

  public Grey {
    if (width < 1 || height < 1 || pixels.length != width * height) {
      throw new IllegalArgumentException(width + " x " + height + ", " + pixels.length);
    }
  }

  /** The first page of a sheet drawn at {@link #PIXELS} a millimetre. */
  public static Grey drawn(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      float scale = (float) (PIXELS / BlankPage.POINTS);
      return of(new PDFRenderer(document).renderImage(0, scale, ImageType.GRAY));
    }
  }

  /** The brightness of a pixel, 0 to 255. */
  public int at(int x, int y) {
    return pixels[y * width + x] & 0xff;
  }

  /** A picture of any kind as a grey one, halved until it is no finer than needed. */
  public static Grey of(BufferedImage image) {
    Grey grey = new Grey(image.getWidth(), image.getHeight(), samples(image));
    while (Math.max(grey.width, grey.height) > LONGEST_EDGE) {
      grey = grey.halved();
    }
    return grey;
  }

  /**
   * Grey samples are taken as they are: asking the picture for colours would put them through a
   * linear grey space and lighten every shade.
   */
  private static byte[] samples(BufferedImage image) {
    int width = image.getWidth();
    byte[] pixels = new byte[width * image.getHeight()];
    if (image.getType() == BufferedImage.TYPE_BYTE_GRAY) {
      image.getRaster().getDataElements(0, 0, width, image.getHeight(), pixels);
      return pixels;
    }
    // Asking each pixel for its colour takes ten times as long as copying what is stored.
    boolean plain = image.getType() == BufferedImage.TYPE_INT_RGB;
    int[] row = new int[width];
    for (int y = 0; y < image.getHeight(); y++) {
      if (plain) {
        image.getRaster().getDataElements(0, y, width, 1, row);
      } else {
        image.getRGB(0, y, width, 1, row, 0, width);
      }
      for (int x = 0; x < width; x++) {
        pixels[y * width + x] = (byte) luma(plain ? row[x] | OPAQUE : row[x]);
      }
    }
    return pixels;
  }

  /** Weights of ITU-R BT.601, in 1/256; what is transparent shows white paper. */
  private static int luma(int argb) {
    int alpha = argb >>> 24;
    int luma = (77 * (argb >> 16 & 0xff) + 150 * (argb >> 8 & 0xff) + 29 * (argb & 0xff)) >> 8;
    return (luma * alpha + 255 * (255 - alpha)) / 255;
  }

  /** Whether it is black and white: hardly anything lies between, as compression leaves it. */
  boolean isTwoTone() {
    long between = 0;
    for (byte pixel : pixels) {
      int shade = pixel & 0xff;
      between += shade >= 32 && shade < 224 ? 1 : 0;
    }
    return between * 200 < pixels.length;
  }

  private Grey halved() {
    int wide = width / 2;
    int high = height / 2;
    byte[] half = new byte[wide * high];
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < wide; x++) {
        int sum = at(2 * x, 2 * y) + at(2 * x + 1, 2 * y);
        sum += at(2 * x, 2 * y + 1) + at(2 * x + 1, 2 * y + 1);
        half[y * wide + x] = (byte) ((sum + 2) / 4);
      }
    }
    return new Grey(wide, high, half);
  }

  /** As a JPEG file (ISO/IEC 10918-1) of one component. */
  public byte[] jpeg() {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(QUALITY);
      BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
      image.getRaster().setDataElements(0, 0, width, height, pixels);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), how);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot compress a picture in memory", e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** A rectangle of this picture, as far as it lies inside; at least one pixel. */
  public Grey crop(int left, int top, int wide, int high) {
    int x = Math.max(0, Math.min(left, width - 1));
    int y = Math.max(0, Math.min(top, height - 1));
    int w = Math.max(1, Math.min(left + wide, width) - x);
    int h = Math.max(1, Math.min(top + high, height) - y);
    byte[] part = new byte[w * h];
    for (int row = 0; row < h; row++) {
      System.arraycopy(pixels, (y + row) * width + x, part, row * w, w);
    }
    return new Grey(w, h, part);
  }

  /** Twice as large, with values between neighbours in between. */
  Grey doubled() {
    int wide = 2 * width;
    byte[] twice = new byte[wide * 2 * height];
    for (int y = 0; y < 2 * height; y++) {
      for (int x = 0; x < wide; x++) {
        twice[y * wide + x] = (byte) Math.round(between(x / 2.0 - 0.25, y / 2.0 - 0.25));
      }
    }
    return new Grey(wide, 2 * height, twice);
  }

  /** Each pixel with those around it, as far as that many to either side. */
  Grey averaged(int half) {
    Sums sums = new Sums(this);
    byte[] averages = new byte[pixels.length];
    for (int y = 0; y < height; y++) {
      int top = Math.max(0, y - half);
      int bottom = Math.min(height, y + half + 1);
      for (int x = 0; x < width; x++) {
        int left = Math.max(0, x - half);
        int right = Math.min(width, x + half + 1);
        long count = (long) (right - left) * (bottom - top);
        averages[y * width + x] = (byte) (sums.sum(left, top, right, bottom) / count);
      }
    }
    return new Grey(width, height, averages);
  }

  /** The brightness at a point between pixel centres; outside the picture it is white. */
  double between(double x, double y) {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    double right = x - left;
    double down = y - top;
    double upper = clamped(left, top) * (1 - right) + clamped(left + 1, top) * right;
    double lower = clamped(left, top + 1) * (1 - right) + clamped(left + 1, top + 1) * right;
    return upper * (1 - down) + lower * down;
  }

  private int clamped(int x, int y) {
    return x < 0 || y < 0 || x >= width || y >= height ? 255 : at(x, y);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Grey that && width == that.width && Arrays.equals(pixels, that.pixels);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(pixels);
  }

  @Override
  public String toString() {
    return width + " x " + height;
  }
}
