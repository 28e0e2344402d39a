package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Step;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What catalogues say of how steps and checks leave the vehicle, played back to some step. */
final class LeftStates {
  /** Steps behind which no parking brake is released. */
  private static final Set<String> BRAKED =
      Set.of("height/wheels-clear/ground/brake", "blocks/apply-brake", "blocks/hold-still");

  private final Resolved resolved;
  private final Map<ItemAt, String> left = new HashMap<>();

  private LeftStates(Resolved resolved) {
    this.resolved = resolved;
  }

  /** The states behind a step. */
  static Set<String> of(Sheet whole, int after, Resolved resolved) {
    LeftStates states = new LeftStates(resolved);
    whole.steps().subList(0, after).forEach(states::play);
    Set<String> all = new HashSet<>(states.left.values());
    for (CheckLine check : whole.checks()) {
      Catalogue.Rule rule = resolved.catalogue().rules().get(check.name());
      if (rule != null && check.moment() == Moment.BEFORE_LIFTING) {
        rule.left().ifPresent(it -> all.add(it.value()));
      }
    }
    return all;
  }

  /** Whether a step of a procedure, or a check, says that it applies a parking brake. */
  static boolean brakes(SheetStep step, Resolved resolved) {
    LeftStates states = new LeftStates(resolved);
    Set<String> names = new HashSet<>(states.closed(step));
    if (step.source() instanceof StepSource.Written) {
      states.ended(step).forEach(item -> names.add(item.item()));
    }
    return names.stream()
        .anyMatch(
            it -> states.isOf(it, "parking-brake") || states.isOf(it, "electric-parking-brake"));
  }

  private void play(SheetStep step) {
    Stream.concat(step.disturb().stream(), step.undo().stream()).forEach(this::leave);
    step.doUp().forEach(left::remove);
    ended(step).forEach(left::remove);
    closed(step).forEach(name -> left.keySet().removeIf(item -> item.item().equals(name)));
    if (step.source() instanceof StepSource.Chocks chocks) {
      chocks(chocks.set(), chocks.where());
    } else if (step.source() instanceof StepSource.Blocks blocks
        && (blocks.part() == StepSource.BlocksPart.TAKE_OUT
            || blocks.part() == StepSource.BlocksPart.TAKE_OUT_AXLE)) {
      chocks(false, blocks.where());
    } else if (BRAKED.contains(step.source().id())) {
      left.keySet().removeIf(item -> isOf(item.item(), "parking-brake"));
    }
  }

  private void leave(ItemAt item) {
    Optional.ofNullable(resolved.catalogue().items().get(item.item()))
        .flatMap(Catalogue.Item::left)
        .ifPresent(text -> left.put(item, text.value()));
  }

  /** Chocks that are set leave wheels chocked, until they, or the blocks they stand on, go. */
  private void chocks(boolean set, Place where) {
    for (Map.Entry<String, Catalogue.Item> item : resolved.catalogue().items().entrySet()) {
      if (isOf(item.getKey(), "chocks")) {
        left.keySet()
            .removeIf(
                it ->
                    it.item().equals(item.getKey())
                        && (where == Place.VEHICLE || it.place() == where));
        if (set) {
          leave(new ItemAt(item.getKey(), where));
        }
      }
    }
  }

  private boolean isOf(String item, String kind) {
    return resolved.catalogue().items().get(item).kinds().stream()
        .anyMatch(it -> it.value().equals(kind));
  }

  /** The items whose state a check ends. */
  private List<String> closed(SheetStep step) {
    return Optional.ofNullable(resolved.catalogue().rules().get(step.procedure()))
        .filter(rule -> step.phase() == Sheet.Phase.CHECK)
        .flatMap(Catalogue.Rule::step)
        .map(check -> check.ends().stream().map(it -> it.value()).toList())
        .orElse(List.of());
  }

  /** What the procedure of a step says that it ends, or what it sets right. */
  private List<ItemAt> ended(SheetStep step) {
    List<ItemAt> ended = new ArrayList<>();
    for (Place place : step.places()) {
      Task task = resolved.tasks().get(new TaskId(step.procedure(), place));
      if (task != null) {
        Optional<Step> written = WrittenSteps.of(step, Map.of(step.procedure(), task.procedure()));
        Optional<Step> setRight =
            step.source() instanceof StepSource.Back back
                ? back.of().in(task.procedure())
                : Optional.empty();
        Stream.of(task.open(), task.work(), task.close())
            .flatMap(List::stream)
            .forEach(
                bound -> {
                  if (written.equals(Optional.of(bound.step()))) {
                    ended.addAll(bound.ends());
                  } else if (setRight.equals(Optional.of(bound.step()))) {
                    ended.addAll(bound.disturb());
                  }
                });
      }
    }
    return ended;
  }
}
