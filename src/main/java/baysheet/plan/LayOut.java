package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Procedure;
import baysheet.books.Shop;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What to lay out before the work: tools, new parts, what is used up. */
final class LayOut {
  private final Resolved resolved;
  private final List<Laid> lines;

  LayOut(Resolved resolved, List<Laid> lines) {
    this.resolved = resolved;
    this.lines = lines;
  }

  /** Special tools first, each group in the order in which the sequence comes to it. */
  List<Sheet.ToolLine> tools(List<TorqueLine> torque) {
    Set<Procedure.Use> uses = new LinkedHashSet<>(forTightening(torque));
    for (Task task : resolved.ranked()) {
      task.procedure().uses().forEach(use -> uses.add(use.value()));
    }
    steps().forEach(step -> uses.addAll(step.uses()));
    List<Sheet.ToolLine> tools = new ArrayList<>();
    uses.stream().filter(Procedure.Use::special).forEach(use -> tools.add(tool(use)));
    uses.stream().filter(use -> !use.special()).forEach(use -> tools.add(tool(use)));
    return tools;
  }

  /**
   * An angle gauge where there is an angle; a crow-foot where the book reckons with its length; an
   * adapter where wrench and socket differ in square.
   */
  private List<Procedure.Use> forTightening(List<TorqueLine> torque) {
    Set<String> names = new LinkedHashSet<>();
    for (TorqueLine line : torque) {
      if (line.stages().stream().anyMatch(TorqueLine.StageLine.Angle.class::isInstance)) {
        names.add(Words.ANGLE_GAUGE);
      }
      crowFoot(line).ifPresent(names::add);
      line.socket()
          .ifPresent(
              socket ->
                  squares(line).stream()
                      .filter(square -> !square.equals(socket.drive()))
                      .forEach(square -> names.add(Words.adapter(square, socket.drive()))));
    }
    return names.stream().map(name -> new Procedure.Use(name, true)).toList();
  }

  /** What stands between wrench and nut, by the nut's size and the length that the book gives. */
  private Optional<String> crowFoot(TorqueLine line) {
    Fastener fastener = fastener(line);
    return fastener
        .head()
        .flatMap(head -> fastener.reach().map(reach -> Words.crowFoot(head.value(), reach)));
  }

  private Fastener fastener(TorqueLine line) {
    ItemAt item = new ItemAt(line.fastener(), line.places().get(0));
    return ((Bound.OfBook) resolved.thing(item)).values();
  }

  /** The squares of the wrenches that a line names. */
  private List<String> squares(TorqueLine line) {
    return line.stages().stream()
        .filter(TorqueLine.StageLine.Torque.class::isInstance)
        .map(TorqueLine.StageLine.Torque.class::cast)
        .flatMap(stage -> stage.wrench().stream())
        .flatMap(
            name ->
                resolved.shop().crib().wrenches().stream()
                    .filter(wrench -> wrench.value().name().equals(name)))
        .map(wrench -> wrench.value().drive().print())
        .distinct()
        .toList();
  }

  /** Whether the crib has a special tool; other things are taken to be at hand. */
  private Sheet.ToolLine tool(Procedure.Use use) {
    boolean owned = !use.special() || has(resolved.shop(), use.name());
    return new Sheet.ToolLine(use.name(), use.special(), owned);
  }

  static boolean has(Shop shop, String tool) {
    return shop.crib().special().stream()
        .anyMatch(special -> special.name().value().equals(tool) && special.count().value() > 0);
  }

  /** The procedures' new parts, then every fastener that may not be used again. */
  List<Sheet.PartLine> parts() {
    Map<String, Integer> fasteners = new LinkedHashMap<>();
    for (ItemAt item : fitted()) {
      if (resolved.thing(item) instanceof Bound.OfBook book && isSingleUse(book.values())) {
        fasteners.merge(name(item), book.values().count().value(), Integer::sum);
      }
    }
    Map<String, Integer> parts = new LinkedHashMap<>();
    for (Task task : resolved.ranked()) {
      for (Procedure.Part part : task.procedure().parts()) {
        parts.merge(part.name().value(), part.count().value(), Integer::sum);
      }
    }
    // A procedure may list a single-use fastener by itself: it is still one and the same.
    fasteners.keySet().forEach(parts::remove);
    List<Sheet.PartLine> all = new ArrayList<>();
    parts.forEach((name, count) -> all.add(new Sheet.PartLine(name, count, false)));
    fasteners.forEach((name, count) -> all.add(new Sheet.PartLine(name, count, true)));
    return all;
  }

  /** Whether a new one goes on each time. */
  static boolean isSingleUse(Fastener fastener) {
    return fastener.reuse().map(reuse -> !reuse.value()).orElse(false);
  }

  /** What goes on, and what comes off to be put on again, in the order of coming off. */
  private Set<ItemAt> fitted() {
    Set<ItemAt> fitted = new LinkedHashSet<>();
    lines.forEach(line -> fitted.addAll(line.undo()));
    lines.forEach(line -> fitted.addAll(line.doUp()));
    return fitted;
  }

  private String name(ItemAt item) {
    return Words.of(resolved.thing(item), resolved.shop().terms());
  }

  /**
   * Products that steps apply, and the fluids of circuits they open where the book knows a grade.
   */
  List<String> consumables() {
    Set<String> products = new LinkedHashSet<>();
    steps()
        .flatMap(step -> step.apply().stream())
        .forEach(apply -> products.add(apply.product().replace('-', ' ')));
    Set<String> circuits = new LinkedHashSet<>();
    steps().forEach(step -> circuits.addAll(step.circuits()));
    circuits.forEach(
        circuit ->
            resolved
                .book()
                .fluid(circuit)
                .ifPresent(fluid -> products.add(Words.fluid(circuit, fluid))));
    return List.copyOf(products);
  }

  private Stream<Draft> steps() {
    return lines.stream().flatMap(line -> line.all().stream());
  }

  /** What has no torque line but is off and must be on again. */
  List<Sheet.TallyLine> tally() {
    Map<ItemAt, Integer> off = new LinkedHashMap<>();
    Map<ItemAt, Integer> on = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      int step = i + 1;
      lines.get(i).undo().forEach(item -> off.putIfAbsent(item, step));
      lines.get(i).doUp().forEach(item -> on.put(item, step));
    }
    off.keySet()
        .removeIf(
            item -> resolved.thing(item) instanceof Bound.OfBook || Lifting.holds(resolved, item));
    return TallyRows.of(resolved, off, on);
  }
}
