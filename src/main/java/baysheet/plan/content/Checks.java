package baysheet.plan.content;

import baysheet.books.Catalogue;
import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Trigger;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.graph.TriggerMatcher;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Every check that is due, each once, by moment: from rules, from procedures, from the books. */
public final class Checks {
  private static final String WHEEL = "wheel";
  private static final String DISTANCE = "distance";

  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final List<TorqueLine> torque;
  private final List<ItemAt> holdWheel;
  private final boolean everUp;

  /** The numbers of the steps that a check is itself, by its rule. */
  private final Map<String, List<Integer>> checkSteps = new HashMap<>();

  public Checks(Resolved resolved, List<PlacedStep> lines, List<TorqueLine> torque) {
    this.resolved = resolved;
    this.lines = lines;
    this.torque = torque;
    this.holdWheel = torque.isEmpty() ? List.of() : holdingWheels();
    this.everUp = lines.stream().anyMatch(line -> line.moment() == Moment.RAISED);
    for (int i = 0; i < lines.size(); i++) {
      PlannedStep step = lines.get(i).step();
      if (step.phase() == Sheet.Phase.CHECK) {
        checkSteps.computeIfAbsent(step.task().procedure(), key -> new ArrayList<>()).add(i + 1);
      }
    }
  }

  public List<CheckLine> all() {
    // A figure that nobody has is asked for first: without it nothing else is begun.
    List<CheckLine> checks = new ArrayList<>(asked());
    checks.addAll(rules());
    checks.addAll(procedures());
    checks.addAll(rechecks());
    checks.sort(Comparator.comparing(CheckLine::moment));
    return checks;
  }

  private List<CheckLine> rules() {
    TriggerMatcher triggers = new TriggerMatcher(resolved, lines);
    List<CheckLine> checks = new ArrayList<>();
    for (Catalogue.Rule rule : resolved.catalogue().rules().values()) {
      List<Integer> brought = triggers.lines(rule.when());
      if (!brought.isEmpty() || triggers.vehicle(rule.when())) {
        eachLifting(rule, brought).forEach(lines -> checks.add(check(rule, lines)));
      }
    }
    return checks;
  }

  /**
   * What raising brings before lifting is checked before each: between two ends that are raised in
   * turn people get in, doors are opened, and the parking brake is used.
   */
  private Collection<List<Integer>> eachLifting(Catalogue.Rule rule, List<Integer> brought) {
    if (rule.moment().value() != Moment.BEFORE_LIFTING) {
      return List.of(brought);
    }
    Map<Integer, List<Integer>> liftings = new TreeMap<>();
    int[] down = Lifting.timesDown(resolved, lines);
    for (int index : brought) {
      if (Lifting.raises(resolved, lines.get(index).step())) {
        liftings.put(down[index], new ArrayList<>());
      }
    }
    if (liftings.size() < 2) {
      return List.of(brought);
    }
    int first = liftings.keySet().iterator().next();
    for (int index : brought) {
      liftings.getOrDefault(down[index], liftings.get(first)).add(index);
    }
    return liftings.values();
  }

  private CheckLine check(Catalogue.Rule rule, List<Integer> brought) {
    TreeSet<Place> places = new TreeSet<>();
    List<Integer> because = new ArrayList<>();
    for (int index : brought) {
      places.addAll(lines.get(index).places());
      because.add(index + 1);
    }
    List<Integer> steps = checkSteps.getOrDefault(rule.name().value(), List.of());
    return new CheckLine(
        rule.name().value(),
        steps.isEmpty()
            ? due(rule.moment().value(), brought)
            : lines.get(steps.get(0) - 1).moment(),
        text(rule),
        List.copyOf(places),
        because,
        steps,
        rule.grounds().because().map(Located::value).map(Statement.Written::new),
        rule.others().hold(),
        rule.needs().map(Located::value),
        rule.others().keepOpen().map(Located::value),
        rule.others().release().map(Located::value),
        new Statement.Written(rule.grounds().source().value()));
  }

  private Statement text(Catalogue.Rule rule) {
    List<String> kinds =
        rule.when().stream().flatMap(it -> it.names(Trigger.Condition.KIND).stream()).toList();
    List<Integer> rows =
        torque.stream()
            .filter(line -> rule.rows() && isOfAny(line, kinds))
            .map(TorqueLine::n)
            .toList();
    return rows.isEmpty()
        ? new Statement.Written(rule.check().value())
        : new Statement.OfRows(rule.check().value(), rows);
  }

  private boolean isOfAny(TorqueLine line, List<String> kinds) {
    Bound fastener = resolved.thing(new ItemAt(line.fastener(), line.places().get(0)));
    return kinds.stream().anyMatch(fastener::isOf);
  }

  /**
   * When a check is due: at its moment, or where that has passed when its steps come, at theirs.
   * While a vehicle stays on its wheels there is no moment at which it is up.
   */
  private Moment due(Moment moment, List<Integer> brought) {
    if (moment.compareTo(Moment.RAISED) < 0) {
      return moment;
    }
    boolean passed = moment.compareTo(Moment.BEFORE_LOWERING) <= 0 && !everUp;
    Moment earliest = passed ? Moment.ON_THE_GROUND : moment;
    for (int index : brought) {
      Moment moved = lines.get(index).moment();
      earliest = moved.compareTo(earliest) > 0 ? moved : earliest;
    }
    return earliest;
  }

  /** A procedure's own checks, once for all its places. */
  private List<CheckLine> procedures() {
    Map<String, Procedure> procedures = new LinkedHashMap<>();
    Map<String, TreeSet<Place>> places = new HashMap<>();
    for (Task task : resolved.tasks().values()) {
      String name = task.id().procedure();
      procedures.putIfAbsent(name, task.procedure());
      places.computeIfAbsent(name, key -> new TreeSet<>()).add(task.id().place());
    }
    List<CheckLine> checks = new ArrayList<>();
    procedures.forEach(
        (name, procedure) ->
            procedure.checks().forEach(check -> checks.add(own(check, name, places.get(name)))));
    return checks;
  }

