package baysheet.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;

/**
 * What the package holds beside the jar, written from the commands at build time: the manual page,
 * and the completion for bash, zsh and fish.
 */
final class PackageFiles {
  private PackageFiles() {}

  /** Writes them below the folder that is given. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    for (Map.Entry<String, String> file : files().entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  /** Texts by file. */
  static Map<String, String> files() {
    Console silent =
        new Console(
            new PrintWriter(PrintWriter.nullWriter()),
            new PrintWriter(PrintWriter.nullWriter()),
            false);
    CommandLine program = Main.commandLine("", silent, LocalDate::now);
    return Map.of(
        "man/man1/baysheet.1", ManualPage.of(program),
        "completion/baysheet.bash", AutoComplete.bash("baysheet", program),
        "completion/baysheet.fish", FishCompletion.of(program));
  }
}
