package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SummaryTest {
  private static final Problem ERROR =
      Problem.of(ProblemCode.UNKNOWN_KEY, new Source("a.yaml", "").whole(), "what");
  private static final Problem WARNING =
      Problem.of(ProblemCode.WRENCH, new Source("b.yaml", "").whole(), "what");

  @Test
  void errorsAndWarningsAreCountedApartAndFilesOnce() {
    Problem second = Problem.of(ProblemCode.UNKNOWN_KEY, new Source("a.yaml", "").at(2, 1), "what");
    assertEquals(
        "2 errors and 1 warning in 2 files: stop.",
        Summary.of(List.of(ERROR, second, WARNING), "stop").line());
  }

  @Test
  void notesAreNoWarnings() {
    Problem note = Problem.of(ProblemCode.HIGH_TORQUE, new Source("b.yaml", "").at(1, 1), "what");
    assertEquals("1 note in 1 file.", Summary.of(List.of(note), "").line());
    assertEquals(
        "1 error, 1 warning and 1 note in 2 files.",
        Summary.of(List.of(ERROR, WARNING, note), "").line());
  }

  @Test
  void whatThereIsNoneOfIsNotNamed() {
    assertEquals("1 error in 1 file.", Summary.of(List.of(ERROR), "").line());
    assertEquals("1 warning in 1 file.", Summary.of(List.of(WARNING), "").line());
    assertEquals("no problems: 3 sheets.", Summary.of(List.of(), "3 sheets").line());
  }
}
