package baysheet.template;

import java.io.CharArrayReader;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.Arrays;

/** Takes what a layout writes, up to a limit: a list without end must not eat the memory. */
final class BoundedText extends Writer {
  /** What a sheet fills to. */
  private static final int USUAL = 65_536;

  private final int limit;
  private char[] text = new char[USUAL];
  private int length;

  BoundedText(int limit) {
    this.limit = limit;
  }

  @Override
  public void write(char[] buffer, int from, int count) throws IOException {
    ensureRoom(count);
    System.arraycopy(buffer, from, text, length, count);
    length += count;
  }

  /** Most of what a layout writes are short strings. */
  @Override
  public void write(String string, int from, int count) throws IOException {
    ensureRoom(count);
    string.getChars(from, from + count, text, length);
    length += count;
  }

  private void ensureRoom(int count) throws IOException {
    if (length + count > limit) {
      throw new Overflow();
    }
    if (length + count > text.length) {
      text = Arrays.copyOf(text, 2 * (length + count));
    }
  }

  @Override
  public void flush() {}

  @Override
  public void close() {}

  /** Reads what was written. */
  Reader reader() {
    return new CharArrayReader(text, 0, length);
  }

  @Override
  public String toString() {
    return new String(text, 0, length);
  }

  /** More was written than the limit allows. */
  static final class Overflow extends IOException {
    private static final long serialVersionUID = 1L;
  }
}
