package baysheet.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something a person has to put right, as data.
 *
 * @param code the kind of problem
 * @param at where it stands
 * @param what what is wrong, one sentence without a full stop
 * @param expected what would have been right, where that can be said
 * @param nearest the known name most like what was written
 * @param line what to write, as it would stand in the file, on one line
 * @param related further places to look at, each with a phrase that says what is there
 */
public record Problem(
    ProblemCode code,
    Span at,
    String what,
    Optional<String> expected,
    Optional<String> nearest,
    Optional<String> line,
    List<Located<String>> related) {
  /** A longer sentence is cut: names and values in it come from files and may have any length. */
  private static final int LONGEST = 600;

  public Problem {
    what = TerminalText.bounded(what, LONGEST);
    expected = expected.map(text -> TerminalText.bounded(text, LONGEST));
    nearest = nearest.map(text -> TerminalText.bounded(text, LONGEST));
    line = line.map(text -> TerminalText.bounded(text, LONGEST));
    related = List.copyOf(related);
  }

  /** A problem with nothing but its sentence. */
  public static Problem of(ProblemCode code, Span at, String what) {
    return new Problem(
        code, at, what, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
  }

  /** The same problem, saying what was expected. */
  public Problem expecting(String text) {
    return new Problem(code, at, what, Optional.of(text), nearest, line, related);
  }

  /** The same problem, with the nearest known name when there is one. */
  public Problem near(Optional<String> name) {
    return new Problem(code, at, what, expected, name, line, related);
  }

  /** The same problem, with a line that would put it right once its gaps are filled in. */
  public Problem writing(String text) {
    return new Problem(code, at, what, expected, nearest, Optional.of(text), related);
  }

  /** The same problem, pointing at one more place. */
  public Problem seeAlso(String word, Span place) {
    List<Located<String>> more = new ArrayList<>(related);
    more.add(new Located<>(word, place));
    return new Problem(code, at, what, expected, nearest, line, more);
  }

  /** Whether this stops the job. */
  public boolean isError() {
    return code.severity() == ProblemCode.Severity.ERROR;
  }
}
