package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What must fit together between the catalogue and the rest of the folder: a trigger with a
 * misspelt name never fires.
 */
public final class CatalogueCheck {
  private final KnownNames known;
  private final Problems problems;

  private CatalogueCheck(KnownNames known, Problems problems) {
    this.known = known;
    this.problems = problems;
  }

  /**
   * Reports every name of the catalogue that nothing has.
   *
   * @param builtIn the files that come with the program; what they offer need not be used
   */
  public static void check(ShopFolder folder, Set<Source> builtIn, Problems problems) {
    CatalogueCheck check = new CatalogueCheck(folder.names(), problems);
    Catalogue catalogue = folder.catalogue();
    catalogue.items().values().forEach(check::item);
    catalogue.items().values().stream()
        .map(Catalogue.Item::name)
        .filter(name -> !builtIn.contains(name.at().source()))
        .forEach(name -> folder.names().unasked(name, problems));
    catalogue.cautions().values().forEach(caution -> caution.when().forEach(check::trigger));
    catalogue.rules().values().forEach(check::rule);
    catalogue.vocabulary().tools().values().forEach(it -> check.all(ReferenceSort.TOOL, it.like()));
    catalogue
        .vocabulary()
        .products()
        .values()
        .forEach(it -> check.all(ReferenceSort.PRODUCT, it.like()));
    catalogue.qualifications().values().forEach(it -> it.when().forEach(check::trigger));
  }

  /**
   * Reports entries of a garage that take the place of a built-in caution or check and ask for
   * less.
   *
   * @param own a file of the garage
   * @param builtIn all that comes with the program
   */
  public static void notWeaker(Catalogue own, Catalogue builtIn, Problems problems) {
    own.cautions()
        .forEach(
            (name, caution) ->
                Optional.ofNullable(builtIn.cautions().get(name))
                    .map(Catalogue.Caution::signal)
                    .filter(signal -> signal.compareTo(caution.signal()) < 0)
                    .ifPresent(
                        signal -> problems.add(CatalogueSentences.weakerSignal(caution, signal))));
    own.rules()
        .forEach(
            (name, rule) ->
                Optional.ofNullable(builtIn.rules().get(name))
                    .ifPresent(replaced -> notWeaker(rule, replaced, problems)));
  }

  private static void notWeaker(Catalogue.Rule own, Catalogue.Rule builtIn, Problems problems) {
    if (builtIn.others().hold() && !own.others().hold()) {
      problems.add(CatalogueSentences.weakerHold(own.name()));
    }
    dropped(
        "keeps-open", own.name(), own.others().keepOpen(), builtIn.others().keepOpen(), problems);
    dropped(
        "released-by", own.name(), own.others().release(), builtIn.others().release(), problems);
  }

  private static void dropped(
      String key,
      Located<String> name,
      Optional<Located<String>> own,
      Optional<Located<String>> builtIn,
      Problems problems) {
    builtIn
        .filter(it -> own.isEmpty())
        .ifPresent(it -> problems.add(CatalogueSentences.weakerKey(name, key, it.value())));
  }

  private void item(Catalogue.Item item) {
    all(ReferenceSort.KIND, item.kinds());
    all(ReferenceSort.FLUID, item.fluid().stream().toList());
  }

  private void all(ReferenceSort sort, List<Located<String>> names) {
    names.forEach(name -> known.check(sort, name, problems));
  }

  private void rule(Catalogue.Rule rule) {
    rule.when().forEach(this::trigger);
    rule.uses().forEach(use -> known.tool(use, problems));
    rule.step().ifPresent(this::step);
  }

  private void step(Catalogue.CheckStep step) {
    step.whileOff()
        .forEach(off -> known.check(ReferenceSort.ITEM, ReferenceSort.KIND, off, problems));
    step.uses().forEach(use -> known.tool(use, problems));
    all(ReferenceSort.CIRCUIT, step.fills());
    all(ReferenceSort.ITEM, step.ends());
  }

  private void trigger(Trigger trigger) {
    for (Map.Entry<Trigger.Condition, Trigger.Asked> asked : trigger.asked().entrySet()) {
      List<Located<String>> names = asked.getValue().located();
      switch (asked.getKey()) {
        case UNDO, DO_UP, DISTURB -> all(ReferenceSort.ITEM, names);
        case KIND, DO_UP_KIND, RENEW_KIND -> all(ReferenceSort.KIND, names);
        case CIRCUIT -> all(ReferenceSort.CIRCUIT, names);
        case APPLY -> all(ReferenceSort.PRODUCT, names);
        case USES, WHERE_UNUSED -> all(ReferenceSort.SPECIAL_TOOL, names);
        case MEASURE -> all(ReferenceSort.MEASURE, names);
        case PROCEDURE -> all(ReferenceSort.PROCEDURE, names);
        case SERVES -> all(ReferenceSort.ROLE, names);
        case TRAIT, WITHOUT -> all(ReferenceSort.TRAIT, names);
        case STATE -> all(ReferenceSort.STATE, names);
        case BAY, AT -> {}
      }
    }
  }
}
