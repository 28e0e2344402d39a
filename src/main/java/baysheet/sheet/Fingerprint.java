package baysheet.sheet;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of what is said, in hexadecimal. */
final class Fingerprint {
  private Fingerprint() {}

  static String of(byte[] said) {
    return HexFormat.of().formatHex(digest(said));
  }

  static byte[] digest(byte[] said) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(said);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
