package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Any text is a quantity or is said to be none, and what was read is read again from what is
 * printed. DEVELOPERS.md says how to hunt.
 */
class FuzzedQuantitiesTest {
  @MethodSource("texts")
  @FuzzTest(maxDuration = "10m")
  void anyTextIsReadOrRefused(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (Dimension dimension : Dimension.values()) {
      QuantityText.quantity(text, dimension).found().ifPresent(it -> again(it, dimension));
      QuantityText.ofAnySize(text, dimension);
      QuantityText.range(text, dimension);
    }
    QuantityText.target(text);
    QuantityText.minutes(text);
    ThreadText.parse(text);
  }

  private static void again(Quantity quantity, Dimension dimension) {
    ParseResult<Quantity> again = QuantityText.quantity(quantity.print(), dimension);
    assertEquals(quantity, again.found().orElse(null), quantity.print());
  }

  static Stream<byte[]> texts() {
    return Stream.of(
            "110 N·m",
            "81 lb-ft",
            "25 N·m, 50 N·m, +90°",
            "12 ± 2 N·m",
            "20..25 N·m",
            "1 1/2 in",
            "M12x1.5",
            "7/16-20 UNF",
            "5/8/12 min",
            "80 km",
            "3.5 L",
            "+90° ± 5°",
            "1,200 kg")
        .map(it -> it.getBytes(StandardCharsets.UTF_8));
  }
}
