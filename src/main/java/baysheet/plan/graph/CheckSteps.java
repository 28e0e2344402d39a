package baysheet.plan.graph;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.report.Located;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Checks that are steps of the sequence. Each comes when all is back on that the work which brings
 * it took off, except what its rule wants off still, and what can only follow that: brakes are bled
 * with every line tight and every wheel off.
 *
 * <p>Beside the steps that bring it a check follows only what does not itself follow the things it
 * precedes; so a loop can arise only where a step that brings it comes too late by its procedure's
 * own words. Used once.
 */
final class CheckSteps {
  /**
   * A check and what it waits for.
   *
   * @param node its number among the steps
   * @param by the steps that bring it
   * @param brought the tasks that bring it
   */
  private record Waiting(
      int node,
      Catalogue.Rule rule,
      Catalogue.CheckStep step,
      List<Integer> by,
      Set<TaskId> brought) {}

  private final Resolved resolved;
  private final AccessLayers layers;
  private final StepChains chains;
  private final List<PlannedStep> drafts;
  private final List<Waiting> waiting = new ArrayList<>();

  /** Whether what is done once is so at each end of the vehicle that is raised in its turn. */
  private final boolean eachEnd;

  private CheckSteps(
      Resolved resolved, AccessLayers layers, StepChains chains, boolean endsInTurn) {
    this.resolved = resolved;
    this.layers = layers;
    this.chains = chains;
    this.drafts = new ArrayList<>(chains.drafts());
    this.eachEnd = endsInTurn && Lifting.ends(resolved, drafts).size() > 1;
  }

  static CheckSteps of(
      Resolved resolved, AccessLayers layers, StepChains chains, boolean endsInTurn) {
    CheckSteps checks = new CheckSteps(resolved, layers, chains, endsInTurn);
    List<PlacedStep> lines =
        chains.drafts().stream()
            .map(draft -> PlacedStep.onTheGround(draft, Moment.RAISED))
            .toList();
    TriggerMatcher triggers = new TriggerMatcher(resolved, lines);
    for (Catalogue.Rule rule : resolved.catalogue().rules().values()) {
      rule.step()
          .ifPresent(step -> checks.add(rule, step, checks.raised(triggers.lines(rule.when()))));
    }
    return checks;
  }

  /** What is done once the vehicle is down brings no check that is due while it is up. */
  private List<Integer> raised(List<Integer> nodes) {
    return nodes.stream().filter(node -> !chains.onTheGround().containsKey(node)).toList();
  }

  /** The steps of all tasks, and behind them the checks. */
  List<PlannedStep> drafts() {
    return drafts;
  }

  /** The steps that bring a check. */
  List<Integer> bringing(int check) {
    return waiting.stream().filter(one -> one.node() == check).findFirst().orElseThrow().by();
  }

  private void add(Catalogue.Rule rule, Catalogue.CheckStep step, List<Integer> bringing) {
    Map<Place, List<Integer>> byPlace = new TreeMap<>();
    for (List<Integer> nodes : step.once() ? once(bringing) : List.<List<Integer>>of()) {
      common(nodes).ifPresent(place -> byPlace.put(place, nodes));
    }
    for (int node : step.once() ? List.<Integer>of() : bringing) {
      byPlace.computeIfAbsent(drafts.get(node).place(), key -> new ArrayList<>()).add(node);
    }
    byPlace.forEach(
        (place, nodes) -> {
          waiting.add(new Waiting(drafts.size(), rule, step, nodes, tasks(nodes)));
          drafts.add(PlannedStep.check(place, rule, step));
        });
  }

  /** All together; but by axle where these are raised in turn and none belongs to neither. */
  private Collection<List<Integer>> once(List<Integer> nodes) {
    Map<Optional<Place>, List<Integer>> axles = new LinkedHashMap<>();
    for (int node : nodes) {
      Optional<Place> axle = eachEnd ? drafts.get(node).place().axle() : Optional.empty();
      axles.computeIfAbsent(axle, key -> new ArrayList<>()).add(node);
    }
    return axles.containsKey(Optional.<Place>empty()) ? List.of(nodes) : axles.values();
  }

