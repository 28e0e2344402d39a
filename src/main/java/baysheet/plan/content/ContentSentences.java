package baysheet.plan.content;

import baysheet.books.Catalogue;
import baysheet.books.Shop;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import baysheet.torque.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What problems say of loads and of qualifications. */
final class ContentSentences {
  static final String LIFT = "the lift";
  static final String JACK = "the jack";
  static final String STAND = "a stand";

  private ContentSentences() {}

  static Problem noStands(Span shop) {
    return Problem.of(
        ProblemCode.NO_STANDS,
        shop,
        "the vehicle is raised with a jack, but the shop has no stands");
  }

  static Problem tooFewStands(Located<Integer> stands, int needed) {
    return Problem.of(
        ProblemCode.NO_STANDS,
        stands.at(),
        "the job needs %s stands, but the shop has %s".formatted(needed, stands.value()));
  }

  static Problem overloaded(String what, Quantity load, Quantity rated, Span at) {
    return Problem.of(
        ProblemCode.OVERLOADED,
        at,
        "%s would carry %s, but is rated for %s".formatted(what, load.print(), rated.print()));
  }

  static Problem notQualified(
      Catalogue.Qualification it, Shop.Person person, LocalDate day, Span at) {
    String why =
        person
            .certificate(it.name().value())
            .map(lapsed -> "the certificate ended on " + lapsed.until().orElseThrow())
            .orElse("the shop file has no certificate");
    return Problem.of(
            ProblemCode.NOT_QUALIFIED,
            at,
            "%s must not do or look at work on the %s on %s: %s"
                .formatted(person.id().value(), it.words().value(), day, why))
        .seeAlso("person", person.id().at());
  }

  /**
   * Who may do it.
   *
   * @param qualification empty where somebody is to look at it
   */
  static String certified(List<String> people, Optional<String> qualification) {
    if (people.isEmpty()) {
      return "somebody with a valid certificate; in this shop nobody else has one";
    }
    String written =
        qualification
            .map(name -> "qualified: {" + name + ": " + people.get(0) + "}")
            .orElse("second: " + people.get(0));
    return "somebody with a valid certificate: %s, as in %s"
        .formatted(String.join(", ", people), written);
  }

  static Problem nobodyLooks(
      Catalogue.Qualification it, Shop.Person doing, LocalDate day, Span at) {
    return Problem.of(
            ProblemCode.NOT_QUALIFIED,
            at,
            "work on the %s has a hold point, and beside %s nobody in this shop may look at it"
                .formatted(it.words().value(), doing.id().value()))
        .expecting("a second person with a valid certificate on " + day);
  }

  static Problem ownSecond(Shop.Person person, Span at) {
    return Problem.of(
            ProblemCode.SAME_PERSON, at, person.id().value() + " cannot look at their own work")
        .expecting("somebody else");
  }

  static Problem qualifiedUnused(Located<String> name) {
    return Problem.of(
            ProblemCode.QUALIFIED_UNUSED,
            name.at(),
            "no step of this job needs the qualification \"" + name.value() + "\"")
        .expecting("the line left out");
  }
}
