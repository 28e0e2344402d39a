package baysheet.torque;

import static baysheet.torque.Written.fault;
import static baysheet.torque.Written.target;
import static baysheet.torque.Written.tightening;
import static baysheet.torque.Written.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TighteningTest {
  private static Tightening.Stages stages(String... texts) {
    if (tightening(texts) instanceof Tightening.Stages stages) {
      return stages;
    }
    throw new AssertionError("no stages: " + Arrays.toString(texts));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "25 N·m|25_N·m",
        "100..120 N·m|100–120_N·m",
        "110 ± 10 N·m|110_±_10_N·m",
        "110 N·m +/- 5 %|110_N·m_±_5_%",
        "+90°|+90°",
        "+ 90 deg|+90°",
        "90°|+90°",
        "loosen|loosen",
        " Loosen |loosen"
      })
  void aStageIsATorqueAnAngleOrLoosening(String text, String printed) {
    assertEquals(printed.replace('_', '\u00A0'), value(TighteningStage.parse(text)).print());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "+90|has no unit",
        "+25 N·m|is a torque, not an angle",
        "+0°|does not turn the fastener",
        "0°|does not turn the fastener",
        "+900°|is not plausible as an angle",
        "90|has no unit",
        "tight|does not begin with a figure",
        "-90°|is negative"
      })
  void anythingElseIsNoStage(String text, String words) {
    ParseFailure<TighteningStage> misread = fault(TighteningStage.parse(text));
    assertTrue(misread.what().contains(words), misread.what());
  }

  @Test
  void stagesKeepTheirOrder() {
    Tightening.Stages stages = stages("25 N·m", "50 N·m", "loosen", "25 N·m", "+90°", "+90°");
    assertEquals(
        List.of("25\u00A0N·m", "50\u00A0N·m", "loosen", "25\u00A0N·m", "+90°", "+90°"),
        stages.stages().stream().map(TighteningStage::print).toList());
    assertEquals(List.of(target("25 N·m"), target("50 N·m"), target("25 N·m")), stages.torques());
  }

  @Test
  void aTighteningIsPrintedWhole() {
    assertEquals("30\u00A0N·m, +60°", tightening("30 N·m", "60°").print());
    assertEquals("snug", tightening("snug").print());
    assertEquals("unknown", tightening("unknown").print());
  }

  @Test
  void onlyOneTorqueAloneIsPlain() {
    assertEquals(Optional.of(target("110 N·m")), stages("110 N·m").plainTorque());
    assertTrue(stages("25 N·m", "50 N·m").plainTorque().isEmpty());
    assertTrue(stages("30 N·m", "+60°").plainTorque().isEmpty());
  }

  @Test
  void snugAndUnknownStandAlone() {
    assertEquals(new Tightening.Snug(), tightening("snug"));
    assertEquals(new Tightening.Unknown(), tightening(" Unknown "));
    assertTrue(fault(Tightening.parse(List.of("25 N·m", "snug"))).what().startsWith("\"snug\""));
  }

  @ParameterizedTest
  @CsvSource({
    "+90°, +90° has no torque before it to count from",
    "25 N·m;loosen;+90°, +90° has no torque before it to count from",
    "loosen;+90°, +90° has no torque before it to count from",
    "25 N·m;loosen, the last stage leaves the fastener loose",
    "loosen, the last stage leaves the fastener loose"
  })
  void stagesThatLeaveAFastenerLooseAreRefused(String texts, String what) {
    ParseFailure<Tightening> misread = fault(Tightening.parse(List.of(texts.split(";"))));
    assertEquals(what, misread.what());
    assertEquals("stages such as [25 N·m, 50 N·m, +90°]", misread.expected());
  }

  @Test
  void noStageAtAllIsRefused() {
    assertEquals("there is no stage", fault(Tightening.parse(List.of())).what());
  }

  @Test
  void impossibleStagesAreAFaultOfOurs() {
    Quantity noTurn = Quantity.of("0", Unit.DEGREE);
    Quantity length = Quantity.of("90", Unit.MILLIMETRE);
    assertThrows(IllegalArgumentException.class, () -> new TighteningStage.Angle(noTurn));
    assertThrows(IllegalArgumentException.class, () -> new TighteningStage.Angle(length));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Tightening.Stages(List.of(new TighteningStage.Loosen())));
  }
}