  private CheckLine own(Procedure.Check check, String name, TreeSet<Place> where) {
    return new CheckLine(
        name,
        due(check.moment().value(), List.of()),
        new Statement.Written(check.text().value()),
        List.copyOf(where),
        List.of(),
        List.of(),
        check.because().map(Located::value).map(Statement.Written::new),
        check.hold(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new Statement.OfProcedure(name));
  }

  /**
   * A torque that no book gives, or that does not fit its thread, is written in before anything is
   * open: a vehicle in pieces tempts people to guess it.
   */
  private List<CheckLine> asked() {
    Map<String, Bound.OfBook> things = new LinkedHashMap<>();
    Map<String, TreeSet<Place>> places = new LinkedHashMap<>();
    for (ItemAt item : lines.stream().flatMap(line -> line.doUp().stream()).toList()) {
      if (resolved.thing(item) instanceof Bound.OfBook thing && isAsked(thing.values())) {
        things.putIfAbsent(item.item(), thing);
        places.computeIfAbsent(item.item(), key -> new TreeSet<>()).add(item.place());
      }
    }
    List<CheckLine> checks = new ArrayList<>();
    places.forEach((item, where) -> checks.add(asked(things.get(item), List.copyOf(where))));
    MissingFigures.of(resolved, lines).stream()
        .filter(missing -> !missing.opening().isEmpty())
        .forEach(missing -> checks.add(asked(missing)));
    return checks;
  }

  /** Nobody drains what they do not know how to fill. */
  private static CheckLine asked(MissingFigures.Missing missing) {
    return new CheckLine(
        missing.name(),
        Moment.BEFORE_LIFTING,
        new Statement.FigureRecorded(missing.figure()),
        List.of(Place.VEHICLE),
        missing.opening().stream().sorted().map(index -> index + 1).toList(),
        List.of(),
        Optional.of(Statement.Plain.FLUID_NOT_GUESSED),
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Statement.Plain.OF_THE_BOOK);
  }

  private static boolean isAsked(Fastener fastener) {
    return fastener.isUnknown() || fastener.plausibility().isDoubtful();
  }

  /** Where only the moments of checks are asked for, the table is not made yet. */
  private Statement.Row unnumbered(Bound.OfBook thing) {
    String words = thing.in(resolved.shop().terms());
    return new Statement.Row(0, words, thing.values().count().value());
  }

  private CheckLine asked(Bound.OfBook thing, List<Place> where) {
    Statement.Row row =
        torque.stream()
            .filter(line -> line.fastener().equals(thing.item().item()))
            .filter(line -> line.places().contains(where.get(0)))
            .findFirst()
            .map(Statement.Row::of)
            .orElseGet(() -> unnumbered(thing));
    return new CheckLine(
        "torque-of-" + thing.item().item(),
        Moment.BEFORE_LIFTING,
        new Statement.TorqueRecorded(row),
        where,
        List.of(),
        List.of(),
        Optional.of(Statement.Plain.TORQUE_NOT_GUESSED),
        true,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new Statement.Written(thing.source()));
  }

  /**
   * The second look at fasteners after a distance; where a wheel was off and its book does not say
   * when, an empty box asks for it.
   */
  private List<CheckLine> rechecks() {
    List<CheckLine> known = new ArrayList<>();
    List<CheckLine> unknown = new ArrayList<>();
    for (TorqueLine line : torque) {
      if (line.visits().recheck().isPresent()) {
        known.add(recheck(line, Optional.empty()));
      } else if (names(line, holdWheel)) {
        unknown.add(recheck(line, Optional.of(DISTANCE)));
      }
    }
    known.addAll(unknown);
    return known;
  }

  private static boolean names(TorqueLine line, List<ItemAt> items) {
    for (ItemAt item : items) {
      if (item.item().equals(line.fastener()) && line.places().contains(item.place())) {
        return true;
      }
    }
    return false;
  }

  /** What the work that takes a wheel off undoes right before it, or with it: that holds it. */
  private List<ItemAt> holdingWheels() {
    List<ItemAt> holding = new ArrayList<>();
    Map<TaskId, List<ItemAt>> undone = new HashMap<>();
    for (PlacedStep line : lines) {
      for (PlannedStep step : line.all()) {
        List<ItemAt> before = undone.computeIfAbsent(step.task(), key -> new ArrayList<>());
        Map<Boolean, List<ItemAt>> items =
            step.undo().stream().collect(Collectors.partitioningBy(this::isFastener));
        before.addAll(items.get(true));
        if (items.get(false).stream().anyMatch(item -> resolved.thing(item).isOf(WHEEL))) {
          holding.addAll(before);
        }
        if (!items.get(false).isEmpty()) {
          before.clear();
        }
      }
    }
    return holding;
  }

  private boolean isFastener(ItemAt item) {
    return resolved.thing(item) instanceof Bound.OfBook;
  }

  private CheckLine recheck(TorqueLine line, Optional<String> needs) {
    List<Integer> steps = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (names(line, lines.get(i).undo())) {
        steps.add(i + 1);
      }
    }
    return new CheckLine(
        "recheck-" + line.fastener(),
        Moment.RE_CHECK,
        new Statement.Recheck(Statement.Row.of(line), line.visits().recheck()),
        line.places(),
        steps,
        List.of(),
        Optional.empty(),
        false,
        needs,
        Optional.empty(),
        Optional.empty(),
        new Statement.Written(line.origin().source()));
  }
}
