package baysheet.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * JSON read back: maps, lists, texts, figures and truths.
 *
 * @param value one of these
 */
record JsonTree(Object value) {
  static JsonTree of(byte[] json) {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      parser.nextToken();
      return new JsonTree(read(parser));
    } catch (IOException e) {
      throw new UncheckedIOException("no JSON", e);
    }
  }

  private static Object read(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> map(parser);
      case START_ARRAY -> list(parser);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new BigDecimal(parser.getText());
      case VALUE_TRUE -> Boolean.TRUE;
      case VALUE_FALSE -> Boolean.FALSE;
      default -> parser.getText();
    };
  }

  private static Map<String, Object> map(JsonParser parser) throws IOException {
    Map<String, Object> map = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      parser.nextToken();
      map.put(key, read(parser));
    }
    return map;
  }

  private static List<Object> list(JsonParser parser) throws IOException {
    List<Object> list = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(read(parser));
    }
    return list;
  }

  boolean has(String key) {
    return map().containsKey(key);
  }

  /** A value, its keys parted by dots. */
  JsonTree get(String path) {
    JsonTree at = this;
    for (String key : path.split("\\.")) {
      at =
          Optional.ofNullable(at.map().get(key))
              .map(JsonTree::new)
              .orElseThrow(() -> new AssertionError("no " + key + " of " + path));
    }
    return at;
  }

  String text(String path) {
    return get(path).value().toString();
  }

  BigDecimal figure(String path) {
    return (BigDecimal) get(path).value();
  }

  List<JsonTree> list(String path) {
    return ((List<?>) get(path).value()).stream().map(JsonTree::new).toList();
  }

  /** {@code 110 N·m} of {@code {"value": 110, "unit": "N·m"}}. */
  String quantity(String path) {
    return figure(path + ".value").toPlainString() + " " + text(path + ".unit");
  }

  /** Visits every map in it. */
  void eachMap(Consumer<JsonTree> visit) {
    if (value instanceof Map<?, ?> map) {
      visit.accept(this);
      map.values().forEach(inner -> new JsonTree(inner).eachMap(visit));
    } else if (value instanceof List<?> list) {
      list.forEach(inner -> new JsonTree(inner).eachMap(visit));
    }
  }

  /** Visits every text in it. */
  void eachText(Consumer<String> visit) {
    if (value instanceof Map<?, ?> map) {
      map.values().forEach(inner -> new JsonTree(inner).eachText(visit));
    } else if (value instanceof List<?> list) {
      list.forEach(inner -> new JsonTree(inner).eachText(visit));
    } else if (value instanceof String text) {
      visit.accept(text);
    }
  }

  private Map<?, ?> map() {
    if (value instanceof Map<?, ?> map) {
      return map;
    }
    throw new AssertionError("no map: " + value);
  }
}
