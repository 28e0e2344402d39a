package baysheet.plan.graph;

import baysheet.books.Moment;
import baysheet.report.Span;
import baysheet.resolve.Bound;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Detail;
import baysheet.sheet.Name;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The steps of all tasks, each thing done by one of them, and the chains in which each task has
 * them. Used once.
 */
final class StepChains {
  /**
   * The chains of a task, as numbers of drafts; those of other tasks among them are shared.
   *
   * @param closing the close chain, what came off in one step together
   */
  record Chains(List<Integer> open, List<Integer> work, List<List<Integer>> closing) {
    /** The close chain. */
    List<Integer> close() {
      return closing.stream().flatMap(List::stream).toList();
    }

    /** All of them, in their order. */
    List<Integer> all() {
      return Stream.of(open, work, close()).flatMap(List::stream).toList();
    }

    boolean contains(int node) {
      return open.contains(node)
          || work.contains(node)
          || closing.stream().anyMatch(together -> together.contains(node));
    }
  }

  /** A step as its task has it, and what is left of it once other tasks do their share. */
  private record Part(PlannedStep whole, Optional<Integer> own) {}

  private final Resolved resolved;
  private final AccessLayers layers;
  private final List<PlannedStep> drafts = new ArrayList<>();
  private final List<PlannedStep> late = new ArrayList<>();
  private final List<PlannedStep> evening = new ArrayList<>();
  private final Set<Integer> early = new LinkedHashSet<>();
  private final Map<Integer, TaskId> onTheGround = new LinkedHashMap<>();
  private final Map<TaskId, Chains> chains = new LinkedHashMap<>();
  private final Map<ItemAt, Integer> undoes = new LinkedHashMap<>();
  private final Map<ItemAt, Integer> doesUp = new LinkedHashMap<>();
  private final List<PlannedStep> dropped = new ArrayList<>();

  /** What each task leaves for after lowering; another may put the same on in its own turn. */
  private final Map<TaskId, List<Part>> left = new LinkedHashMap<>();

  private SharedItems owners;
  private double saved;

  private StepChains(Resolved resolved, AccessLayers layers) {
    this.resolved = resolved;
    this.layers = layers;
  }

  static StepChains of(Resolved resolved, AccessLayers layers) {
    StepChains all = new StepChains(resolved, layers);
    all.run();
    return all;
  }

  List<PlannedStep> drafts() {
    return drafts;
  }

  /** What waits for a moment after the vehicle is down, in the order of the moments. */
  List<PlannedStep> late() {
    return late.stream()
        .sorted(Comparator.comparing((PlannedStep draft) -> draft.moment().orElseThrow()))
        .toList();
  }

  List<PlannedStep> evening() {
    return evening;
  }

  /** Numbers of the drafts that are due before the vehicle is lifted. */
  Set<Integer> early() {
    return early;
  }

  /**
   * Steps that are due once the vehicle is down and need access that is reached from the ground, so
   * that this stays open for them; with their tasks.
   */
  Map<Integer, TaskId> onTheGround() {
    return onTheGround;
  }

  double saved() {
    return saved;
  }

  Chains of(TaskId task) {
    return chains.get(task);
  }

  private void run() {
    Map<TaskId, List<PlannedStep>> open = new LinkedHashMap<>();
    Map<TaskId, List<PlannedStep>> work = new LinkedHashMap<>();
    Map<TaskId, List<PlannedStep>> close = new LinkedHashMap<>();
    for (Task task : resolved.ranked()) {
      open.put(task.id(), written(task, Sheet.Phase.OPEN, task.open()));
      work.put(task.id(), written(task, Sheet.Phase.WORK, task.work()));
      close.put(task.id(), ClosingSteps.closing(resolved, task));
    }
    owners = SharedItems.of(layers, List.of(open, work), close);
    Stream.of(open, work, close)
        .flatMap(phase -> phase.values().stream())
        .flatMap(List::stream)
        .filter(StepChains::isEarly)
        .forEach(this::early);
    // Every step has its number before the chains are made: who does it may rank behind.
    Map<TaskId, List<List<Part>>> parts = new LinkedHashMap<>();
    for (TaskId task : open.keySet()) {
      parts.put(task, new ArrayList<>(List.of(parts(open.get(task)), parts(work.get(task)))));
    }
    close.forEach((task, steps) -> parts.get(task).add(parts(steps)));
    left.forEach((task, steps) -> parts.get(task).get(2).addAll(steps));
    parts.forEach(
        (task, all) ->
            chains.put(
                task,
                new Chains(
                    offAlready(task, chain(all.get(0))), chain(all.get(1)), closing(all.get(2)))));
    dropped.forEach(this::warn);
  }

  private static List<PlannedStep> written(Task task, Sheet.Phase phase, List<BoundStep> steps) {
    return steps.stream().map(step -> PlannedStep.written(task, phase, step)).toList();
  }

  private static boolean isEarly(PlannedStep step) {
    return step.moment().filter(moment -> moment == Moment.BEFORE_LIFTING).isPresent();
  }

  /**
   * What is undone before lifting is so for every task; the first that says it does it. What is
   * only slackened then, and taken off by other work, is off only there.
   */
  private void early(PlannedStep step) {
    PlannedStep rest = step;
    for (ItemAt item : step.undo()) {
      if (step.slacken().contains(item) && !owners.undoes(item, step.task())) {
        rest = rest.slackening(item);
      } else if (undoes.containsKey(item)) {
        rest = rest.without(item, elsewhere(item, true));
      }
    }
    if (!drops(step, rest)) {
      early.add(add(rest));
    }
  }

