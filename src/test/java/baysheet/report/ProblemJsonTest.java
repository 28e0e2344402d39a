package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProblemJsonTest {
  private static final Source JOB = new Source("jobs/2417.yaml", "bey: 1\n");

  @Test
  void everyFieldStandsUnderItsKey() {
    Problem problem =
        Problem.of(ProblemCode.WRENCH, new Span(JOB, 1, 1, 1, 4), "no key \"bey\"")
            .expecting("bay")
            .near(Optional.of("bay"))
            .seeAlso("first", JOB.at(1, 6));
    assertEquals(
        """
        {
          "format" : 1,
          "problems" : [
            {
              "code" : "wrench",
              "severity" : "warning",
              "at" : {
                "file" : "jobs/2417.yaml",
                "line" : 1,
                "column" : 1,
                "endLine" : 1,
                "endColumn" : 4
              },
              "what" : "no key \\"bey\\"",
              "expected" : "bay",
              "nearest" : "bay",
              "related" : [
                {
                  "word" : "first",
                  "at" : {
                    "file" : "jobs/2417.yaml",
                    "line" : 1,
                    "column" : 6,
                    "endLine" : 1,
                    "endColumn" : 6
                  }
                }
              ]
            }
          ],
          "errors" : 0,
          "warnings" : 1,
          "notes" : 0,
          "files" : 1,
          "consequence" : "go on"
        }
        """,
        print(List.of(problem)));
  }

  @Test
  void whatIsNotKnownHasNoKey() {
    String json = print(List.of(Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "what")));
    assertEquals(-1, json.indexOf("expected"));
    assertEquals(-1, json.indexOf("nearest"));
  }

  private static String print(List<Problem> problems) {
    return ProblemJson.print(problems, Summary.of(problems, "go on"));
  }
}
