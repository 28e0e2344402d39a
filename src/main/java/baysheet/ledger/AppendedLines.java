package baysheet.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The lines of a file that is only ever added to.
 *
 * @param whole the lines with their ends taken off
 * @param size of the whole lines, in bytes
 * @param torn what stands behind the last line end; empty for a file that was written to its end
 */
record AppendedLines(Path file, List<byte[]> whole, long size, byte[] torn) {
  /**
   * @throws UncheckedIOException naming the file when it cannot be read; a missing one has no lines
   */
  static AppendedLines of(Path file) {
    byte[] bytes = bytes(file);
    List<byte[]> lines = new ArrayList<>();
    int start = 0;
    for (int at = 0; at < bytes.length; at++) {
      if (bytes[at] == '\n') {
        lines.add(Arrays.copyOfRange(bytes, start, at));
        start = at + 1;
      }
    }
    return new AppendedLines(file, lines, start, Arrays.copyOfRange(bytes, start, bytes.length));
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** The same with the last {@code count} whole lines counted as torn. */
  AppendedLines without(int count) {
    if (count == 0) {
      return this;
    }
    int kept = whole.size() - count;
    long end = whole.subList(0, kept).stream().mapToLong(line -> line.length + 1L).sum();
    byte[] all = bytes(file);
    return new AppendedLines(
        file, whole.subList(0, kept), end, Arrays.copyOfRange(all, (int) end, all.length));
  }

  boolean isTorn() {
    return torn.length > 0;
  }
}
