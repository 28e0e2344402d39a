package baysheet.json;

import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A JSON object (RFC 8259).
 *
 * <p>A reading method throws {@link IllegalArgumentException} naming the key where it is missing,
 * unless it may be left out, and where another type stands there.
 *
 * @param values in their order: texts, {@link BigDecimal}s, truths, objects and lists of them
 */
public record JsonObject(Map<String, Object> values) {
  public JsonObject() {
    this(new LinkedHashMap<>());
  }

  /**
   * Adds a key; an empty {@link Optional} is left out.
   *
   * @param value a number, a truth, an object, a quantity or a collection of these; anything else
   *     is written as its text
   */
  public JsonObject put(String key, Object value) {
    if (!(value instanceof Optional<?> optional)) {
      values.put(key, plain(value));
    } else if (optional.isPresent()) {
      put(key, optional.get());
    }
    return this;
  }

  private static Object plain(Object value) {
    if (value instanceof JsonObject || value instanceof Boolean || value instanceof BigDecimal) {
      return value;
    } else if (value instanceof Number number) {
      return new BigDecimal(number.toString());
    } else if (value instanceof Collection<?> items) {
      return items.stream().map(JsonObject::plain).toList();
    } else if (value instanceof Quantity quantity) {
      return new JsonObject().put("value", quantity.value()).put("unit", quantity.unit().symbol());
    }
    return value.toString();
  }

  public <T> JsonObject list(String key, Collection<T> items, Function<T, JsonObject> item) {
    return put(key, items.stream().map(item).toList());
  }

  /** The same, left out where there are none. */
  public JsonObject listIfAny(String key, Collection<?> items) {
    return items.isEmpty() ? this : put(key, items);
  }

  public JsonObject putAll(JsonObject other) {
    values.putAll(other.values);
    return this;
  }

  public boolean has(String key) {
    return values.containsKey(key);
  }

  /** What stands behind a key; null where it is left out. */
  public Object value(String key) {
    return values.get(key);
  }

  public String text(String key) {
    return as(String.class, key, values.get(key));
  }

  public Optional<String> maybeText(String key) {
    return has(key) ? Optional.of(text(key)) : Optional.empty();
  }

  public int number(String key) {
    return decimal(key).intValueExact();
  }

  public Optional<Integer> maybeNumber(String key) {
    return has(key) ? Optional.of(number(key)) : Optional.empty();
  }

  public BigDecimal decimal(String key) {
    return as(BigDecimal.class, key, values.get(key));
  }

  /** False where it is left out. */
  public boolean truth(String key) {
    return as(Boolean.class, key, values.getOrDefault(key, Boolean.FALSE));
  }

  public LocalDate date(String key) {
    return LocalDate.parse(text(key));
  }

  /** The texts of a list; none where it is left out. */
  public List<String> texts(String key) {
    return list(String.class, key);
  }

  /** The objects of a list; none where it is left out. */
  public List<JsonObject> objects(String key) {
    return list(JsonObject.class, key);
  }

  private <T> List<T> list(Class<T> type, String key) {
    List<?> list = as(List.class, key, values.getOrDefault(key, List.of()));
    return list.stream().map(it -> as(type, key, it)).toList();
  }

  public Optional<JsonObject> object(String key) {
    return Optional.ofNullable(values.get(key)).map(it -> as(JsonObject.class, key, it));
  }

  /** An object of value and unit. */
  public Optional<Quantity> quantity(String key) {
    return object(key).map(it -> it.figureIn("value"));
  }

  /** A figure in the unit that stands beside it. */
  public Quantity figureIn(String key) {
    String symbol = text("unit");
    Unit unit =
        Unit.of(symbol)
            .orElseThrow(() -> new IllegalArgumentException("there is no unit " + symbol));
    return new Quantity(decimal(key), unit);
  }

  private static <T> T as(Class<T> type, String key, Object value) {
    if (!type.isInstance(value)) {
      throw new IllegalArgumentException(
          value == null ? "there is no " + key : key + " is not what it should be");
    }
    return type.cast(value);
  }
}
