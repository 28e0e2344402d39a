package baysheet.resolve;

import baysheet.books.Catalogue;
import baysheet.books.KnownNames;
import baysheet.books.Place;
import baysheet.books.ReferenceSort;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Fasteners that the work of a job needs and the vehicle's book does not have. */
final class MissingFasteners {
  private final EffectiveBook book;
  private final KnownNames known;
  private final FastenerRule fasteners;
  private final Problems problems;
  private final Set<List<String>> reported = new LinkedHashSet<>();
  private final List<Needs.Gap> gaps = new ArrayList<>();

  MissingFasteners(
      EffectiveBook book, KnownNames known, FastenerRule fasteners, Problems problems) {
    this.book = book;
    this.known = known;
    this.fasteners = fasteners;
    this.problems = problems;
  }

  /**
   * What a book lacks is one gap to fill, however many steps and sides ask for it.
   *
   * @param whole what it belongs to, which the vehicle may not have either
   */
  void report(
      Located<String> written,
      Place place,
      Optional<Catalogue.Item> whole,
      ItemRule.Asking asking) {
    String name = written.value();
    if (reported.add(List.of(name, place.axle().orElse(place).word())) && !isMisspelt(name)) {
      problems.add(missing(written, place, whole, asking));
      gaps.add(
          new Needs.Gap(
              written,
              group(place),
              asking.task().procedure(),
              whole.map(item -> item.name().value())));
    }
  }

  /**
   * The book has it, but once for a larger place than the one at which it is asked for.
   *
   * @param home that larger place
   */
  void reportOuter(Located<String> written, Place place, Place home, ItemRule.Asking asking) {
    String name = written.value();
    if (reported.add(List.of(name, place.axle().orElse(place).word()))) {
      Problem problem =
          Problem.of(
                  ProblemCode.OUTER_FASTENER,
                  asking.work(),
                  "the spec book %s has the fastener \"%s\" once for the %s, and %s needs it at each %s"
                      .formatted(
                          book.own().vehicle().value(),
                          name,
                          words(home) + (home.kind() == Place.Kind.AXLE ? " axle" : ""),
                          asking.task().procedure(),
                          place.kind().word()))
              .expecting(
                  "it under %s in the book, or \"%s at %s\" in the procedure if one set serves all"
                      .formatted(group(place), name, home.kind().word()))
              .seeAlso("the step", written.at());
      problems.add(
          book.named(name)
              .filter(it -> it.getKey().group().contains(home))
              .findFirst()
              .map(it -> problem.seeAlso("the book", it.getValue().name().at()))
              .orElse(problem));
    }
  }

  /** What was reported. */
  List<Needs.Gap> gaps() {
    return gaps;
  }

  /** Whether the book has it under a name that nothing asks for; that is reported already. */
  private boolean isMisspelt(String name) {
    return book.names().stream()
        .filter(own -> !known.knows(ReferenceSort.FASTENER, own))
        .anyMatch(own -> Nearest.of(own, List.of(name)).isPresent());
  }

  /**
   * The gap is in the book and shows in the job, so it is reported there, with the line that would
   * close it. Figures are left out: nobody should paste one that was made up here.
   */
  private Problem missing(
      Located<String> written,
      Place place,
      Optional<Catalogue.Item> whole,
      ItemRule.Asking asking) {
    String name = written.value();
    String group = group(place);
    Problem problem =
        Problem.of(
                ProblemCode.MISSING_FASTENER,
                asking.work(),
                "the spec book %s has no fastener \"%s\" at the %s, and %s needs it"
                    .formatted(
                        book.own().vehicle().value(),
                        name,
                        words(place),
                        asking.task().procedure()))
            .expecting(
                "absent: [%s] in the book if this vehicle has none%s, otherwise under %s the line below"
                    .formatted(name, whole.map(MissingFasteners::without).orElse(""), group))
            .writing(name + ": unknown")
            .near(Nearest.slip(name, around(place)))
            .seeAlso("the step", written.at());
    return book.named(name)
        .findFirst()
        .map(
            other ->
                problem.seeAlso(
                    "the book has one under " + other.getKey().group(),
                    other.getValue().name().at()))
        .orElse(problem.seeAlso("the book", book.own().vehicle().at()));
  }

  private static String without(Catalogue.Item whole) {
    return ", absent: [%s] if it has no %s"
        .formatted(whole.name().value(), whole.british().value());
  }

  /** The fasteners that the book has around a place. */
  private Set<String> around(Place place) {
    return book.names().stream()
        .filter(name -> fasteners.home(name, place).isPresent())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Under which a fastener of a place usually stands. */
  private static String group(Place place) {
    return place.kind() == Place.Kind.WHEEL
        ? place.axle().orElseThrow().word() + "-wheels"
        : place.word();
  }

  private static String words(Place place) {
    return place.word().replace('-', ' ');
  }
}
