package baysheet.plan.stage;

import baysheet.books.Catalogue;
import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.plan.content.MissingFigures;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** How far the vehicle has come apart after each step of a sequence. */
final class Progress {
  private final Resolved resolved;
  private final List<PlacedStep> lines;

  /** The lines that undo, do up or tighten each item. */
  private final Map<ItemAt, TreeSet<Integer>> touched = new HashMap<>();

  private final Set<ItemAt> off = new LinkedHashSet<>();
  private final Set<ItemAt> slackened = new LinkedHashSet<>();
  private final Set<ItemAt> loose = new LinkedHashSet<>();
  private final Set<String> open = new LinkedHashSet<>();
  private final Set<ItemAt> left = new LinkedHashSet<>();
  private Height height = Height.GROUND;
  private boolean onBlocks;

  /**
   * The vehicle between two steps.
   *
   * @param off items that are off, in the order in which they came off
   * @param slackened those of them that are only slackened, and still in their place
   * @param loose fasteners that are loosened, or on but without their final torque
   * @param open fluids whose circuits are open or drained
   * @param temporary props, plugs and jacks that are in place
   * @param left items of which the state names how a step left them
   * @param onBlocks whether it stands on blocks under its wheels
   */
  record Snapshot(
      Height height,
      List<Place> raised,
      List<ItemAt> off,
      Set<ItemAt> slackened,
      List<ItemAt> loose,
      List<String> open,
      List<ItemAt> temporary,
      List<ItemAt> left,
      boolean onBlocks) {
    Snapshot {
      raised = List.copyOf(raised);
      off = List.copyOf(off);
      slackened = Set.copyOf(slackened);
      loose = List.copyOf(loose);
      open = List.copyOf(open);
      temporary = List.copyOf(temporary);
      left = List.copyOf(left);
    }
  }

  private Progress(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.lines = lines;
    for (int i = 0; i < lines.size(); i++) {
      for (List<ItemAt> items :
          List.of(lines.get(i).undo(), lines.get(i).doUp(), lines.get(i).tighten())) {
        for (ItemAt item : items) {
          touched.computeIfAbsent(item, key -> new TreeSet<>()).add(i);
        }
      }
    }
  }

  /** One for each boundary: before the first step, after the first, and so on. */
  static List<Snapshot> of(Resolved resolved, List<PlacedStep> lines) {
    Progress progress = new Progress(resolved, lines);
    List<Snapshot> all = new ArrayList<>(List.of(progress.snapshot()));
    for (int i = 0; i < lines.size(); i++) {
      progress.step(i);
      all.add(progress.snapshot());
    }
    return all;
  }

  private void step(int index) {
    PlacedStep line = lines.get(index);
    for (ItemAt item : line.disturb()) {
      if (isFastener(item) && next(item, index).isPresent()) {
        loose.add(item);
      }
    }
    Stream.concat(line.disturb().stream(), line.undo().stream())
        .filter(item -> VehicleStates.left(resolved, item).isPresent())
        .forEach(left::add);
    line.doUp().forEach(left::remove);
    line.ends().forEach(left::remove);
    if (line.step().source() instanceof StepSource.Chocks chocks) {
      chocks(chocks.set(), chocks.where());
    }
    Optional.ofNullable(resolved.catalogue().rules().get(line.step().task().procedure()))
        .filter(rule -> line.step().phase() == Sheet.Phase.CHECK)
        .flatMap(Catalogue.Rule::step)
        .ifPresent(check -> check.ends().forEach(ended -> remove(ended.value())));
    off.addAll(line.undo());
    line.undo().stream().filter(line.slacken()::contains).forEach(slackened::add);
    line.undo().forEach(loose::remove);
    for (ItemAt item : line.doUp()) {
      off.remove(item);
      slackened.remove(item);
      loose.remove(item);
      if (next(item, index).filter(later -> later.tighten().contains(item)).isPresent()) {
        loose.add(item);
      }
    }
    line.tighten().forEach(loose::remove);
    for (PlannedStep step : line.all()) {
      open.addAll(MissingFigures.opened(resolved, step));
      MissingFigures.filled(resolved, step).forEach(open::remove);
    }
    if (line.step().source().appliesBrake()) {
      left.removeIf(item -> isOf(resolved.catalogue().items().get(item.item()), "parking-brake"));
    }
    if (line.step().source() instanceof StepSource.Blocks blocks) {
      onBlocks = isBetweenBlocksSteps(blocks, index);
      if (blocks.part() == StepSource.BlocksPart.TAKE_OUT_AXLE
          || blocks.part() == StepSource.BlocksPart.TAKE_OUT) {
        chocks(false, blocks.where());
      }
    }
    height = line.height();
  }

  /** Chocks are set at wheels or taken away, on whatever name the catalogue has for them. */
  private void chocks(boolean set, Place where) {
    for (Catalogue.Item item : resolved.catalogue().items().values()) {
      if (isOf(item, "chocks")) {
        String name = item.name().value();
        if (set) {
          left.add(new ItemAt(name, where));
        } else {
          left.removeIf(
              it -> it.item().equals(name) && (where == Place.VEHICLE || it.place() == where));
        }
      }
    }
  }

  private static boolean isOf(Catalogue.Item item, String kind) {
    return item.kinds().stream().anyMatch(it -> it.value().equals(kind));
  }

  private void remove(String name) {
    left.removeIf(item -> item.item().equals(name));
  }

  /** Whether the vehicle is on its blocks, or on the way, until the next step that says so. */
  private boolean isBetweenBlocksSteps(StepSource.Blocks before, int index) {
    return before.part().isOn()
        || lines.subList(index + 1, lines.size()).stream()
            .map(line -> line.step().source())
            .filter(StepSource.Blocks.class::isInstance)
            .findFirst()
            .filter(after -> !((StepSource.Blocks) after).part().isOn())
            .isPresent();
  }

  /** The next line that does something with an item. */
  private Optional<PlacedStep> next(ItemAt item, int index) {
    return Optional.ofNullable(touched.get(item)).map(all -> all.higher(index)).map(lines::get);
  }

  private boolean isFastener(ItemAt item) {
    return resolved.thing(item) instanceof Bound.OfBook;
  }

  private Snapshot snapshot() {
    List<Place> raised =
        off.stream()
            .filter(item -> Lifting.holds(resolved, item))
            .map(item -> item.place().axle().orElse(item.place()))
            .distinct()
            .toList();
    List<ItemAt> parts =
        off.stream()
            .filter(item -> !Lifting.holds(resolved, item))
            .filter(item -> !resolved.thing(item).isTemporary())
            .toList();
    List<ItemAt> temporary =
        off.stream()
            .filter(item -> !Lifting.holds(resolved, item))
            .filter(item -> resolved.thing(item).isTemporary())
            .toList();
    return new Snapshot(
        height,
        raised,
        parts,
        slackened,
        List.copyOf(loose),
        List.copyOf(open),
        temporary,
        List.copyOf(left),
        onBlocks);
  }
}
