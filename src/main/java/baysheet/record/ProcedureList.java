package baysheet.record;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** The procedures of a shop folder as data, and for which of them a spec book is ready. */
public final class ProcedureList {
  /** Counts up when a key changes its meaning or goes. */
  private static final int FORMAT = 1;

  private ProcedureList() {}

  /**
   * A procedure.
   *
   * @param places where a job can ask for it
   * @param serves the access that it provides under another name
   * @param needs the traits that a vehicle must have
   * @param fasteners that its own steps name, access apart
   * @param ready how far a spec book is, place by place; none without a book
   */
  public record Line(
      String name,
      String title,
      List<String> places,
      Optional<String> serves,
      List<String> needs,
      List<String> fasteners,
      List<Readiness> ready) {
    public Line {
      Objects.requireNonNull(name);
      Objects.requireNonNull(title);
      places = List.copyOf(places);
      Objects.requireNonNull(serves);
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
      Objects.requireNonNull(place);
      Objects.requireNonNull(state);
      missing = List.copyOf(missing);
      unknown = List.copyOf(unknown);
      Objects.requireNonNull(because);
    }
  }

  /** UTF-8, a line for each procedure. */
  public static byte[] write(List<Line> lines) {
    return Json.lines(
        json ->
            json.object(
                () -> {
                  json.number("format", FORMAT);
                  json.list("procedures", lines, line -> json.object(() -> line(json, line)));
                }));
  }

  private static void line(Json json, Line line) throws IOException {
    json.text("name", line.name());
    json.text("title", line.title());
    json.texts("places", line.places());
    json.text("serves", line.serves());
    json.texts("onlyWith", line.needs());
    json.texts("fasteners", line.fasteners());
    if (!line.ready().isEmpty()) {
      json.list("vehicle", line.ready(), it -> json.object(() -> readiness(json, it)));
    }
  }

  private static void readiness(Json json, Readiness it) throws IOException {
    json.text("place", it.place());
    json.text("state", it.state().name().toLowerCase(Locale.ROOT));
    json.texts("missing", it.missing());
    json.texts("unknown", it.unknown());
    if (!it.because().isEmpty()) {
      json.text("because", it.because());
    }
  }
}
