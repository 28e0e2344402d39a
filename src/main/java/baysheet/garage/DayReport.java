package baysheet.garage;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All that is said about a day.
 *
 * @param states how far the sheet of each job has come, by the job's number, and each sheet of a
 *     job in stages by its name
 * @param unplanned numbers of jobs that are not in the timetable, for their files have errors
 * @param gone jobs that had a sheet for this day and are no longer on it, with what became of them
 */
public record DayReport(
    GarageDay day,
    EveningList evening,
    Map<String, String> states,
    List<String> unplanned,
    Map<String, String> gone) {
  public DayReport {
    states = Collections.unmodifiableMap(new LinkedHashMap<>(states));
    unplanned = List.copyOf(unplanned);
    gone = Collections.unmodifiableMap(new LinkedHashMap<>(gone));
  }
}
