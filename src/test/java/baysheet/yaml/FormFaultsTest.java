package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormFaultsTest {
  /** In the texts {@code ¶} stands for a line end and {@code ▸} for a tab. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '┃',
      quoteCharacter = '\u0001',
      value = {
        "1:4 unclosed-quote    ┃ a: 'x¶b: c¶",
        "1:4 unclosed-quote    ┃ a: \"x¶",
        "1:4 unclosed-quote    ┃ a: \"x¶---¶b: c\"¶",
        "1:8 unclosed-quote    ┃ a: 'it's x'¶b: c¶",
        "1:4 unclosed-bracket  ┃ a: [1, 2¶b: 3¶",
        "1:4 unclosed-bracket  ┃ a: [1, 2¶",
        "1:4 unclosed-bracket  ┃ a: {x: 1¶",
        "1:4 unclosed-bracket  ┃ a: [1 2}¶",
        "2:1 unclosed-bracket  ┃ a: b¶]¶",
        "1:5 stray-colon       ┃ a: b: c¶",
        "2:3 bad-indent        ┃ a: b¶  c: d¶",
        "3:2 bad-indent        ┃ a:¶  b: 1¶ c: 2¶",
        "3:4 bad-indent        ┃ a:¶  b: 1¶   c: 2¶",
        "2:1 bad-indent        ┃ a: b¶- c¶",
        "1:4 bad-indent        ┃ a: - b¶",
        "3:2 bad-indent        ┃ a:¶- b¶ - c¶",
        "3:2 bad-indent        ┃ a: |¶  x¶ y¶",
        "3:1 bad-indent        ┃ # x¶  a: 1¶b: 2¶",
        "2:1 missing-colon     ┃ a: 5¶b:6¶c: 7¶",
        "1:1 missing-colon     ┃ a¶b: c¶",
        "2:1 missing-colon     ┃ a: b¶c¶d: e¶",
        "1:4 needs-quotes      ┃ a: @x¶",
        "1:4 needs-quotes      ┃ a: `x`¶",
        "1:4 needs-quotes      ┃ a: %x¶",
        "1:4 needs-quotes      ┃ a: ,x¶",
        "1:6 bad-escape        ┃ a: \"\\q\"¶",
        "1:7 bad-escape        ┃ a: \"\\x1\"¶",
        "1:2 bad-escape        ┃ a: \"\\UFFFFFFFF\"¶",
        "1:6 yaml-syntax       ┃ a: > text¶",
        "1:8 yaml-syntax       ┃ [a, b] x¶",
        "1:4 alias-not-allowed ┃ a: *b¶",
        "1:4 alias-not-allowed ┃ a: *important*¶",
        "1:4 alias-not-allowed ┃ a: &b c¶",
        "1:4 alias-not-allowed ┃ a: & c¶",
        "1:1 alias-not-allowed ┃ <<: {a: b}¶",
        "1:4 tag-not-allowed   ┃ a: !!int 5¶",
        "1:4 tag-not-allowed   ┃ a: !x [1]¶",
        "1:4 tag-not-allowed   ┃ a: !e!x y¶",
        "2:1 tab-indent        ┃ a:¶▸b: c¶",
        "2:3 tab-indent        ┃ a:¶  ▸b: c¶",
        "1:3 tab-indent        ┃ a:▸b¶",
        "1:4 control-character ┃ a: x▸y¶",
        "2:2 control-character ┃ a:¶  b: c¶",
        "1:3 control-character ┃ a: c¶",
        "2:2 control-character ┃ a:¶- c¶",
        "2:1 several-documents ┃ a: b¶---¶c: d¶",
        "3:1 several-documents ┃ a: b¶...¶c: d¶",
        "1:1 key-not-text      ┃ [a]: b¶",
        "1:1 key-not-text      ┃ {a: b}: c¶",
        "1:1 key-not-text      ┃ : b¶",
        "1:2 key-not-text      ┃ {: b}¶",
        "1:1 key-not-text      ┃ '': b¶",
        "1:1 empty-file        ┃ # nothing¶¶",
        "1:1 empty-file        ┃ ---¶",
      })
  void aFaultOfFormIsReportedAtItsPlace(String expected, String text) {
    String real = text.strip().replace('¶', '\n').replace('▸', '\t');
    assertEquals(List.of(expected.strip()), Texts.faults(real), real);
  }

  @Test
  void anEmptyTextIsAnEmptyFile() {
    assertEquals(List.of("1:1 empty-file"), Texts.faults(""));
  }

  @Test
  void duplicateKeysAreReportedAtEveryLevelWithTheFirst() {
    Problems problems = new Problems();
    Texts.parse("a:\n  - {b: 1, c: 2, b: 3}\nd: x\na: y\n", problems);
    assertEquals(List.of("2:18 duplicate-key", "4:1 duplicate-key"), Texts.told(problems));
    Problem inner = problems.all().get(0);
    assertEquals("2:6", placeOf(inner.related().get(0).at()));
    assertEquals("\"b\" is used twice in this map", inner.what());
  }

  @Test
  void ofTwoEqualKeysTheFirstIsReadOnSoThatTheRestOfTheFileIsCheckedToo() {
    Optional<Node> node = Texts.parse("a: 1\na: 2\n", new Problems());
    Mapping mapping = (Mapping) node.orElseThrow();
    assertEquals("1", ((Scalar) mapping.entries().get(0).value()).text());
    assertEquals(1, mapping.entries().size());
  }

  @Test
  void quotesMakeNoOtherKey() {
    assertEquals(List.of("2:1 duplicate-key"), Texts.faults("a: 1\n\"a\": 2\n"));
  }

  @Test
  void aTabIsReportedOnceWithTheNumberOfOtherLines() {
    Problems problems = new Problems();
    Texts.parse("a:\n\tb: 1\n\tc: 2\n\td: 3\n", problems);
    assertEquals(1, problems.all().size());
    assertEquals("this line and 2 more lines are indented with tabs", problems.all().get(0).what());
  }

  @Test
  void charactersThatCannotBeSeenAreReportedByName() {
    Problems problems = new Problems();
    Texts.parse("a: 1\nb\u200B: 2\n", problems);
    assertEquals(List.of("2:2 control-character"), Texts.told(problems));
    assertTrue(problems.all().get(0).what().endsWith("U+200B zero width space"));
  }

  @ParameterizedTest
  @CsvSource({"0", "7", "0x1B", "0x7F", "0x85", "0x2028", "0x202E", "0xFEFF", "0xFFFE", "0xD800"})
  void charactersThatCannotBeSeenAreRefusedRawAndEscaped(String hex) {
    int point = Integer.decode(hex);
    String raw = "a: \"x" + (char) point + "y\"\n";
    assertEquals(List.of("1:6 control-character"), Texts.faults(raw));
    String escaped = "a: \"x\\u" + Integer.toHexString(0x10000 | point).substring(1) + "y\"\n";
    assertEquals(List.of("1:4 control-character"), Texts.faults(escaped));
  }

  @Test
  void aSpaceThatKeepsFigureAndUnitTogetherIsNotRefused() {
    assertEquals(List.of(), Texts.faults("a: 110 N·m\nb: x - y\n"));
  }

  @Test
  void everyOtherCharacterIsRead() {
    for (int block = 0; block < 0x110000; block += 0x100) {
      StringBuilder text = new StringBuilder("a: '");
      for (int point = block; point < block + 0x100; point++) {
        if (!CharacterCheck.isUnfit(point)
            && !CharacterCheck.runsFromRightToLeft(point)
            && point != '\'') {
          text.appendCodePoint(point);
        }
      }
      assertEquals(List.of(), Texts.faults(text.append("'\n").toString()), "block " + block);
    }
  }

  @Test
  void anIndentationIsReportedWithTheOneAbove() {
    Problems problems = new Problems();
    Texts.parse("a:\n   b: 1\n\n  c: 1\n", problems);
    String expected = problems.all().get(0).expected().orElseThrow();
    assertTrue(expected.endsWith("; this line has 2, the line above it has 3"), expected);
  }

  /** The line above may well have as many spaces: it is a list's. */
  @Test
  void aKeyWhereAListHasItsItemsIsNotComparedWithTheLineAbove() {
    Problems problems = new Problems();
    Texts.parse("a:\n  b:\n    - 1\n    c: 1\n", problems);
    String expected = problems.all().get(0).expected().orElseThrow();
    assertTrue(expected.startsWith("a hyphen before an item of the list above;"), expected);
  }

  @Test
  void signsOfTheTradeAndOtherScriptsAreNotRefused() {
    assertEquals(List.of(), Texts.faults("a: 110 N·m ± 5 %, 90°, Ø 12, ½, 車輪, Ж, 🔧\n"));
  }

  @Test
  void everyAliasOfABombIsReportedAndNoneIsFollowed() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
    for (int i = 1; i < 60; i++) {
      bomb.append("a" + i + ": &a" + i + " [*a" + (i - 1) + ", *a" + (i - 1) + "]\n");
    }
    List<String> faults =
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> Texts.faults(bomb.toString()));
    assertEquals(60 + 2 * 59, faults.size());
    assertTrue(faults.stream().allMatch(fault -> fault.endsWith("alias-not-allowed")));
    assertEquals(
        List.of("1:5", "2:5", "2:10", "2:15"),
        faults.subList(0, 4).stream().map(fault -> fault.split(" ")[0]).toList());
  }

  @Test
  void aTreeWithAnAliasIsNotReadOnButItsOtherFaultsAreReported() {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), Texts.parse("a: *b\nc: 1\nc: 2\n", problems));
    assertEquals(List.of("1:4 alias-not-allowed", "3:1 duplicate-key"), Texts.told(problems));
  }

  @ParameterizedTest
  @CsvSource({"[", "{a: ", "'- '"})
  void tenThousandLevelsAreReportedAndOverflowNothing(String opening) {
    List<String> faults = Texts.faults(opening.repeat(10_000));
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).endsWith(" too-deep"), faults.get(0));
  }

  @Test
  void aTextOfMoreThanOneMebibyteIsNotRead() {
    String most = "#" + "x".repeat(YamlFile.MAX_BYTES - 1);
    assertEquals(List.of("1:1 empty-file"), Texts.faults(most));
    assertEquals(List.of("1:1 too-large"), Texts.faults(most + "x"));
  }

  private static String placeOf(baysheet.report.Span at) {
    return at.line() + ":" + at.column();
  }

  /** The library fails without saying where: text behind a bracket that ends on a later line. */
  @Test
  void textBehindABracketOfTwoLinesIsAFaultOfForm() {
    assertEquals(List.of("2:2 yaml-syntax"), Texts.faults("  aa: {aaaa\na}a"));
  }
}
