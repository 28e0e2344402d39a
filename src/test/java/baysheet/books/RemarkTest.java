package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RemarkTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "nothing",
      value = {
        "hold nut: 21 mm spanner | 21 mm spanner",
        "hold rod: 7 mm key, from above | 7 mm key",
        "hold rod: 12.5 mm spanner. Keep it level. | 12.5 mm spanner",
        "hold the pin still | nothing",
        "threads seize: 6 mm key | nothing"
      })
  void theToolOfANoteIsWhatFollowsItsColon(String note, String tool) {
    assertEquals(Optional.ofNullable(tool), new Remark(Remark.NOTE, note).holder());
  }
}
