package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whatever a file holds, what is said of it has an end. */
class BoundedProblemsTest {
  private static final Source FILE = new Source("a.yaml", "a\n".repeat(100_000));

  @Test
  void ofOneFileTheFirstProblemsAreKept() {
    Problems problems = new Problems();
    for (int line = 1; line <= 10_000; line++) {
      problems.add(Problem.of(ProblemCode.UNKNOWN_KEY, FILE.at(line, 1), "slip " + line));
    }
    problems.add(
        Problem.of(ProblemCode.UNKNOWN_KEY, new Source("b.yaml", "b").whole(), "of another"));
    List<Problem> all = problems.all();
    assertEquals(Problems.MOST_PER_FILE + 2, all.size());
    assertEquals(ProblemCode.MORE_PROBLEMS, all.get(Problems.MOST_PER_FILE).code());
    assertEquals("of another", all.get(Problems.MOST_PER_FILE + 1).what());
  }

  @Test
  void anErrorBehindManyWarningsStaysAnError() {
    Problems problems = new Problems();
    for (int line = 1; line <= 1_000; line++) {
      problems.add(Problem.of(ProblemCode.TEXT_CUT, FILE.at(line, 1), "slip " + line));
    }
    assertTrue(!problems.hasErrors());
    problems.add(Problem.of(ProblemCode.UNKNOWN_KEY, FILE.at(2_000, 1), "the error"));
    assertTrue(problems.hasErrors());
  }

  @Test
  void collectionsOfProblemsAreBoundedTogether() {
    Problems all = new Problems();
    for (int i = 0; i < 10; i++) {
      Problems own = new Problems();
      for (int line = 1; line <= 100; line++) {
        own.add(Problem.of(ProblemCode.UNKNOWN_KEY, FILE.at(i * 100 + line, 1), "slip"));
      }
      all.addAll(own);
    }
    assertEquals(Problems.MOST_PER_FILE + 1, all.all().size());
  }

  /** Comparing takes the product of two lengths: no name in use is as long as that. */
  @Test
  void noNearestNameIsLookedForOfALongText() {
    List<String> known = Collections.nCopies(1_000, "n".repeat(900));
    assertTimeoutPreemptively(
        Duration.ofSeconds(1),
        () -> assertEquals(Optional.empty(), Nearest.of("n".repeat(899), known)));
  }
}
