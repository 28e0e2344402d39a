package baysheet.record;

import baysheet.books.OpeningHours;
import baysheet.garage.DayReport;
import baysheet.garage.EveningList;
import baysheet.garage.GarageDay;
import baysheet.garage.GarageDay.Placed;
import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.sheet.Heading;
import baysheet.wording.DayWords;
import baysheet.wording.Language;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** Writes a day as data: times as {@code HH:MM}, keys in camelCase. */
public final class DayRecord {
  private static final int FORMAT = 1;

  private final DayReport report;
  private final Language language;

  private DayRecord(DayReport report) {
    this.report = report;
    this.language = DayWords.language(report);
  }

  /** The day as JSON. */
  public static String print(DayReport report) {
    return JsonText.indentedPlain(new DayRecord(report).all());
  }

  private JsonObject all() {
    GarageDay day = report.day();
    return new JsonObject()
        .put("format", FORMAT)
        .put("date", day.date())
        .put("shop", day.shop())
        .put("hours", hours())
        .list("jobs", day.jobs(), this::job)
        .list("clashes", day.clashes(), DayRecord::together)
        .put("evening", evening())
        .put("unplanned", report.unplanned())
        .list(
            "gone",
            report.gone().entrySet(),
            it -> new JsonObject().put("job", it.getKey()).put("state", it.getValue()));
  }

  private JsonObject hours() {
    OpeningHours open = report.day().open();
    return new JsonObject()
        .put("opens", open.opens())
        .put("closes", open.closes())
        .put("breaks", open.breaks().stream().map(it -> it.from() + ".." + it.to()).toList())
        .put("given", report.day().hoursGiven());
  }

  private JsonObject job(Placed placed) {
    Heading heading = placed.job().sheet().heading();
    return new JsonObject()
        .put("job", heading.job())
        .put("vehicle", heading.vehicle().name())
        .put("plate", heading.vehicle().plate())
        .put("works", language.statements(heading.works()))
        .put("bay", heading.bay().name())
        .put("by", heading.crew().by().id())
        .put("with", heading.crew().with().map(Heading.Person::id))
        .put("from", DayWords.clock(placed.from()))
        .put("to", DayWords.clock(placed.to()))
        .list(
            "stages",
            placed.parts().size() == 1 ? List.of() : placed.parts(),
            it -> spell("sheet", new GarageDay.Spell(it.sheet(), it.from(), it.to())))
        .list("looks", placed.looks(), it -> spell("person", it))
        .list("tools", placed.tools(), it -> spell("tool", it))
        .put("promised", placed.promised().map(DayWords::clock))
        .put(
            "chance",
            placed
                .promised()
                .map(it -> BigDecimal.valueOf(placed.chance()).setScale(2, RoundingMode.HALF_UP)))
        .put("lateMinutes", placed.promised().map(it -> placed.late()))
        .list("waits", placed.waits(), it -> wait(placed, it))
        .put("state", report.states().getOrDefault(heading.job(), ""));
  }

  private static JsonObject spell(String key, GarageDay.Spell spell) {
    return new JsonObject()
        .put(key, spell.who())
        .put("from", DayWords.clock(spell.from()))
        .put("to", DayWords.clock(spell.to()));
  }

  private static JsonObject wait(Placed placed, GarageDay.Wait wait) {
    return new JsonObject()
        .put("kind", wait.resource().kind().name().toLowerCase(Locale.ROOT))
        .put("name", wait.resource().name())
        .put("jobs", wait.jobs())
        .put("sheet", placed.parts().get(wait.part()).sheet())
        .put("at", DayWords.clock(wait.at()));
  }

  private static JsonObject together(GarageDay.Together together) {
    return new JsonObject()
        .put("kind", together.resource().kind().name().toLowerCase(Locale.ROOT))
        .put("name", together.resource().name())
        .put("units", together.units())
        .put("jobs", together.jobs())
        .put("from", DayWords.clock(together.from()))
        .put("to", DayWords.clock(together.to()));
  }

  private JsonObject evening() {
    EveningList list = report.evening();
    return new JsonObject()
        .list("borrow", list.borrow(), this::line)
        .list("book", list.book(), this::line)
        .list("figures", list.figures(), this::line)
        .list("prepare", list.prepare(), this::line)
        .list("parts", list.parts(), DayRecord::part);
  }

  private JsonObject line(EveningList.Line line) {
    return new JsonObject().put("job", line.job()).put("text", language.text(line.text()));
  }

  private static JsonObject part(EveningList.Part part) {
    return new JsonObject()
        .put("job", part.job().number())
        .put("part", part.line().part())
        .put("count", part.line().count())
        .put("number", part.line().number())
        .put("places", part.line().places())
        .put("fastener", part.line().fastener());
  }
}
