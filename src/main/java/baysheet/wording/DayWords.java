package baysheet.wording;

import baysheet.books.OpeningHours;
import baysheet.books.Shop;
import baysheet.garage.DayJob;
import baysheet.garage.DayReport;
import baysheet.garage.EveningList;
import baysheet.garage.GarageDay;
import baysheet.garage.GarageDay.Part;
import baysheet.garage.GarageDay.Placed;
import baysheet.garage.GarageDay.Spell;
import baysheet.garage.GarageDay.Together;
import baysheet.sheet.Heading;
import baysheet.sheet.PartLine;
import baysheet.sheet.Statement;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Turns a day into the words of its page and of the terminal. */
public final class DayWords {
  static final int DAY = 24 * 60;

  private final DayReport report;
  private final GarageDay day;
  private final Shop shop;
  private final Language language;

  public DayWords(DayReport report, Shop shop) {
    this.report = report;
    this.day = report.day();
    this.shop = shop;
    this.language = language(report);
  }

  /** The language of its sheets: one shop has one. */
  public static Language language(DayReport report) {
    return report.day().jobs().stream()
        .findFirst()
        .map(it -> Language.of(it.job().sheet().heading()))
        .orElse(Language.BRITISH);
  }

  /** {@code 08:15}; what is after midnight says so. */
  public static String clock(int minutes) {
    String time = LocalTime.ofSecondOfDay(minutes % DAY * 60L).toString();
    return minutes < DAY ? time : time + " +" + minutes / DAY + " day";
  }

  DayText text(Shop.Paper paper) {
    return new DayText(
        paper.word(),
        language.tag(),
        "Day " + day.date() + ", " + day.shop(),
        day.shop(),
        date(),
        hours(),
        DayChart.of(day, List.copyOf(shop.bays().keySet()), language),
        jobs(),
        risks(),
        shared(),
        new DayText.EveningText(evening(), prepare(), parts()),
        gone());
  }

