package baysheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Place;
import baysheet.books.Remark;
import baysheet.json.JsonObject;
import baysheet.sheet.TorqueLine;
import baysheet.wording.Language;
import baysheet.wording.LineMaker;
import java.util.List;
import org.junit.jupiter.api.Test;

class TorqueRecordTest {
  /** Without the words that the paper puts before it, since the key says them. */
  @Test
  void eachRemarkStandsUnderItsOwnKey() {
    Remark.Key colour = new Remark.Key("colour-code", "colourCode", "colour: ", "color: ");
    TorqueLine line =
        new LineMaker(1, "nut", List.of(Place.FRONT), 1)
            .remarks(new Remark(Remark.NOTE, "hold it"), new Remark(colour, "grey"))
            .build();
    JsonObject json = new TorqueRecord(Language.BRITISH).of(line);
    assertEquals(List.of("hold it", "grey"), List.of(json.value("note"), json.value("colourCode")));
  }
}
