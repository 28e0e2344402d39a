package baysheet.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A printer that the system knows by a name, reached with the POSIX program {@code lp}. */
final class PrintQueue implements Printer {
  private final String name;
  private final String program;

  PrintQueue(String name) {
    this(name, "lp");
  }

  /** Tests pass another program. */
  PrintQueue(String name, String program) {
    this.name = name;
    this.program = program;
  }

  @Override
  public List<String> print(Document document) throws IOException {
    Process process = start(document);
    String said;
    try {
      said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
      if (process.waitFor() == 0) {
        return List.of();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      process.destroy();
      throw new IOException("interrupted while the queue took the document", e);
    }
    throw new IOException(
        (said.isEmpty() ? "lp failed without a message" : said.replaceAll("\\s*\\R\\s*", "; "))
            + "; lpstat -e lists the queues of this machine");
  }

  private Process start(Document document) throws IOException {
    List<String> command =
        List.of(
            program,
            "-d",
            name,
            "-t",
            document.title(),
            "-o",
            "print-scaling=none",
            "-o",
            "sides=one-sided",
            "-o",
            "media=" + document.media(),
            "--",
            document.file().toString());
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getOutputStream().close();
      return process;
    } catch (IOException e) {
      throw new IOException(
          "this system has no program lp for the queue \""
              + name
              + "\"; give the address of the printer, such as ipp://192.168.1.20/ipp/print",
          e);
    }
  }
}
