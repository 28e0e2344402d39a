package baysheet.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * All that is done to files and folders when sheets are written. Tests pass one that fails at a
 * chosen operation.
 */
interface Disk {
  /** The disk of this machine. */
  Disk REAL = new Real();

  /** Makes a folder and those above it; nothing happens where it exists. */
  void createFolders(Path folder) throws IOException;

  /** Writes a file from its start. */
  void write(Path file, byte[] content) throws IOException;

  /** Returns when the file's content is on the device, not only in the system's memory. */
  void force(Path file) throws IOException;

  /** Gives a file another name, in one step where the file system can; replaces what is there. */
  void move(Path from, Path to) throws IOException;

  /** Deletes a file; nothing happens where there is none. */
  void delete(Path file) throws IOException;

  /** Files as the Java library handles them. */
  final class Real implements Disk {
    private Real() {}

    @Override
    public void createFolders(Path folder) throws IOException {
      Files.createDirectories(folder);
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
      Files.write(file, content);
    }

    @Override
    public void force(Path file) throws IOException {
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
        channel.force(true);
      }
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      try {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        // Some network folders cannot; replacing is then the best there is.
        Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
      }
    }

    @Override
    public void delete(Path file) throws IOException {
      Files.deleteIfExists(file);
    }
  }
}
