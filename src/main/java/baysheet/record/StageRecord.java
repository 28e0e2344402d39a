package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import baysheet.sheet.TorqueLine;
import baysheet.wording.Language;

/** Writes how a stage finds the vehicle and how it leaves it. */
record StageRecord(Language language) {
  JsonObject of(Stage stage) {
    return new JsonObject()
        .put("arrival", stage.arrival().map(this::state))
        .put("leaving", stage.leaving().map(this::state))
        .put("linesElsewhere", stage.elsewhere().stream().map(TorqueLine::n).toList())
        .put("released", language.texts(stage.releasedBy()));
  }

  private JsonObject state(VehicleState state) {
    return new JsonObject()
        .put("after", state.after())
        .put("height", state.height().word())
        .put("raised", state.raised())
        .put("held", state.held().stream().map(Stage.Held::item).toList())
        .list("off", state.off(), it -> SheetRecord.tally(language, it))
        .list("slackened", state.slackened(), it -> SheetRecord.tally(language, it))
        .list("fastenersOff", state.fasteners(), StageRecord::row)
        .list("notTight", state.loose(), StageRecord::row)
        .put("open", state.open())
        .put("left", language.texts(state.left()))
        .put("written", state.written())
        .list("needed", state.needed(), this::figure);
  }

  private static JsonObject row(Stage.Row row) {
    return new JsonObject().put("line", row.n()).put("places", row.places());
  }

  private JsonObject figure(Stage.Figure figure) {
    return new JsonObject()
        .put("step", figure.step())
        .put("words", language.statements(figure.words()))
        .put("places", figure.places());
  }
}
