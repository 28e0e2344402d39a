package baysheet.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Fills a new or empty folder with files, with all of them or with none. */
public final class NewFolder {
  private static final String TEMPORARY = ".start";

  private NewFolder() {}

  /**
   * Whether a folder could be made here without touching anything: there is none, or an empty one.
   */
  public static boolean isFree(Path folder) {
    return !Files.exists(folder) || (Files.isDirectory(folder) && entries(folder).isEmpty());
  }

  /** Whether an earlier attempt to fill the folder was killed. */
  public static boolean isInterrupted(Path folder) {
    return Files.isDirectory(folder)
        && entries(folder).stream()
            .anyMatch(entry -> entry.getFileName().toString().startsWith(TEMPORARY));
  }

  /**
   * Writes everything into a folder within, then moves it up. When that fails the folder is as it
   * was before.
   *
   * @param files texts by file, as seen from the folder
   * @throws UncheckedIOException naming the folder
   */
  public static void write(Path folder, Map<String, String> files) {
    boolean isNew = !Files.exists(folder);
    try {
      Files.createDirectories(folder);
      try {
        fill(folder, files);
      } catch (IOException | UncheckedIOException e) {
        empty(folder, isNew);
        throw e;
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + folder, e);
    }
  }

  private static void fill(Path folder, Map<String, String> files) throws IOException {
    Path within = Files.createTempDirectory(folder, TEMPORARY);
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = within.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
    }
    for (Path entry : entries(within)) {
      Files.move(entry, folder.resolve(entry.getFileName().toString()));
    }
    Files.delete(within);
  }

  private static void empty(Path folder, boolean remove) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        if (remove || !path.equals(folder)) {
          Files.delete(path);
        }
      }
    }
  }

  private static List<Path> entries(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }
}
