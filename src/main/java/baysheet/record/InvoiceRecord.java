package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Heading;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import baysheet.wording.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes what an office wants to know of a sheet: works with their parts, what is still open. */
record InvoiceRecord(Sheet sheet, Language language) {
  JsonObject all() {
    List<Recheck> rechecks = rechecks();
    return new JsonObject()
        .list(
            "work",
            sheet.heading().works().stream()
                .filter(Statement.Work.class::isInstance)
                .map(Statement.Work.class::cast)
                .toList(),
            this::work)
        .list("supplies", sheet.equipment().consumables(), this::supply)
        .list("open", open(), this::open)
        .put("recheck", rechecks.stream().findFirst().map(this::recheck))
        .list("rechecks", rechecks, this::recheck)
        .list("seen", sheet.heading().before().seen(), InvoiceRecord::seen);
  }

  private JsonObject work(Statement.Work work) {
    List<PartLine> parts =
        sheet.equipment().parts().stream()
            .filter(part -> part.byProcedure().containsKey(work.procedure()))
            .toList();
    return new JsonObject()
        .put("procedure", work.procedure())
        .put("title", language.text(work.title()))
        .put("places", work.places())
        .list(
            "parts",
            parts,
            part ->
                new JsonObject()
                    .put("part", language.text(part.part()))
                    .put("number", part.number())
                    .put("count", part.byProcedure().get(work.procedure())));
  }

  private JsonObject supply(Statement supply) {
    String words = language.text(supply);
    if (supply instanceof Statement.Fluid of) {
      return new JsonObject()
          .put("name", of.fluid().name())
          .put("words", words)
          .put("grade", of.fluid().grade())
          .put("capacity", of.fluid().capacity());
    } else {
      return new JsonObject()
          .put("name", supply instanceof Statement.FluidAsRecorded of ? of.name() : words)
          .put("words", words);
    }
  }

  private List<CheckLine> open() {
    return sheet.checks().stream().filter(check -> check.keepsOpen().isPresent()).toList();
  }

  private JsonObject open(CheckLine check) {
    return new JsonObject()
        .put("text", language.text(check.keepsOpen()))
        .put("places", check.places())
        .put("releasedBy", language.text(check.releasedBy()));
  }

  /** Rows that are looked at again after the same distance. */
  private record Recheck(Quantity after, List<Integer> rows) {}

  /** The earliest first. */
  private List<Recheck> rechecks() {
    Map<Quantity, List<Integer>> rows = new TreeMap<>();
    for (TorqueLine line : sheet.torque()) {
      line.visits()
          .recheck()
          .ifPresent(after -> rows.computeIfAbsent(after, key -> new ArrayList<>()).add(line.n()));
    }
    return rows.entrySet().stream().map(it -> new Recheck(it.getKey(), it.getValue())).toList();
  }

  /** The sheet counts from the odometer out, which is written by hand: it is due no earlier. */
  private JsonObject recheck(Recheck recheck) {
    return new JsonObject()
        .put("after", recheck.after())
        .put(
            "dueAt",
            sheet.heading().vehicle().odometer().map(reading -> reading.plus(recheck.after())))
        .put("rows", recheck.rows());
  }

  private static JsonObject seen(Heading.Seen seen) {
    return new JsonObject()
        .put("on", seen.on())
        .put("what", seen.what())
        .put("of", seen.onVehicle() ? "vehicle" : "kind");
  }
}
