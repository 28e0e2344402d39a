package baysheet.plan.graph;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.List;

/** Puts a step of its own where the vehicle must be brought to another height. */
public final class HeightSteps {
  private HeightSteps() {}

  /** The lines with every change of height that none of them makes itself. */
  public static List<PlacedStep> between(Resolved resolved, List<PlacedStep> lines) {
    List<PlacedStep> all = new ArrayList<>();
    Height height = Height.GROUND;
    PlannedStep raising = null;
    for (PlacedStep line : lines) {
      raising = Lifting.raises(resolved, line.step()) ? line.step() : raising;
      for (Height next : HeightPath.between(height, before(resolved, line, height))) {
        all.add(change(raising, height, next, line));
        height = next;
      }
      height = line.height();
      all.add(line);
    }
    return all;
  }

  /** To which height the vehicle is brought before a line; lowering needs one that is raised. */
  private static Height before(Resolved resolved, PlacedStep line, Height now) {
    if (Lifting.raises(resolved, line.step())) {
      return now;
    }
    boolean lowers = Lifting.lowers(resolved, line.step());
    boolean lift = resolved.bay().equipment() == Bay.Equipment.LIFT;
    Height clear = lift ? Height.WHEELS_CLEAR : Height.STANDS;
    return !lowers ? line.height() : now == Height.GROUND ? clear : now;
  }

  /** It carries the name of what raised the vehicle, for it does the same. */
  private static PlacedStep change(PlannedStep raising, Height from, Height to, PlacedStep at) {
    TaskId whole = new TaskId(raising.task().procedure(), Place.VEHICLE);
    StepSource.HeightChange change = new StepSource.HeightChange(from, to);
    PlannedStep step = PlannedStep.move(whole, change, raising.origin());
    return PlacedStep.single(step, at.moment(), to);
  }
}