  private String date() {
    return day.date().getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.UK) + " " + day.date();
  }

  /** When the garage works. */
  public String hours() {
    OpeningHours open = day.open();
    String breaks =
        open.breaks().isEmpty()
            ? ""
            : ", breaks "
                + open.breaks().stream()
                    .map(it -> it.from() + "–" + it.to())
                    .collect(Collectors.joining(", "));
    String given = day.hoursGiven() ? "" : " (assumed: shop.yaml gives no hours)";
    return "Working hours " + open.opens() + "–" + open.closes() + breaks + given;
  }

  /** The timetable, by start: a row for each stage of a job. */
  public List<DayText.JobText> jobs() {
    return day.jobs().stream()
        .flatMap(job -> job.parts().stream().map(part -> new Row(job, part)))
        .sorted(Comparator.comparingInt(row -> row.part().from()))
        .map(this::row)
        .toList();
  }

  private record Row(Placed job, Part part) {
    /** What begins in this stage, or in the pause after it. */
    List<Spell> own(List<Spell> spells) {
      List<Part> parts = job.parts();
      int next = parts.indexOf(part) + 1;
      int first = next == 1 ? 0 : part.from();
      int end = next == parts.size() ? Integer.MAX_VALUE : parts.get(next).from();
      return spells.stream().filter(it -> first <= it.from() && it.from() < end).toList();
    }

    boolean isLast() {
      return job.parts().indexOf(part) == job.parts().size() - 1;
    }
  }

  private DayText.JobText row(Row row) {
    Placed placed = row.job();
    Heading heading = placed.job().sheet().heading();
    String people =
        heading.crew().by().id() + heading.crew().with().map(it -> " with " + it.id()).orElse("");
    return new DayText.JobText(
        clock(row.part().from()) + "–" + clock(row.part().to()),
        row.part().sheet(),
        Phrases.orNothing(heading.vehicle().plate()),
        language.title(heading),
        heading.bay().name(),
        people,
        spells(row.own(placed.looks())),
        spells(row.own(placed.tools())),
        row.isLast() ? promised(placed) : "",
        report
            .states()
            .getOrDefault(row.part().sheet(), report.states().getOrDefault(heading.job(), "")));
  }

  /** {@code T2 09:10, 10:05; T3 11:20}: who comes, and when. */
  private String spells(List<Spell> spells) {
    Map<String, List<String>> times = new LinkedHashMap<>();
    for (Spell spell : spells) {
      times
          .computeIfAbsent(spell.who(), who -> new ArrayList<>())
          .add(
              spell.to() - spell.from() <= SHORT
                  ? clock(spell.from())
                  : clock(spell.from()) + "–" + clock(spell.to()));
    }
    return times.entrySet().stream()
        .map(it -> language.text(it.getKey()) + " " + String.join(", ", it.getValue()))
        .collect(Collectors.joining("; "));
  }

  /** A spell as short as a look is named by its beginning only. */
  private static final int SHORT = 5;

  private static String promised(Placed placed) {
    return placed
        .promised()
        .map(minute -> clock(minute) + ", " + percent(placed.chance()))
        .orElse("");
  }

  /** Nothing that takes time is certain. */
  static String percent(double chance) {
    int whole = (int) Math.floor(100 * chance);
    return (whole < 100 ? String.valueOf(whole) : "over 99") + Phrases.NBSP + "%";
  }

  /** Promises that do not hold or may not, and what goes on after closing. */
  public List<DayText.RiskText> risks() {
    return new DayRisks(day).all();
  }

  /** Tools that several jobs use. */
  private List<String> shared() {
    Map<String, List<String>> users = new TreeMap<>();
    Map<String, Set<String>> jobs = new TreeMap<>();
    for (Placed job : day.jobs()) {
      for (Spell tool : job.tools()) {
        jobs.computeIfAbsent(tool.who(), name -> new LinkedHashSet<>()).add(job.job().number());
        users
            .computeIfAbsent(tool.who(), name -> new ArrayList<>())
            .add(job.job().number() + " " + clock(tool.from()) + "–" + clock(tool.to()));
      }
    }
    List<String> shared = new ArrayList<>();
    users.forEach(
        (tool, times) -> {
          if (jobs.get(tool).size() > 1) {
            shared.add(
                "%s (%s): %s"
                    .formatted(language.text(tool), count(tool), String.join(", ", times)));
          }
        });
    return shared;
  }

  private String count(String tool) {
    return shop.crib().special().stream()
        .filter(it -> it.name().value().equals(tool))
        .findFirst()
        .map(it -> String.valueOf(it.count().value()))
        .orElse("borrowed");
  }

  /** What has to be borrowed, booked and found out the evening before. */
  public List<DayText.LinesText> evening() {
    EveningList list = report.evening();
    return List.of(
        new DayText.LinesText("Borrow", lines(list.borrow())),
        new DayText.LinesText("Arrange", lines(list.book())),
        new DayText.LinesText("Find figures", lines(list.figures())));
  }

  /** What has to be soaked, cooled, washed or set up. */
  public List<DayText.LineText> prepare() {
    return lines(report.evening().prepare());
  }

  /** What several jobs ask for in the same words stands once. */
  private List<DayText.LineText> lines(List<EveningList.Line> lines) {
    Map<String, List<String>> jobs = new LinkedHashMap<>();
    for (EveningList.Line line : lines) {
      jobs.computeIfAbsent(text(line.text()), text -> new ArrayList<>()).add(line.job());
    }
    return jobs.entrySet().stream()
        .map(it -> new DayText.LineText(String.join(", ", it.getValue()), it.getKey()))
        .toList();
  }

  /** Who borrows a wrench has no sheet in the hand, so the row on it is left out. */
  private String text(Statement statement) {
    return statement instanceof Statement.WrenchFor wrench
        ? language.wrench(wrench)
        : language.text(statement);
  }

  /** New parts, by job. */
  public List<DayText.PartsText> parts() {
    Map<DayJob, List<String>> parts = new LinkedHashMap<>();
    report
        .evening()
        .parts()
        .forEach(
            it -> parts.computeIfAbsent(it.job(), job -> new ArrayList<>()).add(part(it.line())));
    return parts.entrySet().stream()
        .map(
            it ->
                new DayText.PartsText(
                    it.getKey().number(),
                    it.getKey().sheet().heading().vehicle().name(),
                    it.getValue()))
        .toList();
  }

  /** {@code 2 × brake disc, LK 40-112}. */
  private String part(PartLine line) {
    return line.count()
        + Phrases.NBSP
        + "×"
        + Phrases.NBSP
        + language.text(line.part())
        + line.number().map(number -> ", " + number).orElse("");
  }

  /** What has left the day, and what could not be planned. */
  public List<String> gone() {
    List<String> gone = new ArrayList<>();
    report.unplanned().forEach(job -> gone.add(job + " is not planned; baysheet check says why"));
    report.gone().forEach((job, what) -> gone.add(job + " is no longer on this day: " + what));
    return gone;
  }

  /** A clash in words, as a warning has it. */
  public static String clash(Together clash) {
    String name = clash.resource().name();
    return "jobs %s need the %s at the same time, from %s to %s, and there %s %s"
        .formatted(
            String.join(" and ", clash.jobs()),
            name,
            clock(clash.from()),
            clock(clash.to()),
            clash.units() == 1 ? "is" : "are",
            units(clash));
  }

  private static String units(Together clash) {
    return switch (clash.resource().kind()) {
      case STANDS -> clash.units() + (clash.units() == 1 ? " pair" : " pairs");
      default -> clash.units() == 1 ? "one" : String.valueOf(clash.units());
    };
  }
}
