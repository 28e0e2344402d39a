package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record as whoever searches or compares it by lines finds it. */
class RecordLinesTest {
  @TempDir private Path folder;

  @Test
  void everyEntryOfAListIsALineOfItsOwn() {
    Recorded made = Recorded.in(folder);
    for (String job : Recorded.JOBS) {
      List<String> lines = lines(made, job);
      JsonTree record = made.record(job);
      assertEquals(
          record.list("steps").size(),
          count(lines, "{\"n\":[0-9]+,\"id\":\"[^\"]*\",\"phase\":.*"),
          job);
      assertEquals(
          record.list("torque").size(), count(lines, "{\"n\":[0-9]+,\"fastener\":.*"), job);
      assertEquals(
          record.list("boxes").size(), count(lines, "{\"name\":.*\"kind\":.*\"h\":.*"), job);
    }
  }

  @Test
  void everyKeyOfTheWholeBeginsALine() {
    Recorded made = Recorded.in(folder);
    List<String> lines = lines(made, "501");
    assertEquals("{", lines.get(0));
    assertEquals("\"format\":1,", lines.get(1));
    assertEquals("}", lines.get(lines.size() - 1));
    for (String key : List.of("sheet", "vehicle", "people", "steps", "torque", "tally", "boxes")) {
      assertEquals(1, count(lines, "\"" + key + "\":[\\[{].*"), key);
    }
  }

  @Test
  void aFileOfLinesEndsWithOne() {
    Recorded made = Recorded.in(folder);
    String text = text(made, "502");
    assertTrue(text.endsWith("}\n"));
    assertTrue(text.lines().noneMatch(String::isBlank));
  }

  private static List<String> lines(Recorded made, String job) {
    return text(made, job).lines().toList();
  }

  private static String text(Recorded made, String job) {
    return new String(Garage.bytes(made.garage().made(job + ".json")), StandardCharsets.UTF_8);
  }

  private static int count(List<String> lines, String pattern) {
    return (int)
        lines.stream().filter(line -> line.matches(pattern.replace("{\"", "\\{\""))).count();
  }
}
