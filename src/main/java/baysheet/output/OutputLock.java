package baysheet.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps a second run away from the folder of sheets while one writes to it. The system lets go of
 * the lock when its process ends, however it ends.
 */
public final class OutputLock {
  private static final String NAME = ".lock";

  /** Beyond what is written: some systems let nobody read a byte that is locked. */
  private static final long LOCKED_BYTE = 1L << 40;

  /** Of the lock's file; but for one byte it takes no room. */
  private static final long MOST_BYTES = 1_000_000;

  private final Path folder;
  private final boolean madeFolder;
  private final FileChannel channel;

  private OutputLock(Path folder, boolean madeFolder, FileChannel channel) {
    this.folder = folder;
    this.madeFolder = madeFolder;
    this.channel = channel;
  }

  /**
   * Does something while no other run can write to the folder.
   *
   * @throws UncheckedIOException as {@link #take}
   */
  public static void whileHeld(Path folder, Runnable work) {
    OutputLock lock = take(folder);
    try {
      work.run();
    } finally {
      lock.release();
    }
  }

  /**
   * Takes the lock of a folder, which is made when there is none.
   *
   * @throws UncheckedIOException naming the folder, when another run has it or nothing can be
   *     written there
   */
  static OutputLock take(Path folder) {
    boolean isNew = !Files.exists(folder);
    try {
      Files.createDirectories(folder);
      return take(folder, isNew);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write to " + folder, e);
    }
  }

  private static OutputLock take(Path folder, boolean isNew) throws IOException {
    Path file = folder.resolve(NAME);
    while (true) {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (!locked(channel)) {
        channel.close();
        throw new IOException(
            "another run of baysheet is writing there; run this again when it has ended");
      }
      if (isStillAt(file, channel)) {
        return new OutputLock(folder, isNew, channel);
      }
      channel.close();
    }
  }

  private static boolean locked(FileChannel channel) {
    try {
      return channel.tryLock(LOCKED_BYTE, 1, false) != null;
    } catch (OverlappingFileLockException e) {
      // Another thread of this process has it.
      return false;
    } catch (IOException e) {
      // Some network folders have no locks. Sheets are needed there as well.
      return true;
    }
  }

  /**
   * Whether the locked file is the one that others will find: a run that ends takes its file away,
   * and it may have done so between opening and locking. A size that the file was just given shows
   * it; to open the file once more and close it would release the lock (POSIX, fcntl).
   */
  private static boolean isStillAt(Path file, FileChannel channel) throws IOException {
    long size = 1 + ProcessHandle.current().pid() % MOST_BYTES;
    channel.truncate(0);
    channel.write(ByteBuffer.allocate(1), size - 1);
    return Files.exists(file) && Files.size(file) == size;
  }

  /** Takes the file away while it is still locked, and the folder when nothing came into it. */
  void release() {
    try {
      Files.deleteIfExists(folder.resolve(NAME));
      channel.close();
      if (madeFolder) {
        Files.delete(folder);
      }
    } catch (DirectoryNotEmptyException e) {
      // It holds sheets, as it should.
    } catch (IOException e) {
      // Where an open file cannot be deleted it stays; without the lock it means nothing.
      closed(channel);
    }
  }

  private static void closed(FileChannel channel) {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot release the lock of the folder of sheets", e);
    }
  }
}
