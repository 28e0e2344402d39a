package baysheet.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * All that is done to files and folders when sheets and events are written. Tests pass one that
 * fails at a chosen operation.
 */
public interface Disk {
  /** The disk of this machine. */
  Disk REAL = new Real();

  /** Makes a folder and those above it; nothing happens where it exists. */
  void createFolders(Path folder) throws IOException;

  /** Writes a file from its start. */
  void write(Path file, byte[] content) throws IOException;

  /** Adds to the end of a file, which is made where there is none. */
  void append(Path file, byte[] content) throws IOException;

  /** Shortens a file to its first {@code size} bytes. */
  void truncate(Path file, long size) throws IOException;

  /** Returns when the file's content is on the device, not only in the system's memory. */
  void force(Path file) throws IOException;

  /** Gives a file another name, in one step where the file system can; replaces what is there. */
  void move(Path from, Path to) throws IOException;

  /** Deletes a file; nothing happens where there is none. */
  void delete(Path file) throws IOException;

  /**
   * Keeps all others away until it is closed, or until this process ends.
   *
   * @param file made where there is none, and left in place: whoever takes it away while another
   *     waits for it would let two in
   * @throws IOException when somebody else has it, or the file system has no locks
   */
  Closeable lock(Path file) throws IOException;

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
    public void append(Path file, byte[] content) throws IOException {
      Files.write(file, content, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    @Override
    public void truncate(Path file, long size) throws IOException {
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
        channel.truncate(size);
      }
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

    @Override
    public Closeable lock(Path file) throws IOException {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      try {
        if (channel.tryLock() != null) {
          return channel;
        }
      } catch (OverlappingFileLockException e) {
        // Another thread of this process has it.
      } catch (IOException e) {
        channel.close();
        throw e;
      }
      channel.close();
      throw new IOException(
          "another run of baysheet is writing there; run this again when it has ended");
    }
  }
}
