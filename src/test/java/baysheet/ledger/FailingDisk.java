package baysheet.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.Predicate;

/**
 * A disk that fails at one operation, or from one on; how much of a file is then written varies.
 */
public final class FailingDisk implements Disk {
  private final int failing;
  private final boolean forGood;
  private final int parts;
  private final Predicate<Path> counted;
  private int operations;

  /**
   * @param parts how many quarters of what was to be written are there after a failure
   */
  FailingDisk(int failing, boolean forGood, int parts) {
    this(failing, forGood, parts, file -> true);
  }

  /**
   * @param counted which files' operations are counted, and fail
   */
  public FailingDisk(int failing, boolean forGood, int parts, Predicate<Path> counted) {
    this.failing = failing;
    this.forGood = forGood;
    this.parts = parts;
    this.counted = counted;
  }

  public boolean wasReached() {
    return operations >= failing;
  }

  private boolean fails(Path file) {
    if (!counted.test(file)) {
      return false;
    }
    operations++;
    return operations == failing || forGood && operations > failing;
  }

  private void failIfDue(Path file) throws IOException {
    if (fails(file)) {
      throw new IOException("No space left on device");
    }
  }

  private interface Writing {
    void write(byte[] content) throws IOException;
  }

  private void write(Path file, byte[] content, Writing real) throws IOException {
    if (fails(file)) {
      real.write(Arrays.copyOf(content, content.length * parts / 4));
      throw new IOException("No space left on device");
    }
    real.write(content);
  }

  @Override
  public void createFolders(Path folder) throws IOException {
    failIfDue(folder);
    REAL.createFolders(folder);
  }

  @Override
  public void write(Path file, byte[] content) throws IOException {
    write(file, content, part -> REAL.write(file, part));
  }

  @Override
  public void append(Path file, byte[] content) throws IOException {
    write(file, content, part -> REAL.append(file, part));
  }

  @Override
  public void truncate(Path file, long size) throws IOException {
    failIfDue(file);
    REAL.truncate(file, size);
  }

  @Override
  public void force(Path file) throws IOException {
    failIfDue(file);
    REAL.force(file);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    failIfDue(to);
    REAL.move(from, to);
  }

  @Override
  public void delete(Path file) throws IOException {
    failIfDue(file);
    REAL.delete(file);
  }

  @Override
  public Closeable lock(Path file) throws IOException {
    failIfDue(file);
    return REAL.lock(file);
  }
}
