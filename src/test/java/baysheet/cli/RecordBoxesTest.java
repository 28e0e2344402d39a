package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The boxes of a record: where they lie, and that everything that needs one has it. */
class RecordBoxesTest {
  @TempDir private Path folder;
  private Recorded made;

  @BeforeEach
  void make() {
    made = Recorded.in(folder);
  }

  @Test
  void boxesLieInsideWhatAPrinterReaches() {
    // Laser printers leave about 8 mm at the edge blank.
    double edge = 8 / 25.4 * 72 - 0.01;
    for (String job : Recorded.JOBS) {
      Paper paper = made.paper(job);
      for (JsonTree box : made.record(job).list("boxes")) {
        double x = box.figure("x").doubleValue();
        double y = box.figure("y").doubleValue();
        String what = box.value().toString();
        assertTrue(x >= edge && y >= edge, what);
        assertTrue(x + box.figure("w").doubleValue() <= paper.width() - edge, what);
        assertTrue(y + box.figure("h").doubleValue() <= paper.height() - edge, what);
      }
    }
  }

  @Test
  void noTwoBoxesOverlapOrShareAName() {
    for (String job : Recorded.JOBS) {
      List<JsonTree> boxes = made.record(job).list("boxes");
      Set<String> names = new HashSet<>();
      for (int i = 0; i < boxes.size(); i++) {
        assertTrue(names.add(boxes.get(i).text("name")), boxes.get(i).text("name"));
        for (int j = 0; j < i; j++) {
          assertFalse(overlap(boxes.get(i), boxes.get(j)), boxes.get(i) + " on " + boxes.get(j));
        }
      }
    }
  }

  private static boolean overlap(JsonTree one, JsonTree other) {
    return begins(one, "x").compareTo(ends(other, "x", "w")) < 0
        && begins(other, "x").compareTo(ends(one, "x", "w")) < 0
        && begins(one, "y").compareTo(ends(other, "y", "h")) < 0
        && begins(other, "y").compareTo(ends(one, "y", "h")) < 0;
  }

  private static BigDecimal begins(JsonTree box, String at) {
    return box.figure(at);
  }

  private static BigDecimal ends(JsonTree box, String at, String size) {
    return box.figure(at).add(box.figure(size));
  }

  @Test
  void everyLineHasItsBoxes() {
    for (String job : Recorded.JOBS) {
      JsonTree record = made.record(job);
      List<String> names = new ArrayList<>();
      record.list("boxes").forEach(box -> names.add(box.text("name")));
      for (JsonTree line : record.list("torque")) {
        for (JsonTree place : line.list("places")) {
          String end = line.text("n") + "." + place.value();
          boolean figure = !line.text("kind").equals("snug");
          assertEquals(figure, names.contains("torque." + end), "box for the value of " + end);
          assertTrue(names.contains("mark." + end), "no box for the mark of " + end);
          boolean snug = names.contains("torque." + end + ".snug");
          assertEquals(line.get("twoVisits").value(), snug, end);
        }
      }
      for (JsonTree step : record.list("steps")) {
        String begin = "tick." + step.text("n") + ".";
        // A step that leads to checks is their heading.
        boolean heading = step.text("id").startsWith("checkpoint/");
        assertEquals(!heading, names.stream().anyMatch(name -> name.startsWith(begin)), begin);
      }
      // A check that is a step of its own is ticked there.
      List<JsonTree> checks = record.list("checks");
      for (int i = 0; i < checks.size(); i++) {
        boolean listed = checks.get(i).list("steps").isEmpty();
        assertEquals(listed, names.contains("check." + (i + 1)), "check " + (i + 1));
      }
    }
  }
}
