package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the schemas themselves have to be, so that any validator and any editor can use them. */
class SchemaFormTest {
  private static final Path SCHEMAS = Path.of("src/main/resources/baysheet/schema");
  private static final ObjectMapper JSON = new ObjectMapper();

  static List<Path> schemas() throws IOException {
    try (Stream<Path> files = Files.list(SCHEMAS)) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("schemas")
  void aSchemaIsOneByTheMetaschema(Path file) throws IOException {
    var metaschema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
            .getSchema(SchemaLocation.of("http://json-schema.org/draft-07/schema#"));
    assertEquals(Set.of(), metaschema.validate(JSON.readTree(Files.readString(file))));
  }

  /** JSON Schema draft-07, 8.2: a reference is resolved against the identifier of its schema. */
  @ParameterizedTest
  @MethodSource("schemas")
  void aSchemaIsIdentifiedByItsFileSoThatReferencesFindIt(Path file) throws IOException {
    JsonNode schema = JSON.readTree(Files.readString(file));
    assertEquals(file.getFileName().toString(), schema.path("$id").asText());
    for (String reference : references(schema)) {
      String[] parts = reference.split("#", 2);
      Path other = parts[0].isEmpty() ? file : file.resolveSibling(parts[0]);
      assertTrue(
          JSON.readTree(Files.readString(other)).at(parts[1]).isObject(), file + " " + reference);
    }
  }

  @ParameterizedTest
  @MethodSource("schemas")
  void aPatternHasASentence(Path file) throws IOException {
    List<String> without = new ArrayList<>();
    each(
        JSON.readTree(Files.readString(file)),
        node -> {
          if (node.path("pattern").isTextual() && !node.path("description").isTextual()) {
            without.add(node.toString());
          }
        });
    assertEquals(List.of(), without);
  }

  /** A format is optional to check (draft-07, 7.2), and some validators refuse unknown ones. */
  @ParameterizedTest
  @MethodSource("schemas")
  void aSchemaNeedsNoFormat(Path file) throws IOException {
    each(
        JSON.readTree(Files.readString(file)),
        // The key of the record that has this name is described by an object.
        node -> assertFalse(node.path("format").isTextual(), node.toString()));
  }

  private static Set<String> references(JsonNode schema) {
    Set<String> references = new TreeSet<>();
    each(
        schema,
        node -> {
          if (node.path("$ref").isTextual()) {
            references.add(node.path("$ref").asText());
          }
        });
    return references;
  }

  private static void each(JsonNode node, Consumer<JsonNode> visit) {
    visit.accept(node);
    node.forEach(child -> each(child, visit));
  }
}
