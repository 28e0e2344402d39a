package baysheet.books;

import baysheet.report.Located;
import baysheet.yaml.MapReader;
import baysheet.yaml.Read;
import baysheet.yaml.ValueReader;
import java.util.List;
import java.util.Optional;

/** Reads what sets a caution or a consequence off. */
final class TriggerReader {
  private static final ValueReader<Catalogue.Trigger> TRIGGER =
      Read.record("a trigger", TriggerReader::trigger);

  private TriggerReader() {}

  /** The triggers under {@code when}: one map or a list of them. */
  static List<Catalogue.Trigger> optional(MapReader map) {
    return values(map.listOrOne("when", TRIGGER));
  }

  /** The same, for what nothing else can set off. */
  static Optional<List<Catalogue.Trigger>> required(MapReader map) {
    return map.required("when", Read.listOrOne(TRIGGER)).map(list -> values(list.value()));
  }

  private static Optional<Catalogue.Trigger> trigger(MapReader map) {
    Catalogue.Trigger trigger =
        new Catalogue.Trigger(
            names(map, "undo"),
            names(map, "do-up"),
            names(map, "disturb"),
            names(map, "kind"),
            names(map, "circuit"),
            values(map.listOrOne("apply", Read.text())),
            values(map.listOrOne("uses", Read.text())),
            names(map, "procedure"),
            names(map, "trait"),
            names(map, "without"),
            names(map, "state"),
            map.optional("impact", Read.yesNo()).map(Located::value),
            map.at());
    if (trigger.isEmpty()) {
      map.problems().add(Sentences.emptyTrigger(map.at()));
    }
    return map.build(() -> trigger);
  }

  private static List<String> names(MapReader map, String key) {
    return values(map.listOrOne(key, Read.name()));
  }

  private static <T> List<T> values(List<Located<T>> list) {
    return list.stream().map(Located::value).toList();
  }
}
