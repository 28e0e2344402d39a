package baysheet.pdf;

import java.nio.charset.StandardCharsets;

/** Writes the operators of a content stream (ISO 32000-1, annex A). Lengths are thousandths. */
final class Operators {
  private final StringBuilder out = new StringBuilder(16_384);

  private String font = "";
  private long fontSize;

  Operators op(String operator, long... operands) {
    for (long operand : operands) {
      number(operand);
      out.append(' ');
    }
    out.append(operator).append('\n');
    return this;
  }

  Operators raw(String line) {
    out.append(line).append('\n');
    return this;
  }

  /** Sets the font, by its name among the page's resources, unless it is set already. */
  Operators font(String name, long size) {
    if (!name.equals(font) || size != fontSize) {
      font = name;
      fontSize = size;
      out.append('/').append(name).append(' ');
      op("Tf", size);
    }
    return this;
  }

  /** Shows text, as a literal string: half as long as one in hexadecimal digits. */
  Operators show(byte[] codes) {
    out.append('(');
    for (byte code : codes) {
      char c = (char) (code & 0xFF);
      switch (c) {
        case '(', ')', '\\' -> out.append('\\').append(c);
        // An end of line would be read as a line feed, whatever it was (ISO 32000-1, 7.3.4.2).
        case '\r' -> out.append("\\r");
        default -> out.append(c);
      }
    }
    out.append(") Tj\n");
    return this;
  }

  /** Thousandths as a decimal number: no exponent, no locale, no zeros that say nothing. */
  private void number(long thousandths) {
    long size = Math.abs(thousandths);
    if (thousandths < 0) {
      out.append('-');
    }
    out.append(size / 1000);
    long rest = size % 1000;
    if (rest > 0) {
      out.append('.').append((char) ('0' + rest / 100));
      if (rest % 100 > 0) {
        out.append((char) ('0' + rest / 10 % 10));
      }
      if (rest % 10 > 0) {
        out.append((char) ('0' + rest % 10));
      }
    }
  }

  byte[] bytes() {
    return out.toString().getBytes(StandardCharsets.ISO_8859_1);
  }
}
