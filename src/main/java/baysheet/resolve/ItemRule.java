package baysheet.resolve;

import baysheet.books.Catalogue;
import baysheet.books.KnownNames;
import baysheet.books.KnownNames.Sort;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the items that steps name are, and where: a fastener of the spec book if it has the name
 * around that place, else an item of the catalogue.
 */
final class ItemRule {
  private static final String AT = " at ";

  private final EffectiveBook book;
  private final Catalogue catalogue;
  private final KnownNames known;
  private final FastenerRule fasteners;
  private final Problems problems;
  private final Map<ItemAt, Bound> things = new LinkedHashMap<>();
  private final Set<ItemAt> fastenersNamed = new LinkedHashSet<>();
  private final Set<List<String>> told = new LinkedHashSet<>();

  ItemRule(EffectiveBook book, ShopFolder folder, FastenerRule fasteners, Problems problems) {
    this.book = book;
    this.catalogue = folder.catalogue();
    this.known = folder.names();
    this.fasteners = fasteners;
    this.problems = problems;
  }

  /** Everything bound so far. */
  Map<ItemAt, Bound> things() {
    return things;
  }

  /** Every fastener that a step names, those that could not be bound among them. */
  Set<ItemAt> fastenersNamed() {
    return fastenersNamed;
  }

  /** The steps with their items bound; what cannot be bound is a problem and left out. */
  List<BoundStep> bind(List<Step> steps, Place place) {
    return steps.stream().map(step -> bind(step, place)).toList();
  }

  /** The items in whose place new parts go on. */
  List<ItemAt> renewed(List<Procedure.Part> parts, Place place) {
    return items(parts.stream().flatMap(part -> part.renews().stream()).toList(), place);
  }

  private BoundStep bind(Step step, Place place) {
    List<ItemAt> disturbed = items(step.disturb(), place);
    return new BoundStep(
        step,
        Stream.concat(items(step.undo(), place).stream(), putInPlace(disturbed)).toList(),
        items(step.doUp(), place),
        disturbed,
        step.apply().stream().map(apply -> apply(apply, place)).toList());
  }

  /** What is set up for the work alone counts as undone until it is taken away again. */
  private Stream<ItemAt> putInPlace(List<ItemAt> disturbed) {
    return disturbed.stream().filter(item -> things.get(item).isTemporary());
  }

  private List<ItemAt> items(List<Located<String>> names, Place place) {
    return names.stream().map(name -> item(name, place)).flatMap(Optional::stream).toList();
  }

  private BoundStep.BoundApply apply(Located<Step.Apply> apply, Place place) {
    Optional<ItemAt> on =
        apply.value().item().flatMap(name -> item(new Located<>(name, apply.at()), place));
    return new BoundStep.BoundApply(apply.value().product(), on);
  }

  /**
   * A name alone is at the procedure's place; behind {@code at} stands a place or a kind of place.
   */
  private Optional<ItemAt> item(Located<String> written, Place place) {
    int at = written.value().indexOf(AT);
    if (at < 0) {
      return around(written.value(), place, written);
    }
    List<Place> places = places(written.value().substring(at + AT.length()), place);
    if (places.size() != 1) {
      problems.add(
          Problem.of(
                  ProblemCode.PLACE_UNCLEAR,
                  written.at(),
                  "\"" + written.value() + "\" is no single place seen from " + place)
              .expecting("a place such as front-left, or axle, side, engine or vehicle"));
      return Optional.empty();
    }
    return around(written.value().substring(0, at), places.get(0), written);
  }

  private static List<Place> places(String word, Place from) {
    return Place.of(word)
        .map(List::of)
        .orElseGet(
            () ->
                Stream.of(Place.Kind.values())
                    .filter(kind -> kind.word().equals(word))
                    .flatMap(kind -> PlaceRule.places(from, kind).stream())
                    .toList());
  }

  private Optional<ItemAt> around(String name, Place place, Located<String> written) {
    Optional<ItemAt> fastener = fasteners.home(name, place).map(home -> new ItemAt(name, home));
    fastener.ifPresent(fastenersNamed::add);
    if (fastener.isPresent()) {
      return fastener.filter(item -> known(item, written));
    }
    Catalogue.Item item = catalogue.items().get(name);
    if (item == null && !known.all(Sort.ITEM).contains(name)) {
      problems.add(known.noItem(new Located<>(name, written.at())));
      return Optional.empty();
    }
    if (item == null || isFastener(item)) {
      tellOnce(lacking(name, place, written), name, place);
      return Optional.empty();
    }
    ItemAt here = new ItemAt(name, place);
    things.putIfAbsent(here, new Bound.OfCatalogue(here, item));
    return Optional.of(here);
  }

  private boolean known(ItemAt item, Located<String> written) {
    if (!things.containsKey(item)) {
      fasteners.bind(item, written.at()).ifPresent(bound -> things.put(item, bound));
    }
    return things.containsKey(item);
  }

  /** The catalogue words a fastener, but only a book can say how it is tightened. */
  private static boolean isFastener(Catalogue.Item item) {
    return item.kinds().stream().anyMatch(kind -> kind.value().equals("fastener"));
  }

  /** What a book lacks is one gap to fill, however many steps and sides ask for it. */
  private void tellOnce(Problem problem, String name, Place place) {
    if (told.add(List.of(name, place.axle().orElse(place).word())) && !isMisspelt(name)) {
      problems.add(problem);
    }
  }

  /** Whether the book has it under a name that nothing asks for; that is told already. */
  private boolean isMisspelt(String name) {
    return book.names().stream()
        .filter(own -> !known.knows(Sort.FASTENER, own))
        .anyMatch(own -> Nearest.of(own, List.of(name)).isPresent());
  }

  private Problem lacking(String name, Place place, Located<String> written) {
    Problem problem =
        Problem.of(
            ProblemCode.UNKNOWN_ITEM,
            written.at(),
            "spec book \"%s\" has no fastener \"%s\" at %s"
                .formatted(book.own().vehicle().value(), name, place));
    return book.named(name)
        .findFirst()
        .map(
            other ->
                problem.seeAlso(
                    "it has one under " + other.getKey().group(), other.getValue().name().at()))
        .orElse(problem.seeAlso("spec book", book.own().vehicle().at()));
  }
}
