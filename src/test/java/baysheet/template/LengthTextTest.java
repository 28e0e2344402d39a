package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.box.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTextTest {
  @Test
  void pointsAndEmsAreTakenInThousandths() {
    assertEquals(Optional.of(new Length(6_000, false)), LengthText.parse("6pt"));
    assertEquals(Optional.of(new Length(500, true)), LengthText.parse("0.5em"));
    assertEquals(Optional.of(new Length(1_235, false)), LengthText.parse("1.2345pt"));
    assertEquals(Optional.of(new Length(9_999_000, true)), LengthText.parse("9999em"));
  }

  /** An inch is 25.4 mm (international yard and pound agreement, 1959) and 72 points here. */
  @Test
  void inchInMillimetresIs72Points() {
    assertEquals(Optional.of(new Length(72_000, false)), LengthText.parse("25.4mm"));
  }

  @Property
  void millimetresAreRoundedToTheNearestThousandth(
      @ForAll @IntRange(max = 9_999) int whole, @ForAll @IntRange(max = 9_999) int part) {
    String figure = "%s.%04d".formatted(whole, part);
    long expected =
        new BigDecimal(figure)
            .multiply(new BigDecimal(72_000))
            .divide(new BigDecimal("25.4"), 0, RoundingMode.HALF_UP)
            .longValueExact();
    assertEquals(Optional.of(new Length(expected, false)), LengthText.parse(figure + "mm"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "mm",
        "3",
        "3 mm",
        "-3mm",
        "3.mm",
        ".5mm",
        "3.12345mm",
        "12345mm",
        "1.2.3mm",
        "3cm",
        "3MM",
        "٣mm",
        "1e3pt",
        "+3pt",
        "m"
      })
  void everythingElseIsNoLength(String text) {
    assertEquals(Optional.empty(), LengthText.parse(text));
  }
}
