package baysheet.plan.content;

import baysheet.books.Bay;
import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Step;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.graph.StepGraph;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Evening;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
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
            .<Statement>map(
                it -> new Statement.FindFigure(it.figure(), Collections.min(it.at()) + 1))
            .toList(),
        graph.evening().stream()
            .map(step -> ((StepSource.Written) step.source()).text())
            .<Statement>map(Statement.Written::new)
            .toList());
  }

  private static List<Statement> borrow(
      List<Sheet.ToolLine> tools, List<Sheet.SocketLine> sockets) {
    List<Statement> borrow = new ArrayList<>();
    for (Sheet.ToolLine tool : tools) {
      if (!tool.owned()) {
        borrow.add(new Statement.Written(tool.name()));
      }
    }
    for (Sheet.SocketLine socket : sockets) {
      // Inserts are special tools, listed above.
      if (!socket.owned() && socket.insert().isEmpty()) {
        borrow.add(new Statement.Socket(socket));
      }
    }
    return borrow;
  }

  /** Figures to find, then figures to ask about. */
  private static List<Statement> figures(List<TorqueLine> torque) {
    List<Statement> find = new ArrayList<>();
    List<Statement> ask = new ArrayList<>();
    for (TorqueLine line : torque) {
      if (line.kind() == TorqueLine.Kind.UNKNOWN) {
        find.add(new Statement.FindTorque(Statement.Row.of(line)));
      }
      if (line.inDoubt()) {
        ask.add(new Statement.AskTorque(Statement.Row.of(line)));
      }
    }
    find.addAll(ask);
    return find;
  }

  private static List<Statement> wrenches(List<TorqueLine> torque) {
    return torque.stream()
        .filter(line -> !line.inDoubt() && lacksWrench(line))
        .<Statement>map(DayBeforePreparation::wrenchFor)
        .toList();
  }

  private static Statement wrenchFor(TorqueLine line) {
    return new Statement.WrenchFor(
        Statement.Row.of(line),
        line.method().stages().stream().map(TorqueLine.StageLine::print).toList(),
        line.hardware().socket().map(TorqueLine.SocketNeed::drive));
  }

  private static boolean lacksWrench(TorqueLine line) {
    for (TorqueLine.StageLine stage : line.method().stages()) {
      if (stage instanceof TorqueLine.StageLine.Torque torque && torque.wrench().isEmpty()) {
        return true;
      }
    }
    return false;
  }

  /** Where the vehicle's state makes steps longer, what is likely to be stuck is soaked. */
  private List<Statement> soak() {
    if (!seizes()) {
      return List.of();
    }
    return soak(
        stuck(Bound.OfBook.class),
        stuck(Bound.OfCatalogue.class),
        resolved.bay().equipment() == Bay.Equipment.LIFT);
  }

  /**
   * Threads are soaked brushed clean, parts in their seats. What is left on a thread would change
   * what its torque does, and on a lining the brake. Nobody lies under a vehicle for it that stands
   * on the floor, or on a jack.
   */
  private static List<Statement> soak(
      List<Statement.Things> fasteners, List<Statement.Things> parts, boolean lift) {
    List<Statement> soak = new ArrayList<>();
    if (!fasteners.isEmpty()) {
      soak.add(new Statement.SoakThreads(fasteners));
    }
    if (!parts.isEmpty()) {
      soak.add(new Statement.SoakSeats(parts));
    }
    if (!soak.isEmpty()) {
      soak.add(lift ? Statement.Plain.SOAK_ON_LIFT : Statement.Plain.SOAK_FROM_OUTSIDE);
      soak.add(Statement.Plain.NO_OIL_ON_LININGS);
    }
    if (!fasteners.isEmpty()) {
      soak.add(Statement.Plain.CLEAN_THREADS);
    }
    return soak;
  }

  private boolean seizes() {
    for (Located<String> name : resolved.job().condition().state()) {
      Catalogue.State state = resolved.catalogue().states().get(name.value());
      if (state.likelyFactor().compareTo(BigDecimal.ONE) > 0) {
        return true;
      }
    }
    return false;
  }

  /** What is likely to be stuck, of one kind of thing; the place behind the last that is there. */
  private List<Statement.Things> stuck(Class<? extends Bound> kind) {
    Map<List<Place>, List<String>> byPlace = new LinkedHashMap<>();
    for (PlacedStep line : lines) {
      List<String> words = stuck(line.step(), kind);
      if (!words.isEmpty()) {
        byPlace.computeIfAbsent(line.places(), key -> new ArrayList<>()).addAll(words);
      }
    }
    List<Statement.Things> stuck = new ArrayList<>();
    byPlace.forEach((places, words) -> stuck.add(new Statement.Things(words, places)));
    return stuck;
  }

  private List<String> stuck(PlannedStep step, Class<? extends Bound> kind) {
    List<String> words = new ArrayList<>();
    if (step.seizes() == Step.Seizes.LIKELY) {
      for (ItemAt item : step.undo()) {
        Bound thing = resolved.thing(item);
        if (kind.isInstance(thing) && isSoaked(thing)) {
          words.add(thing.in(resolved.shop().terms()));
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
