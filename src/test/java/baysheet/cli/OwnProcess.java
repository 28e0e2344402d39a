package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The program run as a process of its own: locale, streams and locks between processes cannot be
 * tried from within.
 *
 * @param err what it complained of
 */
record OwnProcess(int exit, String err) {

  /**
   * Runs it to its end.
   *
   * @param here the folder in which it runs
   * @param locale as in LC_ALL
   * @param out where its output goes
   */
  static OwnProcess run(Path here, String locale, Path out, String... arguments) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "baysheet.cli.Main"));
    command.addAll(List.of(arguments));
    try {
      Path err = Files.createTempFile("err", ".txt");
      ProcessBuilder builder =
          new ProcessBuilder(command)
              .directory(here.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().put("LC_ALL", locale);
      int exit = builder.start().waitFor();
      String said = Files.readString(err);
      Files.delete(err);
      return new OwnProcess(exit, said);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot run " + command, e);
    } catch (InterruptedException e) {
      throw new IllegalStateException("interrupted while running " + command, e);
    }
  }
}
