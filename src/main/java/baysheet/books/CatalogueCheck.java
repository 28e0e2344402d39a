package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What must fit together within the whole catalogue: a trigger with a misspelt name never fires.
 */
public final class CatalogueCheck {
  private static final String CIRCUIT = "circuit";

  private final Set<String> kinds = new LinkedHashSet<>();
  private final Set<String> items = new LinkedHashSet<>();
  private final Set<String> circuits = new LinkedHashSet<>();
  private final Problems problems;

  private CatalogueCheck(Catalogue catalogue, Problems problems) {
    this.problems = problems;
    catalogue.items().values().forEach(this::know);
  }

  /**
   * Tells every name in a trigger that nothing has.
   *
   * @param catalogue the built-in one with the shop's additions
   * @param books where fasteners are named; items of a trigger may be these
   */
  public static void check(Catalogue catalogue, Collection<SpecBook> books, Problems problems) {
    CatalogueCheck check = new CatalogueCheck(catalogue, problems);
    books.stream()
        .flatMap(book -> book.fasteners().stream())
        .forEach(group -> check.items.addAll(group.fasteners().keySet()));
    catalogue.cautions().values().forEach(caution -> caution.when().forEach(check::trigger));
    catalogue.rules().values().forEach(check::rule);
  }

  private void know(Catalogue.Item item) {
    List<String> its = item.kinds().stream().map(Located::value).toList();
    items.add(item.name().value());
    kinds.addAll(its);
    if (its.contains(CIRCUIT)) {
      circuits.add(item.name().value());
    }
  }

  private void rule(Catalogue.Rule rule) {
    rule.when().forEach(this::trigger);
    rule.step().stream()
        .flatMap(step -> step.whileOff().stream())
        .filter(off -> !items.contains(off.value()) && !kinds.contains(off.value()))
        .forEach(off -> problems.add(Sentences.unknownItem(off.at(), off.value(), items)));
    rule.step().stream()
        .flatMap(step -> step.fills().stream())
        .filter(filled -> !circuits.contains(filled.value()))
        .forEach(it -> problems.add(Sentences.unknownCircuit(it.at(), it.value(), circuits)));
  }

  private void trigger(Catalogue.Trigger trigger) {
    unknown(trigger.kind().stream(), kinds)
        .forEach(kind -> problems.add(Sentences.unknownKind(trigger.at(), kind, kinds)));
    unknown(trigger.circuit().stream(), circuits)
        .forEach(it -> problems.add(Sentences.unknownCircuit(trigger.at(), it, circuits)));
    Stream<String> touched =
        Stream.of(trigger.undo(), trigger.doUp(), trigger.disturb()).flatMap(List::stream);
    unknown(touched, items)
        .forEach(item -> problems.add(Sentences.unknownItem(trigger.at(), item, items)));
  }

  private static Stream<String> unknown(Stream<String> names, Set<String> known) {
    return names.filter(name -> !known.contains(name));
  }
}
