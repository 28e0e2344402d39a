package baysheet.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes files whole or not at all: beside their place first, forced to the device, then moved.
 * Only one run writes to the ledger at a time, so no two ever have the same name.
 */
record WholeFiles(Disk disk) {
  private static final String PART = ".part";

  /** Deletes what an interrupted run left in a folder. */
  void clear(Path folder) throws IOException {
    List<Path> parts;
    try (Stream<Path> files = Files.list(folder)) {
      parts = files.filter(it -> it.getFileName().toString().endsWith(PART)).sorted().toList();
    }
    for (Path part : parts) {
      disk.delete(part);
    }
  }

  void write(Path file, byte[] content) throws IOException {
    Path part = file.resolveSibling("." + file.getFileName() + PART);
    try {
      disk.write(part, content);
      disk.force(part);
      disk.move(part, file);
    } catch (IOException e) {
      drop(part, e);
      throw e;
    }
  }

  private void drop(Path part, IOException why) {
    try {
      disk.delete(part);
    } catch (IOException e) {
      why.addSuppressed(e);
    }
  }

  static boolean holds(Path file, byte[] content) throws IOException {
    return Files.isRegularFile(file)
        && Files.size(file) == content.length
        && Arrays.equals(Files.readAllBytes(file), content);
  }
}
