package baysheet.record;

import baysheet.sheet.Heading;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.torque.Unit;
import baysheet.wording.Language;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes what identifies a sheet: the job, the vehicle, the people. */
record HeadingRecord(Json json, Sheet sheet, Language language) {
  void sheet(Json.Piece ofPage) throws IOException {
    Heading heading = sheet.heading();
    json.text("job", heading.job());
    if (sheet.stage().isPresent()) {
      json.number("stage", sheet.stage().get().n());
      json.number("stages", sheet.stage().get().of());
    }
    json.text("date", heading.date());
    json.text("revision", heading.revision());
    json.text("title", language.title(heading));
    json.text("shop", heading.shop());
    json.text("language", language.tag());
    json.texts("units", heading.torqueUnits().stream().map(Unit::symbol).toList());
    json.text("distanceUnit", heading.distance().symbol());
    json.number("pages", 1);
    ofPage.write();
  }

  void vehicle() throws IOException {
    Heading heading = sheet.heading();
    json.text("book", heading.book());
    json.text("name", heading.vehicle());
    json.text("years", heading.years());
    json.text("plate", heading.plate());
    json.text("vin", heading.vin());
    json.quantity("odometer", heading.odometer());
    json.texts("state", heading.state());
  }

  void people() throws IOException {
    Heading heading = sheet.heading();
    json.text("by", heading.by().id());
    json.text("with", heading.with().map(Heading.Person::id));
    json.text("second", heading.second().map(Heading.Person::id));
    json.list(
        "named",
        Stream.of(Optional.of(heading.by()), heading.with(), heading.second())
            .flatMap(Optional::stream)
            .toList(),
        person -> json.object(() -> person(person)));
    json.text("customer", heading.customer());
    json.list("qualified", sheet.qualified(), this::qualified);
  }

  private void person(Heading.Person person) throws IOException {
    json.text("person", person.id());
    json.text("name", person.name());
    json.text("grade", person.grade().name().toLowerCase(Locale.ROOT));
  }

  private void qualified(QualifiedWork work) throws IOException {
    json.object(
        () -> {
          json.text("qualification", work.qualification());
          json.text("words", language.text(work.words()));
          json.numbers("steps", work.steps());
          json.object("by", () -> holder(work.by()));
          json.numbers("holds", work.holds());
          json.texts("checks", work.checks());
          json.list("second", work.second(), it -> json.object(() -> holder(it)));
        });
  }

  private void holder(QualifiedWork.Holder holder) throws IOException {
    json.text("person", holder.person());
    json.text("name", holder.name());
    json.text("certificate", holder.certificate());
    json.text("until", holder.until());
  }
}
