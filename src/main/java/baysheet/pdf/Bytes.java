package baysheet.pdf;

import java.util.Arrays;

/** Gathers the bytes of a file or of a stream in it. */
final class Bytes {
  private static final int DIGITS = 20;

  private byte[] bytes;
  private int size;

  /**
   * @param room for so many at first
   */
  Bytes(int room) {
    bytes = new byte[room];
  }

  int size() {
    return size;
  }

  /** A stream of what was gathered. */
  HeldStream compressed() {
    return Streams.compressed(bytes, size);
  }

  byte[] toArray() {
    return Arrays.copyOf(bytes, size);
  }

  Bytes add(char one) {
    ensureRoom(1);
    bytes[size++] = (byte) one;
    return this;
  }

  /** Adds characters that are one byte each. */
  Bytes add(String ascii) {
    ensureRoom(ascii.length());
    for (int i = 0; i < ascii.length(); i++) {
      bytes[size++] = (byte) ascii.charAt(i);
    }
    return this;
  }

  Bytes add(byte[] more) {
    ensureRoom(more.length);
    System.arraycopy(more, 0, bytes, size, more.length);
    size += more.length;
    return this;
  }

  Bytes add(Bytes more) {
    ensureRoom(more.size);
    System.arraycopy(more.bytes, 0, bytes, size, more.size);
    size += more.size;
    return this;
  }

  /** Adds a whole number in decimal digits. */
  Bytes number(long number) {
    if (number < 0) {
      add('-');
    }
    ensureRoom(DIGITS);
    int end = size + digits(number);
    long rest = Math.abs(number);
    for (int i = end - 1; i >= size; i--) {
      bytes[i] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
    size = end;
    return this;
  }

  private static int digits(long number) {
    int digits = 1;
    for (long rest = Math.abs(number) / 10; rest > 0; rest /= 10) {
      digits++;
    }
    return digits;
  }

  /** Adds thousandths as a decimal number: no exponent, no locale, no zeros that say nothing. */
  Bytes thousandths(long thousandths) {
    long size = Math.abs(thousandths);
    if (thousandths < 0) {
      add('-');
    }
    number(size / 1000);
    long rest = size % 1000;
    if (rest > 0) {
      add('.').add((char) ('0' + rest / 100));
      if (rest % 100 > 0) {
        add((char) ('0' + rest / 10 % 10));
      }
      if (rest % 10 > 0) {
        add((char) ('0' + rest % 10));
      }
    }
    return this;
  }

  /** Adds a number in so many bytes, the highest first. */
  Bytes binary(long number, int width) {
    for (int i = width - 1; i >= 0; i--) {
      add((char) (number >> 8 * i & 0xFF));
    }
    return this;
  }

  private void ensureRoom(int more) {
    if (size + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
    }
  }
}
