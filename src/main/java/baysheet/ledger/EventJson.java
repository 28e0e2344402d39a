package baysheet.ledger;

import baysheet.json.JsonObject;
import baysheet.ledger.Event.Attached;
import baysheet.ledger.Event.Carried;
import baysheet.ledger.Event.Closed;
import baysheet.ledger.Event.Decision;
import baysheet.ledger.Event.Forgotten;
import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Part;
import baysheet.ledger.Event.Prints;
import baysheet.ledger.Event.Replaced;
import baysheet.ledger.Event.Returned;
import baysheet.ledger.Event.Superseded;
import baysheet.ledger.Event.Value;
import baysheet.ledger.Event.Values;
import baysheet.ledger.Event.Withdrawn;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Events as JSON objects: {@code {"event": "closed", "on": "2026-03-03", "sheet": …}}. */
final class EventJson {
  /** One row a kind; {@code EventJsonTest} holds that every kind has one. */
  private static final Map<String, Kind<?>> KINDS =
      Stream.of(
              new Kind<>(Issued.class, EventJson::issued, EventJson::issued),
              new Kind<>(Returned.class, EventJson::returned, EventJson::returned),
              new Kind<>(Values.class, EventJson::values, EventJson::values),
              new Kind<>(
                  Closed.class,
                  (it, out) -> out.put("by", it.by()),
                  (on, json) -> new Closed(on, json.text("sheet"), json.text("by"))),
              new Kind<>(
                  Attached.class,
                  (it, out) ->
                      out.put("how", it.how())
                          .put("invoice", it.invoice())
                          .put("incomplete", it.incomplete()),
                  EventJson::attached),
              new Kind<>(
                  Superseded.class,
                  (it, out) -> out.put("by", it.by()),
                  (on, json) -> new Superseded(on, json.text("sheet"), json.text("by"))),
              new Kind<>(
                  Carried.class,
                  (it, out) -> out.put("to", it.to()).put("step", it.step()),
                  (on, json) ->
                      new Carried(
                          on, json.text("sheet"), json.date("to"), json.maybeNumber("step"))),
              new Kind<>(
                  Withdrawn.class,
                  (it, out) -> {},
                  (on, json) -> new Withdrawn(on, json.text("sheet"))),
              new Kind<>(
                  Forgotten.class,
                  (it, out) -> out.put("before", it.before()).listIfAny("sheets", it.sheets()),
                  (on, json) -> new Forgotten(on, json.date("before"), json.texts("sheets"))))
          .collect(Collectors.toUnmodifiableMap(Kind::word, kind -> kind));

  private EventJson() {}

  /** How one kind of event is written and read. */
  private record Kind<E extends Event>(
      Class<E> type,
      BiConsumer<E, JsonObject> writer,
      BiFunction<LocalDate, JsonObject, E> reader) {
    String word() {
      return EventJson.word(type);
    }

    void write(Event event, JsonObject out) {
      writer.accept(type.cast(event), out);
    }
  }

  static String word(Class<? extends Event> type) {
    return type.getSimpleName().toLowerCase(Locale.ROOT);
  }

  static JsonObject write(Event event) {
    JsonObject out = new JsonObject().put("event", word(event.getClass())).put("on", event.on());
    if (!(event instanceof Forgotten)) {
      out.put("sheet", event.sheet());
    }
    KINDS.get(word(event.getClass())).write(event, out);
    return out;
  }

  /**
   * @throws IllegalArgumentException saying what is not as it should be
   * @throws java.time.DateTimeException when a date is none
   */
  static Event read(JsonObject json) {
    Kind<?> kind = KINDS.get(json.text("event"));
    if (kind == null) {
      throw new IllegalArgumentException("there is no event " + json.text("event"));
    }
    return kind.reader().apply(json.date("on"), json);
  }

  private static void issued(Issued it, JsonObject out) {
    out.put("job", it.job())
        .put("stage", it.stage().map(Part::n))
        .put("stages", it.stage().map(Part::of))
        .put("date", it.date())
        .put("revision", it.revision())
        .put("record", it.prints().record())
        .put("page", it.prints().page())
        .put("code", it.prints().code())
        .put("replaces", it.replaces().map(Replaced::sheet))
        .listIfAny("changes", it.replaces().map(Replaced::changes).orElse(List.of()))
        .listIfAny("crew", it.crew())
        .put("odometer", it.odometer())
        .listIfAny("joints", it.joints().stream().map(Joint::json).toList())
        .listIfAny("open", it.open());
  }

  private static Issued issued(LocalDate on, JsonObject json) {
    return new Issued(
        on,
        json.text("sheet"),
        json.text("job"),
        Part.of(json),
        json.date("date"),
        json.text("revision"),
        new Prints(json.text("record"), json.text("page"), json.maybeText("code")),
        json.maybeText("replaces").map(it -> new Replaced(it, json.texts("changes"))),
        json.texts("crew"),
        json.quantity("odometer"),
        json.objects("joints").stream().map(Joint::of).toList(),
        json.texts("open"));
  }

  private static void returned(Returned it, JsonObject out) {
    out.put("scan", it.scan())
        .listIfAny("marked", it.marked())
        .listIfAny("empty", it.empty())
        .listIfAny("doubtful", it.doubtful());
  }

  private static Returned returned(LocalDate on, JsonObject json) {
    return new Returned(
        on,
        json.text("sheet"),
        json.text("scan"),
        json.texts("marked"),
        json.texts("empty"),
        json.texts("doubtful"));
  }

  private static void values(Values it, JsonObject out) {
    out.put("by", it.by())
        .listIfAny("values", it.values().stream().map(EventJson::value).toList())
        .listIfAny("marked", boxes(it.decisions(), true))
        .listIfAny("empty", boxes(it.decisions(), false))
        .listIfAny("excepted", it.excepted());
  }

  private static JsonObject value(Value it) {
    return new JsonObject()
        .put("box", it.box())
        .put("value", it.value().value())
        .put("unit", it.value().unit().symbol())
        .put("wrench", it.wrench());
  }

  private static List<String> boxes(List<Decision> decisions, boolean marked) {
    return decisions.stream().filter(it -> it.marked() == marked).map(Decision::box).toList();
  }

  private static Values values(LocalDate on, JsonObject json) {
    return new Values(
        on,
        json.text("sheet"),
        json.text("by"),
        json.objects("values").stream()
            .map(it -> new Value(it.text("box"), it.figureIn("value"), it.maybeText("wrench")))
            .toList(),
        Stream.concat(
                json.texts("marked").stream().map(box -> new Decision(box, true)),
                json.texts("empty").stream().map(box -> new Decision(box, false)))
            .toList(),
        json.texts("excepted"));
  }

  private static Attached attached(LocalDate on, JsonObject json) {
    return new Attached(
        on, json.text("sheet"), json.text("how"), json.text("invoice"), json.truth("incomplete"));
  }
}
