package baysheet.plan.graph;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ToolNames;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Name;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Gives every step its moment from whether the vehicle is up, and adds the final torques that are
 * due once it is down.
 */
public final class PhaseAssigner {
  /** What the wheels stand on at ride height; cautions go by it. */
  private static final Procedure.Use BLOCKS = new Procedure.Use(ToolNames.SOLID_BLOCKS, true);

  private final Resolved resolved;
  private final boolean everRaised;
  private final List<PlannedStep> order;

  private PhaseAssigner(Resolved resolved, List<PlannedStep> order) {
    this.resolved = resolved;
    this.order = order;
    this.everRaised = order.stream().anyMatch(step -> Lifting.raises(resolved, step));
  }

  /**
   * The lines of a job with their moments: the sequence, the final torques directly behind the
   * lowering that they wait for, and at the end what the procedures leave for later.
   */
  public static List<PlacedStep> lines(
      Resolved resolved, StepSequence.Found found, StepGraph graph) {
    PhaseAssigner moments = new PhaseAssigner(resolved, found.order());
    List<PlacedStep> merged =
        SideMerger.merge(resolved, moments.sequence(found), new DependencyQuery(graph));
    List<PlannedStep> late = new ArrayList<>(graph.late());
    List<PlacedStep> lines = moments.withFinals(merged, late);
    late.forEach(step -> lines.add(PlacedStep.onTheGround(step, step.moment().orElseThrow())));
    return lines;
  }

  /**
   * The same lines with the final torques. Those on the ground come as soon as the vehicle is down
   * and kept from rolling: the other end is not raised while wheels are only snug. Those at ride
   * height come behind the last lowering.
   */
  private List<PlacedStep> withFinals(List<PlacedStep> merged, List<PlannedStep> late) {
    List<PlacedStep> lines = new ArrayList<>();
    List<Waiting> waiting = new ArrayList<>();
    Set<ItemAt> up = new LinkedHashSet<>();
    int last = lastLowering(merged);
    for (int i = 0; i < merged.size(); i++) {
      PlacedStep line = merged.get(i);
      lines.add(line);
      line.all().forEach(step -> waiting.addAll(waits(step, line.moment())));
      line.undo().stream().filter(this::supports).forEach(up::add);
      up.removeAll(line.doUp());
      if (up.isEmpty() && isEndOfLowering(merged, i)) {
        lines.addAll(onceDown(line.step().task(), late));
      }
      if (i == last) {
        lines.addAll(finals(waiting));
      } else if (up.isEmpty() && isEndOfLowering(merged, i)) {
        List<Waiting> due =
            waiting.stream().filter(one -> one.when() == Fastener.Moment.ON_THE_GROUND).toList();
        lines.addAll(finals(due));
        waiting.removeAll(due);
      }
    }
    return lines;
  }

  /** What the task that lowered the vehicle has done on the ground, as against rolling away. */
  private static List<PlacedStep> onceDown(TaskId lowering, List<PlannedStep> late) {
    List<PlannedStep> own =
        late.stream()
            .filter(step -> step.task().equals(lowering))
            .filter(step -> step.moment().equals(Optional.of(Moment.ON_THE_GROUND)))
            .toList();
    late.removeAll(own);
    return own.stream().map(step -> PlacedStep.onTheGround(step, Moment.ON_THE_GROUND)).toList();
  }

  /** Whether a line is the last of those with which a task brings the vehicle down. */
  private boolean isEndOfLowering(List<PlacedStep> lines, int index) {
    PlannedStep step = lines.get(index).step();
    return Lifting.isLowering(resolved, step)
        && (index + 1 == lines.size()
            || !Lifting.isLowering(resolved, lines.get(index + 1).step())
            || !lines.get(index + 1).step().task().equals(step.task()));
  }

  /** The line that brings the vehicle down for good; the last of all where it is never up. */
  private int lastLowering(List<PlacedStep> lines) {
    for (int i = lines.size() - 1; i >= 0; i--) {
      if (isEndOfLowering(lines, i)) {
        return i;
      }
    }
    return lines.size() - 1;
  }