  /** Gives the steps their numbers, each without what another task does. */
  private List<Part> parts(List<PlannedStep> steps) {
    List<Part> parts = new ArrayList<>();
    steps.stream().filter(this::inPlace).forEach(step -> parts.add(part(step)));
    return parts;
  }

  /** Whether a step stands where its chain has it; one with a moment of its own may not. */
  private boolean inPlace(PlannedStep step) {
    Moment moment = step.moment().orElse(Moment.RAISED);
    if (moment == Moment.EVENING_BEFORE) {
      evening.add(step);
    } else if (moment.compareTo(Moment.ON_THE_GROUND) >= 0) {
      PlannedStep rest = withoutOthers(step);
      if (moment == Moment.ON_THE_GROUND && !layers.fromTheGround(step.task()).isEmpty()) {
        onTheGround.put(add(rest), step.task());
      } else if (!drops(step, rest)) {
        late.add(rest);
      }
      left.computeIfAbsent(step.task(), key -> new ArrayList<>())
          .add(new Part(step, Optional.empty()));
    } else {
      return !isEarly(step);
    }
    return false;
  }

  private Part part(PlannedStep step) {
    PlannedStep rest = withoutOthers(step);
    return new Part(step, drops(step, rest) ? Optional.empty() : Optional.of(add(rest)));
  }

  /** A step without what other tasks undo or do up. */
  private PlannedStep withoutOthers(PlannedStep step) {
    PlannedStep rest = step;
    for (ItemAt item : step.undo()) {
      if (isEarly(item) || !owners.undoes(item, step.task())) {
        rest = rest.without(item, elsewhere(item, true));
      }
    }
    for (ItemAt item : step.doUp()) {
      if (!owners.doesUp(item, step.task())) {
        rest = rest.without(item, elsewhere(item, false));
      }
    }
    return rest;
  }

  private Detail elsewhere(ItemAt item, boolean off) {
    Bound thing = resolved.thing(item);
    return new Detail.HandledElsewhere(Name.of(thing), thing.isTemporary(), off);
  }

  private boolean isEarly(ItemAt item) {
    return undoes.containsKey(item) && early.contains(undoes.get(item));
  }

  private boolean isOf(int node, PlannedStep step) {
    return drafts.get(node).task().equals(step.task());
  }

  /** Whether nothing is left of a step, so that it is not done at all. */
  private boolean drops(PlannedStep step, PlannedStep rest) {
    if (!rest.isIdle() || step.isIdle()) {
      return false;
    }
    dropped.add(step);
    saved += step.minutes().map(minutes -> minutes.mean()).orElse(0.0);
    return true;
  }

  private int add(PlannedStep step) {
    int number = drafts.size();
    drafts.add(step);
    step.undo().forEach(item -> undoes.putIfAbsent(item, number));
    step.doUp().forEach(item -> doesUp.putIfAbsent(item, number));
    return number;
  }

  /**
   * The numbers of a chain: before each step who undoes for it, behind it who does up for it. Who
   * has undone something once is not waited for again.
   */
  private List<Integer> chain(List<Part> parts) {
    List<Integer> chain = new ArrayList<>();
    for (Part part : parts) {
      others(part.whole().undo(), undoes, part.whole()).stream()
          .filter(owner -> !chain.contains(owner))
          .forEach(chain::add);
      part.own().ifPresent(chain::add);
      others(part.whole().doUp(), doesUp, part.whole()).forEach(chain::add);
    }
    return chain;
  }

  /** The same chain in stretches: what a task took off in one step it puts back in any order. */
  private List<List<Integer>> closing(List<Part> parts) {
    List<Integer> chain = chain(parts);
    List<List<Integer>> closing = new ArrayList<>();
    Optional<Span> last = Optional.empty();
    for (int node : chain) {
      Optional<Span> step = putsBack(parts, node);
      if (step.isEmpty() || !step.equals(last)) {
        closing.add(new ArrayList<>());
      }
      closing.get(closing.size() - 1).add(node);
      last = step;
    }
    return closing;
  }

  /** The step of the task that took off what a node puts back, where the mirror says so. */
  private Optional<Span> putsBack(List<Part> parts, int node) {
    return parts.stream()
        .map(Part::whole)
        .filter(
            step -> step.mirrored() && !Collections.disjoint(step.doUp(), drafts.get(node).doUp()))
        .map(PlannedStep::origin)
        .findFirst();
  }

  /** What a work that comes before a task has taken off is so before any step of its own. */
  private List<Integer> offAlready(TaskId task, List<Integer> open) {
    Map<Boolean, List<Integer>> parts =
        open.stream()
            .collect(
                Collectors.partitioningBy(
                    node -> layers.isOpenedBefore(drafts.get(node).task(), task)));
    return Stream.concat(parts.get(true).stream(), parts.get(false).stream()).toList();
  }

  /** What is done early or late, or is open around a task, keeps out of its chains. */
  private Set<Integer> others(List<ItemAt> items, Map<ItemAt, Integer> owners, PlannedStep step) {
    Set<Integer> others = new LinkedHashSet<>();
    for (ItemAt item : items) {
      if (owners.containsKey(item) && !layers.isOpenAround(item, step.task())) {
        int owner = owners.get(item);
        if (!isOf(owner, step) && !early.contains(owner)) {
          others.add(owner);
        }
      }
    }
    return others;
  }

  /** What a dropped step warns of goes to the steps that do its work. */
  private void warn(PlannedStep gone) {
    warn(gone, drafts);
    warn(gone, late);
  }

  private static void warn(PlannedStep gone, List<PlannedStep> steps) {
    steps.replaceAll(step -> step.sharesWorkOf(gone) ? step.warningOf(gone) : step);
  }
}
