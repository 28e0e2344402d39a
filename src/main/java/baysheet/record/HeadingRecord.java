package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.sheet.Heading;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.torque.Unit;
import baysheet.wording.Language;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes what identifies a sheet: the job, the vehicle, the people. */
record HeadingRecord(Sheet sheet, Language language) {
  JsonObject identity() {
    Heading heading = sheet.heading();
    return new JsonObject()
        .put("job", heading.job())
        .put("stage", sheet.stage().map(Stage::n))
        .put("stages", sheet.stage().map(Stage::of))
        .put("date", heading.date())
        .put("revision", heading.revision())
        .put("title", language.title(heading))
        .put("shop", heading.shop())
        .put("language", language.tag())
        .put("units", heading.style().torqueUnits().stream().map(Unit::symbol).toList())
        .put("distanceUnit", heading.style().distance().symbol())
        .put("pages", 1);
  }

  JsonObject vehicle() {
    Heading.Vehicle vehicle = sheet.heading().vehicle();
    return new JsonObject()
        .put("book", vehicle.book())
        .put("name", vehicle.name())
        .put("years", vehicle.years())
        .put("plate", vehicle.plate())
        .put("vin", vehicle.vin())
        .put("odometer", vehicle.odometer())
        .put("state", vehicle.state());
  }

  JsonObject people() {
    Heading.Crew crew = sheet.heading().crew();
    return new JsonObject()
        .put("by", crew.by().id())
        .put("with", crew.with().map(Heading.Person::id))
        .put("second", crew.second().map(Heading.Person::id))
        .list(
            "named",
            Stream.of(Optional.of(crew.by()), crew.with(), crew.second())
                .flatMap(Optional::stream)
                .toList(),
            HeadingRecord::person)
        .put("customer", sheet.heading().request().customer())
        .list("qualified", sheet.safety().qualified(), this::qualified);
  }

  private static JsonObject person(Heading.Person person) {
    return new JsonObject()
        .put("person", person.id())
        .put("name", person.name())
        .put("grade", person.grade().name().toLowerCase(Locale.ROOT));
  }

  private JsonObject qualified(QualifiedWork work) {
    return new JsonObject()
        .put("qualification", work.qualification())
        .put("words", language.text(work.words()))
        .put("steps", work.steps())
        .put("by", holder(work.by()))
        .put("holds", work.holds())
        .put("checks", work.checks())
        .list("second", work.second(), HeadingRecord::holder);
  }

  private static JsonObject holder(QualifiedWork.Holder holder) {
    return new JsonObject()
        .put("person", holder.person())
        .put("name", holder.name())
        .put("certificate", holder.certificate())
        .put("until", holder.until());
  }
}
