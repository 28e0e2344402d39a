package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.MadeSheet;
import baysheet.report.Problems;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The schema of the record says what is in the records of the demo, and describes every key. */
class RecordSchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path SCHEMA = Path.of("src/main/resources/baysheet/schema/record.json");

  @TempDir private static Path folder;
  private static JsonNode schemaText;
  private static JsonSchema schema;
  private static Map<String, MadeSheet> sheets;

  @BeforeAll
  static void make() throws IOException {
    schemaText = JSON.readTree(Files.readString(SCHEMA));
    // The validator wants an absolute identifier; all references are to the file itself.
    JsonNode anonymous = ((ObjectNode) schemaText.deepCopy()).without("$id");
    schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(anonymous);
    sheets = CopyOfTheDemo.in(folder.resolve("demo")).made(new Problems());
    assertTrue(sheets.size() > 10);
  }

  @Test
  void everyRecordIsValid() throws IOException {
    for (MadeSheet sheet : sheets.values()) {
      assertEquals(Set.of(), schema.validate(JSON.readTree(sheet.record())));
    }
  }

  @Test
  void aRecordWithoutAKeyOrWithATextForAFigureIsNot() throws IOException {
    JsonNode record = JSON.readTree(sheets.get("2402-2").record());
    ((ObjectNode) record.path("torque").path(0)).remove("fastener");
    ((ObjectNode) record.path("vehicle").path("odometer")).put("value", "142860");
    assertEquals(2, schema.validate(record).size());
  }

  @Test
  void everyKeyIsInTheSchema() throws IOException {
    Set<String> unknown = new TreeSet<>();
    for (MadeSheet sheet : sheets.values()) {
      look(JSON.readTree(sheet.record()), schemaText, "", unknown);
    }
    assertEquals(Set.of(), unknown);
  }

  private static void look(JsonNode value, JsonNode described, String at, Set<String> unknown) {
    JsonNode known =
        described.has("$ref")
            ? schemaText.at(described.path("$ref").asText().substring(1))
            : described;
    value
        .fields()
        .forEachRemaining(
            it -> {
              JsonNode key = known.path("properties").path(it.getKey());
              if (key.isMissingNode()) {
                unknown.add(at + "." + it.getKey());
              } else {
                look(it.getValue(), key, at + "." + it.getKey(), unknown);
              }
            });
    if (value.isArray()) {
      value.forEach(it -> look(it, known.path("items"), at, unknown));
    }
  }

  /** The example runs wherever Python is; README and the page show it, so it has to be right. */
  @Test
  void theExampleMakesInvoiceLines() throws Exception {
    Path out = folder.resolve("lines.txt");
    List<String> command = new ArrayList<>(List.of("python3", "src/docs/invoice_lines.py"));
    List<JsonNode> parts = new ArrayList<>();
    for (String name : List.of("2402-1", "2402-2", "2402-3")) {
      byte[] record = sheets.get(name).record();
      command.add(Files.write(folder.resolve(name + ".json"), record).toString());
      JSON.readTree(record).path("parts").forEach(parts::add);
    }
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile());
    builder.environment().put("PYTHONIOENCODING", "UTF-8");
    Process process;
    try {
      process = builder.start();
    } catch (IOException noPython) {
      Assumptions.abort("no python3 here: " + noPython.getMessage());
      return;
    }
    assertEquals(0, process.waitFor(), Files.readString(out));
    List<String> lines = Files.readAllLines(out);
    assertEquals("Job 2402 of 2026-03-02, RD 08-553", lines.get(0));
    assertFalse(parts.isEmpty());
    for (JsonNode part : parts) {
      String line = "part;;" + part.path("part").asText() + ";" + part.path("count").asInt();
      assertTrue(lines.contains(line), lines.toString());
    }
    // The odometer of the demo job is at 142860 km, and its book asks for a look after 80 km.
    assertTrue(
        lines.stream().anyMatch(it -> it.matches("re-check;;rows .* at 142940 km;")),
        lines.toString());
    assertTrue(
        lines.contains("work;lower-arm;Lower suspension arm with ball joint, front-left;1"),
        lines.toString());
  }
}
