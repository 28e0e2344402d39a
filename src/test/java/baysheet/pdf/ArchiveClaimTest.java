package baysheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArchiveClaimTest {
  private static final String ELEMENTS =
      "<x>Größe</x><pdfaid:part>%s</pdfaid:part><pdfaid:conformance>%s</pdfaid:conformance>"
          + "<pdfuaid:part>1</pdfuaid:part><y/>";
  private static final String ATTRIBUTES =
      "<x a='b' pdfaid:part=\"%s\" pdfaid:conformance='%s' pdfuaid:part=\"1\" c=\"d\"/>";

  private static String lowered(String xmp, int least, boolean tagged) {
    byte[] now = ArchiveClaim.lowered(xmp.getBytes(StandardCharsets.UTF_8), least, tagged);
    return new String(now, StandardCharsets.UTF_8);
  }

  /** Parts of ISO 19005: the third allows any attached file, the first none. */
  @ParameterizedTest
  @CsvSource({
    "1, A, 1, 1, B",
    "2, U, 1, 2, U",
    "3, B, 1, 3, B",
    "3, A, 3, 3, B",
    "1, B, 3, , ",
    "2, A, 3, , ",
    "4, F, 1, , "
  })
  void untaggedPageTakesBackWhatIsNoLongerTrue(
      String part, String level, int least, String nowPart, String nowLevel) {
    String elements =
        nowPart == null
            ? "<x>Größe</x><y/>"
            : ELEMENTS.formatted(nowPart, nowLevel).replace("<pdfuaid:part>1</pdfuaid:part>", "");
    assertEquals(elements, lowered(ELEMENTS.formatted(part, level), least, false));
    String attributes =
        nowPart == null
            ? "<x a='b' c=\"d\"/>"
            : ATTRIBUTES.formatted(nowPart, nowLevel).replace(" pdfuaid:part=\"1\"", "");
    assertEquals(attributes, lowered(ATTRIBUTES.formatted(part, level), least, false));
  }

  @ParameterizedTest
  @CsvSource({"3, A", "3, U"})
  void attachedFilesLeaveTheThirdPartAsItIs(String part, String level) {
    assertEquals(
        ELEMENTS.formatted(part, level), lowered(ELEMENTS.formatted(part, level), 3, true));
  }
}