  /** The one place, the axle of both sides, or the vehicle. */
  private Optional<Place> common(List<Integer> nodes) {
    Set<Place> places = new LinkedHashSet<>();
    nodes.forEach(node -> places.add(drafts.get(node).place()));
    if (places.size() < 2) {
      return places.stream().findFirst();
    }
    Set<Optional<Place>> axles = new LinkedHashSet<>();
    places.forEach(place -> axles.add(place.axle()));
    return axles.size() == 1 && !axles.contains(Optional.<Place>empty())
        ? axles.iterator().next()
        : Optional.of(Place.VEHICLE);
  }

  private Set<TaskId> tasks(List<Integer> nodes) {
    Set<TaskId> tasks = new LinkedHashSet<>();
    nodes.forEach(node -> tasks.add(drafts.get(node).task()));
    return tasks;
  }

  /** Adds what each check waits for, and what waits for it, to the nodes that come before each. */
  void link(List<Set<Integer>> before, HeightNeeds heights) {
    for (Waiting check : waiting) {
      List<List<Integer>> after = StepGraph.after(before);
      Set<Integer> around = around(check);
      Set<Integer> later = new LinkedHashSet<>();
      Set<Integer> bringing = leading(check.by(), before);
      around.stream()
          .filter(node -> mustWait(drafts.get(node), check))
          .filter(node -> isOfWork(check, node) || !bringing.contains(node))
          .forEach(later::add);
      elsewhere(check, PlannedStep::doUp).stream()
          .filter(node -> !bringing.contains(node))
          .forEach(later::add);
      Set<Integer> seen = leading(thingsOn(check), before);
      covering(check, after).stream()
          .filter(node -> !bringing.contains(node) && !seen.contains(node))
          .forEach(later::add);
      Set<Integer> behind = following(later, after);
      if (!check.step().allBack() && isHeldUp(bringing, behind, heights)) {
        around.removeIf(
            node ->
                !check.brought().contains(drafts.get(node).task())
                    && !heights.meet(node, check.node()));
      }
      before.get(check.node()).addAll(check.by());
      Stream.of(around, earlierChecks(check), elsewhere(check, PlannedStep::undo))
          .flatMap(Collection::stream)
          .filter(node -> !behind.contains(node))
          .forEach(node -> before.get(check.node()).add(node));
      later.forEach(node -> before.get(node).add(check.node()));
    }
  }

  /**
   * Whether a jack under a part keeps the vehicle where it is from before a check until after it.
   * Then the check does not wait for what gives access and is closed at another height.
   */
  private static boolean isHeldUp(Set<Integer> bringing, Set<Integer> behind, HeightNeeds heights) {
    return heights.jacked().stream()
        .anyMatch(
            jack ->
                behind.stream().anyMatch(node -> heights.on(node).contains(jack))
                    && IntStream.range(0, heights.steps().size())
                        .filter(node -> heights.steps().get(node).off().contains(jack))
                        .anyMatch(bringing::contains));
  }

  /**
   * Every step of the work that brings a check, and of what gives access every closing step and
   * every other one that puts something on.
   */
  private Set<Integer> around(Waiting check) {
    Set<Integer> around = new LinkedHashSet<>();
    Collection<TaskId> tasks = check.step().allBack() ? resolved.tasks().keySet() : check.brought();
    for (TaskId task : tasks) {
      StepChains.Chains own = chains.of(task);
      Stream.of(own.open(), own.work(), own.close()).forEach(around::addAll);
      layers.around(task).forEach(access -> around.addAll(puttingOn(chains.of(access))));
    }
    return around;
  }

  private List<Integer> puttingOn(StepChains.Chains access) {
    return Stream.concat(
            Stream.of(access.open(), access.work())
                .flatMap(List::stream)
                .filter(node -> !drafts.get(node).doUp().isEmpty()),
            access.close().stream())
        .toList();
  }

  /** What must be off still goes on later, and so does the vehicle onto its wheels. */
  private boolean mustWait(PlannedStep step, Waiting check) {
    for (ItemAt item : step.doUp()) {
      if (Lifting.holds(resolved, item) ? carries(item, check) : isOff(check, item)) {
        return true;
      }
    }
    return Lifting.isLowering(resolved, step)
        && Lifting.supports(resolved, step.task()).stream().anyMatch(it -> carries(it, check));
  }

