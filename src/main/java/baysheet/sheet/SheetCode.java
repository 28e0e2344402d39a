package baysheet.sheet;

/** A fingerprint as the characters that fit the smallest code a scanner reads safely. */
final class SheetCode {
  /** Of the code itself, should there ever be another. */
  private static final char FORMAT = 'A';

  private static final int CHARACTERS = 15;
  private static final int BITS = 5;

  /** Base 32 of RFC 4648, section 6. */
  private static final String ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

  private SheetCode() {}

  /** The format character, and the first 75 bits of a SHA-256, five a character. */
  static String of(byte[] sha256) {
    StringBuilder code = new StringBuilder().append(FORMAT);
    for (int at = 0; at < CHARACTERS * BITS; at += BITS) {
      int two = (sha256[at / 8] & 0xff) << 8 | sha256[at / 8 + 1] & 0xff;
      code.append(ALPHABET.charAt(two >> 16 - BITS - at % 8 & 31));
    }
    return code.toString();
  }
}
