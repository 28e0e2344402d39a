package baysheet.sheet;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which of several sheets of one job this is. Steps, torque lines and cautions keep the numbers and
 * letters that they have in the whole job.
 *
 * @param n its number, counted from 1
 * @param of how many stages the job has
 * @param arrival how the vehicle stands when the stage begins; absent for the first
 * @param leaving how the stage leaves it; absent for the last
 * @param elsewhere torque lines of other stages: those that steps of this one name, and for the
 *     last stage those that are checked again after a distance
 * @param sheets for torque lines whose torque is on another sheet, the number of that sheet
 * @param releasedBy who releases the vehicle at the end of the last stage, where checks of an
 *     earlier one say so; none for the others
 */
public record Stage(
    int n,
    int of,
    Optional<VehicleState> arrival,
    Optional<VehicleState> leaving,
    List<TorqueLine> elsewhere,
    Map<Integer, Integer> sheets,
    List<String> releasedBy) {
  public Stage {
    elsewhere = List.copyOf(elsewhere);
    sheets = Map.copyOf(sheets);
    releasedBy = List.copyOf(releasedBy);
    if (arrival.isEmpty() != (n == 1) || leaving.isEmpty() != (n == of)) {
      throw new IllegalArgumentException("stage " + n + " of " + of + " with another's states");
    }
  }

  public boolean isFirst() {
    return arrival.isEmpty();
  }

  public boolean isLast() {
    return leaving.isEmpty();
  }

  /**
   * How the vehicle stands between two stages.
   *
   * @param after the number of the last step that was done
   * @param held what holds or closes parts for the time being
   * @param off what is off and has no torque line
   * @param slackened what is slackened, still in its place, and has no torque line
   * @param fasteners torque lines of the fasteners that are off
   * @param loose torque lines of fasteners that are loosened or only snug
   * @param open fluids whose circuits are open or drained
   * @param left what else steps and checks have left: a tag, a brake that is released
   * @param written numbers of the steps done at which something was written in
   * @param needed of those the steps whose figures a later step refers to
   */
  public record VehicleState(
      int after,
      Standing standing,
      List<Held> held,
      List<Sheet.TallyLine> off,
      List<Sheet.TallyLine> slackened,
      List<Row> fasteners,
      List<Row> loose,
      List<String> open,
      List<String> left,
      List<Integer> written,
      List<Figure> needed) {
    public VehicleState {
      held = List.copyOf(held);
      off = List.copyOf(off);
      slackened = List.copyOf(slackened);
      fasteners = List.copyOf(fasteners);
      loose = List.copyOf(loose);
      open = List.copyOf(open);
      left = List.copyOf(left);
      written = List.copyOf(written);
      needed = List.copyOf(needed);
    }
  }

  /**
   * What the vehicle stands on.
   *
   * @param raised where it is raised; empty where it stands on its wheels
   * @param onBlocks whether solid blocks are under its wheels
   */
  public record Standing(Height height, List<Place> raised, boolean onBlocks) {
    public Standing {
      raised = List.copyOf(raised);
    }

    /** Whether its own wheels carry it on the floor. */
    public boolean isOnFloor() {
      return height == Height.GROUND && raised.isEmpty() && !onBlocks;
    }
  }

  /** A prop, a plug, a jack under a part: something that is taken away again. */
  public record Held(ItemAt item, Name name) {}

  /**
   * A torque line, or some of its places.
   *
   * @param fasteners how many fasteners at these places
   * @param places none where all of them are meant
   */
  public record Row(int n, Name name, int fasteners, List<Place> places) {
    public Row {
      places = List.copyOf(places);
    }
  }

  /** A figure that was written in at a step, at each of its places. */
  public record Figure(int step, List<Statement> words, List<Place> places) {
    public Figure {
      words = List.copyOf(words);
      places = List.copyOf(places);
    }
  }
}
