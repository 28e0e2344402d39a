package baysheet.resolve;

import baysheet.books.Bay;
import baysheet.books.Job;
import baysheet.books.Shop;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
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
  Optional<Shop.Person> by(Job job) {
    Optional<Shop.Person> person = person(job.by());
    if (person.filter(p -> p.grade() == Shop.Grade.APPRENTICE).isPresent()) {
      problems.add(
          Problem.of(
                  ProblemCode.APPRENTICE_ALONE,
                  job.by().at(),
                  job.by().value() + " is an apprentice and cannot be responsible for a job")
              .expecting("a technician under by: and the apprentice under with:"));
    }
    return person;
  }

  Optional<Shop.Person> with(Job job) {
    return job.with().flatMap(with -> person(with));
  }

  /** Who looks at the hold points; an apprentice releases nothing. */
  Optional<Shop.Person> second(Job job) {
    Optional<Shop.Person> person = job.second().flatMap(it -> person(it));
    if (person.filter(p -> p.grade() == Shop.Grade.APPRENTICE).isPresent()) {
      problems.add(
          Problem.of(
                  ProblemCode.APPRENTICE_ALONE,
                  job.second().orElseThrow().at(),
                  person.get().id().value() + " is an apprentice and cannot look at hold points")
              .expecting("a technician under second:"));
    }
    return person;
  }

  /** Who does the work that needs a qualification, by its name. */
  Map<String, Shop.Person> qualified(Job job) {
    Map<String, Shop.Person> qualified = new LinkedHashMap<>();
    job.qualified()
        .forEach(
            (name, it) -> person(it.person()).ifPresent(person -> qualified.put(name, person)));
    return qualified;
  }

  /** Whoever waives a caution answers for it and must be known. */
  void waivers(Job job) {
    job.waive().values().forEach(who -> person(who));
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
