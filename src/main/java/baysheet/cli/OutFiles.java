package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes files whole or not at all. */
final class OutFiles {
  private OutFiles() {}

  /**
   * Writes beside the target, then moves over it; a failed run leaves the file that was there.
   *
   * @throws UncheckedIOException naming the path
   */
  static void write(Path target, byte[] content) {
    try {
      Files.createDirectories(target.toAbsolutePath().getParent());
      Path beside = beside(target);
      try {
        Files.write(beside, content);
        move(beside, target);
      } finally {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + target, e);
    }
  }

  /**
   * Takes away a file that would no longer be true.
   *
   * @throws UncheckedIOException naming the path
   */
  static void remove(Path target) {
    try {
      Files.deleteIfExists(target);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot remove " + target, e);
    }
  }

  /** Of this run alone. A temporary file proper could be read by nobody else, as a printer must. */
  private static Path beside(Path target) {
    return target
        .toAbsolutePath()
        .resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      // Some network folders cannot; replacing is then the best there is.
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
