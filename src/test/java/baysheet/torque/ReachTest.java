package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachTest {
  @ParameterizedTest
  @CsvSource({
    "CROW_FOOT, crow-foot, crow-foot",
    "FLARE_NUT_CROW_FOOT, flare-nut-crow-foot, flare-nut crow-foot",
    "OPEN_ENDED_INSERT, open-ended-insert, open-ended insert",
    "RING_INSERT, ring-insert, ring insert"
  })
  void aToolIsWrittenInOneWordAndSpokenInSome(Reach.Tool tool, String written, String spoken) {
    assertEquals(written, tool.word());
    assertEquals(spoken, tool.print());
  }
}
