package baysheet.garage;

import baysheet.books.Job;
import baysheet.sheet.Evening;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.sheet.ToolSpell;
import java.util.List;
import java.util.stream.Stream;

/**
 * A job as the day's timetable sees it.
 *
 * @param sheet of the whole job
 * @param tools when its sheet uses special tools
 * @param rests where the work can rest: where a sheet of its stages ends and another begins; none
 *     where the job file asks for no stages
 */
public record DayJob(
    Job job, Sheet sheet, Evening evening, List<ToolSpell> tools, List<Rest> rests) {
  public DayJob {
    tools = List.copyOf(tools);
    rests = List.copyOf(rests);
  }

  /**
   * The end of a stage.
   *
   * @param step the last one that is done
   * @param sheet the name of the sheet that ends there
   * @param canMove whether the vehicle is whole and on its wheels, so that the bay is free
   */
  public record Rest(int step, String sheet, boolean canMove) {}

  /**
   * Where a stage of this job ends.
   *
   * @param last the sheet of that stage
   */
  public static Rest rest(Sheet last) {
    Stage.VehicleState left = last.stage().orElseThrow().leaving().orElseThrow();
    boolean whole =
        Stream.of(left.held(), left.off(), left.fasteners(), left.loose(), left.open(), left.left())
            .allMatch(List::isEmpty);
    return new Rest(left.after(), last.name(), whole && left.standing().isOnFloor());
  }

  public String number() {
    return job.number().value();
  }
}
