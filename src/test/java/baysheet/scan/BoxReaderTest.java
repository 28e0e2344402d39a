package baysheet.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import baysheet.record.PlacedBoxes;
import baysheet.scan.PageReading.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One box on a small page, and what lies in it: shapes with sharp edges, in millimetres. What is a
 * stroke and what is not is common sense, without a source.
 */
class BoxReaderTest {
  private static final int WIDTH = 40;
  private static final int HEIGHT = 24;
  private static final double BORDER = 0.3;

  /** Of the box that is looked at. */
  private static final double LEFT = 6;

  private static final double TOP = 8;
  private static final double TICK = 3.4;
  private static final double APART = 8;

  private static final int PAPER = 235;
  private static final int INK = 40;

  /** Darkens a point, or not. */
  private interface Shape {
    boolean covers(double x, double y);
  }

  private final List<Shape> shapes = new ArrayList<>();

  /** Around the shapes, in mm, and how bright it is there. */
  private double fade;

  private int halo = PAPER;
  private double wide = TICK;
  private double high = TICK;
  private String kind = "tick";
  private int ink = INK;

  private void box(String of, double width, double height) {
    kind = of;
    wide = width;
    high = height;
  }

  /** A line of even width with round ends. */
  private void line(double width, double... points) {
    for (int i = 0; i + 3 < points.length; i += 2) {
      double ax = LEFT + points[i];
      double ay = TOP + points[i + 1];
      double bx = LEFT + points[i + 2];
      double by = TOP + points[i + 3];
      shapes.add((x, y) -> distance(x, y, ax, ay, bx, by) <= width / 2);
    }
  }

  private static double distance(double x, double y, double ax, double ay, double bx, double by) {
    double length = (bx - ax) * (bx - ax) + (by - ay) * (by - ay);
    double along = length == 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length;
    double t = Math.max(0, Math.min(1, along));
    return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
  }

  /** A drop, with half axes. */
  private void blot(double x, double y, double along, double across, double angle) {
    shapes.add(
        (px, py) -> {
          double u = (px - LEFT - x) * Math.cos(angle) + (py - TOP - y) * Math.sin(angle);
          double v = (py - TOP - y) * Math.cos(angle) - (px - LEFT - x) * Math.sin(angle);
          return Math.hypot(u / along, v / across) <= 1;
        });
  }

  private State read(boolean blackAndWhite) {
    return read(blackAndWhite, 0);
  }

  /**
   * @param others boxes to the right, {@link #APART} from one another, which are read as well
   */
  private State read(boolean blackAndWhite, int others) {
    Grey blank = page(false, 0, 255);
    Grey page = page(true, blackAndWhite ? 0 : ink, blackAndWhite ? 255 : PAPER);
    double points = BlankPage.POINTS;
    List<PlacedBoxes.Box> boxes = new ArrayList<>();
    for (int i = 0; i <= others; i++) {
      PlacedBoxes.Place place =
          new PlacedBoxes.Place(
              (LEFT + i * APART) * points,
              (HEIGHT - TOP - high) * points,
              wide * points,
              high * points);
      boxes.add(new PlacedBoxes.Box("b" + i, kind, true, place));
    }
    BlankPage printed = BlankPage.of(blank, HEIGHT * points);
    return PageReader.read(page, printed, boxes, blackAndWhite).get(0).state();
  }

  private Grey page(boolean written, int black, int white) {
    int size = BlankPage.PIXELS;
    byte[] pixels = new byte[WIDTH * size * HEIGHT * size];
    for (int i = 0; i < pixels.length; i++) {
      double x = (i % (WIDTH * size) + 0.5) / size;
      double y = (i / (WIDTH * size) + 0.5) / size;
      boolean dark = border(x, y) || written && shapes.stream().anyMatch(it -> it.covers(x, y));
      boolean fades = written && fade > 0 && isNear(x, y);
      pixels[i] = (byte) (dark ? black : fades ? halo : white);
    }
    return new Grey(WIDTH * size, HEIGHT * size, pixels);
  }

