package baysheet.books;

import baysheet.report.Problems;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The kinds of files people write, each with its reader and its schema. */
enum FileKind {
  SHOP("shop", "shop"),
  SPEC_BOOK("vehicle", "spec-book"),
  PROCEDURE("procedure", "procedure"),
  JOB("job", "job"),
  CATALOGUE("", "catalogue");

  private final String firstKey;
  private final JsonSchema schema;

  FileKind(String firstKey, String schema) {
    this.firstKey = firstKey;
    this.schema = schema(schema + ".json");
  }

  private static JsonSchema schema(String file) {
    SchemaValidatorsConfig config =
        SchemaValidatorsConfig.builder()
            .pathType(PathType.JSON_POINTER)
            .formatAssertionsEnabled(true)
            .build();
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
        .getSchema(SchemaLocation.of("classpath:baysheet/schema/" + file), config);
  }

  /** The kind of a file, by its first key. */
  static FileKind of(Node file) {
    String first =
        file instanceof Mapping map && !map.entries().isEmpty()
            ? map.entries().get(0).key().text()
            : "";
    return Stream.of(values())
        .filter(kind -> kind.firstKey.equals(first))
        .findFirst()
        .orElse(CATALOGUE);
  }

  /** Reports what the reader finds wrong with a file of the given name. */
  Optional<?> read(Node file, String name, Problems problems) {
    return switch (this) {
      case SHOP -> ShopReader.read(file, problems);
      case SPEC_BOOK -> SpecBookReader.read(file, name, problems);
      case PROCEDURE -> ProcedureReader.read(file, name, problems);
      case JOB -> JobReader.read(file, name, problems);
      case CATALOGUE -> CatalogueReader.read(file, problems);
    };
  }

  /** The lines of a file at which an editor with the schema would mark a fault. */
  Set<Integer> marked(Node file, EditorView view) {
    return SchemaMarks.lines(file, schema.validate(view.of(file)));
  }
}
