package baysheet.resolve;

import baysheet.books.Bay;
import baysheet.books.Job;
import baysheet.books.Shop;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Who does the job and in which bay: names that the shop file must know. */
final class CrewRule {
  private final Shop shop;
  private final Problems problems;

  CrewRule(Shop shop, Problems problems) {
    this.shop = shop;
    this.problems = problems;
  }

  Optional<Bay> bay(Job job) {
    return find(ProblemCode.UNKNOWN_BAY, "bay", job.bay(), shop.bays(), Bay::name);
  }

  /** Who answers for the job; an apprentice cannot. */
  Optional<Shop.Person> by(Job.Crew crew) {
    Optional<Shop.Person> person = person(crew.by());
    technician(
        person,
        crew.by().at(),
        " is an apprentice and cannot be responsible for a job",
        "a technician under by: and the apprentice under with:");
    return person;
  }

  Optional<Shop.Person> with(Job.Crew crew) {
    return crew.with().flatMap(this::person);
  }

  /** Who looks at the hold points; an apprentice releases nothing. */
  Optional<Shop.Person> second(Job.Crew crew) {
    Optional<Shop.Person> person = crew.second().flatMap(this::person);
    technician(
        person,
        crew.second().orElse(crew.by()).at(),
        " is an apprentice and cannot look at hold points",
        "a technician under second:");
    return person;
  }

  private void technician(Optional<Shop.Person> person, Span at, String cannot, String expected) {
    person
        .filter(it -> it.grade() == Shop.Grade.APPRENTICE)
        .map(it -> Problem.of(ProblemCode.APPRENTICE_ALONE, at, it.id().value() + cannot))
        .ifPresent(it -> problems.add(it.expecting(expected)));
  }

  /** Who does the work that needs a qualification, by its name. */
  Map<String, Shop.Person> qualified(Job.Crew crew) {
    Map<String, Shop.Person> qualified = new LinkedHashMap<>();
    crew.qualified()
        .forEach(
            (name, it) -> person(it.person()).ifPresent(person -> qualified.put(name, person)));
    return qualified;
  }

  /** Whoever waives a caution answers for it and must be known. */
  void waivers(Job job) {
    job.exceptions().waive().values().forEach(this::person);
  }

  private Optional<Shop.Person> person(Located<String> name) {
    return find(ProblemCode.UNKNOWN_PERSON, "person", name, shop.people(), Shop.Person::id);
  }

  private <T> Optional<T> find(
      ProblemCode code,
      String what,
      Located<String> name,
      Map<String, T> known,
      Function<T, Located<String>> entry) {
    T value = known.get(name.value());
    if (value == null) {
      problems.add(
          Problem.of(code, name.at(), "the shop has no " + what + " \"" + name.value() + "\"")
              .expecting("one of " + String.join(", ", known.keySet()))
              .near(Nearest.of(name.value(), known.keySet()))
              .seeAlso(
                  "shop",
                  known.values().stream()
                      .map(entry)
                      .map(Located::at)
                      .findFirst()
                      .orElse(shop.at())));
    }
    return Optional.ofNullable(value);
  }
}
