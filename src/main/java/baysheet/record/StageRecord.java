package baysheet.record;

import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import baysheet.sheet.TorqueLine;
import baysheet.wording.Language;
import java.io.IOException;
import java.util.Optional;

/** Writes how a stage finds the vehicle and how it leaves it. */
record StageRecord(Json json, Language language) {
  void write(Stage stage) throws IOException {
    state("arrival", stage.arrival());
    state("leaving", stage.leaving());
    json.numbers("linesElsewhere", stage.elsewhere().stream().map(TorqueLine::n).toList());
    json.texts("released", language.texts(stage.releasedBy()));
  }

  private void state(String key, Optional<VehicleState> state) throws IOException {
    if (state.isPresent()) {
      json.object(key, () -> state(state.get()));
    }
  }

  private void state(VehicleState state) throws IOException {
    json.number("after", state.after());
    json.text("height", state.height().word());
    json.texts("raised", state.raised());
    json.texts("held", state.held().stream().map(Stage.Held::item).toList());
    json.list("off", state.off(), it -> SheetRecord.tally(json, language, it));
    json.list("slackened", state.slackened(), it -> SheetRecord.tally(json, language, it));
    json.list("fastenersOff", state.fasteners(), this::row);
    json.list("notTight", state.loose(), this::row);
    json.texts("open", state.open());
    json.texts("left", language.texts(state.left()));
    json.numbers("written", state.written());
    json.list("needed", state.needed(), this::figure);
  }

  private void row(Stage.Row row) throws IOException {
    json.object(
        () -> {
          json.number("line", row.n());
          json.texts("places", row.places());
        });
  }

  private void figure(Stage.Figure figure) throws IOException {
    json.object(
        () -> {
          json.number("step", figure.step());
          json.texts("words", language.statements(figure.words()));
          json.texts("places", figure.places());
        });
  }
}
