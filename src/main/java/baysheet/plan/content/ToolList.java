package baysheet.plan.content;

import baysheet.books.Catalogue;
import baysheet.books.Fastener;
import baysheet.books.Procedure;
import baysheet.books.Shop;
import baysheet.books.SpecBook;
import baysheet.books.ToolNames;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Detail;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Treatment;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What to lay out before the work: tools, new parts, what is used up. */
public final class ToolList {
  /** For the witness mark that every torque line has a box for. */
  private final Resolved resolved;

  private final List<PlacedStep> lines;
  private final Collection<Task> using;
  private final Collection<Task> fitting;
  private final List<PlannedStep> steps = new ArrayList<>();

  public ToolList(Resolved resolved, List<PlacedStep> lines) {
    this(resolved, lines, resolved.tasks().values(), resolved.tasks().values());
  }

  /**
   * @param using tasks whose tools are wanted
   * @param fitting tasks whose new parts are
   */
  public ToolList(
      Resolved resolved, List<PlacedStep> lines, Collection<Task> using, Collection<Task> fitting) {
    this.resolved = resolved;
    this.lines = lines;
    this.using = using;
    this.fitting = fitting;
    lines.forEach(line -> steps.addAll(line.all()));
  }

  /**
   * Special tools first, each group in the order in which the sequence comes to it; what checks ask
   * for follows, and last what only ways out do.
   */
  public List<Sheet.ToolLine> tools(List<TorqueTable.Selected> torque, List<CheckLine> checks) {
    Set<Procedure.Use> uses = new LinkedHashSet<>(forTightening(torque));
    for (Task task : using) {
      boolean canBeStuck = canBeStuck(task);
      task.procedure().needs().uses().stream()
          .map(Located::value)
          .filter(use -> canBeStuck || !use.ifStuck())
          .forEach(uses::add);
    }
    steps.forEach(step -> uses.addAll(step.uses()));
    uses.addAll(forChecks(checks));
    List<Sheet.ToolLine> special = new ArrayList<>();
    List<Sheet.ToolLine> other = new ArrayList<>();
    List<Sheet.ToolLine> stuck = new ArrayList<>();
    Set<String> worked = new HashSet<>();
    uses.stream().filter(use -> !use.ifStuck()).forEach(use -> worked.add(use.name()));
    for (Procedure.Use use : uses) {
      if (!use.ifStuck()) {
        (use.special() ? special : other).add(tool(use));
      } else if (!worked.contains(use.name())) {
        stuck.add(tool(use));
      }
    }
    special.addAll(other);
    special.addAll(stuck);
    return special;
  }

  /** Whether a step of a task that is done here has a way out. */
  private boolean canBeStuck(Task task) {
    return steps.stream()
        .anyMatch(step -> step.task().equals(task.id()) && !step.teaching().ifStuck().isEmpty());
  }

  private List<Procedure.Use> forChecks(List<CheckLine> checks) {
    Map<String, Catalogue.Rule> rules = resolved.catalogue().rules();
    List<Procedure.Use> uses = new ArrayList<>();
    for (CheckLine check : checks) {
      Catalogue.Rule rule = rules.get(check.name());
      if (rule != null && check.text().isWritten(rule.check().value())) {
        rule.uses().forEach(use -> uses.add(use.value()));
      }
    }
    return uses;
  }

  /**
   * A pen for the witness marks; an angle gauge where there is an angle; a crow-foot where the book
   * allows for its length; an adapter where wrench and socket differ in square; what the wheels
   * stand on at ride height; with what the other end is held.
   */
  private List<Procedure.Use> forTightening(List<TorqueTable.Selected> torque) {
    Set<String> names = new LinkedHashSet<>();
    for (TorqueTable.Selected selected : torque) {
      TorqueLine line = selected.line();
      for (TorqueLine.StageLine stage : line.method().stages()) {
        if (stage instanceof TorqueLine.StageLine.Angle) {
          names.add(ToolNames.ANGLE_GAUGE);
        }
      }
      Fastener fastener = fastener(line);
      if (fastener.written().pieces().head().isPresent() && fastener.reach().isPresent()) {
        // It stands between wrench and nut, by the nut's size and the length the book gives.
        names.add(
            ToolNames.crowFoot(
                fastener.written().pieces().head().get().value(), fastener.reach().get()));
      }
      names.addAll(selected.selection().adapters());
    }
    boolean rideHeight = torque.stream().anyMatch(it -> it.line().visits().rideHeight());
    if (rideHeight) {
      names.add(ToolNames.SOLID_BLOCKS);
    }
    List<Procedure.Use> uses = new ArrayList<>();
    names.forEach(name -> uses.add(new Procedure.Use(name, true)));
    torque.stream()
        .flatMap(selected -> selected.line().refitting().remarks().stream())
        .flatMap(remark -> remark.holder().stream())
        .forEach(tool -> uses.add(new Procedure.Use(tool, false)));
    if (!torque.isEmpty()) {
      uses.add(new Procedure.Use(ToolNames.PAINT_PEN, false));
    }
    if (rideHeight) {
      uses.add(new Procedure.Use(ToolNames.WHEEL_CHOCKS, false));
    }
    return uses;
  }

