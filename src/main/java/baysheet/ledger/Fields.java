package baysheet.ledger;

import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The keys of one JSON object, with the types that are expected of them.
 *
 * <p>Every method but those for keys that may be left out throws {@link IllegalArgumentException}
 * naming the key when it is missing, or when what stands there has another type.
 */
record Fields(Map<String, Object> map) {
  String text(String key) {
    return as(String.class, key, map.get(key));
  }

  Optional<String> maybeText(String key) {
    return map.containsKey(key) ? Optional.of(text(key)) : Optional.empty();
  }

  int number(String key) {
    return figure(key).intValueExact();
  }

  Optional<Integer> maybeNumber(String key) {
    return map.containsKey(key) ? Optional.of(number(key)) : Optional.empty();
  }

  /** Which of several sheets of a job; none where the job has one. */
  Optional<Event.Part> part() {
    return maybeNumber("stage").map(n -> new Event.Part(n, number("stages")));
  }

  private BigDecimal figure(String key) {
    return as(BigDecimal.class, key, map.get(key));
  }

  boolean truth(String key) {
    return as(Boolean.class, key, map.getOrDefault(key, Boolean.FALSE));
  }

  LocalDate date(String key) {
    return LocalDate.parse(text(key));
  }

  /** The texts of a list; none where it is left out. */
  List<String> texts(String key) {
    return list(key).stream().map(it -> as(String.class, key, it)).toList();
  }

  /** The objects of a list; none where it is left out. */
  List<Fields> objects(String key) {
    return list(key).stream().map(it -> new Fields(object(key, it))).toList();
  }

  <T> List<T> objects(String key, Function<Fields, T> read) {
    return objects(key).stream().map(read).toList();
  }

  private List<?> list(String key) {
    return as(List.class, key, map.getOrDefault(key, List.of()));
  }

  Optional<Fields> object(String key) {
    return Optional.ofNullable(map.get(key)).map(it -> new Fields(object(key, it)));
  }

  Optional<Quantity> quantity(String key) {
    return object(key).map(it -> it.figureIn("value"));
  }

  Quantity degrees(String key) {
    return new Quantity(figure(key), Unit.DEGREE);
  }

  /** A figure in the unit that stands beside it. */
  Quantity figureIn(String key) {
    String symbol = text("unit");
    Unit unit =
        Unit.of(symbol)
            .orElseThrow(() -> new IllegalArgumentException("there is no unit " + symbol));
    return new Quantity(figure(key), unit);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> object(String key, Object value) {
    return as(Map.class, key, value);
  }

  private static <T> T as(Class<T> type, String key, Object value) {
    if (!type.isInstance(value)) {
      throw new IllegalArgumentException(
          value == null ? "there is no " + key : key + " is not what it should be");
    }
    return type.cast(value);
  }

  /** Writes an object key by key; what is absent or empty is left out. */
  static final class Writing {
    private final Map<String, Object> map = new LinkedHashMap<>();

    Writing put(String key, Object value) {
      map.put(key, plain(value));
      return this;
    }

    Writing put(String key, Optional<?> value) {
      value.ifPresent(it -> put(key, it));
      return this;
    }

    Writing list(String key, List<?> items) {
      if (!items.isEmpty()) {
        map.put(key, items.stream().map(Writing::plain).toList());
      }
      return this;
    }

    Map<String, Object> map() {
      return map;
    }

    private static Object plain(Object value) {
      if (value instanceof Quantity quantity) {
        return new Writing()
            .put("value", quantity.value())
            .put("unit", quantity.unit().symbol())
            .map();
      }
      return value;
    }
  }
}
