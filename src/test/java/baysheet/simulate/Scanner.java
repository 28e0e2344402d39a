package baysheet.simulate;

import baysheet.scan.Grey;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * How a page is scanned.
 *
 * @param degrees how askew it lies
 * @param quarters how often it is turned by a quarter
 * @param across its scale across
 * @param down its scale down
 * @param threshold where grey becomes black; 0 for a grey scan
 * @param jpeg quality in percent; 0 for none
 * @param streaks lines of dust on the glass
 * @param lid how bright the glass is where no paper lies
 */
record Scanner(
    int dpi,
    double degrees,
    int quarters,
    double across,
    double down,
    double noise,
    int threshold,
    int jpeg,
    int streaks,
    int lid,
    long seed) {

  private static final double BEYOND = 4;

  static Scanner any(Random chance, boolean dirty) {
    double scale = 0.97 + 0.06 * chance.nextDouble();
    boolean black = chance.nextInt(3) == 0;
    return new Scanner(
        new int[] {150, 200, 300}[chance.nextInt(3)],
        6 * chance.nextDouble() - 3,
        chance.nextInt(4),
        scale,
        scale + 0.006 * (chance.nextDouble() - 0.5),
        1 + 5 * chance.nextDouble(),
        black ? 115 + chance.nextInt(55) : 0,
        black || chance.nextBoolean() ? 0 : 30 + chance.nextInt(61),
        dirty && chance.nextInt(4) == 0 ? 1 + chance.nextInt(2) : 0,
        chance.nextInt(3) == 0 ? 40 : 245,
        chance.nextLong());
  }

  Grey scan(Sheeted page) {
    Random chance = new Random(seed);
    double px = dpi / 25.4;
    // A feeder scans more than the paper, so that nothing of a page that lies askew is lost.
    int wide = (int) Math.round((page.wide() + 2 * BEYOND) * px);
    int high = (int) Math.round((page.high() + 2 * BEYOND) * px);
    double sin = Math.sin(Math.toRadians(degrees));
    double cos = Math.cos(Math.toRadians(degrees));
    double moveX = 4 * chance.nextDouble() - 2;
    double moveY = 4 * chance.nextDouble() - 2;
    double black = 15 + 40 * chance.nextDouble();
    double white = 222 + 30 * chance.nextDouble();
    byte[] out = new byte[wide * high];
    double step = (double) Sheeted.PIXELS / px;
    // A lens spreads every point over half a pixel; coarse scans average what is finer.
    double spread = step * (0.25 + 0.25 * chance.nextDouble());
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < wide; x++) {
        double u = (x - wide / 2.0) / px - moveX;
        double v = (y - high / 2.0) / px - moveY;
        double sx = ((u * cos + v * sin) / across + page.wide() / 2) * Sheeted.PIXELS;
        double sy = ((v * cos - u * sin) / down + page.high() / 2) * Sheeted.PIXELS;
        int sum = sample(page, sx - spread, sy - spread) + sample(page, sx + spread, sy - spread);
        sum += sample(page, sx - spread, sy + spread) + sample(page, sx + spread, sy + spread);
        double value = black + sum / 4.0 / 255 * (white - black) + noise * gauss(chance);
        out[y * wide + x] = (byte) clamp(value);
      }
    }
    for (int i = 0; i < streaks; i++) {
      streak(out, wide, high, chance);
    }
    if (threshold > 0) {
      for (int i = 0; i < out.length; i++) {
        out[i] = (byte) ((out[i] & 0xff) < threshold ? 0 : 255);
      }
    }
    Grey scanned = new Grey(wide, high, out);
    for (int i = 0; i < quarters; i++) {
      scanned = turned(scanned);
    }
    return jpeg > 0 ? compressed(scanned) : scanned;
  }

  private int sample(Sheeted page, double x, double y) {
    int px = (int) Math.floor(x);
    int py = (int) Math.floor(y);
    boolean on = px >= 0 && py >= 0 && px < page.width && py < page.height;
    return on ? page.pixels[py * page.width + px] & 0xff : lid;
  }

  /** Nearly normal, and quick. */
  private static double gauss(Random chance) {
    int bits = chance.nextInt();
    return ((bits & 0xff) + (bits >> 8 & 0xff) + (bits >> 16 & 0xff) - 382) / 128.0;
  }

  private static int clamp(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }

  private static void streak(byte[] out, int wide, int high, Random chance) {
    int x = chance.nextInt(wide - 3);
    int thick = 1 + chance.nextInt(2);
    int level = 40 + chance.nextInt(120);
    for (int y = 0; y < high; y++) {
      for (int i = 0; i < thick; i++) {
        int at = y * wide + x + i;
        out[at] = (byte) Math.min(out[at] & 0xff, level + chance.nextInt(20));
      }
    }
  }

  private static Grey turned(Grey grey) {
    int wide = grey.height();
    int high = grey.width();
    byte[] out = new byte[wide * high];
    for (int y = 0; y < high; y++) {
      for (int x = 0; x < wide; x++) {
        out[y * wide + x] = grey.pixels()[(wide - 1 - x) * high + y];
      }
    }
    return new Grey(wide, high, out);
  }

  static BufferedImage image(Grey grey) {
    BufferedImage image =
        new BufferedImage(grey.width(), grey.height(), BufferedImage.TYPE_BYTE_GRAY);
    image.getRaster().setDataElements(0, 0, grey.width(), grey.height(), grey.pixels());
    return image;
  }

  private Grey compressed(Grey grey) {
    try {
      ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(jpeg / 100f);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
        writer.setOutput(out);
        writer.write(null, new IIOImage(image(grey), null, null), param);
      }
      writer.dispose();
      BufferedImage back = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
      byte[] pixels =
          (byte[]) back.getRaster().getDataElements(0, 0, grey.width(), grey.height(), null);
      return new Grey(grey.width(), grey.height(), pixels);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot compress a picture in memory", e);
    }
  }
}
