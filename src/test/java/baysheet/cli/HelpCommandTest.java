package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import baysheet.report.ProblemCode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HelpCommandTest {
  private static final List<String> COMMANDS =
      List.of("sheets", "check", "explain", "torque", "start", "help");

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private String help(String... topic) {
    Garage.Run run =
        garage.run(topic.length == 0 ? new String[] {"help"} : new String[] {"help", topic[0]});
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals("", run.err());
    return run.out();
  }

  @Test
  void aCodePrintsItsPage() {
    assertEquals(ProblemCode.of("unknown-key").orElseThrow().page(), help("unknown-key"));
  }

  @Test
  void everyCodeOfThePagesIsAnswered() {
    List<String> codes = Stream.of(ProblemCode.values()).map(ProblemCode::word).toList();
    assertTrue(codes.size() > 70, codes.size() + " codes");
    codes.forEach(code -> assertTrue(help(code).startsWith("# " + code + "\n"), code));
  }

  @Test
  void aCommandPrintsItsOwnHelp() {
    for (String command : COMMANDS) {
      assertTrue(help(command).startsWith("Usage: baysheet " + command + " "), command);
    }
  }

  @Test
  void withoutATopicTheCommandsAreListed() {
    String help = help();
    assertTrue(help.startsWith("Usage: baysheet "), help);
    COMMANDS.forEach(command -> assertTrue(help.contains("\n  " + command + " "), command));
  }

  @Test
  void aMisspeltTopicIsAnsweredWithTheNearest() {
    mistake("unknown-kye", "Did you mean unknown-key?");
    mistake("shets", "Did you mean sheets?");
    mistake("fhqwhgads", "Expected: a code, which the last line of each problem names.");
  }

  private void mistake(String topic, String answer) {
    Garage.Run run = garage.run("help", topic);
    assertEquals(Exit.USAGE, run.exit());
    assertEquals("", run.out());
    run.says("there is no problem code and no command \"" + topic + "\".\n    " + answer);
  }
}
