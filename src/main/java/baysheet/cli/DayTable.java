package baysheet.cli;

import baysheet.ledger.Tables;
import baysheet.ledger.Tables.Column;
import baysheet.wording.DayText.JobText;
import java.util.List;

/** The timetable for the terminal. */
final class DayTable {
  private static final List<Column> COLUMNS =
      List.of(
          new Column("FROM–TO", "times"),
          new Column("JOB", "job"),
          new Column("BAY", "bay"),
          new Column("PEOPLE", "people"),
          new Column("SECOND PERSON", "second"),
          new Column("SPECIAL TOOLS", "tools"),
          new Column("PROMISED", "promised"),
          new Column("SHEET", "state"));

  private DayTable() {}

  static String of(List<JobText> jobs) {
    return Tables.text(
        new Tables.Table(
            COLUMNS,
            jobs.stream()
                .map(
                    it ->
                        List.<Object>of(
                            it.times(),
                            it.job(),
                            it.bay(),
                            it.people(),
                            it.second(),
                            it.tools(),
                            it.promised(),
                            it.state()))
                .toList()));
  }
}
