package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.output.MadeSheet;
import baysheet.report.Problems;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs that read a record find keys of one form, and words that they can compare. */
class RecordFormTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;
  private final Set<String> oddKeys = new TreeSet<>();
  private final Set<String> oddSpaces = new TreeSet<>();

  @Test
  void keysAreInCamelCaseAndSpacesArePlain() throws IOException {
    CopyOfTheDemo demo = CopyOfTheDemo.in(folder);
    for (MadeSheet sheet : demo.made(new Problems()).values()) {
      look(JSON.readTree(sheet.record()));
    }
    Garage garage = Garage.in(folder.resolve("garage"));
    look(JSON.readTree(garage.run("torque", "110", "Nm", "--json").out()));
    garage.change("shop.yaml", "stands: {rated: 2000 kg", "stands: {rated: 300 kg");
    look(JSON.readTree(garage.run("check", garage.root.toString(), "--json").out()));
    assertEquals(Set.of(), oddKeys);
    assertEquals(Set.of(), oddSpaces);
  }

  private void look(JsonNode node) {
    node.fieldNames().forEachRemaining(this::key);
    if (node.isTextual() && node.asText().codePoints().anyMatch(RecordFormTest::isOddSpace)) {
      oddSpaces.add(node.asText());
    }
    node.forEach(this::look);
  }

  private void key(String key) {
    if (!key.matches("[a-z][A-Za-z0-9]*")) {
      oddKeys.add(key);
    }
  }

  private static boolean isOddSpace(int point) {
    return point != ' ' && Character.isSpaceChar(point);
  }
}
