package baysheet.cli;

import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Parsed;
import baysheet.torque.Tightening;
import java.util.List;
import java.util.regex.Pattern;

/** Reads a torque or several stages from a command line: {@code 25 N·m, 50 N·m, +90°}. */
final class StagesText {
  private static final Pattern BRACKETS = Pattern.compile("^\\[(.*)]$");

  // A comma between digits would be a decimal one, which is no stage's end but a slip.
  private static final Pattern BETWEEN =
      Pattern.compile("(?<![0-9]),\\s*|,\\s+|\\s+(?=\\+\\s*[0-9]+(?:\\.[0-9]+)?\\s*(?:°|º|deg))");

  private StagesText() {}

  static ParseResult<Tightening.Stages> parse(String text) {
    String bare = BRACKETS.matcher(text.strip()).replaceFirst("$1");
    return Tightening.parse(List.of(BETWEEN.split(bare)))
        .then(
            read ->
                read instanceof Tightening.Stages stages
                    ? new Parsed<>(stages)
                    : new ParseFailure<>(
                        '"' + text.strip() + "\" is no torque", "a torque such as 110 N·m"));
  }
}
