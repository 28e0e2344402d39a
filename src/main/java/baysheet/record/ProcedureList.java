package baysheet.record;

import baysheet.books.Place;
import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The procedures of a shop folder as data, and for which of them a spec book is ready. */
public final class ProcedureList {
  /** Counts up when a key changes its meaning or goes. */
  private static final int FORMAT = 1;

  private ProcedureList() {}

  /**
   * A procedure.
   *
   * @param kind at what kind of place it is done once
   * @param places where a job can ask for it
   * @param serves the access that it provides under another name
   * @param needs the traits that a vehicle must have
   * @param fasteners that its own steps name, access apart
   * @param ready how far a spec book is, place by place; none without a book
   */
  public record Line(
      String name,
      String title,
      Place.Kind kind,
      List<String> places,
      Optional<String> serves,
      List<String> needs,
      List<String> fasteners,
      List<Readiness> ready) {
    public Line {
      places = List.copyOf(places);
      needs = List.copyOf(needs);
      fasteners = List.copyOf(fasteners);
      ready = List.copyOf(ready);
    }
  }

  /** How far a book is for a procedure. */
  public enum State {
    READY,
    INCOMPLETE,
    UNSUITABLE
  }

  /**
   * What a book lacks for a procedure at a place.
   *
   * @param missing fasteners that the book does not have
   * @param unknown figures that it does not have
   * @param because why the procedure cannot be done on this vehicle
   */
  public record Readiness(
      String place, State state, List<String> missing, List<String> unknown, String because) {
    public Readiness {
      missing = List.copyOf(missing);
      unknown = List.copyOf(unknown);
    }
  }

  /** A line for each procedure. */
  public static String print(List<Line> lines) {
    return JsonText.lines(
        new JsonObject().put("format", FORMAT).list("procedures", lines, ProcedureList::json));
  }

  private static JsonObject json(Line line) {
    return new JsonObject()
        .put("name", line.name())
        .put("title", line.title())
        .put("at", line.kind().word())
        .put("places", line.places())
        .put("serves", line.serves())
        .put("onlyWith", line.needs())
        .put("fasteners", line.fasteners())
        .listIfAny("vehicle", line.ready().stream().map(ProcedureList::json).toList());
  }

  private static JsonObject json(Readiness it) {
    return new JsonObject()
        .put("place", it.place())
        .put("state", it.state().name().toLowerCase(Locale.ROOT))
        .put("missing", it.missing())
        .put("unknown", it.unknown())
        .put("because", Optional.of(it.because()).filter(why -> !why.isEmpty()));
  }
}
