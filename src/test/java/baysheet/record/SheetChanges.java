package baysheet.record;

import baysheet.books.Glossary;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.ThreePoint;
import baysheet.torque.Unit;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Walks through all that a sheet holds and hands on sheets that say one thing otherwise. A type
 * that it does not know is a fault: a value that is never changed proves nothing.
 */
final class SheetChanges {
  /** How often one component is changed on a sheet; more of the same shows nothing new. */
  private static final int OF_EACH = 2;

  /** Holders of which a sheet takes less than where the same records stand by themselves. */
  private static final Set<String> COPIES =
      Set.of("Stage.elsewhere", "Detail.Carried.by", "StepSource.PutBack.name");

  private final Each each;
  private final Map<String, Integer> tried;

  /** Where the walk is: {@code Stage.elsewhere: }, or nothing outside of copies. */
  private final String within;

  private SheetChanges(Each each, Map<String, Integer> tried, String within) {
    this.each = each;
    this.tried = tried;
    this.within = within;
  }

  /** Takes the changes, each by itself. */
  interface Each {
    /**
     * A change.
     *
     * @param what the record and its component: {@code Stage.Row.n}; for an entry that comes or
     *     goes, that too; before it the holder, where a sheet takes only some of a record
     * @param others sheets of which one is enough, those first that differ least; some may not be
     *     sound
     */
    void change(String what, Stream<Sheet> others);
  }

  /** All changes of a sheet. */
  static void of(Sheet sheet, Each each) {
    new SheetChanges(each, new HashMap<>(), "")
        .walk(sheet, Sheet.class, new Spot("", "Sheet"), it -> Stream.of((Sheet) it));
  }

  /** A value in a sheet, and the sheets that have another in its place; none where it cannot be. */
  private void walk(Object value, Type type, Spot spot, Function<Object, Stream<Sheet>> sheets) {
    if (value instanceof Optional<?> maybe) {
      optional(maybe, argument(type, 0), spot, sheets);
    } else if (value instanceof List<?> list) {
      list(list, argument(type, 0), spot, sheets);
    } else if (value instanceof Map<?, ?> map) {
      map(map, type, spot, sheets);
    } else if (value instanceof Record record && !isWhole(record)) {
      record(record, spot.name(), sheets);
    } else {
      propose(spot, others(value, spot.name()), sheets);
    }
  }

  /** Whether its parts change together. */
  private static boolean isWhole(Record record) {
    return record instanceof Quantity || record instanceof ThreePoint;
  }

  /** A component and the one that holds its record: names and places stand in many records. */
  private record Spot(String holder, String name) {
    Spot and(String comesOrGoes) {
      return new Spot(holder, name + " " + comesOrGoes);
    }
  }

  private void propose(Spot spot, Stream<?> others, Function<Object, Stream<Sheet>> sheets) {
    if (tried.merge(within + spot, 1, Integer::sum) <= OF_EACH) {
      each.change(within + spot.name(), others.flatMap(sheets));
    }
  }

  private void optional(
      Optional<?> maybe, Type type, Spot spot, Function<Object, Stream<Sheet>> sheets) {
    if (maybe.isPresent()) {
      walk(maybe.get(), type, spot, it -> sheets.apply(Optional.of(it)));
      propose(spot.and("gone"), Stream.of(Optional.empty()), sheets);
    } else {
      propose(spot.and("come"), made(type).map(Optional::of), sheets);
    }
  }

  private void list(List<?> list, Type type, Spot spot, Function<Object, Stream<Sheet>> sheets) {
    for (int i = 0; i < list.size(); i++) {
      int at = i;
      Function<Object, Stream<Sheet>> within =
          other -> {
            List<Object> changed = new ArrayList<>(list);
            changed.set(at, other);
            return sheets.apply(changed);
          };
      walk(list.get(i), type, spot, within);
    }
    if (list.isEmpty()) {
      propose(spot.and("come"), made(type).map(List::of), sheets);
    } else {
      propose(spot.and("gone"), Stream.of(list.subList(0, list.size() - 1)), sheets);
    }
  }

  private void map(Map<?, ?> map, Type type, Spot spot, Function<Object, Stream<Sheet>> sheets) {
    map.forEach(
        (key, value) ->
            walk(
                value,
                argument(type, 1),
                spot,
                other -> {
                  Map<Object, Object> changed = new LinkedHashMap<>(map);
                  changed.put(key, other);
                  return sheets.apply(changed);
                }));
    if (map.isEmpty()) {
      Object key = made(argument(type, 0)).findFirst().orElseThrow();
      propose(spot.and("come"), made(argument(type, 1)).map(it -> Map.of(key, it)), sheets);
    } else {
      propose(spot.and("gone"), Stream.of(Map.of()), sheets);
    }
  }

  private void record(Record record, String holder, Function<Object, Stream<Sheet>> sheets) {
    SheetChanges inside = COPIES.contains(holder) ? inside(holder) : this;
    inside.components(record, holder, sheets);
  }

  private SheetChanges inside(String holder) {
    return new SheetChanges(each, tried, holder + ": ");
  }