  private Fastener fastener(TorqueLine line) {
    ItemAt item = new ItemAt(line.fastener(), line.places().get(0));
    return ((Bound.OfBook) resolved.thing(item)).values();
  }

  private Sheet.ToolLine tool(Procedure.Use use) {
    boolean owned = !use.special() || has(resolved.shop(), use.name());
    return new Sheet.ToolLine(use.name(), use.special(), owned, use.ifStuck());
  }

  /** Whether the crib has a special tool; other things are taken to be at hand. */
  static boolean has(Shop shop, String tool) {
    return special(shop, tool).isPresent();
  }

  /** A special tool as the crib has it. */
  static Optional<Shop.Special> special(Shop shop, String tool) {
    for (Shop.Special special : shop.crib().special()) {
      if (special.name().value().equals(tool) && special.count().value() > 0) {
        return Optional.of(special);
      }
    }
    return Optional.empty();
  }

  /**
   * The procedures' new parts, then every fastener that may not be used again; those of the two
   * sides together, with their places, for left and right may be different parts.
   */
  public List<PartLine> parts() {
    PartList fasteners = new PartList(true);
    for (ItemAt item : fitted()) {
      if (resolved.thing(item) instanceof Bound.OfBook book && book.values().isSingleUse()) {
        fasteners.add(
            name(item),
            book.values().count().value(),
            item.place(),
            resolved.book().partNumber(item.item()),
            fittedBy(item));
      }
    }
    PartList parts = new PartList(false);
    for (Task task : fitting) {
      for (Procedure.Part part : task.parts()) {
        // A procedure may list a single-use fastener by itself: it is still one and the same.
        if (!fasteners.has(part.name().value())) {
          parts.add(
              part.name().value(),
              part.count().value(),
              task.id().place(),
              resolved.book().partNumber(part.name().value()),
              task.id().procedure());
        }
      }
    }
    return Stream.concat(parts.lines().stream(), fasteners.lines().stream()).toList();
  }

  /** What goes on, in the order of coming off; last what came off before these lines. */
  private Set<ItemAt> fitted() {
    Set<ItemAt> on = new LinkedHashSet<>();
    lines.forEach(line -> on.addAll(line.doUp()));
    Set<ItemAt> fitted = new LinkedHashSet<>();
    lines.forEach(line -> fitted.addAll(line.undo()));
    fitted.retainAll(on);
    fitted.addAll(on);
    return fitted;
  }

  /** The procedure whose step puts it on. */
  private String fittedBy(ItemAt item) {
    return steps.stream()
        .filter(step -> step.doUp().contains(item))
        .map(step -> step.task().procedure())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no step fits " + item));
  }

  private String name(ItemAt item) {
    return resolved.thing(item).in(resolved.shop().terms());
  }

  /**
   * What goes on threads, products that steps apply, and the fluids of circuits that they open or
   * fill.
   *
   * @param filled fluids that some sheet of the job fills in, which need nothing where their
   *     circuit is only opened
   */
  public List<Statement> consumables(List<TorqueLine> torque, Set<String> filled) {
    Set<Statement> products = new LinkedHashSet<>();
    for (TorqueLine line : torque) {
      line.refitting().threads().product().map(Statement.Written::new).ifPresent(products::add);
    }
    Set<String> fluids = new LinkedHashSet<>();
    for (PlannedStep step : steps) {
      List<String> here = MissingFigures.filled(resolved, step);
      MissingFigures.opened(resolved, step).stream()
          .filter(name -> !filled.contains(name))
          .forEach(fluids::add);
      fluids.addAll(here);
      step.apply().stream()
          .filter(apply -> !here.contains(apply.product()))
          .forEach(apply -> products.add(new Statement.Written(product(apply.product()))));
    }
    for (String name : fluids) {
      Optional<SpecBook.Fluid> fluid = resolved.book().fluid(name);
      products.add(
          fluid
              .<Statement>map(known -> new Statement.Fluid(fluid(name, known)))
              .orElseGet(() -> new Statement.FluidAsRecorded(name)));
    }
    return List.copyOf(products);
  }

  private static Detail.Fluid fluid(String name, SpecBook.Fluid known) {
    return new Detail.Fluid(
        name, known.grade().map(Located::value), known.capacity().map(Located::value));
  }

  /** What has no torque line but is off and must be on again. */
  public List<Sheet.TallyLine> tally() {
    Map<ItemAt, Integer> off = new LinkedHashMap<>();
    Map<ItemAt, Integer> on = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      for (ItemAt item : lines.get(i).undo()) {
        off.putIfAbsent(item, i + 1);
      }
      for (ItemAt item : lines.get(i).doUp()) {
        on.put(item, i + 1);
      }
    }
    off.keySet()
        .removeIf(
            item ->
                resolved.thing(item) instanceof Bound.OfBook
                    || resolved.thing(item).isTemporary()
                    || Lifting.holds(resolved, item));
    return RemovedItems.of(resolved, off, on);
  }

  /** As it is printed where it stands on a thread. */
  private static String product(String name) {
    return Treatment.parse(name).found().map(Treatment::print).orElse(name.replace('-', ' '));
  }
}
