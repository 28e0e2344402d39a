package baysheet.wording;

import baysheet.books.Shop;
import baysheet.garage.DayReport;
import java.util.List;

/**
 * What the layout of a day gets: every word ready to print, in reading order.
 *
 * @param hours the working hours and breaks, and whether somebody gave them
 * @param risks promises that do not hold or may not
 * @param shared tools that several jobs use, with the times
 * @param gone what is no longer on this day, and what is not planned
 */
public record DayText(
    String paper,
    String language,
    String title,
    String shop,
    String date,
    String hours,
    DayChart chart,
    List<JobText> jobs,
    List<RiskText> risks,
    List<String> shared,
    EveningText evening,
    List<String> gone) {
  public DayText {
    jobs = List.copyOf(jobs);
    risks = List.copyOf(risks);
    shared = List.copyOf(shared);
    gone = List.copyOf(gone);
  }

  /** The words of a day. */
  public static DayText of(DayReport report, Shop shop, Shop.Paper paper) {
    return new DayWords(report, shop).text(paper);
  }

  /** A promise or a closing time that is at risk, and why. */
  public record RiskText(String what, String why) {}

  /**
   * A job of the timetable.
   *
   * @param second who looks at its hold points and when
   * @param promised the time, and the chance that it holds
   */
  public record JobText(
      String times,
      String job,
      String vehicle,
      String work,
      String bay,
      String people,
      String second,
      String tools,
      String promised,
      String state) {}

  /**
   * What is done the evening before.
   *
   * @param lists what has to be borrowed, booked and found out
   * @param prepare what has to be soaked, cooled, washed or set up
   * @param parts what has to be ordered
   */
  public record EveningText(List<LinesText> lists, List<LineText> prepare, List<PartsText> parts) {
    public EveningText {
      lists = List.copyOf(lists);
      prepare = List.copyOf(prepare);
      parts = List.copyOf(parts);
    }
  }

  /** One of the lists for the evening before; a line for each job. */
  public record LinesText(String heading, List<LineText> lines) {
    public LinesText {
      lines = List.copyOf(lines);
    }
  }

  /** What one job, or several, ask for. */
  public record LineText(String job, String text) {}

  /** The new parts of a job, a line each. */
  public record PartsText(String job, String vehicle, List<String> parts) {
    public PartsText {
      parts = List.copyOf(parts);
    }
  }
}
