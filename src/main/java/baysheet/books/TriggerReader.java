package baysheet.books;

import baysheet.report.Located;
import baysheet.yaml.MapReader;
import baysheet.yaml.Sequence;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads what sets a caution or a consequence off. */
final class TriggerReader {
  private static final ValueReader<Trigger> TRIGGER =
      ValueReaders.record("a trigger", TriggerReader::trigger);
  private static final ValueReader<String> EQUIPMENT =
      Words.oneOf(
          Stream.of(Bay.Equipment.values()).map(Bay.Equipment::word).toList(), word -> word);

  private static final ValueReader<String> PLACE =
      ValueReaders.value(PlaceText::place).map(Place::word);

  private TriggerReader() {}

  /** The triggers under {@code when}: one map or a list of them. */
  static List<Trigger> optional(MapReader map) {
    return values(map.listOrOne("when", TRIGGER));
  }

  /** The same, for what nothing else can set off. */
  static Optional<List<Trigger>> required(MapReader map) {
    return map.required("when", ValueReaders.listOrOne(TRIGGER)).map(list -> values(list.value()));
  }

  private static Optional<Trigger> trigger(MapReader map) {
    Map<Trigger.Condition, Trigger.Asked> asked = new EnumMap<>(Trigger.Condition.class);
    for (Trigger.Condition condition : Trigger.Condition.values()) {
      asked.put(condition, new Trigger.Asked(map.listOrOne(condition.key(), reader(condition))));
    }
    Optional<Boolean> impact = map.optional("impact", ValueReaders.yesNo()).map(Located::value);
    Trigger trigger = new Trigger(asked, impact);
    if (trigger.isEmpty() && !asksForSomething(map)) {
      map.problems().add(CatalogueSentences.emptyTrigger(map.at()));
    }
    return map.build(() -> trigger);
  }

  /** Whether something is asked, even if it is misspelt, which is reported already. */
  private static boolean asksForSomething(MapReader map) {
    return Stream.concat(
            Stream.of(Trigger.Condition.values())
                .filter(condition -> condition != Trigger.Condition.WHERE_UNUSED)
                .map(Trigger.Condition::key),
            Stream.of("impact"))
        .flatMap(key -> map.optional(key).stream())
        .anyMatch(node -> !(node instanceof Sequence list && list.items().isEmpty()));
  }

  /** Tools, products and figures are written as people say them; all else is a short name. */
  private static ValueReader<String> reader(Trigger.Condition condition) {
    return switch (condition) {
      case APPLY, USES, WHERE_UNUSED, MEASURE -> ValueReaders.text();
      case BAY -> EQUIPMENT;
      case AT -> PLACE;
      default -> ValueReaders.name();
    };
  }

  private static <T> List<T> values(List<Located<T>> list) {
    return list.stream().map(Located::value).toList();
  }
}
