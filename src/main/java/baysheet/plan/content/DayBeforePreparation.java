package baysheet.plan.content;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Step;
import baysheet.plan.graph.FigurePhrases;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlanPhrases;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.graph.StepGraph;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Evening;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What has to be done the evening before: soak, borrow, have ready, and what procedures ask for.
 */
public final class DayBeforePreparation {
  private final Resolved resolved;
  private final List<PlacedStep> lines;

  public DayBeforePreparation(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.lines = lines;
  }

  public Evening all(
      StepGraph graph,
      List<Sheet.ToolLine> tools,
      List<Sheet.SocketLine> sockets,
      List<TorqueLine> torque,
      List<CheckLine> checks) {
    // Rules first: a vehicle is washed, or set down to cool, before anything on it is soaked.
    return new Evening(
        checks.stream()
            .filter(check -> check.moment() == Moment.EVENING_BEFORE)
            .map(CheckLine::text)
            .toList(),
        soak(),
        borrow(tools, sockets),
        figures(torque),
        wrenches(torque),
        MissingFigures.of(resolved, lines).stream()
            .map(it -> FigurePhrases.findFigure(it.words(), Collections.min(it.at()) + 1))
            .toList(),
        graph.evening().stream().map(step -> ((StepSource.Written) step.source()).text()).toList());
  }

  private static List<String> borrow(List<Sheet.ToolLine> tools, List<Sheet.SocketLine> sockets) {
    List<String> borrow = new ArrayList<>();
    for (Sheet.ToolLine tool : tools) {
      if (!tool.owned()) {
        borrow.add(tool.name());
      }
    }
    for (Sheet.SocketLine socket : sockets) {
      // Inserts are special tools, listed above.
      if (!socket.owned() && socket.insert().isEmpty()) {
        borrow.add(PlanPhrases.socket(socket));
      }
    }
    return borrow;
  }

  /** Figures to find, then figures to ask about. */
  private static List<String> figures(List<TorqueLine> torque) {
    List<String> find = new ArrayList<>();
    List<String> ask = new ArrayList<>();
    for (TorqueLine line : torque) {
      if (line.kind() == TorqueLine.Kind.UNKNOWN) {
        find.add(PlanPhrases.findTorque(line));
      }
      if (line.inDoubt()) {
        ask.add(PlanPhrases.askTorque(line));
      }
    }
    find.addAll(ask);
    return find;
  }

  private static List<String> wrenches(List<TorqueLine> torque) {
    return torque.stream()
        .filter(line -> !line.inDoubt() && lacksWrench(line))
        .map(PlanPhrases::wrenchFor)
        .toList();
  }

  private static boolean lacksWrench(TorqueLine line) {
    for (TorqueLine.StageLine stage : line.stages()) {
      if (stage instanceof TorqueLine.StageLine.Torque torque && torque.wrench().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** Where the vehicle's state makes steps longer, what is likely to be stuck is soaked. */
  private List<String> soak() {
    if (!seizes()) {
      return List.of();
    }
    List<String> fasteners = stuck(Bound.OfBook.class);
    List<String> parts = stuck(Bound.OfCatalogue.class);
    if (fasteners.isEmpty() && parts.isEmpty()) {
      return List.of();
    }
    return PlanPhrases.soak(fasteners, parts);
  }

  private boolean seizes() {
    for (Located<String> name : resolved.job().state()) {
      Catalogue.State state = resolved.catalogue().states().get(name.value());
      if (state.likelyFactor().compareTo(BigDecimal.ONE) > 0) {
        return true;
      }
    }
    return false;
  }

  /** What is likely to be stuck, of one kind of thing; the place behind the last that is there. */
  private List<String> stuck(Class<? extends Bound> kind) {
    Map<List<Place>, List<String>> byPlace = new LinkedHashMap<>();
    for (PlacedStep line : lines) {
      List<String> words = stuck(line.step(), kind);
      if (!words.isEmpty()) {
        byPlace.computeIfAbsent(line.places(), key -> new ArrayList<>()).addAll(words);
      }
    }
    List<String> stuck = new ArrayList<>();
    byPlace.forEach((places, words) -> stuck.add(PlanPhrases.at(String.join(", ", words), places)));
    return stuck;
  }

  private List<String> stuck(PlannedStep step, Class<? extends Bound> kind) {
    List<String> words = new ArrayList<>();
    if (step.seizes() == Step.Seizes.LIKELY) {
      for (ItemAt item : step.undo()) {
        Bound thing = resolved.thing(item);
        if (kind.isInstance(thing) && isSoaked(thing)) {
          words.add(PlanPhrases.of(thing, resolved.shop().terms()));
        }
      }
    }
    return words;
  }

  /**
   * Mineral oil swells the seals of a brake, and takes the grip from what rubs; what a wheel covers
   * nobody reaches the evening before.
   */
  private static boolean isSoaked(Bound thing) {
    return !thing.isTemporary()
        && !thing.isOf("brake-hydraulic")
        && !thing.isOf("brake-friction")
        && !thing.isOf("covered");
  }
}
