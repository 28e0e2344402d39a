package baysheet.wording;

import baysheet.books.OpeningHours;
import baysheet.garage.GarageDay;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The timetable as a drawing: a row for each bay, a bar for each job or stage. Coordinates are
 * thousandths of the width, downwards.
 *
 * @param width in tenths of a millimetre
 * @param height in thousandths of the width
 * @param says what a screen reader says in its place
 */
public record DayChart(
    int width,
    int height,
    List<Stroke> strokes,
    List<Corner> corners,
    List<Word> words,
    String says) {
  /** What fits A4 within 8 mm margins. */
  private static final int WIDTH = 1940;

  private static final int LEFT = 72;
  private static final int RIGHT = 974;
  private static final int TOP = 24;
  private static final int ROW = 50;
  private static final int BAR_TOP = 7;
  private static final int BAR_BOTTOM = 42;
  private static final int SMALL = 14;
  private static final int FIRST_LINE = 17;
  private static final int SECOND_LINE = 33;
  private static final int HOUR = 60;

  /** So many letters of the work say more than who does it. */
  private static final int TELLING = 10;

  /** The widest letters of the condensed bold face by groups, in hundredths of their height. */
  private static final String NARROW = "fijlrtI .,-()|'";

  private static final String WIDE = "mwMW…";
  private static final int NARROW_LETTER = 36;
  private static final int LETTER = 53;
  private static final int CAPITAL = 64;
  private static final int WIDE_LETTER = 86;

  public DayChart {
    strokes = List.copyOf(strokes);
    corners = List.copyOf(corners);
    words = List.copyOf(words);
  }

  /** A line. */
  public record Stroke(int x1, int y1, int x2, int y2, boolean heavy) {}

  /** A filled triangle. */
  public record Corner(int x1, int y1, int x2, int y2, int x3, int y3) {}

  /** A text, centred on its point. */
  public record Word(int x, int y, int height, String text, boolean bold) {}

  static DayChart of(GarageDay day, List<String> bays, Language language) {
    return new Drawing(day, bays, language).chart();
  }

  /** The drawing while it is made. */
  private static final class Drawing {
    private final GarageDay day;
    private final List<String> bays;
    private final Language language;
    private final int from;
    private final int to;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Corner> corners = new ArrayList<>();
    private final List<Word> words = new ArrayList<>();

    Drawing(GarageDay day, List<String> bays, Language language) {
      this.day = day;
      this.bays = bays;
      this.language = language;
      int opens = minute(day.open().opens());
      int last = minute(day.open().closes());
      for (GarageDay.Placed job : day.jobs()) {
        last = Math.max(last, Math.max(job.to(), job.promised().orElse(0)));
      }
      this.from = opens / HOUR * HOUR;
      this.to = (last + HOUR - 1) / HOUR * HOUR;
    }

    DayChart chart() {
      int bottom = TOP + ROW * bays.size();
      for (int hour = from; hour <= to; hour += step()) {
        words.add(new Word(x(hour), TOP / 2, SMALL, DayWords.clock(hour), false));
      }
      for (int i = 0; i < bays.size(); i++) {
        row(bays.get(i), TOP + ROW * i);
      }
      strokes.add(new Stroke(0, bottom, RIGHT, bottom, false));
      return new DayChart(WIDTH, bottom + 2, strokes, corners, words, says());
    }

    /** So that the hours do not run into one another. */
    private int step() {
      int hours = (to - from) / HOUR;
      // After midnight the day stands beside the hour, which takes twice the room.
      int most = to > DayWords.DAY ? 10 : 14;
      return HOUR * Math.max(1, (hours + most - 1) / most);
    }

    private void row(String bay, int y) {
      String name = bay.chars().allMatch(Character::isDigit) ? "Bay " + bay : bay;
      words.add(new Word(LEFT / 2 - 2, y + ROW / 2, SMALL, shortened(name, LEFT - 8), true));
      strokes.add(new Stroke(0, y, RIGHT, y, false));
      List<GarageDay.Placed> jobs =
          day.jobs().stream().filter(it -> it.job().job().bay().value().equals(bay)).toList();
      for (int hour = from; hour <= to; hour += HOUR) {
        upright(jobs, hour, y, false);
      }
      upright(jobs, minute(day.open().closes()), y, true);
      for (OpeningHours.Break pause : day.open().breaks()) {
        pause(jobs, minute(pause.from()), minute(pause.to()), y);
      }
      jobs.forEach(job -> bar(job, y));
    }

    /** Only where no bar is: a line through a bar would be read as its end. */
    private void upright(List<GarageDay.Placed> jobs, int minute, int y, boolean heavy) {
      if (jobs.stream().noneMatch(it -> it.from() <= minute && minute <= it.to())) {
        strokes.add(new Stroke(x(minute), y, x(minute), y + ROW, heavy));
      }
    }

    private void pause(List<GarageDay.Placed> jobs, int first, int last, int y) {
      boolean free = jobs.stream().noneMatch(it -> it.from() < last && first < it.to());
      if (free) {
        strokes.add(new Stroke(x(first), y, x(last), y + ROW, false));
        strokes.add(new Stroke(x(first), y + ROW, x(last), y, false));
      }
    }

    private void bar(GarageDay.Placed job, int y) {
      for (GarageDay.Part part : job.parts()) {
        frame(part.from(), part.to(), y, true);
        int room = x(part.to()) - x(part.from());
        int middle = (x(part.from()) + x(part.to())) / 2;
        String people =
            job.job().job().crew().by().value()
                + job.job().job().crew().with().map(it -> " + " + it.value()).orElse("");
        String title = language.title(job.job().sheet().heading());
        String work = shortened(title, room - SMALL);
        String sheet = part.sheet();
        String stage = job.parts().size() == 1 ? sheet : sheet.substring(sheet.lastIndexOf('-'));
        String both = sheet + ", " + people;
        fitting(middle, y + FIRST_LINE, room, true, both, sheet, stage);
        boolean telling = work.equals(title) || work.length() >= TELLING;
        if (telling || !fits(both, room)) {
          fitting(middle, y + SECOND_LINE, room, false, telling ? work : people);
        }
      }
      for (int i = 1; i < job.parts().size(); i++) {
        int from = job.parts().get(i - 1).to();
        int to = job.parts().get(i).from();
        if (from < to && job.staysAfter(i - 1)) {
          frame(from, to, y, false);
        }
      }
      marks(job, y);
    }

    /** Heavy where somebody works, thin where the vehicle only stands there. */
    private void frame(int from, int to, int y, boolean heavy) {
      int left = x(from);
      int right = Math.max(left + 2, x(to));
      int top = y + BAR_TOP;
      int bottom = y + BAR_BOTTOM;
      strokes.add(new Stroke(left, top, right, top, heavy));
      strokes.add(new Stroke(left, bottom, right, bottom, heavy));
      if (heavy) {
        strokes.add(new Stroke(left, top, left, bottom, true));
        strokes.add(new Stroke(right, top, right, bottom, true));
      }
    }

    private void marks(GarageDay.Placed job, int y) {
      int top = y + BAR_TOP;
      int bottom = y + BAR_BOTTOM;
      for (GarageDay.Spell look : job.looks()) {
        int x = x((look.from() + look.to()) / 2);
        corners.add(new Corner(Math.max(0, x - 4), y + ROW - 1, x, bottom + 1, x + 4, y + ROW - 1));
      }
      job.promised()
          .ifPresent(
              minute -> {
                int x = x(minute);
                corners.add(new Corner(x - 4, y + 1, x + 4, y + 1, x, top - 1));
              });
    }

    /** The first of some texts that has room; what has none is left to the table below. */
    private void fitting(int x, int y, int room, boolean bold, String... texts) {
      Stream.of(texts)
          .filter(text -> fits(text, room))
          .findFirst()
          .ifPresent(text -> words.add(new Word(x, y, SMALL, text, bold)));
    }

    private static boolean fits(String text, int room) {
      return width(text) + 2 <= room;
    }

    private static int width(String text) {
      int hundredths =
          text.chars()
              .map(
                  it ->
                      NARROW.indexOf(it) >= 0
                          ? NARROW_LETTER
                          : WIDE.indexOf(it) >= 0
                              ? WIDE_LETTER
                              : Character.isUpperCase(it) ? CAPITAL : LETTER)
              .sum();
      return hundredths * SMALL / 100;
    }

    private static String shortened(String text, int room) {
      if (width(text) <= room) {
        return text;
      }
      int letters = text.length() - 1;
      while (letters > 1 && width(text.substring(0, letters) + "…") > room) {
        letters--;
      }
      return text.substring(0, letters).strip() + "…";
    }

    private int x(int minute) {
      int inside = Math.max(from, Math.min(to, minute));
      return LEFT + (RIGHT - LEFT) * (inside - from) / Math.max(1, to - from);
    }

    private String says() {
      List<String> bars = new ArrayList<>();
      for (GarageDay.Placed job : day.jobs()) {
        for (GarageDay.Part part : job.parts()) {
          bars.add(
              "bay %s from %s to %s %s %s"
                  .formatted(
                      job.job().job().bay().value(),
                      DayWords.clock(part.from()),
                      DayWords.clock(part.to()),
                      job.parts().size() == 1 ? "job" : "sheet",
                      part.sheet()));
        }
      }
      return "Timetable by bay: " + String.join("; ", bars);
    }
  }

  private static int minute(LocalTime time) {
    return time.toSecondOfDay() / 60;
  }
}
