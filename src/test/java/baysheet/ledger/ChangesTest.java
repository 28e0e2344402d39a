package baysheet.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChangesTest {
  private static final String RECORD =
      """
      {"format": 1,
       "sheet": {"job": "2402", "date": "2026-03-02", "id": "2402-A-0d313a", "revision": "A", "paper": "A4"},
       "vehicle": {"plate": "RD 08", "odometer": {"value": 81240, "unit": "km"}},
       "people": {"by": "T1"}, "bay": "1",
       "steps": [{"n": 1, "procedure": "raise", "places": ["front"], "text": "Raise", "details": [], "hold": false},
         {"n": 2, "procedure": "wheel", "places": ["left"], "text": "Undo the wheel", "details": ["mark it"], "hold": false},
         {"n": 3, "procedure": "wheel", "places": ["left"], "text": "Refit the wheel", "details": [], "hold": false}],
       "torque": [{"n": 1, "fastener": "wheel-nut", "places": ["left"], "count": 5, "threads": "dry",
           "stages": [{"torque": {"value": 110, "unit": "N·m"}, "band": {"from": 104.5, "to": 115.5, "unit": "N·m", "of": "shop"},
             "wrench": "W3", "setting": {"value": 110, "unit": "N·m"}}]},
         {"n": 2, "fastener": "pinch-bolt", "places": ["left"], "count": 1, "threads": "dry",
           "stages": [{"torque": {"value": 30, "unit": "N·m"}, "band": {"from": 28.5, "to": 31.5, "unit": "N·m", "of": "shop"},
             "wrench": "W2", "setting": {"value": 30, "unit": "N·m"}}, {"angle": 60}]},
         {"n": 3, "fastener": "drain-plug", "places": ["engine"], "count": 1, "stages": []}],
       "cautions": [{"letter": "A", "signal": "DANGER", "hazard": "support", "text": "Stands"}],
       "checks": [{"moment": "raised", "rule": "hoses", "text": "See hoses", "places": ["left"], "hold": false}],
       "boxes": []}
      """;

  private static List<String> changes(String old, String now) {
    return Changes.between(record(old), record(now));
  }

  private static KeptRecord record(String text) {
    return KeptRecord.of(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Written as the old sheet was, so that whoever holds it knows which figure is no longer true.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"value\": 110, \"unit\": \"N·m\"}, \"band\" | {\"value\": 120, \"unit\": \"N·m\"},"
            + " \"band\" | row 1 was 110 N·m",
        "{\"angle\": 60} | {\"angle\": 90} | row 2 was 30 N·m + 60°",
        "\"stages\": []} | \"stages\": [{\"torque\": {\"value\": 30, \"unit\": \"N·m\"}}]} | row 3"
            + " was unknown",
        "\"from\": 104.5 | \"from\": 100 | row 1 had the band 104.5..115.5 N·m",
        "\"wrench\": \"W2\" | \"wrench\": \"W4\" | row 2 was set to 30 N·m with W2",
        "\"count\": 5, \"threads\": \"dry\" | \"count\": 5, \"threads\": \"oiled\" | row 1:"
            + " thread treatment changed",
        "\"count\": 5 | \"count\": 4 | row 1: count changed",
        "\"mark it\" | \"mark it well\" | step 2 is different",
        "\"n\": 1, \"procedure\": \"raise\", \"places\": [\"front\"], \"text\": \"Raise\","
            + " \"details\": [], \"hold\": false | \"n\": 1, \"procedure\": \"raise\", \"places\":"
            + " [\"front\"], \"text\": \"Raise\", \"details\": [], \"hold\": true | step 1 is"
            + " different",
        "DANGER | WARNING | caution A was DANGER",
        "\"moment\": \"raised\" | \"moment\": \"before-moving\" | check 1 is different",
        "81240 | 81250 | the vehicle's data changed",
        "\"by\": \"T1\" | \"by\": \"T2\" | the people changed",
        "\"bay\": \"1\" | \"bay\": \"2\" | the bay changed",
        "\"paper\": \"A4\" | \"paper\": \"Letter\" | the paper was A4",
        "2026-03-02 | 2026-03-03 | the day was 2026-03-02",
        "0d313a | 0d313b | other words",
        "\"boxes\": [] | \"boxes\": [{\"name\": \"a\", \"kind\": \"tick\"}] | another layout",
        "See hoses | See the hoses | check 1 is different",
        "Stands | Good stands | caution A is different"
      })
  void aChangeIsSaidInFigures(String was, String is, String said) {
    assertEquals(1, RECORD.split(Pattern.quote(was), -1).length - 1, was);
    assertEquals(List.of(said), changes(RECORD, RECORD.replace(was, is)));
  }

  /** What comes to a row beside its figures is named, in plain words where there are any. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "words | \"wheel bolt\" | name",
        "note | \"hold the nut\" | note",
        "passes | [50, 100] | rounds",
        "rounds | [{\"percent\": 50}] | rounds",
        "twoVisits | true | number of visits",
        "rideHeight | true | moment",
        "overridden | true | override by the job",
        "replaced | \"140 N·m\" | override by the job",
        "warnings | [{\"code\": \"high\"}] | warning",
        "drawing | {\"letter\": \"A\", \"arrangement\": \"circle\", \"rows\": []} | drawing",
        "kind | \"snug\" | figure",
        "greaseColour | \"red\" | grease colour"
      })
  void eachKeyOfARowIsCompared(String key, String value, String word) {
    String now = RECORD.replace("\"count\": 5", "\"" + key + "\": " + value + ", \"count\": 5");
    assertEquals(List.of("row 1: " + word + " changed"), changes(RECORD, now));
    assertEquals(List.of("row 1: " + word + " changed"), changes(now, RECORD));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "promised | \"16:30\" | the promised time",
        "bayEquipment | \"two-post lift\" | the bay",
        "wrenches | [{\"name\": \"W3\", \"due\": \"2027-01-01\"}] | torque wrenches",
        "protect | [\"M004\"] | protective equipment",
        "seen | [{\"what\": \"rust\"}] | earlier findings",
        "carried | \"Continues 2401\" | where the work began",
        "arrival | {\"after\": 4} | the state of the vehicle at the start",
        "leaving | {\"after\": 9} | the state of the vehicle at the end",
        "released | [\"an expert\"] | who releases the vehicle",
        "supplies | [{\"name\": \"oil\"}] | consumables",
        "time | {\"minutes\": [1, 2, 3]} | the estimated time",
        "sections | [{\"heading\": \"Raise\", \"steps\": [1]}] | the headings of the steps",
        "coolantLoop | \"two\" | coolant loop"
      })
  void eachKeyOfTheSheetIsCompared(String key, String value, String words) {
    String now = RECORD.replace("\"bay\":", "\"" + key + "\": " + value + ", \"bay\":");
    assertEquals(List.of(words + " changed"), changes(RECORD, now));
    assertEquals(List.of(words + " changed"), changes(now, RECORD));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title | \"Wheels\" | the title",
        "shop | \"Dock Street\" | the name of the garage",
        "stages | 3 | the division into sheets",
        "units | [\"N·m\"] | the units",
        "customField | 1 | custom field"
      })
  void eachKeyOfItsHeadIsCompared(String key, String value, String words) {
    String now = RECORD.replace("\"revision\":", "\"" + key + "\": " + value + ", \"revision\":");
    assertEquals(List.of(words + " changed"), changes(RECORD, now));
  }

  /** The same for what no number or letter of a step, check or caution is. */
  @Test
  void eachKeyOfAStepACheckAndACautionIsCompared() {
    assertEquals(
        List.of("step 1 is different"),
        changes(RECORD, RECORD.replace("\"Raise\",", "\"Raise\", \"ifStuck\": [\"Heat it\"],")));
    assertEquals(
        List.of("check 1 is different"),
        changes(RECORD, RECORD.replace("\"hoses\",", "\"hoses\", \"needs\": \"play\",")));
    assertEquals(
        List.of("caution A is different"),
        changes(RECORD, RECORD.replace("DANGER\",", "DANGER\", \"waivedBy\": \"T1\",")));
  }

  /** Minutes that move between steps leave the sum; the steps themselves stay as they are. */
  @Test
  void minutesOfAStepAreTimeOfTheSheet() {
    String was = RECORD.replace("\"Raise\",", "\"Raise\", \"printedMinutes\": 1.5,");
    String now = RECORD.replace("\"Raise\",", "\"Raise\", \"printedMinutes\": 2,");
    assertEquals(List.of("the estimated time changed"), changes(was, now));
    assertEquals(List.of("other words"), changes(RECORD, now.replace("0d313a", "0d313b")));
    String three = RECORD.replace("\"Raise\",", "\"Raise\", \"minutes\": [1, 2, 3],");
    assertEquals(List.of("the estimated time changed"), changes(RECORD, three));
  }

  /** A note at a tightening that nothing else says: no wrench reaches the figure. */
  @Test
  void whatElseStandsAtAFigureIsCompared() {
    assertEquals(
        List.of("row 2: figure changed"),
        changes(
            RECORD,
            RECORD.replace("\"wrench\": \"W2\"", "\"wrench\": \"W2\", \"insideBand\": false")));
  }

  /** A step that comes in between changes the numbers of those behind it, and nothing else. */
  @Test
  void aNewStepAndRowAreNamedAndThoseBehindThemAreNot() {
    String step =
        "{\"n\": 2, \"procedure\": \"tray\", \"places\": [\"front\"], \"text\": \"Undo the"
            + " tray\"},\n";
    String now =
        RECORD
            .replace(
                "{\"n\": 2, \"procedure\": \"wheel\"", step + "{\"n\": 3, \"procedure\": \"wheel\"")
            .replace(
                "{\"n\": 3, \"procedure\": \"wheel\", \"places\": [\"left\"], \"text\": \"Refit",
                "{\"n\": 4, \"procedure\": \"wheel\", \"places\": [\"left\"], \"text\": \"Refit")
            .replace(
                "{\"n\": 2, \"fastener\"",
                "{\"n\": 2, \"fastener\": \"tray-bolt\", \"places\": [\"front\"], \"count\": 1,"
                    + " \"stages\": []}, {\"n\": 3, \"fastener\"");
    assertEquals(List.of("row 2 is new", "step 2 is new"), changes(RECORD, now));
    assertEquals(List.of("old row 2 is gone", "old step 2 is gone"), changes(now, RECORD));
  }

  @Test
  void aCautionAndACheckThatComeAndGoAreNamed() {
    String now =
        RECORD
            .replace(
                "\"cautions\": [",
                "\"cautions\": [{\"letter\": \"B\", \"signal\": \"NOTICE\", \"hazard\": \"lead\","
                    + " \"text\": \"Lead\"}, ")
            .replace("\"rule\": \"hoses\"", "\"rule\": \"brakes\"");
    assertEquals(
        List.of("caution B is new", "check 1 is new", "the check hoses is gone"),
        changes(RECORD, now));
    assertEquals(
        List.of("old caution B is gone", "check 1 is new", "the check brakes is gone"),
        changes(now, RECORD));
  }

  @Test
  void anotherOrderOfTheSameStepsIsSaid() {
    String now =
        RECORD
            .replace(
                "\"text\": \"Undo the wheel\", \"details\": [\"mark it\"]",
                "\"text\": \"X\", \"details\": []")
            .replace(
                "\"text\": \"Refit the wheel\", \"details\": []",
                "\"text\": \"Undo the wheel\", \"details\": [\"mark it\"]")
            .replace("\"text\": \"X\"", "\"text\": \"Refit the wheel\"");
    assertEquals(List.of("the steps are in another order"), changes(RECORD, now));
  }

  @Test
  void ofManyChangesTheFirstAreNamedAndTheRestCounted() {
    String rows =
        IntStream.rangeClosed(4, 13)
            .mapToObj(
                n ->
                    ", {\"n\": %d, \"fastener\": \"bolt-%d\", \"places\": [\"x\"], \"count\": 1}"
                        .formatted(n, n))
            .collect(Collectors.joining());
    List<String> said =
        changes(RECORD, RECORD.replace("\"stages\": []}]", "\"stages\": []}" + rows + "]"));
    assertEquals(8, said.size());
    assertEquals("row 4 is new", said.get(0));
    assertEquals("3 more changes", said.get(7));
  }
}
