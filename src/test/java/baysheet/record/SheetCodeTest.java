package baysheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class SheetCodeTest {
  /**
   * The SHA-256 of no bytes (NIST, example values for FIPS 180-4), put into base 32 (RFC 4648) by
   * hand for its first 75 bits: 11100 01110 11000 01100 …
   */
  @Test
  void codeIsTheFormatAndTheFirstBitsFiveACharacter() {
    byte[] hash =
        HexFormat.of().parseHex("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    assertEquals("A4OYMIQUY7QOBJGX", SheetId.code(hash));
  }
}
