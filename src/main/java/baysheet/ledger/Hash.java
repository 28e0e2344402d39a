package baysheet.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 in hexadecimal. */
public final class Hash {
  /** What the first line of all has in place of the hash of a line before it. */
  static final String NONE = "0".repeat(64);

  private Hash() {}

  public static String of(byte[] content) {
    return HexFormat.of().formatHex(digest().digest(content));
  }

  /** Of all that is still to be read, a piece at a time. */
  public static String of(InputStream in) throws IOException {
    MessageDigest digest = digest();
    byte[] piece = new byte[1 << 16];
    for (int length = in.read(piece); length > 0; length = in.read(piece)) {
      digest.update(piece, 0, length);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
