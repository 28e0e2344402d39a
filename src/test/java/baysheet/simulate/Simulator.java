package baysheet.simulate;

import baysheet.record.PlacedBoxes;
import baysheet.scan.Grey;
import baysheet.scan.IssuedSheets.Issued;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Makes scans of sheets that somebody has written on; the same seed makes the same scan. */
public final class Simulator {
  private static final double POINTS = 72 / 25.4;

  /** Limits were set on these hands and pages. */
  public static final long TRAINING = 1_000_000;

  /** What is reported was measured on these, which share no seed with the others. */
  public static final long REPORTING = 9_000_000;

  private static final int HANDS = 400;

  /** On a soiled page; they hide one box in three. */
  private static final int SMUDGES = 15;

  private final List<Issued> sheets;
  private final long half;
  private final Map<String, byte[]> printed = new HashMap<>();
  private int width;
  private int height;

  /**
   * A scan and what is true of it.
   *
   * @param marked the names of the boxes that were written in
   * @param how what was done to it
   */
  public record Scan(Issued sheet, Grey picture, Set<String> marked, boolean dirty, String how) {}

  public Simulator(List<Issued> sheets, long half) {
    this.sheets = List.copyOf(sheets);
    this.half = half;
  }

  public Scan scan(int number) {
    Random chance = random(number);
    Issued sheet = sheets.get(chance.nextInt(sheets.size()));
    Sheeted page = print(sheet, chance);
    Hand hand = new Hand(mixed(half + 1 + chance.nextInt(HANDS)));
    Set<String> marked = write(sheet, page, hand, chance);
    boolean dirty = number % 2 == 1;
    StringBuilder how = new StringBuilder();
    for (int i = 0; dirty && i < 1 + chance.nextInt(3); i++) {
      Dirt dirt = Dirt.values()[chance.nextInt(Dirt.values().length)];
      dirt.on(page, chance);
      how.append(dirt).append(' ');
    }
    Scanner scanner = Scanner.any(chance, dirty);
    how.append(hand).append(' ').append(scanner);
    return new Scan(sheet, scanner.scan(page), marked, dirty, how.toString());
  }

  private Random random(int number) {
    return new Random(mixed(half + 7919L * number));
  }

  /**
   * The first figures that {@link Random} draws hardly differ for seeds that follow one another, so
   * that all hands would have one slant. The mixer is that of Steele, Lea and Flood (Fast
   * splittable pseudorandom number generators, 2014).
   */
  private static long mixed(long seed) {
    return new SplittableRandom(seed).nextLong();
  }

  /** A page that nobody wrote on, with far more grease about its boxes than any workshop leaves. */
  public Scan soiled(int number) {
    Random chance = random(-1 - number);
    Issued sheet = sheets.get(chance.nextInt(sheets.size()));
    Sheeted page = print(sheet, chance);
    List<PlacedBoxes.Box> boxes = sheet.boxes().boxes();
    for (int i = 0; i < SMUDGES; i++) {
      PlacedBoxes.Place at = boxes.get(chance.nextInt(boxes.size())).place();
      double x = at.x() / POINTS + chance.nextDouble() * at.w() / POINTS;
      double y = page.high() - (at.y() + chance.nextDouble() * at.h()) / POINTS;
      double astray = 1.5 * chance.nextGaussian();
      Dirt.smudge(page, chance, x + astray, y + astray, 1.2 + 6 * chance.nextDouble());
    }
    Scanner scanner = Scanner.any(chance, true);
    return new Scan(sheet, scanner.scan(page), Set.of(), true, "smudges " + scanner);
  }

  /** From crisp black to a cartridge that runs low. */
  private Sheeted print(Issued sheet, Random chance) {
    byte[] blank;
    synchronized (printed) {
      blank = printed.computeIfAbsent(sheet.id(), id -> draw(sheet)).clone();
    }
    int black = chance.nextInt(4) == 0 ? chance.nextInt(90) : chance.nextInt(30);
    for (int i = 0; i < blank.length; i++) {
      blank[i] = (byte) (black + (blank[i] & 0xff) * (255 - black) / 255);
    }
    return new Sheeted(width, height, blank);
  }

  private byte[] draw(Issued sheet) {
    try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
      float scale = (float) (Sheeted.PIXELS / POINTS);
      BufferedImage image = new PDFRenderer(document).renderImage(0, scale, ImageType.GRAY);
      width = image.getWidth();
      height = image.getHeight();
      return (byte[]) image.getRaster().getDataElements(0, 0, width, height, null);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot draw sheet " + sheet.id(), e);
    }
  }

  private Set<String> write(Issued sheet, Sheeted page, Hand hand, Random chance) {
    double left = new double[] {0.03, 0.15, 0.5}[chance.nextInt(3)];
    Set<String> marked = new HashSet<>();
    for (PlacedBoxes.Box box : sheet.boxes().boxes()) {
      boolean writes = chance.nextDouble() > (box.required() ? left : 0.7);
      if (writes) {
        marked.add(box.name());
        fill(box, page, hand, null);
      }
    }
    return marked;
  }

  /**
   * Writes in a box what belongs there.
   *
   * @param value a figure; any where this is null
   */
  static void fill(PlacedBoxes.Box box, Sheeted page, Hand hand, String value) {
    PlacedBoxes.Place at = box.place();
    double x = at.x() / POINTS;
    double y = page.high() - (at.y() + at.h()) / POINTS;
    double w = at.w() / POINTS;
    double h = at.h() / POINTS;
    if (value != null) {
      hand.value(page, x, y, w, h, value);
      return;
    }
    switch (box.kind()) {
      case "tick" -> hand.tick(page, x, y, w, h);
      case "value" -> hand.value(page, x, y, w, h);
      case "initials" -> hand.initials(page, x, y, w, h);
      case "signature" -> hand.signature(page, x, y, w, h);
      default -> hand.words(page, x, y, w, h);
    }
  }

  /** A sheet fresh from the printer. */
  static Sheeted blank(Issued sheet) {
    Simulator simulator = new Simulator(List.of(sheet), 0);
    byte[] pixels = simulator.draw(sheet);
    return new Sheeted(simulator.width, simulator.height, pixels);
  }
}
