package baysheet.resolve;

import baysheet.books.Catalogue;
import baysheet.books.KnownNames;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ReferenceSort;
import baysheet.books.ShopFolder;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the items that steps name are, and where: a fastener of the spec book if it has the name
 * around that place, else an item of the catalogue.
 */
final class ItemRule {
  private static final String AT = " at ";

  private final EffectiveBook book;
  private final Catalogue catalogue;
  private final Map<String, Procedure> procedures;
  private final KnownNames known;
  private final FastenerRule fasteners;
  private final Problems problems;
  private final Map<ItemAt, Bound> things = new LinkedHashMap<>();
  private final Set<ItemAt> fastenersNamed = new LinkedHashSet<>();
  private final MissingFasteners missing;

  ItemRule(EffectiveBook book, ShopFolder folder, FastenerRule fasteners, Problems problems) {
    this.book = book;
    this.catalogue = folder.catalogue();
    this.procedures = folder.procedures();
    this.known = folder.names();
    this.fasteners = fasteners;
    this.problems = problems;
    this.missing = new MissingFasteners(book, folder.names(), fasteners, problems);
  }

  /** Everything bound so far. */
  Map<ItemAt, Bound> things() {
    return things;
  }

  /** Whether the work raises the vehicle. */
  boolean raises(Task task) {
    return Stream.of(task.open(), task.work(), task.close())
        .flatMap(List::stream)
        .flatMap(step -> step.undo().stream())
        .anyMatch(item -> things.get(item).isOf("support"));
  }

  /** What the book lacks. */
  List<Needs.Gap> gaps() {
    return missing.gaps();
  }

  /** Every fastener that a step names, those that could not be bound among them. */
  Set<ItemAt> fastenersNamed() {
    return fastenersNamed;
  }

  /**
   * For which task steps are bound, and the line of the job that asks for it.
   *
   * @param work points into the job
   */
  record Asking(TaskId task, Span work) {
    Place place() {
      return task.place();
    }
  }

  /** What became of a name. */
  private sealed interface Found {
    record Item(ItemAt item) implements Found {}

    /** The book says that the vehicle has none. */
    record Absent(String words) implements Found {}

    /** It is reported. */
    record Nothing() implements Found {}
  }

  /**
   * The steps with their items bound; what cannot be bound is a problem and left out. A step that
   * concerns nothing but what the vehicle does not have falls away.
   */
  List<BoundStep> bind(Procedure procedure, List<Step> steps, Asking asking) {
    return steps.stream().flatMap(step -> bind(procedure, step, asking).stream()).toList();
  }

  private Optional<BoundStep> bind(Procedure procedure, Step step, Asking asking) {
    Set<String> absent = new LinkedHashSet<>();
    Step.Touched named = step.touched();
    List<ItemAt> undone = items(named.undo(), asking, absent);
    List<ItemAt> put = items(named.doUp(), asking, absent);
    List<ItemAt> disturbed = items(named.disturb(), asking, absent);
    Map<Boolean, List<Located<String>>> slackened =
        named.slacken().stream()
            .collect(Collectors.partitioningBy(it -> procedure.takesOff(it.value())));
    List<ItemAt> first = items(slackened.get(true), asking, absent);
    List<ItemAt> only = items(slackened.get(false), asking, absent);
    BoundStep bound =
        new BoundStep(
            step,
            joined(undone, joined(only, putInPlace(disturbed))),
            joined(first, only),
            put,
            joined(disturbed, first),
            joined(items(named.ends(), asking, absent), items(named.takesAway(), asking, absent)),
            applied(named.apply(), asking, absent),
            List.copyOf(absent));
    if (absent.isEmpty() || hasItems(bound)) {
      return Optional.of(bound);
    }
    if (doesMore(step)) {
      problems.add(withoutItem(step, absent, asking));
    }
    return Optional.empty();
  }

  /** What is set up for the work alone counts as undone until it is taken away again. */
  private List<ItemAt> putInPlace(List<ItemAt> disturbed) {
    return disturbed.stream().filter(item -> things.get(item).isTemporary()).toList();
  }

  private static List<ItemAt> joined(List<ItemAt> one, List<ItemAt> other) {
    return Stream.concat(one.stream(), other.stream()).toList();
  }

  private static boolean hasItems(BoundStep step) {
    return !step.undo().isEmpty()
        || !step.doUp().isEmpty()
        || !step.disturb().isEmpty()
        || !step.apply().isEmpty();
  }

  /** Whether it does what would be missed, whatever the vehicle has. */
  private static boolean doesMore(Step step) {
    return !step.touched().circuits().isEmpty() || !step.measure().isEmpty() || step.hold();
  }

  private Problem withoutItem(Step step, Set<String> absent, Asking asking) {
    return Problem.of(
            ProblemCode.ABSENT_ITEM,
            asking.work(),
            "the spec book %s says that there is no %s at the %s, and a step of %s does more than take it off or put it on: \"%s\""
                .formatted(
                    book.own().vehicle().value(),
                    String.join(" and no ", absent),
                    asking.place().word().replace('-', ' '),
                    asking.task().procedure(),
                    step.text().value()))
        .expecting("a procedure for vehicles without it")
        .seeAlso("the step", step.at());
  }

  /** The new parts that this vehicle has a place for. */
  List<Procedure.Part> parts(List<Procedure.Part> parts, Asking asking) {
    return parts.stream().filter(part -> !isAbsent(part, asking)).toList();
  }