  private List<PlacedStep> sequence(StepSequence.Found found) {
    List<PlacedStep> laid = new ArrayList<>();
    Set<ItemAt> up = new LinkedHashSet<>();
    boolean raisedYet = false;
    for (int i = 0; i < found.order().size(); i++) {
      PlannedStep step = found.order().get(i);
      boolean moving = Lifting.raises(resolved, step) || Lifting.lowers(resolved, step);
      Moment moment = moment(step, !up.isEmpty() || moving, raisedYet);
      laid.add(PlacedStep.single(step, moment, found.heights().get(i)));
      step.undo().stream().filter(this::supports).forEach(up::add);
      up.removeAll(step.doUp());
      raisedYet |= moving;
    }
    return laid;
  }

  /** Before the second end goes up it is before lifting once more, for what is due there. */
  private Moment moment(PlannedStep step, boolean raised, boolean raisedYet) {
    if (raised) {
      return Moment.RAISED;
    }
    boolean lifts =
        step.moment().equals(Optional.of(Moment.BEFORE_LIFTING))
            || Lifting.isRaising(resolved, step);
    return everRaised && (lifts || !raisedYet) ? Moment.BEFORE_LIFTING : Moment.ON_THE_GROUND;
  }

  private boolean supports(ItemAt item) {
    return Lifting.holds(resolved, item);
  }

  /** What a step did up while the vehicle was up, and whose final torque waits for the ground. */
  private record Waiting(PlannedStep step, ItemAt item, Fastener.Moment when, int depth) {}

  /**
   * Those on the ground before those at ride height; in each, what gave access to others first: the
   * wheel must be tight before anything is tightened through it.
   */
  private List<PlacedStep> finals(List<Waiting> waiting) {
    List<PlacedStep> finals =
        waiting.stream()
            .sorted(Comparator.comparing(Waiting::when).thenComparing(Waiting::depth))
            .map(this::finalTorque)
            .toList();
    return onBlocks(SideMerger.pair(resolved, finals));
  }

  /**
   * What is tightened at ride height is reached from below, so the vehicle goes up on blocks before
   * the first of it, its wheels loaded, and comes off them behind the last.
   */
  private List<PlacedStep> onBlocks(List<PlacedStep> finals) {
    List<PlacedStep> all = new ArrayList<>();
    boolean up = false;
    for (PlacedStep line : finals) {
      if (!up && isAtRideHeight(resolved, line)) {
        all.addAll(blocks(line.step(), true));
        all.addAll(measuredAgain(finals));
        up = true;
      }
      all.add(line);
    }
    if (up) {
      PlannedStep last = finals.get(finals.size() - 1).step();
      all.addAll(blocks(last, false));
    }
    return all;
  }

  /** The height at each wheel that was measured before the work, with the tools of that step. */
  private List<PlacedStep> measuredAgain(List<PlacedStep> finals) {
    Map<Place, PlacedStep> again = new TreeMap<>();
    for (PlacedStep line : finals) {
      for (PlannedStep step :
          isAtRideHeight(resolved, line) ? line.all() : List.<PlannedStep>of()) {
        order.stream()
            .filter(it -> it.place() == step.place())
            .filter(it -> it.entries().stream().anyMatch(PlannedStep::isHeight))
            .findFirst()
            .ifPresent(first -> again.putIfAbsent(step.place(), measuredAgain(first)));
      }
    }
    return List.copyOf(again.values());
  }

  private PlacedStep measuredAgain(PlannedStep first) {
    TaskId whole = new TaskId(first.task().procedure(), Place.VEHICLE);
    StepSource.Blocks source =
        new StepSource.Blocks(StepSource.BlocksPart.MEASURE, first.place(), Optional.empty());
    PlannedStep step =
        PlannedStep.blocks(whole, source, first.origin())
            .using(tools(first))
            .measuring(
                List.of(Statement.Plain.HEIGHT_NOW, Statement.Plain.LARGEST_DIFFERENCE),
                Statement.Plain.SAME_HEIGHT);
    return PlacedStep.onTheGround(step, Moment.ON_THE_GROUND);
  }

  private List<Procedure.Use> tools(PlannedStep step) {
    return Stream.concat(usesOf(step), step.uses().stream()).toList();
  }

  /** Whether a line gives something its final torque at ride height. */
  public static boolean isAtRideHeight(Resolved resolved, PlacedStep line) {
    return line.tighten().stream()
        .anyMatch(
            item ->
                resolved.thing(item) instanceof Bound.OfBook fastener
                    && fastener.values().moment() == Fastener.Moment.RIDE_HEIGHT);
  }

