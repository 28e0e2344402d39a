package baysheet.torque;

import static baysheet.torque.Written.band;
import static baysheet.torque.Written.percent;
import static baysheet.torque.Written.target;
import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class TargetTest {
  @Test
  void theShopsBandIsUsedOnlyWhereTheBookHasNone() {
    assertEquals(
        new Band(torque("104.5 N·m"), torque("115.5 N·m"), Band.Origin.SHOP),
        target("110 N·m").bandOr(percent("5")));
    assertEquals(
        new Band(torque("100 N·m"), torque("120 N·m"), Band.Origin.BOOK),
        target("100..120 N·m").bandOr(percent("5")));
  }

  static Stream<Arguments> sides() {
    return Stream.of(
        arguments("99.9 N·m", false, -1),
        arguments("100 N·m", true, 0),
        arguments("110 N·m", true, 0),
        arguments("120 N·m", true, 0),
        arguments("120.1 N·m", false, 1),
        arguments("88 lbf·ft", true, 0),
        arguments("89 lbf·ft", false, 1));
  }

  // 88 and 89 lbf·ft are 119.3 and 120.7 N·m.
  @ParameterizedTest
  @MethodSource("sides")
  void aBandHoldsItsEndsInAnyUnit(String text, boolean inside, int side) {
    assertEquals(inside, band("100..120 N·m").contains(torque(text)));
    assertEquals(side, band("100..120 N·m").side(torque(text)));
  }

  @Test
  void anEmptyBandOrATargetOfAnotherKindIsAFaultOfOurs() {
    Quantity length = Quantity.of("110", Unit.MILLIMETRE);
    assertThrows(
        IllegalArgumentException.class,
        () -> new Band(torque("120 N·m"), torque("100 N·m"), Band.Origin.BOOK));
    assertThrows(
        IllegalArgumentException.class, () -> new Target(length, Optional.empty(), "110 mm"));
  }
}
