package baysheet.record;

import baysheet.sheet.Sheet;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What distinguishes one sheet from all others: two papers with one id say the same.
 *
 * @param text as printed: job, stage where there are several, revision and the first six
 *     hexadecimal digits of the hash
 * @param hash SHA-256 of the canonical record, in hexadecimal
 * @param code the format character and the first 75 bits of the hash, as the printed code holds
 *     them
 */
public record SheetId(String text, String hash, String code) {
  private static final int SHORT = 6;

  /** The hexadecimal digits of a SHA-256. */
  private static final int HASH = 64;

  /** Of the code itself, should there ever be another. */
  private static final char FORMAT = 'A';

  private static final int CHARACTERS = 15;
  private static final int BITS = 5;

  /** Base 32 of RFC 4648, section 6. */
  private static final String ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

  public static SheetId of(Sheet sheet) {
    byte[] digest = sha256(SheetRecord.canonical(sheet));
    String hash = HexFormat.of().formatHex(digest);
    return new SheetId(text(sheet, hash), hash, code(digest));
  }

  /** One as wide as any, for a sheet that is measured and not printed: no digit is wider than d. */
  public static SheetId asWide(Sheet sheet) {
    String hash = "d".repeat(HASH);
    return new SheetId(text(sheet, hash), hash, code(new byte[HASH / 2]));
  }

  private static String text(Sheet sheet, String hash) {
    return sheet.name() + "-" + sheet.heading().revision() + "-" + hash.substring(0, SHORT);
  }

  private static byte[] sha256(byte[] record) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(record);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** The format character and the first 75 bits of a SHA-256, five a character. */
  static String code(byte[] digest) {
    StringBuilder code = new StringBuilder().append(FORMAT);
    for (int at = 0; at < CHARACTERS * BITS; at += BITS) {
      int two = (digest[at / 8] & 0xff) << 8 | digest[at / 8 + 1] & 0xff;
      code.append(ALPHABET.charAt(two >> 16 - BITS - at % 8 & 31));
    }
    return code.toString();
  }
}