  /**
   * A step for each part; with a jack one axle after the other, the one that stayed down too. Off
   * the blocks the front axle comes last, so that chocks are left at the wheels that do not steer.
   */
  private List<PlacedStep> blocks(PlannedStep at, boolean on) {
    List<StepSource.BlocksPart> parts =
        new ArrayList<>(StepSource.BlocksPart.parts(on, resolved.bay()));
    // In service mode an electric parking brake is released, and nobody may wake it.
    parts.removeIf(part -> part.isOfBrake() && order.stream().anyMatch(this::isServiceMode));
    List<PlacedStep> steps = new ArrayList<>();
    if (parts.remove(StepSource.BlocksPart.APPLY_BRAKE)) {
      steps.add(blocks(at, StepSource.BlocksPart.APPLY_BRAKE, Place.VEHICLE));
    }
    for (Place axle : on ? List.of(Place.FRONT, Place.REAR) : List.of(Place.REAR, Place.FRONT)) {
      parts.stream()
          .filter(StepSource.BlocksPart::isOfAxle)
          .forEach(part -> steps.add(blocks(at, part, axle)));
    }
    parts.stream()
        .filter(part -> !part.isOfAxle())
        .forEach(part -> steps.add(blocks(at, part, Place.VEHICLE)));
    return steps;
  }

  private boolean isServiceMode(PlannedStep step) {
    return step.disturb().stream()
        .anyMatch(item -> resolved.thing(item).isOf("electric-parking-brake"));
  }

  private PlacedStep blocks(PlannedStep at, StepSource.BlocksPart part, Place where) {
    boolean raised =
        part == StepSource.BlocksPart.RAISE_AXLE || part == StepSource.BlocksPart.RAISE_AXLE_OFF;
    Optional<String> jacking =
        resolved.book().jacking(where).filter(point -> raised).map(Located::value);
    TaskId whole = new TaskId(at.task().procedure(), Place.VEHICLE);
    StepSource.Blocks source = new StepSource.Blocks(part, where, jacking);
    Stream<Procedure.Use> jack =
        order.stream()
            .filter(step -> part.isOfAxle() && Lifting.raises(resolved, step))
            .limit(1)
            .flatMap(this::usesOf);
    List<Procedure.Use> tools = Stream.concat(tools(part), jack).toList();
    PlannedStep step = PlannedStep.blocks(whole, source, at.origin()).using(tools);
    return PlacedStep.onTheGround(step, Moment.ON_THE_GROUND);
  }

  private static Stream<Procedure.Use> tools(StepSource.BlocksPart part) {
    return switch (part) {
      case PUT_UNDER, PUT_UNDER_AXLE, LOWER_AXLE_ONTO -> Stream.of(BLOCKS);
      default -> Stream.empty();
    };
  }

  /** What the procedure of a step uses throughout. */
  private Stream<Procedure.Use> usesOf(PlannedStep step) {
    return resolved.tasks().get(step.task()).procedure().needs().uses().stream()
        .map(Located::value);
  }

  private List<Waiting> waits(PlannedStep step, Moment moment) {
    List<Waiting> waiting = new ArrayList<>();
    for (ItemAt item : step.doUp()) {
      if (waits(item, moment)) {
        Fastener.Moment when = ((Bound.OfBook) resolved.thing(item)).values().moment();
        waiting.add(new Waiting(step, item, when, depth(step.task())));
      }
    }
    return waiting;
  }

  /** Whether a fastener that goes on now gets its final torque later. */
  private boolean waits(ItemAt item, Moment moment) {
    return moment == Moment.RAISED
        && resolved.thing(item) instanceof Bound.OfBook fastener
        && fastener.values().moment() != Fastener.Moment.AT_ONCE;
  }

  /** How many layers of access lie before a task. */
  private int depth(TaskId id) {
    Task task = resolved.tasks().get(id);
    return task.access().stream().mapToInt(access -> depth(access) + 1).max().orElse(0);
  }

  private PlacedStep finalTorque(Waiting waiting) {
    Bound thing = resolved.thing(waiting.item());
    int count = ((Bound.OfBook) thing).values().count().value();
    StepSource source = new StepSource.FinalTorque(waiting.item().item(), Name.of(thing), count);
    PlannedStep step = waiting.step();
    return PlacedStep.onTheGround(
        PlannedStep.torque(step.task(), source, step.origin(), waiting.item()),
        Moment.ON_THE_GROUND);
  }
}
