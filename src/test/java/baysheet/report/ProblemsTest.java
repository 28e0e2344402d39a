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

  @Test
  void whatSeveralJobsSayAboutOnePlaceIsReportedOnce() {
    Problem first = Problem.of(ProblemCode.NO_STANDS, JOB.at(1, 1), "no stands");
    Problems problems = new Problems();
    problems.add(first.seeAlso("job", JOB.at(2, 1)));
    problems.add(first.seeAlso("job", JOB.at(1, 2)));
    assertEquals(List.of(first.seeAlso("job", JOB.at(2, 1))), problems.all());
  }

  @Test
  void whatFollowsFromAProblemAtTheSamePlaceIsNotReported() {
    Problem cause = Problem.of(ProblemCode.LISTED_TWICE, new Span(JOB, 2, 1, 2, 2), "twice");
    Problem follows = Problem.of(ProblemCode.WORK_TWICE, JOB.at(2, 1), "twice again");
    Problem other = Problem.of(ProblemCode.UNKNOWN_BAY, JOB.at(1, 1), "elsewhere");
    Problems later = new Problems();
    later.add(follows);
    later.add(other);
    Problems problems = new Problems();
    problems.add(cause);
    problems.addElsewhere(later);
    assertEquals(List.of(cause, other), problems.all());
  }

  @Test
  void anErrorInAnotherFileStopsTheJobWithoutAMessage() {
    Problems job = new Problems();
    job.stop();
    assertTrue(job.hasErrors());
    Problems run = new Problems();
    run.addAll(job);
    assertTrue(run.hasErrors());
    assertEquals(List.of(), run.all());
  }
}
