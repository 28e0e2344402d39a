package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In the locale C, letters outside ASCII are lost; that is answered with what to set. */
class TerminalEncodingTest {
  private final TerminalEncoding ascii = new TerminalEncoding("ANSI_X3.4-1968");

  @TempDir private Path folder;

  /** Of the last process. */
  private int exit;

  @Test
  void nothingIsSaidWhereNothingIsLost() {
    assertEquals(
        Optional.empty(), ascii.complaint(List.of("check", "garage"), "/home/m\u00FCller"));
  }

  @ParameterizedTest
  @CsvSource({"w\uFFFD\uFFFDrk/2026-03-02, /home", "check, /home/m\uFFFDller"})
  void aLostLetterIsAnsweredWithWhatToSet(String argument, String here) {
    String said = ascii.complaint(List.of("sheets", argument), here).orElseThrow();
    assertTrue(said.contains("LC_ALL to C.UTF-8"), said);
    assertTrue(said.contains("ANSI_X3.4-1968"), said);
  }

  private String run(Path here, String locale, Path out, String... arguments) {
    OwnProcess process = OwnProcess.run(here, locale, out, arguments);
    exit = process.exit();
    return process.err();
  }

  @Test
  void theLocaleCIsAnsweredWithWhatToSetAndUtf8Works() throws IOException {
    Path here = Files.createDirectories(folder.resolve("garage"));
    assertEquals(
        Exit.DONE, Garage.in(here).run("start", here.resolve("w\u00E9rk").toString()).exit());
    String said = run(here, "C", folder.resolve("out"), "check", "w\u00E9rk");
    // Newer machines read UTF-8 whatever the locale says; then it must simply work.
    if (exit != Exit.DONE) {
      assertEquals(Exit.USAGE, exit, said);
      assertTrue(said.contains("LC_ALL to C.UTF-8"), said);
    }
    said = run(here, "C.UTF-8", folder.resolve("out"), "check", "w\u00E9rk");
    assertEquals(Exit.DONE, exit, said);
  }

  /** On Linux a device that is always full. */
  @Test
  void outputThatIsLostIsAFailure() throws IOException {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full));
    Garage garage = Garage.in(folder);
    String said = run(garage.root, "C.UTF-8", full, "check", "--json");
    assertEquals(Exit.FILES, exit, said);
    assertTrue(said.contains("the output could not be written in full"), said);
    for (String command : List.of("torque 110Nm", "--help")) {
      run(garage.root, "C.UTF-8", full, command.split(" "));
      assertEquals(Exit.FILES, exit, command);
    }
  }
}
