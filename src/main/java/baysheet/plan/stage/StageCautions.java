package baysheet.plan.stage;

import baysheet.books.Catalogue;
import baysheet.books.Trigger;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.TriggerMatcher;
import baysheet.resolve.ItemAt;
import baysheet.sheet.CautionLine;
import baysheet.sheet.StepSource;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** The cautions of one stage: those of its steps, and those of earlier ones that still hold. */
final class StageCautions {
  private final StageSheets job;
  private final int from;
  private final int to;
  private final List<PlacedStep> own;

  StageCautions(StageSheets job, int from, int to) {
    this.job = job;
    this.from = from;
    this.to = to;
    this.own = job.lines.subList(from, to);
  }

  List<CautionLine> all() {
    return job.whole.safety().cautions().stream()
        .flatMap(caution -> here(caution).stream())
        .toList();
  }

  private List<Integer> own(List<Integer> steps) {
    return steps.stream().filter(n -> from < n && n <= to).toList();
  }

  /** What holds since an earlier stage stands on top, for all of this one. */
  private Optional<CautionLine> here(CautionLine caution) {
    List<Integer> steps = own(caution.steps());
    if (job.resolved.catalogue().cautions().get(caution.name()).raising()) {
      return Optional.of(caution.at(steps, true)).filter(it -> !steps.isEmpty() || raises());
    }
    boolean begun = caution.steps().stream().anyMatch(n -> n <= from);
    boolean since =
        begun
            && (caution.onTop()
                || (isUp() && isOfRaising(caution))
                || (steps.isEmpty() && isMetAgain(caution)));
    boolean absent = steps.isEmpty() && !since && !caution.wholeJob();
    if (absent || isOver(caution)) {
      return Optional.empty();
    }
    return Optional.of(caution.at(steps, since || caution.wholeJob()));
  }

  /**
   * Whether work goes on here that an earlier stage was warned of: with a tool of its procedure, or
   * on what came off there and goes on here. What only damages things is not said again.
   */
  private boolean isMetAgain(CautionLine caution) {
    List<Trigger> when = job.resolved.catalogue().cautions().get(caution.name()).when();
    Set<ItemAt> warned = new HashSet<>();
    caution.steps().forEach(n -> warned.addAll(job.lines.get(n - 1).undo()));
    warned.removeIf(
        item ->
            when.stream()
                .flatMap(trigger -> trigger.names(Trigger.Condition.KIND).stream())
                .noneMatch(job.resolved.thing(item)::isOf));
    boolean refitted =
        own.stream().anyMatch(line -> line.doUp().stream().anyMatch(warned::contains));
    return caution.signal() != Catalogue.Signal.NOTICE
        && (refitted || !new TriggerMatcher(job.resolved, own).lines(when).isEmpty());
  }

  /** Of raising, and the vehicle is down for good. */
  private boolean isOver(CautionLine caution) {
    return isOfRaising(caution)
        && !isUp()
        && own(caution.steps()).isEmpty()
        && own.stream().noneMatch(line -> line.step().source() instanceof StepSource.Blocks);
  }

  /**
   * Whether the vehicle is brought up here, from the floor, from wheels just clear or by blocks.
   */
  private boolean raises() {
    return own.stream().anyMatch(line -> line.step().source() instanceof StepSource.Blocks)
        || IntStream.range(from, to)
            .anyMatch(
                i ->
                    job.progress().get(i + 1).height().compareTo(job.progress().get(i).height())
                        > 0);
  }

  private boolean isUp() {
    return !job.progress().get(from).raised().isEmpty();
  }

  private boolean isOfRaising(CautionLine caution) {
    return caution.steps().stream()
        .filter(n -> n <= from)
        .anyMatch(n -> !job.progress().get(n).raised().equals(job.progress().get(n - 1).raised()));
  }
}
