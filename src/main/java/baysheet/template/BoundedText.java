package baysheet.template;

import java.io.IOException;
import java.io.Writer;

/** Takes what a layout writes, up to a limit: a list without end must not eat the memory. */
final class BoundedText extends Writer {
  /** What a sheet fills to. */
  private static final int USUAL = 65_536;

  private final StringBuilder text = new StringBuilder(USUAL);
  private final int limit;

  BoundedText(int limit) {
    this.limit = limit;
  }

  @Override
  public void write(char[] buffer, int from, int length) throws IOException {
    if (text.length() + length > limit) {
      throw new Overflow();
    }
    text.append(buffer, from, length);
  }

  @Override
  public void flush() {}

  @Override
  public void close() {}

  @Override
  public String toString() {
    return text.toString();
  }

  /** More was written than the limit allows. */
  static final class Overflow extends IOException {
    private static final long serialVersionUID = 1L;
  }
}
