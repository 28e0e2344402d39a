package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Band;
import baysheet.torque.Head;
import baysheet.wording.Language;
import java.util.Locale;

/** Writes one torque line of a record. */
final class TorqueRecord {
  private final Language language;

  TorqueRecord(Language language) {
    this.language = language;
  }

  JsonObject of(TorqueLine line) {
    return new JsonObject()
        .put("n", line.n())
        .put("fastener", line.fastener())
        .put("words", language.text(line.words()))
        .put("places", line.places())
        .put("count", line.count())
        .put("thread", line.hardware().thread())
        .put("class", line.hardware().strength())
        .put("head", line.hardware().head().map(Head::print))
        .put("socket", line.hardware().socket().map(TorqueRecord::socket))
        .put("kind", line.kind().name().toLowerCase(Locale.ROOT))
        .list("stages", line.method().stages(), stage -> stage(stage, line.inDoubt()))
        .put("passes", line.method().passes().percents())
        .list("rounds", line.method().rounds(), round -> round(round, line.inDoubt()))
        .put("checkRound", line.method().passes().checkRound())
        .put("order", line.method().order())
        .put("drawing", line.method().drawing().map(TorqueRecord::drawing))
        .put("threads", line.refitting().threads().word())
        .put("reuse", reuse(line.refitting().reuse()))
        .put("lock", line.refitting().lock().map(language::lock))
        .putAll(remarks(line))
        .put("rideHeight", line.visits().rideHeight())
        .put("moment", line.visits().rideHeight() ? "ride-height" : line.visits().moment().word())
        .put("twoVisits", line.visits().two())
        .put("recheck", line.visits().recheck())
        .put("source", line.origin().source())
        .put("overridden", line.origin().overridden())
        .put("replaced", line.origin().replaced())
        .list("warnings", line.origin().warnings(), this::warning);
  }

  private JsonObject remarks(TorqueLine line) {
    JsonObject json = new JsonObject();
    line.refitting()
        .remarks()
        .forEach(it -> json.put(it.key().recorded(), language.text(it.text())));
    return json;
  }

  /** As spec books write it. */
  private static String reuse(TorqueLine.Reuse reuse) {
    return switch (reuse) {
      case NEW -> "no";
      case AGAIN -> "yes";
      case NOT_STATED -> "not stated";
    };
  }

  private static JsonObject drawing(TorqueLine.OrderDrawing drawing) {
    return new JsonObject()
        .put("letter", drawing.letter())
        .put("arrangement", drawing.arrangement().name().toLowerCase(Locale.ROOT))
        .put("rows", drawing.rows());
  }

  private static JsonObject socket(TorqueLine.SocketNeed socket) {
    return new JsonObject()
        .put("drive", socket.drive().print())
        .put("points", socket.points())
        .put("impact", socket.impact())
        .put("deep", socket.deep())
        .put("owned", socket.owned())
        .put("insert", socket.insert().map(Language::insert));
  }

  private JsonObject stage(TorqueLine.StageLine stage, boolean inDoubt) {
    if (stage instanceof TorqueLine.StageLine.Torque torque) {
      JsonObject json =
          new JsonObject().put("torque", torque.target()).put("written", torque.written());
      return inDoubt ? json : json.putAll(setting(torque));
    } else if (stage instanceof TorqueLine.StageLine.Angle angle) {
      return new JsonObject().put("angle", angle.angle().value());
    } else {
      return new JsonObject().put("loosen", true);
    }
  }

  /** What follows from a figure; nothing does from one in doubt. */
  private JsonObject setting(TorqueLine.StageLine.Torque torque) {
    return new JsonObject()
        .put("second", torque.second())
        .put("band", band(torque.band()))
        .put("reading", torque.reading().map(TorqueRecord::band))
        .put("wrench", torque.wrench())
        .put("setting", torque.setting())
        .put("arrives", torque.arrives())
        .put("insideBand", torque.insideBand())
        .put("trouble", torque.trouble().map(language::source));
  }

  private static JsonObject round(TorqueLine.Round round, boolean inDoubt) {
    JsonObject json = new JsonObject().put("percent", round.percent());
    return inDoubt
        ? json
        : json.put("torque", round.torque())
            .put("wrench", round.wrench())
            .put("setting", round.setting())
            .put("with", round.with());
  }

  private static JsonObject band(Band band) {
    return new JsonObject()
        .put("from", band.low().value())
        .put("to", band.high().value())
        .put("unit", band.low().unit().symbol())
        .put("of", band.origin().name().toLowerCase(Locale.ROOT));
  }

  private JsonObject warning(TorqueLine.Warning warning) {
    return new JsonObject()
        .put("code", warning.code().word())
        .put("severity", warning.code().severity().word())
        .put("text", language.source(warning.text()));
  }
}
