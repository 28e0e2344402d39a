package baysheet.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The keys of the schemas that take names, as {@link NamedPlaces} writes them. */
final class SchemaNames {
  private static final Map<String, String> FILES = new LinkedHashMap<>();

  static {
    FILES.put("shop", "shop.json");
    FILES.put("book", "spec-book.json");
    FILES.put("procedure", "procedure.json");
    FILES.put("job", "job.json");
    FILES.put("catalogue", "catalogue.json");
  }

  /** Definitions of names, and of what begins with one. */
  private static final Set<String> NAMES =
      Set.of("name", "id", "access", "work", "item", "product");

  /** Keys that take a text by which something is looked up. */
  private static final Set<String> TEXTS =
      Set.of("uses", "special", "if-stuck", "apply", "measure", "like", "bay");

  private final Map<String, Map<?, ?>> files = new HashMap<>();
  private final Set<String> names = new TreeSet<>();

  private SchemaNames() {}

  static Set<String> of(Path folder) throws IOException {
    SchemaNames schemas = new SchemaNames();
    for (String file : List.of("shop", "spec-book", "procedure", "job", "catalogue", "values")) {
      byte[] text = Files.readAllBytes(folder.resolve(file + ".json"));
      schemas.files.put(file + ".json", (Map<?, ?>) JsonTree.of(text).value());
    }
    FILES.forEach((kind, file) -> schemas.walk(schemas.files.get(file), file, kind, ""));
    return schemas.names;
  }

  private void walk(Object at, String file, String path, String definition) {
    if (!(at instanceof Map<?, ?> schema)) {
      return;
    }
    if (schema.get("$ref") instanceof String reference) {
      refer(reference, file, path);
      return;
    }
    for (String any : List.of("anyOf", "oneOf", "allOf")) {
      if (schema.get(any) instanceof List<?> list) {
        list.forEach(one -> walk(one, file, path, definition));
      }
    }
    walk(schema.get("items"), file, path, definition);
    each(schema, "properties", (key, value) -> walk(value, file, below(path, key), ""));
    each(
        schema,
        "patternProperties",
        (pattern, value) -> {
          names.add(path + "/*:");
          walk(value, file, path + "/*", "");
        });
    if (schema.get("additionalProperties") instanceof Map<?, ?> any) {
      names.add(path + "/*:");
      walk(any, file, path + "/*", "");
    }
    if (isValue(schema)) {
      value(path, definition);
    }
  }

  /** A group of fasteners has a free name as well, though only some names. */
  private static String below(String path, String key) {
    boolean group = path.equals("book/fasteners");
    return path + "/" + (group ? "*" : key);
  }

  private void refer(String reference, String file, String path) {
    int hash = reference.indexOf('#');
    String other = hash == 0 ? file : reference.substring(0, hash);
    Object found = files.get(other);
    String last = "";
    for (String step : reference.substring(hash + 2).split("/")) {
      found = ((Map<?, ?>) found).get(step);
      last = step;
    }
    walk(found, other, path, last);
  }

  private interface Each {
    void on(String key, Object value);
  }

  private static void each(Map<?, ?> schema, String key, Each each) {
    if (schema.get(key) instanceof Map<?, ?> map) {
      map.forEach((name, value) -> each.on((String) name, value));
    }
  }

  private static boolean isValue(Map<?, ?> schema) {
    return schema.containsKey("enum")
        || schema.containsKey("pattern")
        || (schema.get("type") instanceof String type && !Set.of("object", "array").contains(type));
  }

  private void value(String path, String definition) {
    String key = path.substring(path.lastIndexOf('/') + 1);
    boolean sentence = path.endsWith("/if-stuck") && !path.contains("/uses/");
    boolean one = Set.of("procedure/needs", "procedure/at").contains(path);
    if (one || NAMES.contains(definition) || (TEXTS.contains(key) && !sentence)) {
      names.add(path);
    }
  }
}