  private boolean isNear(double x, double y) {
    for (int i = 0; i < 16; i++) {
      double dx = fade * Math.cos(i * Math.PI / 8);
      double dy = fade * Math.sin(i * Math.PI / 8);
      if (shapes.stream().anyMatch(it -> it.covers(x + dx, y + dy))) {
        return true;
      }
    }
    return false;
  }

  private boolean border(double x, double y) {
    boolean in = x >= LEFT && x < LEFT + wide && y >= TOP && y < TOP + high;
    double deep = Math.min(Math.min(x - LEFT, LEFT + wide - x), Math.min(y - TOP, TOP + high - y));
    return in && deep < BORDER;
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void emptyBoxIsEmpty(boolean blackAndWhite) {
    assertEquals(State.EMPTY, read(blackAndWhite));
  }

  @ParameterizedTest
  @CsvSource({"0.3, false", "0.3, true", "0.6, false", "0.6, true", "0.9, false"})
  void tickIsMarked(double width, boolean blackAndWhite) {
    line(width, 0.5, 1.6, 1.3, 2.8, 3.3, 0.2);
    assertEquals(State.MARKED, read(blackAndWhite));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void crossIsMarked(boolean blackAndWhite) {
    line(0.5, 0.5, 0.5, 2.9, 2.9);
    line(0.5, 2.9, 0.5, 0.5, 2.9);
    assertEquals(State.MARKED, read(blackAndWhite));
  }

  /** A marker takes most of the box; in black and white a single one may be stains that cross. */
  @ParameterizedTest
  @CsvSource({"false, MARKED", "true, DOUBTFUL"})
  void thickCrossIsMarked(boolean blackAndWhite, State expected) {
    line(0.9, 0.2, 0.2, 3.2, 3.2);
    line(0.9, 3.2, 0.2, 0.2, 3.2);
    assertEquals(expected, read(blackAndWhite));
  }

  /**
   * Of it, two strokes show in the box, neither as long as a tick. In black and white they may be
   * slivers of stains where no other box has a sure stroke.
   */
  @ParameterizedTest
  @CsvSource({"false, 0, MARKED", "true, 1, MARKED", "true, 0, DOUBTFUL"})
  void tickWithItsBottomUnderTheBorderIsMarked(boolean blackAndWhite, int others, State expected) {
    if (others > 0) {
      line(0.35, APART + 0.5, 1.6, APART + 1.3, 2.8, APART + 3.3, 0.2);
    }
    List<Shape> beside = List.copyOf(shapes);
    line(0.35, 0.55, 1.7, 1.2, 3.4, 2.35, 1.9);
    assertEquals(expected, read(blackAndWhite, others));
    shapes.clear();
    shapes.addAll(beside);
    line(0.35, 0.55, 1.7, 1.2, 3.4);
    assertNotEquals(State.MARKED, read(blackAndWhite, others), "one of the two alone");
  }

  /** Most of a tick lies about its box; what shows inside is shorter than the shortest tick. */
  @Test
  void longArmThroughACornerIsMarked() {
    line(0.35, 1.2, 4.3, 3.6, 0.9);
    assertEquals(State.MARKED, read(false));
  }

  /** The end of it is in the next box, so either could be meant. */
  @Test
  void longArmBetweenTwoBoxesIsNoTick() {
    box("tick", 7.5, TICK);
    line(0.35, 6.0, 3.0, 9.0, 0.6);
    assertNotEquals(State.MARKED, read(false, 1));
  }

  /** Strokes of neighbours that come in from both sides lean the other way. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void endsOfTwoNeighboursAreNoTick(boolean blackAndWhite) {
    line(0.45, -1.6, 4.4, 0.9, 1.6);
    line(0.45, 2.4, 1.8, 3.6, 4.6);
    assertNotEquals(State.MARKED, read(blackAndWhite));
  }

  /** Pale ink near the threshold of a scan in black and white: dots, with less paper between. */
  @ParameterizedTest
  @CsvSource({"0.3, 0.4", "0.35, 0.5", "0.4, 0.55"})
  void tickOfDotsIsMarkedWhereOthersAreLikeIt(double dot, double apart) {
    for (int i = 0; i <= 3; i++) {
      double left = 0.5 + i * APART;
      for (double x = 0; x <= 0.8; x += apart * 0.55) {
        line(dot, left + x, 1.6 + 1.5 * x, left + x, 1.6 + 1.5 * x);
      }
      for (double x = 0; x <= 1.7; x += apart * 0.58) {
        line(dot, left + 0.8 + x, 2.8 - 1.4 * x, left + 0.8 + x, 2.8 - 1.4 * x);
      }
    }
    assertEquals(State.DOUBTFUL, read(true, 0), "the only one that is looked at");
    assertEquals(State.MARKED, read(true, 3));
  }

  /** The bottom of a tick in the box above, which overruns by two fifths of the box at most. */
  @ParameterizedTest
  @CsvSource({"0.4, 0.8", "0.6, 1.0", "0.6, 1.2", "0.9, 0.6", "0.9, 1.0"})
  void bottomOfATickAboveIsNoTick(double width, double deep) {
    for (boolean blackAndWhite : new boolean[] {false, true}) {
      for (int slope = 1; slope <= 3; slope++) {
        shapes.clear();
        line(width, 1.7 - 3.0 / slope, deep - 3.2, 1.7, deep, 1.7 + 3.0 / slope, deep - 3.2);
        assertNotEquals(State.MARKED, read(blackAndWhite), slope + " " + blackAndWhite);
      }
    }
  }

  /** In black and white a short thick dash may be a smudge, if others are not as wide. */
  @ParameterizedTest
  @CsvSource({"0.6, 3, MARKED", "0.6, 2, DOUBTFUL", "0.9, 3, DOUBTFUL", "0.6, 0, DOUBTFUL"})
  void dashIsMarkedWhereOthersAreOfTheSamePen(double width, int others, State expected) {
    line(0.6, 1.0, 2.4, 2.3, 0.9);
    for (int i = 1; i <= others; i++) {
      double x = i * APART;
      line(width, x, 3.8, x + 3.4, -0.3);
    }
    assertEquals(expected, read(true, others));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void longEvenDashIsMarked(boolean blackAndWhite) {
    line(0.5, 0.6, 2.9, 2.8, 0.5);
    assertEquals(State.MARKED, read(blackAndWhite));
  }

  /** Pale ink with sharp edges is a pen's; what fades into the paper is a smudge. */
  @ParameterizedTest
  @CsvSource({"235, MARKED", "215, MARKED", "198, DOUBTFUL"})
  void paleDashThatFadesIsNoTick(int beside, State expected) {
    ink = 129;
    fade = 0.6;
    halo = beside;
    line(0.5, 0.6, 2.9, 2.8, 0.5);
    assertEquals(expected, read(false));
  }

  /** A smudge in black and white has a stroke's darkness and sharp edges. */
  @ParameterizedTest
  @CsvSource({"1.2, 0.55", "1.0, 0.5", "1.4, 0.8", "1.0, 1.0", "0.9, 0.4"})
  void shortDropIsNoTickInBlackAndWhite(double along, double across) {
    blot(1.7, 1.7, along, across, -0.9);
    assertEquals(State.DOUBTFUL, read(true));
  }

  /** Centred on the middle of each side: inside shows a half, or a sliver beside the border. */
  @ParameterizedTest
  @ValueSource(doubles = {0.7, 0.9, 1.1, 1.3, 1.6, 2.0})
  void blotOnABorderIsNoTick(double radius) {
    double[][] middles = {{0, 1.7}, {3.4, 1.7}, {1.7, 0}, {1.7, 3.4}, {0, 0}, {3.4, 3.4}};
    for (double[] middle : middles) {
      for (double flat : new double[] {0.5, 0.75, 1}) {
        shapes.clear();
        blot(middle[0], middle[1], radius, radius * flat, 1);
        assertNotEquals(State.MARKED, read(true), "black and white, " + flat);
        assertNotEquals(State.MARKED, read(false), "grey, " + flat);
      }
    }
  }

  /** The blot lies outside; of it a strip of less than a millimetre shows beside the border. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.7, 0.9, 1.1})
  void sliverOfABlotIsNoTick(double shown) {
    blot(shown - 2.5, 1.7, 2.5, 2, 0);
    assertNotEquals(State.MARKED, read(true));
    assertNotEquals(State.MARKED, read(false));
  }

  /** Where a smudge crosses the threshold, noise tears its edge. */
  @Test
  void shortRaggedDashIsNoTick() {
    Random chance = new Random(7);
    boolean[] torn = new boolean[64 * 64];
    for (int i = 0; i < torn.length; i++) {
      torn[i] = chance.nextInt(3) == 0;
    }
    line(0.7, 0.9, 2.4, 2.4, 1.0);
    Shape dash = shapes.remove(0);
    line(0.4, 0.9, 2.4, 2.4, 1.0);
    shapes.add((x, y) -> dash.covers(x, y) && torn[(int) (x * 8) % 64 + (int) (y * 8) % 64 * 64]);
    assertEquals(State.DOUBTFUL, read(true));
  }

  /** Wherever a drop lies about a box, it is no tick. */
  @Test
  void dropAboutABoxIsNoTick() {
    Random chance = new Random(20261129);
    for (int i = 0; i < 200; i++) {
      shapes.clear();
      double along = 0.5 + 1.5 * chance.nextDouble();
      double flat = 0.45 + 0.55 * chance.nextDouble();
      double x = 1.7 + 2 * chance.nextGaussian();
      double y = 1.7 + 2 * chance.nextGaussian();
      double angle = 3 * chance.nextDouble();
      blot(x, y, along, along * flat, angle);
      assertNotEquals(
          State.MARKED, read(i % 2 == 0), List.of(i, x, y, along, flat, angle).toString());
    }
  }

  /** Dust on the glass draws a line down the page; a signature is never one straight line. */
  @ParameterizedTest
  @CsvSource({"signature, 60", "initials, 40", "line, 40", "value, 40", "signature, 120"})
  void streakIsNoWriting(String of, int level) {
    box(of, of.equals("signature") ? 30 : 12, of.equals("signature") ? 10 : 6);
    ink = level;
    line(0.25, 4.2, -8, 4.8, 16);
    assertNotEquals(State.MARKED, read(false));
    assertNotEquals(State.MARKED, read(true));
  }

  /** Within a wide box it bends, but far less than words do. */
  @ParameterizedTest
  @CsvSource({"160, false", "160, true", "40, false"})
  void ringOfACupIsNoWriting(int level, boolean blackAndWhite) {
    box("line", 28, 6);
    ink = level;
    double radius = 38;
    shapes.add(
        (x, y) ->
            Math.abs(x - LEFT - 14) < 10
                && Math.abs(Math.hypot(x - LEFT - 14, y - TOP - radius - 2) - radius) < 0.17);
    assertNotEquals(State.MARKED, read(blackAndWhite));
  }

  @ParameterizedTest
  @CsvSource({"signature, false", "signature, true", "initials, false", "line, true"})
  void scribbleIsWriting(String of, boolean blackAndWhite) {
    box(of, of.equals("signature") ? 30 : 16, of.equals("signature") ? 10 : 7);
    double[] points = new double[40];
    for (int i = 0; i < 20; i++) {
      points[2 * i] = 2 + 0.6 * i;
      points[2 * i + 1] = i % 2 == 0 ? 1.5 : 5;
    }
    line(0.4, points);
    assertEquals(State.MARKED, read(blackAndWhite));
  }
}
