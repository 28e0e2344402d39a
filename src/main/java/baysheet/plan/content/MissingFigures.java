package baysheet.plan.content;

import baysheet.books.Bay;
import baysheet.books.Catalogue;
import baysheet.books.Place;
import baysheet.books.SpecBook;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.report.Located;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.MissingFigure;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Figures other than torques that the work of a job needs and its book does not have: the grade and
 * the quantity of what is filled in, the points that carry the vehicle. Each is asked for the
 * evening before and has a line to be written on where it is used; none is guessed.
 */
public final class MissingFigures {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final List<Missing> all = new ArrayList<>();

  /**
   * What the book lacks.
   *
   * @param name for the record; as a check is called
   * @param figure what is missing
   * @param at the lines of the sequence where it is written in
   * @param opening the lines that open what it belongs to; none where nothing is taken apart
   */
  record Missing(String name, MissingFigure figure, Set<Integer> at, Set<Integer> opening) {
    Missing {
      at = Set.copyOf(at);
      opening = Set.copyOf(opening);
    }
  }

  private MissingFigures(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.lines = lines;
  }

  static List<Missing> of(Resolved resolved, List<PlacedStep> lines) {
    MissingFigures figures = new MissingFigures(resolved, lines);
    figures.fluids();
    figures.points();
    return List.copyOf(figures.all);
  }

  /** What has to be written in at a line of the sequence. */
  static List<Statement> entries(List<Missing> missing, int index) {
    return missing.stream()
        .filter(it -> it.at().contains(index))
        .flatMap(it -> entries(it.figure()))
        .toList();
  }

  /** A line for each figure. */
  private static Stream<Statement> entries(MissingFigure figure) {
    return figure instanceof MissingFigure.OfFluid fluid
        ? fluid.lacking().stream()
            .map(one -> new MissingFigure.OfFluid(fluid.fluid(), List.of(one)))
            .map(Statement.MissingFromData::new)
        : Stream.of(new Statement.MissingFromData(figure));
  }

  private void fluids() {
    Map<String, Set<Integer>> opened = new LinkedHashMap<>();
    Map<String, Set<Integer>> filled = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      for (PlannedStep step : lines.get(i).all()) {
        int line = i;
        opened(resolved, step)
            .forEach(it -> opened.computeIfAbsent(it, key -> new TreeSet<>()).add(line));
        filled(resolved, step)
            .forEach(it -> filled.computeIfAbsent(it, key -> new TreeSet<>()).add(line));
      }
    }
    Set<String> fluids = new LinkedHashSet<>(opened.keySet());
    fluids.addAll(filled.keySet());
    for (String fluid : fluids) {
      Set<Integer> opening = opened.getOrDefault(fluid, Set.of());
      Set<Integer> at =
          filled.containsKey(fluid)
              ? filled.get(fluid)
              : Set.of(opening.stream().findFirst().orElseThrow());
      fluid(fluid, at, opening);
    }
  }

  private void fluid(String name, Set<Integer> at, Set<Integer> opening) {
    Optional<SpecBook.Fluid> known = resolved.book().fluid(name);
    List<MissingFigure.Property> lacking = new ArrayList<>();
    if (known.flatMap(SpecBook.Fluid::grade).isEmpty()) {
      lacking.add(MissingFigure.Property.GRADE);
    }
    if (known.flatMap(SpecBook.Fluid::capacity).isEmpty()) {
      lacking.add(MissingFigure.Property.QUANTITY);
    }
    if (!lacking.isEmpty()) {
      MissingFigure figure = new MissingFigure.OfFluid(name, lacking);
      all.add(new Missing("fluid-of-" + name, figure, at, opening));
    }
  }

  /** The fluids of the circuits that a step opens. */
  public static List<String> opened(Resolved resolved, PlannedStep step) {
    return step.circuits().stream().flatMap(it -> fluid(resolved, it).stream()).toList();
  }

  /** The fluids that a step fills in: as a product, or because its check says so. */
  public static List<String> filled(Resolved resolved, PlannedStep step) {
    Set<String> filled = new LinkedHashSet<>();
    step.apply().stream()
        .map(apply -> apply.product())
        .filter(product -> isFluid(resolved, product))
        .forEach(filled::add);
    Catalogue.Rule rule = resolved.catalogue().rules().get(step.task().procedure());
    if (step.phase() == Sheet.Phase.CHECK && rule != null) {
      rule.step().stream()
          .flatMap(check -> check.fills().stream())
          .flatMap(circuit -> fluid(resolved, circuit.value()).stream())
          .forEach(filled::add);
    }
    return List.copyOf(filled);
  }

  /** What a circuit is filled with. */
  private static Optional<String> fluid(Resolved resolved, String circuit) {
    return Optional.ofNullable(resolved.catalogue().items().get(circuit))
        .flatMap(item -> item.fluid().map(Located::value));
  }

  /** Whether a product is what fills a circuit. */
  static boolean isFluid(Resolved resolved, String product) {
    return resolved.book().fluid(product).isPresent()
        || resolved.catalogue().items().values().stream()
            .anyMatch(item -> item.fluid().filter(it -> it.value().equals(product)).isPresent());
  }

  /** Where the vehicle is carried and lifted. */
  private void points() {
    Map<MissingFigure.Point, Set<Integer>> lacking = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      for (MissingFigure.Point point : points(lines.get(i))) {
        lacking.computeIfAbsent(point, key -> new TreeSet<>()).add(i);
      }
    }
    lacking.forEach(
        (point, at) -> {
          String name = point.jacking() ? "jacking-point-" : "support-points-";
          all.add(new Missing(name + point.axle(), point, at, Set.of()));
        });
  }

  private List<MissingFigure.Point> points(PlacedStep line) {
    boolean jack = resolved.bay().equipment() == Bay.Equipment.JACK;
    List<MissingFigure.Point> lacking = new ArrayList<>();
    for (ItemAt item : line.undo()) {
      if (Lifting.holds(resolved, item)) {
        for (Place axle : axles(item.place())) {
          lack(lacking, resolved.book().support(axle), false, axle);
          if (jack) {
            lack(lacking, resolved.book().jacking(axle), true, axle);
          }
        }
      }
    }
    if (line.step().source() instanceof StepSource.Blocks blocks
        && blocks.part() == StepSource.BlocksPart.RAISE_AXLE) {
      lack(lacking, resolved.book().jacking(blocks.where()), true, blocks.where());
    }
    return lacking;
  }

  private static void lack(
      List<MissingFigure.Point> lacking,
      Optional<Located<String>> point,
      boolean jacking,
      Place axle) {
    if (point.isEmpty()) {
      lacking.add(new MissingFigure.Point(jacking, axle));
    }
  }

  private static List<Place> axles(Place place) {
    return place.axle().map(List::of).orElse(List.of(Place.FRONT, Place.REAR));
  }
}
