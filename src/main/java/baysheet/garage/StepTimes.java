package baysheet.garage;

import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/** When each step of a sheet is done, in working minutes after its start, by expected times. */
final class StepTimes {
  private final int[] ends;

  /** A sheet without a minute still takes one. */
  private static final int SHORTEST = 1;

  StepTimes(Sheet sheet) {
    List<Sheet.SheetStep> steps = sheet.steps();
    ends = new int[steps.size()];
    double passed = 0;
    for (int i = 0; i < ends.length; i++) {
      passed += steps.get(i).minutes().mean();
      ends[i] = (int) Math.round(passed);
    }
  }

  /** The length of the whole sheet. */
  int total() {
    return Math.max(SHORTEST, ends.length == 0 ? 0 : ends[ends.length - 1]);
  }

  /** The minute at which a step ends, by its number. */
  int end(int step) {
    return Math.min(total(), Math.max(SHORTEST, ends[step - 1]));
  }

  /** The minute at which a step begins; before its end, for nothing is used for no time. */
  int start(int step) {
    return Math.min(step == 1 ? 0 : ends[step - 2], end(step) - SHORTEST);
  }

  /** The rests of a job between which there is work to do: a stage of no minute is none. */
  List<DayJob.Rest> rests(DayJob job) {
    List<DayJob.Rest> rests = new ArrayList<>();
    int last = 0;
    for (DayJob.Rest rest : job.rests()) {
      int end = ends[rest.step() - 1];
      if (end > last && end < total()) {
        rests.add(rest);
        last = end;
      }
    }
    return rests;
  }
}
