package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ValueReadersTest {
  private static final Map<String, Integer> LIFTS = new LinkedHashMap<>();

  static {
    LIFTS.put("two-post", 2);
    LIFTS.put("four-post", 4);
  }

  private final Problems problems = new Problems();

  @ParameterizedTest
  @ValueSource(strings = {"0", "5", "81240", "\"5\"", "'5'"})
  void digitsAreAWholeNumberQuotedOrNot(String written) {
    int expected = Integer.parseInt(written.replaceAll("[\"']", ""));
    assertEquals(expected, Texts.value(written, ValueReaders.wholeNumber(0, 100_000)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"05", "5.0", "+5", "-5", "5e1", "0x5", "1_000", "1:30", "five", "５", "1234567890"})
  void whatOthersReadAsANumberIsNone(String written) {
    assertEquals(
        List.of("1:1 not-a-number"),
        Texts.faults(written, ValueReaders.wholeNumber(0, Integer.MAX_VALUE)));
  }

  @Test
  void aNumberOutsideItsRangeIsReportedWithTheRange() {
    assertEquals(1, Texts.value("1", ValueReaders.wholeNumber(1, 99)));
    assertEquals(99, Texts.value("99", ValueReaders.wholeNumber(1, 99)));
    Problem problem = onlyProblem("100", ValueReaders.wholeNumber(1, 99));
    assertEquals("out-of-range", problem.code().word());
    assertEquals(Optional.of("a whole number from 1 to 99"), problem.expected());
    assertEquals(List.of("1:1 out-of-range"), Texts.faults("0", ValueReaders.wholeNumber(1, 99)));
  }

  @Test
  void yesAndNoHaveTwoSpellingsEach() {
    assertEquals(true, Texts.value("yes", ValueReaders.yesNo()));
    assertEquals(true, Texts.value("true", ValueReaders.yesNo()));
    assertEquals(false, Texts.value("no", ValueReaders.yesNo()));
    assertEquals(false, Texts.value("false", ValueReaders.yesNo()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Yes", "NO", "on", "off", "y", "1", "~", "True"})
  void anyOtherWordIsNeitherYesNorNo(String written) {
    assertEquals(List.of("1:1 not-yes-no"), Texts.faults(written, ValueReaders.yesNo()));
  }

  @Test
  void aDateIsYearMonthDay() {
    assertEquals(LocalDate.of(2026, 3, 2), Texts.value("2026-03-02", ValueReaders.date()));
    // 2024 is divisible by 4 and not by 100, so it has a 29 February; 2026 has none.
    assertEquals(LocalDate.of(2024, 2, 29), Texts.value("2024-02-29", ValueReaders.date()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-3-2",
        "02.03.2026",
        "2026-02-29",
        "2026-13-01",
        "20260302",
        "2026-03-02T10:00"
      })
  void anythingElseIsNoDate(String written) {
    assertEquals(List.of("1:1 not-a-date"), Texts.faults(written, ValueReaders.date()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"front-left", "t1", "1", "lower-arm-bush-bolt"})
  void smallLettersDigitsAndHyphensAreAName(String written) {
    assertEquals(written, Texts.value(written, ValueReaders.name()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Front", "front left", "front--left", "-", "a-", "front_left", "vérin"})
  void anythingElseIsNoName(String written) {
    assertEquals(
        List.of("1:1 not-a-name"), Texts.faults("\"" + written + "\"", ValueReaders.name()));
  }

  @ParameterizedTest
  @CsvSource({
    "Front, is not a name, front",
    "front left, is not a name, front-left",
    "front_left, is not a name, front-left",
    "drum-brakes at rear, is not a name, drum-brakes",
    // A hyphen that may not end a line (U+2011), a hyphen (U+2010), an en dash and a minus sign.
    "front\u2011left, has a dash that is not the hyphen of the keyboard, front-left",
    "front\u2010left, has a dash that is not the hyphen of the keyboard, front-left",
    "front\u2013left, has a dash that is not the hyphen of the keyboard, front-left",
    "front\u2212left, has a dash that is not the hyphen of the keyboard, front-left",
    "vérin, is not a name,",
  })
  void aNameThatIsWrittenOtherwiseIsAnsweredWithItsSpelling(
      String written, String what, String meant) {
    Problem problem = onlyProblem('"' + written + '"', ValueReaders.name());
    assertEquals('"' + written + "\" " + what, problem.what());
    assertEquals(Optional.ofNullable(meant), problem.nearest());
  }

  @Test
  void aMisspeltWordIsReportedWithTheKnownOnesInOrderAndTheNearest() {
    assertEquals(4, Texts.value("four-post", ValueReaders.oneOf(LIFTS)));
    Problem problem = onlyProblem("two_post", ValueReaders.oneOf(LIFTS));
    assertEquals("not-one-of", problem.code().word());
    assertEquals(Optional.of("one of two-post, four-post"), problem.expected());
    assertEquals(Optional.of("two-post"), problem.nearest());
  }

  @Test
  void aTextLosesTheSpacesAroundItAndNothingElse() {
    assertEquals("a  b", Texts.value("'  a  b '", ValueReaders.text()));
    assertEquals("one\ntwo", Texts.value("|\n  one\n  two\n", ValueReaders.text()));
    assertEquals("~", Texts.value("~", ValueReaders.text()));
    assertEquals("null", Texts.value("null", ValueReaders.text()));
  }

  @Test
  void aBlankTextIsNoValue() {
    assertEquals(List.of("1:1 empty-value"), Texts.faults("''", ValueReaders.text()));
    assertEquals(List.of("1:1 empty-value"), Texts.faults("\"  \"", ValueReaders.text()));
  }

  @Test
  void aListOrMapIsNoSingleValue() {
    Problem problem = onlyProblem("[a]", ValueReaders.text());
    assertEquals("wrong-shape", problem.code().word());
    assertEquals("this is a list, but a single value is expected", problem.what());
    assertEquals(List.of("1:1 wrong-shape"), Texts.faults("{a: b}", ValueReaders.text()));
  }

  @Test
  void aHookSaysWhatItAcceptsAndItsWordsAreReportedAtTheValue() {
    ValueReader<Integer> mass = ValueReaders.value(ValueReadersTest::kilograms);
    assertEquals(3200, Texts.value("3200 kg", mass));
    Problem problem = onlyProblem("'3200'", mass);
    assertEquals("bad-unit", problem.code().word());
    assertEquals("no unit in 3200", problem.what());
    assertEquals(Optional.of("a mass, as in 3200 kg"), problem.expected());
    assertEquals(7, problem.at().endColumn());
  }

  private static ParseOutcome<Integer> kilograms(String text) {
    return text.endsWith(" kg")
        ? ParseOutcome.ok(Integer.parseInt(text.replace(" kg", "")))
        : ParseOutcome.bad(ProblemCode.BAD_UNIT, "no unit in " + text, "a mass, as in 3200 kg");
  }

  @Test
  void anOutcomeIsMappedOnlyWhenItIsGood() {
    ParseOutcome<Integer> bad = ParseOutcome.bad("what", "expected");
    assertEquals(ParseOutcome.ok(6), ParseOutcome.ok(3).map(n -> n * 2));
    assertEquals(bad, bad.map(n -> n * 2));
  }

  @Test
  void aMappedReaderKeepsThePlace() {
    ValueReader<Integer> length = ValueReaders.text().map(String::length);
    Located<Integer> read = length.read(Texts.tree("'abc'"), problems).orElseThrow();
    assertEquals(3, read.value());
    assertEquals(6, read.at().endColumn());
  }

  @Test
  void badItemsOfAListAreReportedAndTheGoodOnesKept() {
    Located<List<Located<Integer>>> read =
        ValueReaders.list(ValueReaders.wholeNumber(1, 9))
            .read(Texts.tree("[1, x, 3, 44]"), problems)
            .orElseThrow();
    assertEquals(List.of(1, 3), read.value().stream().map(Located::value).toList());
    assertEquals(List.of("1:5 not-a-number", "1:11 out-of-range"), Texts.told(problems));
  }

  @Test
  void anItemWithoutValueIsReportedAtItsHyphen() {
    assertEquals(
        List.of("2:2 empty-value"),
        Texts.faults("- a\n-\n- b\n", ValueReaders.list(ValueReaders.text())));
  }

  @Test
  void oneItemIsAListOnlyWhereThatIsAllowed() {
    assertEquals(1, Texts.value("a", ValueReaders.listOrOne(ValueReaders.text())).size());
    assertEquals(2, Texts.value("[a, b]", ValueReaders.listOrOne(ValueReaders.text())).size());
    assertEquals(
        List.of("1:1 wrong-shape"), Texts.faults("a", ValueReaders.list(ValueReaders.text())));
  }

  @Test
  void aValueMayBeWrittenShortOrLong() {
    ValueReader<String> tool =
        ValueReaders.scalarOr(
            ValueReaders.text(),
            ValueReaders.record(
                "a tool",
                map -> {
                  var special = map.required("special", ValueReaders.text());
                  return map.build(() -> special.get().value());
                }));
    assertEquals("wire brush", Texts.value("wire brush", tool));
    assertEquals("splitter", Texts.value("{special: splitter}", tool));
    assertEquals(List.of("1:1 wrong-shape"), Texts.faults("[a]", tool));
  }

  @Test
  void aListMayStandWhereOtherwiseAWordDoes() {
    ValueReader<Integer> order =
        ValueReaders.listOr(
            ValueReaders.list(ValueReaders.text()).map(List::size),
            ValueReaders.text().map(word -> 0));
    assertEquals(2, Texts.value("[a, b]", order));
    assertEquals(0, Texts.value("circle", order));
  }

  private Problem onlyProblem(String text, ValueReader<?> reader) {
    Optional<?> value = reader.read(Texts.tree(text), problems);
    assertEquals(Optional.empty(), value);
    assertEquals(1, problems.all().size());
    return problems.all().get(0);
  }
}
