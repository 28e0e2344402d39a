package baysheet.garage;

import baysheet.books.Job;
import baysheet.sheet.Evening;
import baysheet.sheet.Sheet;
import baysheet.sheet.ToolSpell;
import java.util.List;

/**
 * A job as the day's timetable sees it.
 *
 * @param tools when its sheet uses special tools
 */
public record DayJob(Job job, Sheet sheet, Evening evening, List<ToolSpell> tools) {
  public DayJob {
    tools = List.copyOf(tools);
  }

  public String number() {
    return job.number().value();
  }
}
