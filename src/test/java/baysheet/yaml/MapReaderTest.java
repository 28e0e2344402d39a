package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MapReaderTest {
  private final Problems problems = new Problems();

  @Test
  void anUnknownKeyIsReportedWithTheKnownOnesAndTheNearest() {
    MapReader map = reader("rated: 1\nlifft: 2\n");
    map.required("rated");
    map.optional("lift");
    map.done();
    Problem problem = only("2:1 unknown-key");
    assertEquals("a bay has no key \"lifft\"", problem.what());
    assertEquals(Optional.of("one of rated, lift"), problem.expected());
    assertEquals(Optional.of("lift"), problem.nearest());
    assertEquals(6, problem.at().endColumn());
  }

  @Test
  void aKeyThatIsAskedForIsKnownWhetherItIsThereOrNot() {
    MapReader map = reader("rated: 1\n");
    map.optional("rated");
    map.optional("lift");
    map.done();
    assertEquals(List.of(), problems.all());
  }

  @Test
  void thePieceOfASentenceBehindACommaIsReportedAsSuch() {
    MapReader map = reader("{rated: do not lift, never push}\n");
    map.optional("rated");
    map.done();
    String expected = only("1:22 unknown-key").expected().orElseThrow();
    assertTrue(expected.startsWith("quotes around a text that contains a comma"), expected);
  }

  @Test
  void theDecimalsBehindACommaInBracketsAreNamed() {
    MapReader map = reader("{rated: 102,5 N·m}\n");
    map.optional("rated");
    map.done();
    String expected = only("1:13 unknown-key").expected().orElseThrow();
    assertTrue(expected.startsWith("a point before decimals; or quotes around"), expected);
  }

  @Test
  void missingKeyPointsAtItsMap() {
    MapReader map = reader("bays:\n  lift: 1\n", "bays");
    assertEquals(Optional.empty(), map.required("rated"));
    map.optional("lift");
    map.done();
    assertEquals("a bay needs the key \"rated\"", only("2:3 missing-key").what());
  }

  @Test
  void missingKeyOfAnEmptyMapPointsAtItsBrackets() {
    MapReader map = reader("bays: {}\n", "bays");
    map.required("rated");
    map.done();
    only("1:7 missing-key");
  }

  @Test
  void aKeyWithoutValueIsReportedByItsNameAndOnce() {
    MapReader map = reader("bay:\n");
    assertEquals(Optional.empty(), map.required("bay"));
    assertEquals(Optional.empty(), map.required("bay", ValueReaders.text()));
    assertEquals("\"bay\" has no value", only("1:1 empty-value").what());
  }

  @Test
  void aTildeIsATextAndNoAbsence() {
    assertEquals(
        "~", reader("bay: ~\n").required("bay", ValueReaders.text()).orElseThrow().value());
  }

  @Test
  void nothingIsBuiltWithoutARequiredValue() {
    assertEquals(Optional.empty(), built("lift: 1\n"));
    assertEquals(Optional.empty(), built("rated: x\n"));
    assertEquals(Optional.empty(), built("rated:\n"));
    assertEquals(Optional.of("3 -"), built("rated: 3\n"));
  }

  @Test
  void aRequiredValueThatIsThereDoesNotMakeUpForAnEarlierOneThatIsNot() {
    MapReader map = reader("lift: 1\n");
    map.required("rated");
    map.required("lift");
    assertEquals(Optional.empty(), map.build(() -> "built"));
  }

  @Test
  void anOptionalValueThatCannotBeReadCountsAsLeftOutAndIsAnError() {
    assertEquals(Optional.of("3 -"), built("rated: 3\nlift: x\n"));
    assertEquals(List.of("2:7 not-a-number"), Texts.told(problems));
    assertTrue(problems.hasErrors());
  }

  @Test
  void unknownKeysAreReportedEvenWhenNothingCanBeBuilt() {
    built("lifft: 3\n");
    assertEquals(List.of("1:1 missing-key", "1:1 unknown-key"), Texts.told(problems));
  }

  /** One cause, one message: the key is there under another name. */
  @Test
  void aRequiredKeyThatIsMisspeltIsNotMissingAsWell() {
    assertEquals(Optional.empty(), built("rateed: 3\nlift: 2\n"));
    assertEquals(List.of("1:1 unknown-key"), Texts.told(problems));
    assertEquals(Optional.of("rated"), problems.all().get(0).nearest());
  }

  /** Two keys that are both like the missing one cannot both be meant by it. */
  @Test
  void aSecondKeyLikeTheMissingOneIsReportedAlone() {
    built("rateed: 3\nratted: 2\n");
    assertEquals(List.of("1:1 unknown-key", "2:1 unknown-key"), Texts.told(problems));
  }

  private Optional<String> built(String text) {
    MapReader map = reader(text);
    var rated = map.required("rated", ValueReaders.wholeNumber(1, 9));
    var lift = map.optional("lift", ValueReaders.wholeNumber(1, 9));
    return map.build(
        () -> rated.get().value() + " " + lift.map(l -> l.value().toString()).orElse("-"));
  }

  @Test
  void listsThatAreLeftOutAreEmpty() {
    MapReader map = reader("a: [x, y]\nb: z\n");
    assertEquals(List.of("x", "y"), values(map.list("a", ValueReaders.text())));
    assertEquals(List.of("z"), values(map.listOrOne("b", ValueReaders.text())));
    assertEquals(List.of(), map.list("c", ValueReaders.text()));
    assertEquals(List.of(), map.listOrOne("d", ValueReaders.text()));
    assertEquals(List.of(), map.entries("e", ValueReaders::nameOf, ValueReaders.text()));
    assertEquals(List.of(), problems.all());
  }

  @Test
  void aYesOrNoHasAValueWhenItIsLeftOut() {
    MapReader map = reader("a: yes\nb: no\n");
    assertTrue(map.yesNo("a", false));
    assertFalse(map.yesNo("b", true));
    assertTrue(map.yesNo("c", true));
    assertFalse(map.yesNo("d", false));
  }

  @Test
  void freeKeysAreReadInOrderAndBadOnesLeftOut() {
    MapReader map = reader("bays:\n  two: 2\n  One: 1\n  three: x\n  four:\n  five: 5\n");
    List<Keyed<String, Integer>> bays =
        map.entries("bays", ValueReaders::nameOf, ValueReaders.wholeNumber(1, 9));
    assertEquals(List.of("two", "five"), bays.stream().map(keyed -> keyed.key().value()).toList());
    assertEquals(
        List.of("3:3 not-a-name", "4:10 not-a-number", "5:3 empty-value"), Texts.told(problems));
  }

  @Test
  void freeKeysThatMeanTheSameAreReportedWithTheFirst() {
    MapReader map = reader("bays:\n  a: 1\n  ' a': 2\n");
    map.entries("bays", ValueReaders::nameOf, ValueReaders.text());
    Problem problem = only("3:3 duplicate-key");
    assertEquals(2, problem.related().get(0).at().line());
  }

  @Test
  void freeKeysUnderAValueThatIsNoMapAreReportedByTheirKey() {
    reader("bays: 3\n").entries("bays", ValueReaders::nameOf, ValueReaders.text());
    assertEquals(
        "the value of \"bays\" must be keys with values, but this is a single value",
        only("1:7 wrong-shape").what());
  }

  @Test
  void theRestIsWhatNobodyAskedForAndIsKnownFromThenOn() {
    MapReader map = reader("a: 1\nb: 2\nc: 3\n");
    map.optional("b");
    assertEquals(List.of("a", "c"), map.rest().stream().map(entry -> entry.key().text()).toList());
    assertEquals(List.of(), map.rest());
    map.done();
    assertEquals(List.of(), problems.all());
  }

  @Test
  void keysThatCannotStandTogetherAreReportedAtTheSecondInTheFile() {
    MapReader map = reader("jack: a\nname: x\nlift: b\n");
    map.atMostOneOf(List.of("lift", "jack"));
    Problem problem = only("3:1 keys-clash");
    assertEquals("a bay can have only one of the keys lift, jack", problem.what());
    assertEquals(1, problem.related().get(0).at().line());
  }

  @Test
  void oneOfTheKeysThatCannotStandTogetherIsFine() {
    reader("jack: a\n").atMostOneOf(List.of("lift", "jack"));
    assertEquals(List.of(), problems.all());
  }

  @Test
  void aColonWithoutItsSpaceIsNamedWhereAMapIsMissing() {
    assertEquals(Optional.empty(), MapReader.of(Texts.tree("bay:1\n"), "a bay", problems));
    String expected = only("1:1 wrong-shape").expected().orElseThrow();
    assertTrue(expected.startsWith("a space after the colon"), expected);
  }

  private MapReader reader(String text) {
    return MapReader.of(Texts.tree(text), "a bay", problems).orElseThrow();
  }

  /** A reader of the map under a key. */
  private MapReader reader(String text, String key) {
    Node under = reader(text).required(key).orElseThrow();
    return MapReader.of(under, "a bay", problems).orElseThrow();
  }

  private Problem only(String told) {
    assertEquals(List.of(told), Texts.told(problems));
    return problems.all().get(0);
  }

  private static List<String> values(List<Located<String>> located) {
    return located.stream().map(Located::value).toList();
  }
}
