package baysheet.record;

import baysheet.books.OpeningHours;
import baysheet.garage.DayReport;
import baysheet.garage.EveningList;
import baysheet.garage.GarageDay;
import baysheet.garage.GarageDay.Placed;
import baysheet.sheet.Heading;
import baysheet.wording.DayWords;
import baysheet.wording.Language;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** Writes a day as data: times as {@code HH:MM}, keys in camelCase. */
public final class DayRecord {
  private static final int FORMAT = 1;

  private final Json json;
  private final DayReport report;
  private final Language language;

  private DayRecord(Json json, DayReport report) {
    this.json = json;
    this.report = report;
    this.language = DayWords.language(report);
  }

  /** The day as JSON. */
  public static String print(DayReport report) {
    return new String(
        Json.indented(json -> new DayRecord(json, report).all()), StandardCharsets.UTF_8);
  }

  private void all() throws IOException {
    GarageDay day = report.day();
    json.object(
        () -> {
          json.number("format", FORMAT);
          json.text("date", day.date());
          json.text("shop", day.shop());
          json.object("hours", this::hours);
          json.list("jobs", day.jobs(), this::job);
          json.list("clashes", day.clashes(), this::together);
          json.object("evening", this::evening);
          json.texts("unplanned", report.unplanned());
          json.list(
              "gone",
              List.copyOf(report.gone().entrySet()),
              it ->
                  json.object(
                      () -> {
                        json.text("job", it.getKey());
                        json.text("state", it.getValue());
                      }));
        });
  }

  private void hours() throws IOException {
    OpeningHours open = report.day().open();
    json.text("opens", open.opens());
    json.text("closes", open.closes());
    json.texts("breaks", open.breaks().stream().map(it -> it.from() + ".." + it.to()).toList());
    json.truth("given", report.day().hoursGiven());
  }

  private void job(Placed placed) throws IOException {
    Heading heading = placed.job().sheet().heading();
    json.object(
        () -> {
          json.text("job", heading.job());
          json.text("vehicle", heading.vehicle());
          json.text("plate", heading.plate());
          json.texts("works", language.statements(heading.works()));
          json.text("bay", heading.bay());
          json.text("by", heading.by().id());
          json.text("with", heading.with().map(Heading.Person::id));
          json.text("from", DayWords.clock(placed.from()));
          json.text("to", DayWords.clock(placed.to()));
          json.list("looks", placed.looks(), it -> spell("person", it));
          json.list("tools", placed.tools(), it -> spell("tool", it));
          json.text("promised", placed.promised().map(DayWords::clock));
          if (placed.promised().isPresent()) {
            json.number(
                "chance", BigDecimal.valueOf(placed.chance()).setScale(2, RoundingMode.HALF_UP));
            json.number("lateMinutes", placed.late());
          }
          json.list("waits", placed.waits(), this::together);
          json.text("state", report.states().getOrDefault(heading.job(), ""));
        });
  }

  private void spell(String key, GarageDay.Spell spell) throws IOException {
    json.object(
        () -> {
          json.text(key, spell.who());
          json.text("from", DayWords.clock(spell.from()));
          json.text("to", DayWords.clock(spell.to()));
        });
  }

  private void together(GarageDay.Together together) throws IOException {
    json.object(
        () -> {
          json.text("kind", together.resource().kind().name().toLowerCase(Locale.ROOT));
          json.text("name", together.resource().name());
          json.number("units", together.units());
          json.texts("jobs", together.jobs());
          json.text("from", DayWords.clock(together.from()));
          json.text("to", DayWords.clock(together.to()));
        });
  }

  private void evening() throws IOException {
    EveningList list = report.evening();
    json.list("borrow", list.borrow(), this::line);
    json.list("book", list.book(), this::line);
    json.list("figures", list.figures(), this::line);
    json.list("prepare", list.prepare(), this::line);
    json.list("parts", list.parts(), this::part);
  }

  private void line(EveningList.Line line) throws IOException {
    json.object(
        () -> {
          json.text("job", line.job());
          json.text("text", language.text(line.text()));
        });
  }

  private void part(EveningList.Part part) throws IOException {
    json.object(
        () -> {
          json.text("job", part.job().number());
          json.text("part", part.line().part());
          json.number("count", part.line().count());
          json.texts("places", part.line().places());
          json.truth("fastener", part.line().fastener());
        });
  }
}
