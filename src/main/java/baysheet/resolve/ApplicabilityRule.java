package baysheet.resolve;

import baysheet.books.Applicability;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether a procedure is for the vehicle of a job, at one place of it. */
final class ApplicabilityRule {
  private static final ProblemCode CODE = ProblemCode.NOT_FOR_THIS_VEHICLE;

  private final EffectiveBook book;
  private final Set<String> traits;

  ApplicabilityRule(EffectiveBook book) {
    this.book = book;
    this.traits = book.traits();
  }

  boolean suits(Procedure procedure, Place place) {
    Applicability all = procedure.applicability();
    return isAt(place, all.onlyAt().map(Located::value))
        && excluding(all, place).isEmpty()
        && missing(all, place).isEmpty();
  }

  /**
   * Why a procedure that does not suit the vehicle is refused, and what to use instead.
   *
   * @param asking where it is asked for
   */
  Problem refusal(Procedure procedure, Place place, Span asking) {
    Applicability all = procedure.applicability();
    String name = procedure.name().value();
    if (!isAt(place, all.onlyAt().map(Located::value))) {
      Place only = all.onlyAt().orElseThrow().value();
      return Problem.of(
              CODE, asking, "%s is work at the %s, not at %s".formatted(name, only, place))
          .expecting("a place at the " + only)
          .seeAlso(name, procedure.name().at());
    }
    Optional<Applicability.Exclusion> excluding = excluding(all, place);
    return excluding.isPresent()
        ? excluded(name, place, excluding.get(), asking)
        : lacking(name, all, missing(all, place).orElseThrow(), asking);
  }

  private Problem excluded(String name, Place place, Applicability.Exclusion it, Span asking) {
    String where = it.at().map(at -> " at the " + at).orElse("");
    String instead = it.instead().value();
    return Problem.of(
            CODE,
            asking,
            "%s must not be used on a vehicle that has the trait %s%s"
                .formatted(name, it.trait().value(), where))
        .expecting(it.procedure().isPresent() ? "the work " + instead + " at " + place : instead)
        .seeAlso(name, it.trait().at())
        .seeAlso("spec book", book.own().vehicle().at());
  }

  /** The other kinds of vehicle that the procedure knows are the best hint at what is meant. */
  private Problem lacking(
      String name, Applicability all, Located<Applicability.Need> need, Span asking) {
    String needed = String.join(" or ", need.value().anyOf());
    String where = need.value().at().map(at -> " at the " + at).orElse("");
    String others =
        all.notWith().stream()
            .filter(it -> it.procedure().isPresent())
            .map(
                it ->
                    "; for a vehicle with the trait %s the procedure is %s"
                        .formatted(it.trait().value(), it.instead().value()))
            .collect(Collectors.joining());
    return Problem.of(
            CODE,
            asking,
            "%s is only for a vehicle that has the trait %s%s, and the spec book does not list it"
                .formatted(name, needed, where))
        .expecting(
            "%s among the traits in the spec book %s, if the vehicle has it%s"
                .formatted(needed, book.own().vehicle().value(), others))
        .seeAlso(name, need.at())
        .seeAlso("spec book", book.own().vehicle().at());
  }

  private Optional<Applicability.Exclusion> excluding(Applicability all, Place place) {
    return all.notWith().stream()
        .filter(it -> traits.contains(it.trait().value()) && isAt(place, it.at()))
        .findFirst();
  }

  private Optional<Located<Applicability.Need>> missing(Applicability all, Place place) {
    return all.onlyWith().stream()
        .filter(need -> isAt(place, need.value().at()) && !hasAny(need.value().anyOf()))
        .findFirst();
  }

  private boolean hasAny(List<String> names) {
    return names.stream().anyMatch(traits::contains);
  }

  /** A place belongs to itself, its axle, its side and the vehicle. */
  private static boolean isAt(Place place, Optional<Place> whole) {
    return whole.map(it -> place.outward().contains(it)).orElse(true);
  }
}
