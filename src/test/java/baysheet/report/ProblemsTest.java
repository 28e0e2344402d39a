package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemsTest {
  private static final Source JOB = new Source("jobs/2417.yaml", "a\nb\n");

  @Test
  void theSameProblemIsKeptOnceAndInItsFirstPlace() {
    Problem first = Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "what");
    Problem second = Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(2, 1), "what");
    Problems problems = new Problems();
    List.of(first, second, first).forEach(problems::add);
    assertEquals(List.of(first, second), problems.all());
  }

  @Test
  void warningsAloneStopNothing() {
    Problems problems = new Problems();
    problems.add(Problem.of(ProblemCode.WRENCH, JOB.at(1, 1), "what"));
    assertFalse(problems.hasErrors());
    problems.add(Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "what"));
    assertTrue(problems.hasErrors());
  }

  @Test
  void aSpanThatEndsBeforeItBeginsIsAFaultOfOurs() {
    var thrown = assertThrows(IllegalArgumentException.class, () -> new Span(JOB, 2, 3, 2, 2));
    assertEquals("span 2:3 to 2:2", thrown.getMessage());
  }
}
