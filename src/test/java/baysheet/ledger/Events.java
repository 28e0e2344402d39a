package baysheet.ledger;

import baysheet.ledger.Event.Attached;
import baysheet.ledger.Event.Carried;
import baysheet.ledger.Event.Closed;
import baysheet.ledger.Event.Decision;
import baysheet.ledger.Event.Forgotten;
import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Replaced;
import baysheet.ledger.Event.Returned;
import baysheet.ledger.Event.Superseded;
import baysheet.ledger.Event.Value;
import baysheet.ledger.Event.Values;
import baysheet.ledger.Event.Withdrawn;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Made-up records and events; every sheet has a wheel nut at one place. */
final class Events {
  static final LocalDate MONDAY = LocalDate.parse("2026-03-02");

  private Events() {}

  static Quantity newtonMetres(String figure) {
    return Quantity.of(figure, Unit.NEWTON_METRE);
  }

  static String id(String job, String revision) {
    return job + "-" + revision + "-0a1b2c";
  }

  static byte[] record(String job, String revision, LocalDate date, String customer) {
    String text =
        """
        {"format": 1,
         "sheet": {"job": "JOB", "date": "DATE", "id": "ID", "revision": "REV", "code": "CODEJOBREV",
           "title": "Wheels"},
         "vehicle": {"book": "larkfell-pipit-2015", "plate": "PL JOB",
           "odometer": {"value": 81240, "unit": "km"}},
         "people": {"by": "T1", "with": "A1", "customer": "CUSTOMER", "qualified": []},
         "torque": [{"n": 1, "fastener": "wheel-nut", "places": ["front-left"], "count": 5,
           "stages": [{"torque": {"value": 110, "unit": "N·m"},
             "band": {"from": 104.5, "to": 115.5, "unit": "N·m", "of": "shop"}, "wrench": "W3",
             "setting": {"value": 110, "unit": "N·m"}}],
           "rounds": [{"percent": 50, "wrench": "W2"}, {"percent": 100, "wrench": "W3"}],
           "recheck": {"value": 80, "unit": "km"}}],
         "checks": [{"rule": "align", "text": "x", "places": [], "keepsOpen": "Wheel alignment"}],
         "boxes": [{"name": "torque.1.front-left", "kind": "value"},
           {"name": "tick.1.front-left", "kind": "tick"}, {"name": "found.1", "kind": "line"},
           {"name": "open.1", "kind": "tick"}, {"name": "sign.technician", "kind": "signature"}]}
        """
            .replace("CUSTOMER", customer)
            .replace("JOB", job)
            .replace("DATE", date.toString())
            .replace("ID", id(job, revision))
            .replace("REV", revision);
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static byte[] pdf(String sheet) {
    return ("%PDF of " + sheet).repeat(50).getBytes(StandardCharsets.UTF_8);
  }

  static Issued issued(byte[] record, Optional<Replaced> replaces, LocalDate on) {
    return Issued.of(record, Hash.of(pdf(KeptRecord.of(record).id())), replaces, on);
  }

  static Issued issued(String job, LocalDate date) {
    return issued(record(job, "A", date, "P. Wrenfold"), Optional.empty(), date);
  }

  static Returned returned(String sheet, LocalDate on) {
    return new Returned(
        on,
        sheet,
        "f".repeat(64),
        List.of("torque.1.front-left", "sign.technician"),
        List.of("open.1"),
        List.of("tick.1.front-left"));
  }

  static Values values(String sheet, LocalDate on, String figure) {
    return new Values(
        on,
        sheet,
        "T1",
        List.of(new Value("torque.1.front-left", newtonMetres(figure), Optional.of("W3"))),
        List.of(new Decision("tick.1.front-left", true), new Decision("open.1", false)),
        List.of("open.1"));
  }

  /** One of each kind. */
  static List<Event> all() {
    String sheet = id("501", "A");
    return List.of(
        issued("501", MONDAY),
        returned(sheet, MONDAY),
        values(sheet, MONDAY, "112.50"),
        new Closed(MONDAY, sheet, "T1"),
        new Attached(MONDAY, sheet, "append", "a".repeat(64), true),
        new Superseded(MONDAY, sheet, id("501", "B")),
        new Carried(MONDAY, sheet, MONDAY.plusDays(1), Optional.of(12)),
        new Withdrawn(MONDAY, sheet),
        new Forgotten(MONDAY, MONDAY.plusYears(3), List.of(sheet)));
  }
}
