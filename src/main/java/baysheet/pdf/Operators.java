package baysheet.pdf;

/** Writes the operators of a content stream (ISO 32000-1, annex A). Lengths are thousandths. */
final class Operators {
  private final Bytes out = new Bytes(65_536);

  private String font = "";
  private long fontSize;

  Operators op(String operator, long... operands) {
    for (long operand : operands) {
      out.thousandths(operand).add(' ');
    }
    out.add(operator).add('\n');
    return this;
  }

  Operators raw(String line) {
    out.add(line).add('\n');
    return this;
  }

  /** Begins a marked-content sequence (14.6). */
  Operators marked(String tag, int number) {
    out.add('/').add(tag).add(" <</MCID ").number(number).add(">> BDC\n");
    return this;
  }

  /** Sets the font, by its name among the page's resources, unless it is set already. */
  Operators font(String name, long size) {
    if (!name.equals(font) || size != fontSize) {
      font = name;
      fontSize = size;
      out.add('/').add(name).add(' ');
      op("Tf", size);
    }
    return this;
  }

  /** Shows text. */
  Operators show(byte[] codes) {
    ObjectText.string(codes, out);
    out.add(" Tj\n");
    return this;
  }

  Bytes bytes() {
    return out;
  }
}