  private void components(Record record, String holder, Function<Object, Stream<Sheet>> sheets) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object part = Altered.get(record, component);
      String name = name(record.getClass()) + "." + component.getName();
      Function<Object, Stream<Sheet>> around =
          other -> sound(() -> Altered.with(record, component.getName(), other)).flatMap(sheets);
      walk(part, component.getGenericType(), new Spot(holder, name), around);
    }
  }

  /** With the class around it, since several of them have rows. */
  private static String name(Class<?> of) {
    return of.getName().substring(of.getPackageName().length() + 1).replace('$', '.');
  }

  /** What can stand in place of a value that holds no others, the nearest first. */
  private static Stream<?> others(Object value, String what) {
    if (value instanceof String text) {
      // The second is for texts that are a size: 19 mm, T60.
      return Stream.of(text + "x", text.replaceFirst("\\d", "1$0"));
    } else if (value instanceof Integer number) {
      return Stream.of(number + 1, number - 1);
    } else if (value instanceof Boolean truth) {
      return Stream.of(!truth);
    } else if (value instanceof BigDecimal number) {
      return Stream.of(number.add(BigDecimal.ONE), number.subtract(BigDecimal.ONE));
    } else if (value instanceof Quantity quantity) {
      return Stream.of(BigDecimal.ONE, BigDecimal.ONE.negate())
          .map(it -> new Quantity(quantity.value().add(it), quantity.unit()));
    } else if (value instanceof ThreePoint time) {
      // Less than a minute shows, since a step's minutes are printed in halves.
      return Stream.of(new ThreePoint(time.low() + 0.4, time.likely() + 0.4, time.high() + 0.4));
    } else if (value instanceof LocalDate day) {
      return Stream.of(day.plusDays(1));
    } else if (value instanceof LocalTime time) {
      return Stream.of(time.plusMinutes(1));
    } else if (value instanceof Enum<?> constant) {
      return Arrays.stream(constant.getDeclaringClass().getEnumConstants())
          .filter(it -> it != constant);
    } else if (value instanceof Glossary) {
      return Stream.of(Glossary.of(Map.of("wheel", "whirl")));
    }
    throw new IllegalStateException(
        what + ": nobody says how to change a " + value.getClass().getName());
  }

  private static Type argument(Type type, int n) {
    return ((ParameterizedType) type).getActualTypeArguments()[n];
  }

  /** Something of a type, where nothing was; several where not every one may be sound. */
  private static Stream<?> made(Type type) {
    if (type == String.class) {
      return Stream.of("made up");
    } else if (type == Integer.class || type == int.class) {
      return Stream.of(1, 2);
    } else if (type == boolean.class) {
      return Stream.of(true);
    } else if (type == BigDecimal.class) {
      return Stream.of(new BigDecimal(100));
    } else if (type == LocalDate.class) {
      return Stream.of(LocalDate.of(2030, 1, 2));
    } else if (type == LocalTime.class) {
      return Stream.of(LocalTime.of(12, 34));
    } else if (type == Quantity.class) {
      return Stream.of(
              Unit.NEWTON_METRE, Unit.KILOMETRE, Unit.KILOGRAM, Unit.MILLIMETRE, Unit.DEGREE)
          .map(unit -> new Quantity(BigDecimal.ONE, unit));
    } else if (type == Head.class) {
      return Stream.of(new Head(Head.Form.HEX, "19 mm"));
    } else if (type == Reach.class) {
      return Stream.of(
          new Reach(Quantity.of("50", Unit.MILLIMETRE), Quantity.of("90", Unit.DEGREE)));
    } else if (type instanceof ParameterizedType of) {
      return holding(of);
    } else if (type instanceof Class<?> of && of.isEnum()) {
      return Arrays.stream(of.getEnumConstants());
    } else if (type instanceof Class<?> of && of.isSealed()) {
      return Arrays.stream(of.getPermittedSubclasses()).flatMap(SheetChanges::made);
    } else if (type instanceof Class<?> of && of.isRecord()) {
      return madeRecord(of);
    }
    throw new IllegalStateException("nobody says how to make a " + type.getTypeName());
  }

  /**
   * An optional and a map hold nothing, a list one entry: of some lists a sheet takes the first.
   */
  private static Stream<?> holding(ParameterizedType type) {
    if (type.getRawType() == List.class) {
      return Stream.concat(made(argument(type, 0)).limit(1).map(List::of), Stream.of(List.of()));
    }
    return Stream.of(type.getRawType() == Map.class ? Map.of() : Optional.empty());
  }

  /** Records of all that can be made of their parts, one part varied at a time. */
  private static Stream<?> madeRecord(Class<?> of) {
    RecordComponent[] components = of.getRecordComponents();
    List<List<?>> parts = new ArrayList<>();
    for (RecordComponent component : components) {
      parts.add(made(component.getGenericType()).limit(OF_EACH * OF_EACH).toList());
    }
    if (parts.stream().anyMatch(List::isEmpty)) {
      return Stream.empty();
    }
    int most = parts.stream().mapToInt(List::size).max().orElse(1);
    return Stream.iterate(0, i -> i + 1)
        .limit(most)
        .flatMap(
            i ->
                sound(
                    () ->
                        made(
                            of,
                            parts.stream()
                                .map(it -> (Object) it.get(Math.min(i, it.size() - 1)))
                                .toArray())));
  }

  private static Object made(Class<?> of, Object[] values) {
    Class<?>[] types =
        Arrays.stream(of.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      Constructor<?> constructor = of.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(of + " cannot be made", e);
    }
  }

  /** What a constructor makes; nothing where it refuses the values. */
  private static Stream<Object> sound(Supplier<Object> made) {
    try {
      return Stream.of(made.get());
    } catch (IllegalStateException refused) {
      return Stream.empty();
    }
  }
}
