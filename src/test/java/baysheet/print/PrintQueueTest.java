package baysheet.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrintQueueTest {
  @TempDir private Path folder;
  private Printer.Document document;

  @BeforeEach
  void open() {
    document =
        new Printer.Document("501-A-0d313a", "na_letter_8.5x11in", folder.resolve("501.pdf"));
  }

  /** A program in place of lp, as a shell script. */
  private String script(String lines) throws IOException {
    assumeTrue(
        FileSystems.getDefault().supportedFileAttributeViews().contains("posix"),
        "the system has no shell");
    Path script = folder.resolve("lp");
    Files.writeString(script, "#!/bin/sh\n" + lines);
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwx------"));
    return script.toString();
  }

  @Test
  void theQueueGetsTheFileUnscaledAndOneSided() throws IOException {
    Path said = folder.resolve("said");
    String program = script("for word in \"$@\"; do echo \"$word\"; done > " + said + "\n");
    assertEquals(List.of(), new PrintQueue("front desk", program).print(document));
    assertEquals(
        List.of(
            "-d",
            "front desk",
            "-t",
            "501-A-0d313a",
            "-o",
            "print-scaling=none",
            "-o",
            "sides=one-sided",
            "-o",
            "media=na_letter_8.5x11in",
            "--",
            document.file().toString()),
        Files.readAllLines(said));
  }

  @Test
  void whatTheQueueSaysIsHandedOn() throws IOException {
    String program = script("echo 'no such queue' >&2\nexit 1\n");
    String message =
        assertThrows(IOException.class, () -> new PrintQueue("x", program).print(document))
            .getMessage();
    assertTrue(message.startsWith("no such queue; lpstat -e"), message);
  }

  @Test
  void aSystemWithoutQueuesIsSaid() {
    PrintQueue queue = new PrintQueue("x", folder.resolve("nothing").toString());
    String message = assertThrows(IOException.class, () -> queue.print(document)).getMessage();
    assertTrue(message.contains("no program lp"), message);
  }
}
