package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.ledger.Joint;
import baysheet.ledger.KeptRecord;
import baysheet.output.Exit;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The record and the paper it belongs to say the same. */
class RecordTest {
  @TempDir private Path folder;
  private Recorded made;
  private Garage garage;

  @BeforeEach
  void make() {
    made = Recorded.in(folder);
    garage = made.garage();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sheet: job date id revision paper pages bodyPt dropped",
        "vehicle: book name plate odometer",
        "people: by",
        "time: minutes saved",
        "steps*: n phase moment place procedure text undo doUp disturb torque cautions minutes hold",
        "torque*: n fastener places count thread class head socket stages passes order threads reuse"
            + " moment source overridden warnings",
        "sockets*: drive head points impact count firstStep owned",
        "parts*: part count",
        "tally*: item place off on",
        "cautions*: letter signal hazard steps",
        "checks*: moment text because hold",
        "boxes*: name kind x y w h",
      })
  void everyPartHasItsKeys(String part) {
    String name = part.substring(0, part.indexOf(':')).replace("*", "");
    JsonTree record = made.record("501");
    List<JsonTree> things = part.contains("*:") ? record.list(name) : List.of(record.get(name));
    assertFalse(things.isEmpty(), name);
    for (JsonTree thing : things) {
      for (String key : part.substring(part.indexOf(':') + 2).split(" ")) {
        assertTrue(thing.has(key), name + " has no " + key + ": " + thing.value());
      }
    }
  }

  @Test
  void theRestOfTheKeysStandsOnTop() {
    JsonTree record = made.record("501");
    assertEquals("1", record.text("format"));
    assertEquals("2", record.text("bay"));
    for (String list : List.of("tools", "consumables", "evening", "sources")) {
      assertTrue(record.has(list), list);
    }
    // Two stands carry the axle: 60 % of 1100 kg is 660 kg, and half of it is 330 kg.
    assertEquals("660 kg", record.quantity("support.axleLoad"));
    assertEquals("330 kg", record.quantity("support.perStand"));
    assertEquals("2000 kg", record.quantity("support.rated"));
  }

  @Test
  void figuresAreFiguresAndTruthsAreTruths() {
    JsonTree nut = made.record("502").list("torque").get(0);
    assertEquals(new BigDecimal(4), nut.figure("count"));
    JsonTree stage = nut.list("stages").get(0);
    assertEquals("120 N·m", stage.quantity("torque"));
    assertEquals(new BigDecimal(114), stage.figure("band.from"));
    assertEquals(new BigDecimal(126), stage.figure("band.to"));
    assertEquals("shop", stage.text("band.of"));
    assertEquals(Boolean.FALSE, nut.get("overridden").value());
    assertEquals("on-the-ground", nut.text("moment"));
    assertEquals("80 km", nut.quantity("recheck"));
  }

  @Test
  void roundsAreFiguresThatCanBeSet() {
    // Half of 120 N·m is 60 N·m, and B2 has a mark at every newton metre from 40.
    List<JsonTree> rounds = made.record("502").list("torque").get(0).list("rounds");
    assertEquals(2, rounds.size());
    assertEquals("50", rounds.get(0).text("percent"));
    assertEquals("60 N·m", rounds.get(0).quantity("torque"));
    assertEquals("60 N·m", rounds.get(0).quantity("setting"));
    assertEquals("B2", rounds.get(0).text("wrench"));
    assertEquals("120 N·m", rounds.get(1).quantity("setting"));
  }

  @Test
  void aRoundOfAWrenchWithAnotherUnitIsOneOfItsMarks() {
    garage.change("vehicles/hollin-wren-van-2016.yaml", "120 N·m", "95 lbf·ft");
    garage.sheets("--record");
    JsonTree half = made.record("502").list("torque").get(0).list("rounds").get(0);
    // 47.5 · 1.3558 = 64.4
    assertEquals("47.5 lbf·ft", half.quantity("torque"));
    assertEquals("64 N·m", half.quantity("setting"));
    assertOnPaper(made.paper("502").text(), "50 % (B2: 64 N·m)");
  }

  @Test
  void aFigureInDoubtIsAHoldPoint() {
    assertEquals(Boolean.FALSE, tightens("502").get("hold").value());
    garage.change("vehicles/hollin-wren-van-2016.yaml", "120 N·m", "120 lbf·in");
    garage.sheets("--record");
    assertEquals(Boolean.TRUE, tightens("502").get("hold").value());
    assertOnPaper(made.paper("502").text(), "Row 1: to the figure written in that row");
    assertOnPaper(made.paper("502").text(), "wrench, set to");
    assertOnPaper(
        made.paper("502").text(),
        "Check that torque and source of the wheel nuts (row 1) are recorded");
  }

  @Test
  void noMarkLiesReadyForAFigureInDoubt() {
    garage.change("vehicles/hollin-wren-van-2016.yaml", "120 N·m", "120 lbf·in");
    garage.sheets("--record");
    JsonTree line = made.record("502").list("torque").get(0);
    JsonTree stage = line.list("stages").get(0);
    assertEquals("120 lbf·in", stage.quantity("torque"));
    for (String key : List.of("second", "band", "reading", "wrench", "setting", "arrives")) {
      assertFalse(stage.has(key), key);
    }
    assertEquals(
        List.of("50", "100"),
        line.list("rounds").stream().map(round -> round.text("percent")).toList());
    for (String key : List.of("torque", "wrench", "setting", "with")) {
      line.list("rounds").forEach(round -> assertFalse(round.has(key), key));
    }
    String paper = made.paper("502").text();
    assertOnPaper(paper, "Ask for the correct torque of the wheel nuts (row 1)");
    // 120 · 0.1130 = 13.6
    assertFalse(paper.contains("13.5 N·m") || paper.contains("14 N·m"), paper);
  }

  /** The figure that was written in on paper counts, and is compared with nothing. */
  @Test
  void aFigureInDoubtIsNoTargetForWhatWasReached() {
    garage.change("vehicles/hollin-wren-van-2016.yaml", "120 N·m", "120 lbf·in");
    garage.sheets("--record");
    Joint joint = KeptRecord.of(Garage.bytes(garage.made("502.json"))).joints().get(0);
    assertEquals("wheel-nut", joint.fastener());
    assertTrue(joint.target().isEmpty() && joint.band().isEmpty(), joint.toString());
  }

  /** The step that brings the first torque line to its figure. */
  private JsonTree tightens(String job) {
    return made.record(job).list("steps").stream()
        .filter(
            step -> step.list("torque").stream().anyMatch(n -> n.value().toString().equals("1")))
        .reduce((first, last) -> last)
        .orElseThrow();
  }

  @Test
  void aCrowFootIsATool() {
    assertEquals(Boolean.TRUE, crowFoot().get("owned").value());
    String owned = Paper.words(made.paper("503").text());
    assertFalse(owned.contains("Borrow: crow-foot"), owned);
  }

  @Test
  void aCrowFootThatTheShopLacksIsBorrowed() {
    garage.change(
        "shop.yaml", "crow-foot hex 15 mm, reach 60 mm", "crow-foot hex 15 mm, reach 70 mm");
    assertEquals(Exit.DONE, garage.sheets("--record").exit());
    assertEquals(Boolean.FALSE, crowFoot().get("owned").value());
    assertOnPaper(made.paper("503").text(), "Borrow: " + crowFoot().text("name"));
  }

  private JsonTree crowFoot() {
    return made.record("503").list("tools").stream()
        .filter(it -> it.text("name").equals("crow-foot hex 15 mm, reach 60 mm"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void noSocketIsLaidOutWhereACrowFootIsUsed() {
    JsonTree nut = made.record("503").list("torque").get(0);
    assertEquals("link-upper-nut", nut.text("fastener"));
    assertEquals("crow-foot in line", nut.text("socket.insert"));
    List<String> inserts =
        made.record("503").list("sockets").stream()
            .filter(it -> it.has("insert"))
            .map(it -> it.text("head") + " " + it.text("insert"))
            .toList();
    assertEquals(List.of(nut.text("head") + " crow-foot, reach 60 mm"), inserts);
    assertOnPaper(made.paper("503").text(), "hex 15 mm crow-foot, reach 60 mm");
  }

  @Test
  void anOverrideIsMarked() {
    JsonTree line = made.record("503").list("torque").get(0);
    assertEquals("link-upper-nut", line.text("fastener"));
    assertEquals(Boolean.TRUE, line.get("overridden").value());
    assertEquals("Hollin bulletin 4 of 2019", line.text("source"));
  }

  @Test
  void everyTorqueLineStandsOnThePaperAsInTheRecord() {
    for (String job : Recorded.JOBS) {
      String text = made.paper(job).text();
      for (JsonTree line : made.record(job).list("torque")) {
        for (JsonTree stage : line.list("stages")) {
          // A tolerance stands beside the figure as its band.
          assertOnPaper(text, Paper.words(stage.quantity("torque")));
          String set = Pattern.quote(stage.quantity("setting")) + "\\W{1,4}" + stage.text("wrench");
          assertTrue(Pattern.compile(set).matcher(text).find(), set + " is not in\n" + text);
        }
      }
    }
  }

  private static void assertOnPaper(String text, String part) {
    assertTrue(text.contains(part), part + " is not in\n" + text);
  }

  @Test
  void everyQuantityOnThePaperIsInTheRecord() {
    Pattern quantity =
        Pattern.compile("(?<![\\w./])([0-9]+(?:\\.[0-9]+)?) (N·m|lbf·ft|lbf·in|kg|km|mm|kN)\\b");
    for (String job : Recorded.JOBS) {
      JsonTree record = made.record(job);
      Set<String> known = quantities(record);
      String texts = texts(record);
      Matcher found = quantity.matcher(made.paper(job).text());
      int seen = 0;
      while (found.find()) {
        seen++;
        boolean told = known.contains(found.group()) || texts.contains(found.group());
        assertTrue(told, found.group() + " of job " + job + " is not in its record");
      }
      assertTrue(seen > 8, job + " has only " + seen);
    }
  }

  /** Quantities of the record. */
  private static Set<String> quantities(JsonTree record) {
    Set<String> known = new HashSet<>();
    record.eachMap(
        map -> {
          if (map.has("value") && map.has("unit")) {
            known.add(map.figure("value").toPlainString() + " " + map.text("unit"));
          }
          if (map.has("from") && map.has("to")) {
            known.add(map.figure("from").toPlainString() + " " + map.text("unit"));
            known.add(map.figure("to").toPlainString() + " " + map.text("unit"));
          }
        });
    return known;
  }

  private static String texts(JsonTree record) {
    StringBuilder texts = new StringBuilder();
    record.eachText(text -> texts.append(text).append('\n'));
    return Paper.words(texts.toString());
  }

  @Test
  void theSheetIsKnownByOneNumberEverywhere() {
    Set<String> ids = new TreeSet<>();
    for (String job : Recorded.JOBS) {
      String id = made.record(job).text("sheet.id");
      assertTrue(id.matches(job + "-A-[0-9a-f]{6}"), id);
      assertOnPaper(made.paper(job).text(), id);
      assertTrue(
          new String(Garage.bytes(garage.made(job + ".pdf")), StandardCharsets.ISO_8859_1)
              .contains(id),
          "the file's own description lacks " + id);
      ids.add(id);
    }
    assertEquals(Recorded.JOBS.size(), ids.size());
  }

  @Test
  void anotherFigureIsAnotherNumber() {
    String before = made.record("502").text("sheet.id");
    garage.change("vehicles/hollin-wren-van-2016.yaml", "120 N·m", "121 N·m");
    garage.sheets("--record");
    assertFalse(before.equals(made.record("502").text("sheet.id")));
  }

  @Test
  void whatComesOffGoesOnAgainLater() {
    for (JsonTree line : made.record("503").list("tally")) {
      assertTrue(line.figure("off").compareTo(line.figure("on")) < 0, line.value().toString());
    }
  }

  @Test
  void stepsNameTorqueLinesThatThereAre() {
    for (String job : Recorded.JOBS) {
      Set<Object> reached = new HashSet<>();
      Set<Object> lines = new HashSet<>();
      made.record(job).list("torque").forEach(line -> lines.add(line.get("n").value()));
      for (JsonTree step : made.record(job).list("steps")) {
        step.list("torque").forEach(n -> reached.add(n.value()));
      }
      assertEquals(lines, reached);
    }
  }
}
