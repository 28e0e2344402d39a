package baysheet.torque;

import static baysheet.torque.Written.fault;
import static baysheet.torque.Written.tightening;
import static baysheet.torque.Written.torque;
import static baysheet.torque.Written.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TighteningPassesTest {
  private static final Tightening PLAIN = tightening("110 N·m");

  @Test
  void fourInAnOrderGetHalfFullAndACheckRound() {
    assertEquals(TighteningPasses.HALF_THEN_FULL, TighteningPasses.usual(4, true, PLAIN));
    assertEquals(
        List.of(new BigDecimal(50), new BigDecimal(100)),
        TighteningPasses.HALF_THEN_FULL.percents());
    assertTrue(TighteningPasses.HALF_THEN_FULL.checkRound());
  }

  @Test
  void fewerOrUnorderedOnesGoStraightToFull() {
    assertEquals(TighteningPasses.ONE, TighteningPasses.usual(3, true, PLAIN));
    assertEquals(TighteningPasses.ONE, TighteningPasses.usual(5, false, PLAIN));
  }

  @Test
  void stagesOfTheBookAreNotSplitFurther() {
    assertEquals(
        TighteningPasses.ONE,
        TighteningPasses.usual(10, true, tightening("25 N·m", "50 N·m", "+90°")));
    assertEquals(
        TighteningPasses.ONE, TighteningPasses.usual(10, true, tightening("25 N·m", "50 N·m")));
    assertEquals(TighteningPasses.ONE, TighteningPasses.usual(10, true, tightening("snug")));
    assertEquals(TighteningPasses.ONE, TighteningPasses.usual(10, true, tightening("unknown")));
  }

  // 30, 60, 100 % and a last round: a gasket maker's article citing the Fluid Sealing Association.
  @Test
  void theBooksOwnPassesAreRead() {
    TighteningPasses passes = value(TighteningPasses.parse(List.of("30 %", "60 %", "100 %")));
    assertEquals(
        List.of(new BigDecimal(30), new BigDecimal(60), new BigDecimal(100)), passes.percents());
    assertTrue(passes.checkRound());
  }

  @Test
  void oneMeansStraightToFullWithoutACheckRound() {
    assertEquals(new Parsed<>(TighteningPasses.ONE), TighteningPasses.parse(List.of("one")));
    assertEquals(new Parsed<>(TighteningPasses.ONE), TighteningPasses.parse(List.of("100 %")));
  }

  @ParameterizedTest
  @CsvSource({
    "30 %;60 %, the passes do not increase to 100 %",
    "60 %;30 %;100 %, the passes do not increase to 100 %",
    "50 %;50 %;100 %, the passes do not increase to 100 %",
    "0 %;100 %, the passes do not increase to 100 %",
    "30;100 %, '\"30\" has no unit'",
    "one;two, '\"one\" does not begin with a figure'"
  })
  void passesThatDoNotRiseToFullAreRefused(String texts, String what) {
    assertEquals(what, fault(TighteningPasses.parse(List.of(texts.split(";")))).what());
  }

  @Test
  void aPassComesToItsShareOfTheTorque() {
    assertEquals(
        List.of(torque("55 N·m"), torque("110.0 N·m")),
        TighteningPasses.HALF_THEN_FULL.of(torque("110.0 N·m")));
  }

  @Test
  void passesThatDoNotEndFullAreAFaultOfOurs() {
    assertThrows(IllegalArgumentException.class, () -> new TighteningPasses(List.of(), false));
    assertThrows(
        IllegalArgumentException.class,
        () -> new TighteningPasses(List.of(new BigDecimal(101)), false));
  }
}
