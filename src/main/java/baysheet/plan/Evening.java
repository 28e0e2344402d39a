package baysheet.plan;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.Resolved;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What has to be done the evening before: soak, borrow, have ready, and what procedures ask for.
 */
final class Evening {
  private final Resolved resolved;
  private final List<Laid> lines;

  Evening(Resolved resolved, List<Laid> lines) {
    this.resolved = resolved;
    this.lines = lines;
  }

  List<String> all(
      StepGraph graph,
      List<Sheet.ToolLine> tools,
      List<Sheet.SocketLine> sockets,
      List<TorqueLine> torque,
      List<CheckLine> checks) {
    List<String> evening = new ArrayList<>();
    evening.addAll(soak());
    tools.stream()
        .filter(tool -> !tool.owned())
        .forEach(tool -> evening.add(Words.borrow(tool.name())));
    sockets.stream()
        // Those are special tools, told above.
        .filter(socket -> !socket.owned() && socket.insert().isEmpty())
        .forEach(socket -> evening.add(Words.borrow(Words.socket(socket))));
    torque.stream()
        .filter(line -> line.kind() == TorqueLine.Kind.UNKNOWN)
        .forEach(line -> evening.add(Words.findTorque(line)));
    torque.stream().filter(TorqueLine::inDoubt).forEach(line -> evening.add(Words.askTorque(line)));
    torque.stream()
        .filter(line -> !line.inDoubt() && lacksWrench(line))
        .forEach(line -> evening.add(Words.borrowWrench(line)));
    graph.evening().forEach(step -> evening.add(step.text()));
    checks.stream()
        .filter(check -> check.moment() == Moment.EVENING_BEFORE)
        .forEach(check -> evening.add(check.text()));
    return evening;
  }

  private static boolean lacksWrench(TorqueLine line) {
    return line.stages().stream()
        .filter(TorqueLine.StageLine.Torque.class::isInstance)
        .map(TorqueLine.StageLine.Torque.class::cast)
        .anyMatch(stage -> stage.wrench().isEmpty());
  }

  /** Where the vehicle's state makes steps longer, what is likely to be stuck is soaked. */
  private List<String> soak() {
    boolean seizing =
        resolved.job().state().stream()
            .map(Located::value)
            .map(resolved.catalogue().states()::get)
            .map(Catalogue.State::likelyFactor)
            .anyMatch(factor -> factor.compareTo(BigDecimal.ONE) > 0);
    if (!seizing) {
      return List.of();
    }
    List<String> fasteners = stuck(Bound.OfBook.class);
    List<String> parts = stuck(Bound.OfCatalogue.class);
    if (fasteners.isEmpty() && parts.isEmpty()) {
      return List.of();
    }
    return List.of(Words.soak(fasteners, parts));
  }

  /** What is likely to be stuck, of one kind of thing; the place behind the last that is there. */
  private List<String> stuck(Class<? extends Bound> kind) {
    Map<List<Place>, List<String>> byPlace = new LinkedHashMap<>();
    for (Laid line : lines) {
      if (line.step().seizes() == Step.Seizes.LIKELY) {
        line.step().undo().stream()
            .map(resolved::thing)
            .filter(kind::isInstance)
            // Mineral oil swells the seals of a brake.
            .filter(thing -> !thing.kinds().contains("brake-hydraulic"))
            .map(thing -> Words.of(thing, resolved.shop().terms()))
            .forEach(
                words ->
                    byPlace.computeIfAbsent(line.places(), key -> new ArrayList<>()).add(words));
      }
    }
    List<String> stuck = new ArrayList<>();
    byPlace.forEach((places, words) -> stuck.add(Words.at(String.join(", ", words), places)));
    return stuck;
  }
}