  /** Whether an item must be off when a check is made. */
  private boolean isOff(Waiting check, ItemAt item) {
    for (Located<String> off : check.step().whileOff()) {
      if (is(item, off.value())) {
        return true;
      }
    }
    return false;
  }

  /** Whether the end of the vehicle that an item carries is up for the work of a check. */
  private boolean carries(ItemAt item, Waiting check) {
    return Lifting.ends(resolved, drafts).size() == 1
        || check.brought().stream().anyMatch(task -> layers.isOpenAround(item, task));
  }

  /** Steps of other tasks that take off or put on what must be off, where the check is made. */
  private List<Integer> elsewhere(Waiting check, Function<PlannedStep, List<ItemAt>> items) {
    Place place = drafts.get(check.node()).place();
    List<Integer> nodes = new ArrayList<>();
    for (int node = 0; node < chains.drafts().size(); node++) {
      for (ItemAt item : items.apply(drafts.get(node))) {
        if (item.place().meets(place) && isOff(check, item)) {
          nodes.add(node);
          break;
        }
      }
    }
    return nodes;
  }

  /** Nodes, and all that come before them. */
  private static Set<Integer> leading(List<Integer> nodes, List<Set<Integer>> before) {
    Set<Integer> leading = new LinkedHashSet<>(nodes);
    Deque<Integer> next = new ArrayDeque<>(nodes);
    while (!next.isEmpty()) {
      for (int earlier : before.get(next.remove())) {
        if (leading.add(earlier)) {
          next.add(earlier);
        }
      }
    }
    return leading;
  }

  /** Whether a step belongs to the work that brings a check, or to what gives access to it. */
  private boolean isOfWork(Waiting check, int node) {
    return check.brought().stream()
        .anyMatch(
            task ->
                chains.of(task).contains(node)
                    || layers.around(task).stream()
                        .anyMatch(access -> chains.of(access).contains(node)));
  }

  private List<Integer> thingsOn(Waiting check) {
    Set<ItemAt> things = check.step().beforeCovered() ? things(check) : Set.of();
    return IntStream.range(0, chains.drafts().size())
        .filter(node -> !Collections.disjoint(drafts.get(node).doUp(), things))
        .boxed()
        .toList();
  }

  /**
   * What covers the thing that brings a check, where it is to be seen before: all that its tasks
   * put on behind it, and what gives access to them.
   */
  private Set<Integer> covering(Waiting check, List<List<Integer>> after) {
    Set<Integer> on = Set.copyOf(thingsOn(check));
    Set<Integer> behind = following(on, after);
    Set<Integer> covering = new LinkedHashSet<>();
    for (TaskId task : check.brought()) {
      List<Integer> all = chains.of(task).all();
      if (!Collections.disjoint(all, on)) {
        all.stream().filter(behind::contains).forEach(covering::add);
        layers.around(task).forEach(access -> covering.addAll(chains.of(access).close()));
      }
    }
    covering.removeAll(on);
    return covering;
  }

  /** Of what was taken off, the items that a rule names. */
  private Set<ItemAt> things(Waiting check) {
    Set<ItemAt> things = new LinkedHashSet<>();
    check.by().forEach(node -> things.addAll(drafts.get(node).undo()));
    things.removeIf(
        item ->
            check.rule().when().stream()
                .flatMap(when -> when.items().stream())
                .noneMatch(name -> is(item, name)));
    return things;
  }

  private boolean is(ItemAt item, String name) {
    return item.item().equals(name) || resolved.thing(item).isOf(name);
  }

  /** Nodes, and all that come after them. */
  private static Set<Integer> following(Collection<Integer> nodes, List<List<Integer>> after) {
    Set<Integer> following = new LinkedHashSet<>(nodes);
    Deque<Integer> next = new ArrayDeque<>(nodes);
    while (!next.isEmpty()) {
      for (int later : after.get(next.remove())) {
        if (following.add(later)) {
          next.add(later);
        }
      }
    }
    return following;
  }

  /** Checks of the same work keep the order of the catalogue. */
  private List<Integer> earlierChecks(Waiting check) {
    return waiting.stream()
        .filter(earlier -> earlier.node() < check.node())
        .filter(earlier -> !Collections.disjoint(earlier.brought(), check.brought()))
        .map(Waiting::node)
        .toList();
  }
}
