package baysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class LineBreakerTest {
  private static final Fonts FONTS = Fonts.builtIn();
  private static final long SIZE = 10_000;

  private final List<Word> tooWide = new ArrayList<>();

  @Test
  void linesBreakAtSpacesAndHoldAllTheyCan() {
    assertEquals(
        List.of("take the", "wheel off"), lines("take the wheel off", width("take the w")));
    assertEquals(
        List.of("take the wheel", "off"), lines("take the wheel off", width("take the wheel")));
  }

  @Test
  void lineOfExactlyItsWidthDoesNotBreak() {
    assertEquals(List.of("110 N·m now"), lines("110 N·m now", width("110 N·m now")));
    assertEquals(List.of("110 N·m", "now"), lines("110 N·m now", width("110 N·m now") - 1));
  }

  @Test
  void figureStaysWithItsUnit() {
    assertEquals(List.of("to", "110 N·m"), lines("to 110\u00A0N·m", width("to 110")));
  }

  @Test
  void wordJoinerForbidsABreakAndIsNotDrawn() {
    assertEquals(List.of("a-b"), lines("a-\u2060b", 1));
    assertEquals(1, tooWide.size());
  }

  @Test
  void longWordBreaksAfterSolidusHyphenAndDash() {
    assertEquals(List.of("left/", "right"), lines("left/right", width("left/r")));
    assertEquals(List.of("front-", "left"), lines("front-left", width("front-")));
    assertEquals(List.of("100–", "120"), lines("100–120", width("100–1")));
    assertEquals(List.of("left/right/", "rear"), lines("left/right/rear", width("left/right/")));
    assertTrue(tooWide.isEmpty());
  }

  @Test
  void wordThatFitsIsNotBrokenAtItsHyphen() {
    assertEquals(List.of("the", "front-left"), lines("the front-left", width("the front-")));
  }

  @Test
  void wordWiderThanItsRoomIsReportedWhole() {
    assertEquals(List.of("synchroniser"), lines("synchroniser", width("sync")));
    assertEquals("synchroniser", tooWide.get(0).text());
  }

  @Test
  void writtenLineBreakBreaks() {
    assertEquals(List.of("25 N·m", "+90°"), lines("25 N·m\n+90°", 1_000_000));
  }

  @Test
  void severalSpacesCountAsOne() {
    assertEquals(List.of("a b"), lines("  a   b ", 1_000_000));
  }

  @Test
  void wordMayGoFromOneWeightIntoTheOther() {
    List<Word> words = Word.divide(List.of(Sketch.bold("A"), Sketch.run(": mind b")), FONTS);
    assertEquals(List.of("A:", "mind", "b"), words.stream().map(Word::text).toList());
    List<ParagraphLines.Piece> pieces = set(words, 1_000_000, TextStyle.Align.LEFT).get(0).pieces();
    assertEquals(
        List.of("A", ": mind b"), pieces.stream().map(ParagraphLines.Piece::text).toList());
    assertEquals(FONTS.bold().advance('A') * SIZE / 1000, pieces.get(1).dx(), 1);
  }

  @Test
  void centredAndRightLinesStandWhereTheyShould() {
    List<Word> words = Word.divide(List.of(Sketch.run("on")), FONTS);
    long room = width("on") + 10_000;
    assertEquals(5_000, set(words, room, TextStyle.Align.CENTRE).get(0).x());
    assertEquals(10_000, set(words, room, TextStyle.Align.RIGHT).get(0).x());
  }

  @Property
  void noWordIsLostAndNoLineIsTooWide(
      @ForAll @Size(max = 40) List<@AlphaChars @StringLength(min = 1, max = 12) String> words,
      @ForAll @IntRange(min = 1, max = 300) int points) {
    long room = points * 1000L;
    List<ParagraphLines.SetLine> lines =
        set(
            Word.divide(List.of(Sketch.run(String.join(" ", words))), FONTS),
            room,
            TextStyle.Align.LEFT);
    String together = lines.stream().map(LineBreakerTest::text).collect(Collectors.joining(" "));
    assertEquals(String.join(" ", words), together);
    for (ParagraphLines.SetLine line : lines) {
      boolean oneWord = text(line).indexOf(' ') < 0;
      assertTrue(line.width() <= room || oneWord, text(line) + " in " + room);
    }
  }

  private List<String> lines(String text, long width) {
    List<Word> words = Word.divide(List.of(Sketch.run(text)), FONTS);
    return set(words, width, TextStyle.Align.LEFT).stream().map(LineBreakerTest::text).toList();
  }

  private List<ParagraphLines.SetLine> set(List<Word> words, long width, TextStyle.Align align) {
    LineBreaker breaker = new LineBreaker(FONTS, SIZE, width, tooWide::add);
    LineBreaker.Broken broken = breaker.fill(Paragraph.of(words, FONTS));
    return new LineSetter(FONTS, SIZE, width, align, Inset.NONE).set(broken);
  }

  private static String text(ParagraphLines.SetLine line) {
    return line.pieces().stream().map(ParagraphLines.Piece::text).collect(Collectors.joining());
  }

  private static long width(String text) {
    return Em.at(FONTS.regular().advance(text), SIZE);
  }
}
