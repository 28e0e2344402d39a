package baysheet.books;

import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
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
