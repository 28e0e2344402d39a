package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import baysheet.output.OutputLock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two runs never write to one folder at the same time, and a run that was killed leaves it free.
 */
class OutputLockTest {
  private static final String DAY = Garage.DAY + "/";

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  @Test
  void aSecondRunIsKeptAwayWhileOneWrites() {
    OutputLock.whileHeld(
        garage.out,
        () -> {
          Garage.Run run = garage.sheets();
          assertEquals(Exit.FILES, run.exit());
          run.says(
              "cannot write to OUT: another run of baysheet is writing there;"
                  + " run this again when it has ended");
          run.says("0 of 3 sheets were written; all were left as they were");
          assertEquals(Set.of(".lock"), garage.written().keySet());
        });
    assertEquals(Exit.DONE, garage.sheets().exit());
    assertFalse(garage.written().containsKey(".lock"));
  }

  /** Locks between processes are another thing than locks between threads of one. */
  @Test
  void aSecondProcessIsKeptAwayWhileOneWrites() throws IOException {
    Path said = folder.resolve("said");
    String[] sheets = {"sheets", garage.job("502").toString(), "-o", garage.out.toString()};
    OutputLock.whileHeld(
        garage.out,
        () -> {
          OwnProcess second = OwnProcess.run(folder, "C.UTF-8", said, sheets);
          assertEquals(Exit.FILES, second.exit(), second.err());
          assertTrue(second.err().contains("another run of baysheet is writing"), second.err());
        });
    OwnProcess third = OwnProcess.run(folder, "C.UTF-8", said, sheets);
    assertEquals(Exit.DONE, third.exit(), third.err());
    assertEquals(Set.of(DAY + "502.pdf"), garage.written().keySet());
  }

  @Test
  void theLockOfARunThatWasKilledKeepsNobodyAway() throws IOException {
    Files.createDirectories(garage.out);
    Files.writeString(garage.out.resolve(".lock"), "4711 123456789");
    assertEquals(Exit.DONE, garage.sheets().exit());
    assertFalse(garage.written().containsKey(".lock"));
  }
}
