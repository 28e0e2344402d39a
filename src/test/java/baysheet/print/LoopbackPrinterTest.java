package baysheet.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Against a printer program that others wrote, where it is installed and can start. */
class LoopbackPrinterTest {
  private static final String PROGRAM = "ippeveprinter";
  private static final int TRIES = 50;

  @TempDir private Path folder;

  @Test
  void aPrinterProgramTakesTheDocument() throws IOException, InterruptedException {
    assumeTrue(isInstalled(), PROGRAM + " is not installed");
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    Path spool = Files.createDirectory(folder.resolve("spool"));
    Process program =
        new ProcessBuilder(
                PROGRAM,
                "-p",
                String.valueOf(port),
                "-d",
                spool.toString(),
                "-k",
                "-f",
                "application/pdf",
                "Printer of the tests")
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();
    try {
      assumeTrue(answers(program, port), () -> PROGRAM + " does not start here");
      byte[] pdf = "%PDF-1.4\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);
      Path file = Files.write(folder.resolve("501.pdf"), pdf);
      Printer printer = Printer.of("ipp://localhost:" + port + "/ipp/print");
      printer.print(new Printer.Document("501-A-0d313a", "iso_a4_210x297mm", file));
      List<Path> kept = kept(spool);
      assertEquals(1, kept.size(), kept.toString());
      assertEquals(-1, Files.mismatch(file, kept.get(0)));
    } finally {
      program.destroy();
      program.waitFor(10, TimeUnit.SECONDS);
    }
  }

  private static boolean isInstalled() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
        .anyMatch(place -> Files.isExecutable(Path.of(place, PROGRAM)));
  }

  private static boolean answers(Process program, int port) throws InterruptedException {
    for (int i = 0; i < TRIES && program.isAlive(); i++) {
      try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
        return socket.isConnected();
      } catch (IOException notYet) {
        Thread.sleep(100);
      }
    }
    return false;
  }

  private static List<Path> kept(Path spool) throws IOException, InterruptedException {
    List<Path> files = List.of();
    for (int i = 0; i < TRIES && files.isEmpty(); i++) {
      Thread.sleep(100);
      try (Stream<Path> all = Files.list(spool)) {
        files = all.filter(file -> file.toString().endsWith(".pdf")).toList();
      }
    }
    return files;
  }
}
