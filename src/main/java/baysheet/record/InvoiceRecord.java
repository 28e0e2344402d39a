package baysheet.record;

import baysheet.sheet.CheckLine;
import baysheet.sheet.Heading;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import baysheet.wording.Language;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes what an office wants to know of a sheet: works with their parts, what is still open. */
record InvoiceRecord(Json json, Sheet sheet, Language language) {
  void write() throws IOException {
    json.list(
        "work",
        sheet.heading().works().stream()
            .filter(Statement.Work.class::isInstance)
            .map(Statement.Work.class::cast)
            .toList(),
        this::work);
    json.list("supplies", sheet.consumables(), this::supply);
    json.list("open", open(), this::open);
    List<Recheck> rechecks = rechecks();
    if (!rechecks.isEmpty()) {
      json.object("recheck", () -> recheck(rechecks.get(0)));
    }
    json.list("rechecks", rechecks, it -> json.object(() -> recheck(it)));
    json.list("seen", sheet.heading().seen(), this::seen);
  }

  private void work(Statement.Work work) throws IOException {
    List<PartLine> parts =
        sheet.parts().stream()
            .filter(part -> part.byProcedure().containsKey(work.procedure()))
            .toList();
    json.object(
        () -> {
          json.text("procedure", work.procedure());
          json.text("title", language.text(work.title()));
          json.texts("places", work.places());
          json.list(
              "parts",
              parts,
              part ->
                  json.object(
                      () -> {
                        json.text("part", language.text(part.part()));
                        json.text("number", part.number());
                        json.number("count", part.byProcedure().get(work.procedure()));
                      }));
        });
  }

  private void supply(Statement supply) throws IOException {
    json.object(
        () -> {
          String words = language.text(supply);
          if (supply instanceof Statement.Fluid of) {
            json.text("name", of.fluid().name());
            json.text("words", words);
            json.text("grade", of.fluid().grade());
            json.quantity("capacity", of.fluid().capacity());
          } else {
            json.text("name", supply instanceof Statement.FluidAsRecorded of ? of.name() : words);
            json.text("words", words);
          }
        });
  }

  private List<CheckLine> open() {
    return sheet.checks().stream().filter(check -> check.keepsOpen().isPresent()).toList();
  }

  private void open(CheckLine check) throws IOException {
    json.object(
        () -> {
          json.text("text", language.text(check.keepsOpen()));
          json.texts("places", check.places());
          json.text("releasedBy", language.text(check.releasedBy()));
        });
  }

  /** Rows that are looked at again after the same distance. */
  private record Recheck(Quantity after, List<Integer> rows) {}

  /** The earliest first. */
  private List<Recheck> rechecks() {
    Map<Quantity, List<Integer>> rows = new TreeMap<>();
    for (TorqueLine line : sheet.torque()) {
      line.recheck()
          .ifPresent(after -> rows.computeIfAbsent(after, key -> new ArrayList<>()).add(line.n()));
    }
    return rows.entrySet().stream().map(it -> new Recheck(it.getKey(), it.getValue())).toList();
  }

  /** The sheet counts from the odometer out, which is written by hand: it is due no earlier. */
  private void recheck(Recheck recheck) throws IOException {
    json.quantity("after", recheck.after());
    json.quantity(
        "dueAt", sheet.heading().odometer().map(reading -> reading.plus(recheck.after())));
    json.numbers("rows", recheck.rows());
  }

  private void seen(Heading.Seen seen) throws IOException {
    json.object(
        () -> {
          json.text("on", seen.on());
          json.text("what", seen.what());
          json.text("of", seen.onVehicle() ? "vehicle" : "kind");
        });
  }
}
