package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** At which places a procedure can be asked for, and how a job would write it. */
public final class WorkPlaces {
  private static final Pattern AT = Pattern.compile("[\\s\\p{Zs}]at([\\s\\p{Zs}]|$)");
  private static final Set<ProblemCode> MISWRITTEN =
      Set.of(ProblemCode.MISSING_PLACE, ProblemCode.NOT_A_NAME, ProblemCode.UNKNOWN_PLACE);

  private WorkPlaces() {}

  /** The places at which a job can ask for a procedure of a kind, as a phrase. */
  public static String phrase(Place.Kind kind) {
    return switch (kind) {
      case WHEEL ->
          "front-left, front-right, rear-left or rear-right, or at front or rear for both wheels of"
              + " an axle";
      case AXLE -> "front or rear";
      case SIDE -> "left or right";
      case ENGINE -> "engine";
      case VEHICLE -> "vehicle";
    };
  }

  /** The place of a procedure that can be done at one place only; two wheels are two. */
  private static Optional<Place> only(Procedure procedure) {
    return switch (procedure.at().value()) {
      case ENGINE -> Optional.of(Place.ENGINE);
      case VEHICLE -> Optional.of(Place.VEHICLE);
      case WHEEL, AXLE, SIDE ->
          procedure
              .applicability()
              .onlyAt()
              .map(Located::value)
              .filter(place -> place.kind() == procedure.at().value());
    };
  }

  /** A job's file in which work that can be done at one place only has it. */
  static Node placed(Node job, Collection<Procedure> procedures) {
    Map<String, String> full = new HashMap<>();
    for (Procedure procedure : procedures) {
      String name = procedure.name().value();
      only(procedure).ifPresent(place -> full.put(name, name + " at " + place.word()));
    }
    return job instanceof Mapping mapping
        ? new Mapping(
            mapping.entries().stream()
                .map(
                    it ->
                        it.key().text().equals("work")
                            ? new Entry(it.key(), placed(it.value(), full))
                            : it)
                .toList(),
            mapping.at())
        : job;
  }

  private static Node placed(Node work, Map<String, String> full) {
    if (work instanceof Sequence list) {
      return new Sequence(list.items().stream().map(it -> placed(it, full)).toList(), list.at());
    }
    return work instanceof Scalar name && full.containsKey(name.text())
        ? new Scalar(full.get(name.text()), name.quoted(), name.at())
        : work;
  }

  /**
   * What is wrong with a job, with what each work that is not written right could mean.
   *
   * @param job the job's file
   * @param procedures those of the shop, each with the kind of place at which it is done
   */
  static void advise(
      Problems found, Node job, Map<String, Place.Kind> procedures, Problems problems) {
    List<Scalar> works = works(job);
    for (Problem problem : found.all()) {
      problems.add(
          works.stream()
              .filter(work -> MISWRITTEN.contains(problem.code()) && work.at().equals(problem.at()))
              .findFirst()
              .map(work -> advised(problem, work.text(), procedures))
              .orElse(problem));
    }
  }

  private static List<Scalar> works(Node job) {
    return entries(job)
        .filter(entry -> entry.key().text().equals("work"))
        .flatMap(entry -> items(entry.value()))
        .flatMap(node -> node instanceof Scalar work ? Stream.of(work) : Stream.empty())
        .toList();
  }

  private static Stream<Entry> entries(Node node) {
    return node instanceof Mapping mapping ? mapping.entries().stream() : Stream.empty();
  }

  private static Stream<Node> items(Node node) {
    return node instanceof Sequence list ? list.items().stream() : Stream.of(node);
  }

  private static Problem advised(Problem problem, String work, Map<String, Place.Kind> procedures) {
    Matcher at = AT.matcher(work);
    String name = at.find() ? work.substring(0, at.start()) : work;
    Optional<String> meant = Nearest.of(name, procedures.keySet());
    if (meant.isEmpty()) {
      return problem;
    }
    Place.Kind kind = procedures.get(meant.get());
    String places = meant.get() + " at " + phrase(kind);
    boolean single = kind == Place.Kind.ENGINE || kind == Place.Kind.VEHICLE;
    return single ? problem.near(Optional.of(places)) : problem.expecting(places);
  }
}