  private boolean isAbsent(Procedure.Part part, Asking asking) {
    return part.renews().filter(name -> item(name, asking) instanceof Found.Absent).isPresent();
  }

  /** The items in whose place new parts go on. */
  List<ItemAt> renewed(List<Procedure.Part> parts, Asking asking) {
    List<Located<String>> names = parts.stream().flatMap(part -> part.renews().stream()).toList();
    return items(names, asking, new LinkedHashSet<>());
  }

  private List<ItemAt> items(List<Located<String>> names, Asking asking, Set<String> absent) {
    List<ItemAt> items = new ArrayList<>();
    for (Located<String> name : names) {
      Found found = item(name, asking);
      if (found instanceof Found.Item it) {
        items.add(it.item());
      } else if (found instanceof Found.Absent none) {
        absent.add(none.words());
      }
    }
    return items;
  }

  /** A product for something that the vehicle does not have is not applied. */
  private List<BoundStep.BoundApply> applied(
      List<Located<Step.Apply>> applied, Asking asking, Set<String> absent) {
    List<BoundStep.BoundApply> bound = new ArrayList<>();
    for (Located<Step.Apply> apply : applied) {
      List<Located<String>> on =
          apply.value().item().stream().map(name -> new Located<>(name, apply.at())).toList();
      List<ItemAt> items = items(on, asking, absent);
      if (on.isEmpty() || !items.isEmpty()) {
        bound.add(new BoundStep.BoundApply(apply.value().product(), items.stream().findFirst()));
      }
    }
    return bound;
  }

  /**
   * A name alone is at the procedure's place; behind {@code at} stands a place or a kind of place.
   */
  private Found item(Located<String> written, Asking asking) {
    int at = written.value().indexOf(AT);
    if (at < 0) {
      return around(written, asking.place(), asking);
    }
    List<Place> places = places(written.value().substring(at + AT.length()), asking.place());
    if (places.size() != 1) {
      problems.add(
          Problem.of(
                  ProblemCode.PLACE_UNCLEAR,
                  written.at(),
                  "\"%s\" is not one place, as seen from %s"
                      .formatted(written.value(), asking.place()))
              .expecting("a place such as front-left, or axle, side, engine or vehicle"));
      return new Found.Nothing();
    }
    return around(written.map(Step::withoutPlace), places.get(0), asking);
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

  /**
   * A fastener that the book has once for a larger place is not this one: taken for it, the second
   * side would be found done.
   */
  private Found around(Located<String> written, Place place, Asking asking) {
    String name = written.value();
    if (isAbsent(name, place)) {
      return new Found.Absent(british(name));
    }
    Optional<Place> home = fasteners.home(name, place);
    if (home.isEmpty()) {
      return other(written, place, asking);
    }
    if (home.get() != place) {
      missing.reportOuter(written, place, home.get(), asking);
      return new Found.Nothing();
    }
    return fastener(new ItemAt(name, place), written);
  }

  /** What the vehicle does not have needs no fastener of its kind: no tray, no screws of it. */
  private boolean isAbsent(String name, Place place) {
    Catalogue.Item item = catalogue.items().get(name);
    return book.absent(name, place).isPresent()
        || item != null
            && isFastener(item)
            && item.kinds().stream().anyMatch(it -> book.absent(it.value(), place).isPresent());
  }

  private String british(String name) {
    Catalogue.Item item = catalogue.items().get(name);
    return item == null ? name.replace('-', ' ') : item.british().value();
  }

  private Found fastener(ItemAt item, Located<String> written) {
    fastenersNamed.add(item);
    if (!things.containsKey(item)) {
      fasteners.bind(item, written.at()).ifPresent(bound -> things.put(item, bound));
    }
    return things.containsKey(item) ? new Found.Item(item) : new Found.Nothing();
  }

  private Found other(Located<String> written, Place place, Asking asking) {
    String name = written.value();
    Catalogue.Item item = catalogue.items().get(name);
    if (item == null && !known.all(ReferenceSort.ITEM).contains(name)) {
      problems.add(known.noItem(written));
      return new Found.Nothing();
    }
    if (item == null || isFastener(item)) {
      Procedure procedure = procedures.get(asking.task().procedure());
      Optional<Catalogue.Item> fastener = Optional.ofNullable(item);
      missing.report(written, place, fastener.flatMap(it -> whole(it, procedure)), asking);
      return new Found.Nothing();
    }
    ItemAt here = new ItemAt(name, place);
    things.putIfAbsent(here, new Bound.OfCatalogue(here, item));
    return new Found.Item(here);
  }

  /** The item of the fastener's kind of which alone its procedure is: the tray of a screw. */
  private Optional<Catalogue.Item> whole(Catalogue.Item fastener, Procedure procedure) {
    return fastener.kinds().stream()
        .map(Located::value)
        .filter(kind -> !kind.equals(fastener.name().value()) && procedure.takesOff(kind))
        .filter(kind -> procedure.blocks().steps().allMatch(step -> isAbout(kind, step)))
        .flatMap(kind -> Stream.ofNullable(catalogue.items().get(kind)))
        .findFirst();
  }

  private boolean isAbout(String kind, Step step) {
    return step.touched()
        .items()
        .map(it -> catalogue.items().get(it.value()))
        .allMatch(
            item -> item != null && item.kinds().stream().anyMatch(it -> it.value().equals(kind)));
  }

  /** The catalogue words a fastener, but only a book can say how it is tightened. */
  private static boolean isFastener(Catalogue.Item item) {
    return item.kinds().stream().anyMatch(kind -> kind.value().equals("fastener"));
  }
}
