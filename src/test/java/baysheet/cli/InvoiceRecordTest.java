package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.MadeSheet;
import baysheet.report.Problems;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an office reads from a record, against what the job, its book and its procedure say. */
class InvoiceRecordTest {
  private static final String BOOK = "vehicles/larkfell-pipit-2015.yaml";

  @TempDir private Path folder;

  private CopyOfTheDemo demo() {
    return CopyOfTheDemo.in(folder.resolve("garage"))
        .replacing(
            BOOK,
            "\nfasteners:\n",
            "\npart-numbers:\n  lower suspension arm with ball joint and bushes: LK 40-112\n"
                + "  ball-joint-pinch-bolt: LK 7-003\nfasteners:\n");
  }

  private static List<JsonNode> records(CopyOfTheDemo demo, String job) throws IOException {
    List<JsonNode> records = new ArrayList<>();
    for (MadeSheet sheet : demo.made(job)) {
      records.add(new ObjectMapper().readTree(sheet.record()));
    }
    return records;
  }

  private static List<JsonNode> all(List<JsonNode> records, String key) {
    List<JsonNode> all = new ArrayList<>();
    records.forEach(record -> record.path(key).forEach(all::add));
    return all;
  }

  @Test
  void aWorkHasItsPlaceAndItsPartsWithTheirNumbers() throws IOException {
    List<JsonNode> records = records(demo(), "2402");
    List<String> parts = new ArrayList<>();
    for (JsonNode work : all(records, "work")) {
      assertEquals("lower-arm", work.path("procedure").asText());
      assertEquals("[\"front-left\"]", work.path("places").toString());
      for (JsonNode part : work.path("parts")) {
        parts.add(
            part.path("count").asInt()
                + " "
                + part.path("part").asText()
                + " "
                + part.path("number").asText());
      }
    }
    assertEquals(
        List.of(
            "1 lower suspension arm with ball joint and bushes LK 40-112",
            "1 ball joint pinch bolt LK 7-003"),
        parts);
  }

  @Test
  void aNumberForAPartThatNothingAsksForIsReported() {
    CopyOfTheDemo demo =
        demo().replacing(BOOK, "ball-joint-pinch-bolt: LK", "ball-joint-bolte: LK");
    Problems problems = new Problems();
    demo.made(problems);
    assertTrue(
        problems.all().stream()
            .anyMatch(it -> it.isError() && it.what().contains("no part \"ball-joint-bolte\"")),
        problems.all().toString());
  }

  @Test
  void whatIsUsedUpIsAQuantity() throws IOException {
    CopyOfTheDemo demo =
        demo().replacing(BOOK, "engine-oil: {capacity: 4.2 L", "engine-oil: {capacity: 4.3 L");
    List<JsonNode> oil =
        all(records(demo, "2404"), "supplies").stream()
            .filter(it -> it.path("name").asText().equals("engine-oil"))
            .toList();
    assertEquals(1, oil.size());
    assertEquals(4.3, oil.get(0).path("capacity").path("value").asDouble());
    assertEquals("L", oil.get(0).path("capacity").path("unit").asText());
  }

  /** The job begins at 142860 km, and its book asks for a look at the wheel nuts after 80 km. */
  @Test
  void aRecheckIsADistanceAndAnOdometer() throws IOException {
    List<JsonNode> records = records(demo(), "2402");
    List<JsonNode> rechecks = all(records, "rechecks");
    assertEquals(1, rechecks.size(), rechecks.toString());
    assertEquals("{\"value\":80,\"unit\":\"km\"}", rechecks.get(0).path("after").toString());
    assertEquals("{\"value\":142940,\"unit\":\"km\"}", rechecks.get(0).path("dueAt").toString());
    List<String> rows = new ArrayList<>();
    for (JsonNode line : all(records, "torque")) {
      if (line.has("recheck")) {
        rows.add(line.path("n").asText());
      }
    }
    assertEquals(rows.toString(), rechecks.get(0).path("rows").toString().replace(",", ", "));
  }

  @Test
  void whatIsOpenIsNamed() throws IOException {
    List<String> open = new ArrayList<>();
    all(records(demo(), "2402"), "open").forEach(it -> open.add(it.path("text").asText()));
    assertEquals(List.of("wheel alignment, with a print-out"), open);
  }

  /** Nothing is lost between the parts of a sheet and those of the procedures that ask for them. */
  @Test
  void thePartsOfWorksAreAmongTheParts() throws IOException {
    for (MadeSheet sheet : demo().made(new Problems()).values()) {
      JsonNode record = new ObjectMapper().readTree(sheet.record());
      Map<String, Integer> counts = new TreeMap<>();
      record
          .path("parts")
          .forEach(it -> counts.put(it.path("part").asText(), it.path("count").asInt()));
      for (JsonNode work : record.path("work")) {
        for (JsonNode part : work.path("parts")) {
          counts.merge(part.path("part").asText(), -part.path("count").asInt(), Integer::sum);
        }
      }
      assertTrue(counts.values().stream().allMatch(left -> left >= 0), counts.toString());
    }
  }
}
