package baysheet.plan;

import baysheet.books.Moment;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import java.util.ArrayList;
import java.util.List;

/**
 * A step that sends the reader to the checks which are due before the vehicle goes up or comes
 * down; without it somebody who follows the sequence would come to them too late.
 */
final class Gates {
  private final Resolved resolved;
  private final List<Laid> lines;

  Gates(Resolved resolved, List<Laid> lines) {
    this.resolved = resolved;
    this.lines = lines;
  }

  List<Laid> add() {
    List<Laid> gated = new ArrayList<>(lines);
    int up = first(gated, true);
    if (up >= 0 && due(Moment.BEFORE_LIFTING)) {
      gated.add(up, gate(gated.get(up), Words.BEFORE_LIFTING, Moment.BEFORE_LIFTING));
    }
    int down = last(gated);
    if (down >= 0 && (due(Moment.RAISED) || due(Moment.BEFORE_LOWERING))) {
      gated.add(down, gate(gated.get(down), Words.BEFORE_LOWERING, Moment.RAISED));
    }
    return gated;
  }

  private static Laid gate(Laid at, String text, Moment moment) {
    Draft step = at.step();
    return Laid.single(Draft.last(step.task(), step.origin(), text, List.of()), moment);
  }

  private int first(List<Laid> gated, boolean up) {
    for (int i = 0; i < gated.size(); i++) {
      if (Lifting.holds(resolved, up ? gated.get(i).undo() : gated.get(i).doUp())) {
        return i;
      }
    }
    return -1;
  }

  /** The first lowering after the last thing done while the vehicle is up. */
  private int last(List<Laid> gated) {
    int down = first(gated, false);
    for (int i = down + 1; down >= 0 && i < gated.size(); i++) {
      boolean lowers = Lifting.holds(resolved, gated.get(i).doUp());
      boolean other = !Lifting.holds(resolved, gated.get(i - 1).doUp());
      if (lowers && other) {
        down = i;
      }
    }
    return down;
  }

  /** Whether any rule or procedure of this job has a check at that moment. */
  private boolean due(Moment moment) {
    Triggers triggers = new Triggers(resolved, lines);
    boolean rule =
        resolved.catalogue().rules().values().stream()
            .filter(one -> one.moment().value() == moment)
            .anyMatch(one -> !triggers.lines(one.when()).isEmpty() || triggers.vehicle(one.when()));
    return rule
        || resolved.ranked().stream()
            .flatMap(task -> task.procedure().checks().stream())
            .map(check -> check.moment())
            .map(Located::value)
            .anyMatch(due -> due == moment);
  }
}
