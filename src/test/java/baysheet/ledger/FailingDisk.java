package baysheet.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * A disk that fails at one operation, or from one on; how much of a file is then written varies.
 */
final class FailingDisk implements Disk {
  private final int failing;
  private final boolean forGood;
  private final int parts;
  private int operations;

  /**
   * @param parts how many quarters of what was to be written are there after a failure
   */
  FailingDisk(int failing, boolean forGood, int parts) {
    this.failing = failing;
    this.forGood = forGood;
    this.parts = parts;
  }

  boolean wasReached() {
    return operations >= failing;
  }

  private boolean fails() {
    operations++;
    return operations == failing || forGood && operations > failing;
  }

  private void failIfDue() throws IOException {
    if (fails()) {
      throw new IOException("No space left on device");
    }
  }

  private interface Writing {
    void write(byte[] content) throws IOException;
  }

  private void write(byte[] content, Writing real) throws IOException {
    if (fails()) {
      real.write(Arrays.copyOf(content, content.length * parts / 4));
      throw new IOException("No space left on device");
    }
    real.write(content);
  }

  @Override
  public void createFolders(Path folder) throws IOException {
    failIfDue();
    REAL.createFolders(folder);
  }

  @Override
  public void write(Path file, byte[] content) throws IOException {
    write(content, part -> REAL.write(file, part));
  }

  @Override
  public void append(Path file, byte[] content) throws IOException {
    write(content, part -> REAL.append(file, part));
  }

  @Override
  public void truncate(Path file, long size) throws IOException {
    failIfDue();
    REAL.truncate(file, size);
  }

  @Override
  public void force(Path file) throws IOException {
    failIfDue();
    REAL.force(file);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    failIfDue();
    REAL.move(from, to);
  }

  @Override
  public void delete(Path file) throws IOException {
    failIfDue();
    REAL.delete(file);
  }

  @Override
  public Closeable lock(Path file) throws IOException {
    failIfDue();
    return REAL.lock(file);
  }
}
