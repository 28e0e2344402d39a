package baysheet.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Copies and removes whole folders. */
final class Folders {
  private Folders() {}

  static void copy(Path from, Path to) throws IOException {
    for (Path file : walk(from)) {
      Path target = to.resolve(from.relativize(file));
      if (Files.isDirectory(file)) {
        Files.createDirectories(target);
      } else {
        Files.copy(file, target);
      }
    }
  }

  static void remove(Path folder) throws IOException {
    for (Path file : walk(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
      Files.delete(file);
    }
  }

  private static List<Path> walk(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.toList();
    }
  }
}
