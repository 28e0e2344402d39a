package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Which job files a command line means. */
final class DayFolders {
  private DayFolders() {}

  /** The name of the folder in which a job file stands. */
  static String day(Path file) {
    Path folder = file.toAbsolutePath().normalize().getParent();
    return folder == null || folder.getFileName() == null ? "" : folder.getFileName().toString();
  }

  /** The job files of a folder, or the file itself. */
  static List<Path> jobs(Path path) {
    return Files.isDirectory(path) ? YamlFiles.in(path) : List.of(path);
  }

  /** Every job file of a shop folder: those in folders that are not its own. */
  static List<Path> all(Path root) {
    List<Path> jobs = new ArrayList<>();
    try (Stream<Path> folders = Files.list(root)) {
      folders
          .filter(Files::isDirectory)
          .filter(
              folder ->
                  !List.of("vehicles", "procedures", "catalogue", NewShop.SCHEMAS)
                      .contains(folder.getFileName().toString()))
          .sorted()
          .forEach(folder -> jobs.addAll(YamlFiles.in(folder)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + root, e);
    }
    return jobs;
  }
}
