package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Lists;
import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import baysheet.torque.TighteningPasses;
import baysheet.torque.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which figures of a torque line a technician must not get: each makes the sheet faulty. */
class FigureCheckTest {
  private static final String WRENCH =
      "{name: W1, drive: 1/2 in, from: 20 N·m, to: 300 N·m, step: 1 N·m, accuracy: 4 %,"
          + " length: 500 mm, calibrated: 2025-06-15}";

  private static final String STRETCH = "bolt: {count: 1, torque: [50 N·m, loosen, 30 N·m, +90°]}";

  /** A sheet for one bolt, and what it was made from. */
  private record Made(Sheet sheet, Resolved resolved) {
    TorqueLine line() {
      return sheet.torque().get(0);
    }
  }

  private static final Map<String, Made> MADE = new HashMap<>();

  private static final String PLAIN = "bolt: {count: 1, torque: 100 N·m}";
  private static final String RANGE = "bolt: {count: 1, torque: 100 ± 10 N·m}";
  private static final String FOUR = "bolt: {count: 4, torque: 100 N·m, order: circle}";

  private static Made shop(String bolt) {
    return shop(WRENCH, bolt);
  }

  /** The sheet of a shop with one wrench for a vehicle with one bolt, which has no fault. */
  private static Made shop(String wrench, String bolt) {
    return MADE.computeIfAbsent(
        wrench + bolt,
        key -> {
          Resolved resolved = resolved(wrench, bolt);
          Sheet sheet = Planner.plan(resolved, new Problems()).orElseThrow();
          assertEquals(List.of(), FigureCheck.faults(sheet, resolved));
          return new Made(sheet, resolved);
        });
  }

  private static Resolved resolved(String wrench, String bolt) {
    return new SmallShop(
            SmallShop.empty()
                .texts()
                .replacing("shop.yaml", "wrenches: []", "wrenches: [" + wrench + "]")
                .replacing(
                    "vehicles/any.yaml", "fasteners: {}", "fasteners: {vehicle: {" + bolt + "}}"))
        .with("catalogue/bolt.yaml", "items: {bolt: {name: bolt, kinds: [fastener]}}")
        .procedure("bolt-out", "at: vehicle", "Remove the bolt", "bolt")
        .job("floor", "bolt-out at vehicle")
        .resolved();
  }

  private static Quantity newtonMetres(String figure) {
    return Quantity.of(figure, Unit.NEWTON_METRE);
  }

  /** The faults in the one line of a sheet once a part of it is another. */
  private static List<String> faults(Made shop, String part, Object other) {
    TorqueLine line = Altered.with(shop.line(), part, other);
    return FigureCheck.faults(Altered.with(shop.sheet(), "torque", List.of(line)), shop.resolved());
  }

  /** The same once a part of its first stage is another. */
  private static List<String> stageFaults(Made shop, String part, Object other) {
    List<TorqueLine.StageLine> stages = stages(shop);
    TorqueLine.StageLine changed =
        Altered.with((TorqueLine.StageLine.Torque) stages.get(0), part, other);
    return faults(shop, "method.stages", Lists.replaced(stages, stages.get(0), it -> changed));
  }

  private static List<TorqueLine.StageLine> stages(Made shop) {
    return shop.line().method().stages();
  }

  private static void assertFault(List<String> faults, String what) {
    assertTrue(
        faults.stream().anyMatch(it -> it.replace('\u00a0', ' ').contains(what)),
        what + " in " + faults);
  }

  private static void assertOneFault(List<String> faults, String what) {
    assertEquals(
        List.of("torque line 1 (bolt): " + what),
        faults.stream().map(it -> it.replace('\u00a0', ' ')).toList());
  }

  @Test
  void eachStageIsOfTheKindThatTheBookGives() {
    Made shop = shop(STRETCH);
    List<TorqueLine.StageLine> stages = stages(shop);
    assertFault(
        faults(
            shop,
            "method.stages",
            List.of(stages.get(1), stages.get(0), stages.get(2), stages.get(3))),
        "stage 1 is loosen, and the book's is 50 N·m");
    assertOneFault(
        faults(
            shop,
            "method.stages",
            List.of(stages.get(0), stages.get(3), stages.get(2), stages.get(3))),
        "stage 2 is +90°, and the book's is loosen");
    assertOneFault(
        faults(
            shop,
            "method.stages",
            List.of(stages.get(0), stages.get(1), stages.get(2), stages.get(1))),
        "stage 4 is loosen, and the book's is +90°");
  }

  /** What the book remarks of a bolt is said beside it. */
  @Test
  void theRemarksAreTheBooks() {
    Made shop = shop("bolt: {count: 1, torque: 100 N·m, note: hold the pin with a key}");
    assertFault(faults(shop, "refitting.remarks", List.of()), "the remarks is []");
  }

  @Test
  void anAngleIsTheBooks() {
    Made shop = shop(STRETCH);
    List<TorqueLine.StageLine> stages = stages(shop);
    TorqueLine.StageLine more = new TorqueLine.StageLine.Angle(Quantity.of("100", Unit.DEGREE));
    assertOneFault(
        faults(shop, "method.stages", Lists.replaced(stages, stages.get(3), it -> more)),
        "the angle of stage 4 is "
            + Quantity.of("100", Unit.DEGREE)
            + ", and the book's is "
            + Quantity.of("90", Unit.DEGREE));
  }

  /** Half, full and once round again, where the book says nothing else of several fasteners. */
  @Test
  void thePassesAreTheBooks() {
    Made shop = shop(FOUR);
    TighteningPasses once = new TighteningPasses(List.of(BigDecimal.valueOf(100)), false);
    assertFault(faults(shop, "method.passes", once), "the passes is");
    List<TorqueLine.Round> rounds = shop.line().method().rounds();
    assertEquals(2, rounds.size());
    assertFault(faults(shop, "method.rounds", rounds.subList(1, 2)), "the rounds is");
    Made plain = shop(PLAIN);
    assertFault(faults(plain, "method.rounds", rounds), "the rounds is");
  }

  /** A band that is rounded inward may lose a fifth of its width at each end, and no more. */
  @ParameterizedTest
  @CsvSource({
    "92, 110, true",
    "90, 108, true",
    "95, 110, false",
    "90, 105, false",
    "89, 110, false",
    "90, 111, false",
    "94, 106, true",
    "94.1, 110, false",
    "90, 105.9, false",
    "90, 110, true"
  })
  void aBandLiesInsideTheBooksAndIsHardlyNarrower(String low, String high, boolean holds) {
    Made shop = shop(RANGE);
    Band band = new Band(newtonMetres(low), newtonMetres(high), Band.Origin.BOOK);
    List<String> faults = stageFaults(shop, "band", band);
    assertEquals(holds, faults.isEmpty(), faults.toString());
  }

  /** What is set brings a torque inside the band, its ends included. */
  @ParameterizedTest
  @CsvSource({"90, true", "110, true", "89, false", "111, false", "100, true"})
  void aMarkBringsATorqueInsideTheBand(String mark, boolean holds) {
    Made shop = shop(RANGE);
    List<String> faults = stageFaults(shop, "setting", Optional.of(newtonMetres(mark)));
    assertEquals(holds, faults.isEmpty(), faults.toString());
  }

  /** An early round only has to be even: a tenth of its torque either way is no matter. */
  @ParameterizedTest
  @CsvSource({"45, true", "55, true", "44, false", "56, false"})
  void anEarlyRoundIsNearItsTorque(String mark, boolean holds) {
    Made shop = shop(FOUR);
    List<String> faults = roundFaults(shop, 0, mark);
    assertEquals(holds, faults.isEmpty(), faults.toString());
  }

  @ParameterizedTest
  @CsvSource({"95, true", "105, true", "94, false", "106, false"})
  void theLastRoundIsInsideTheBand(String mark, boolean holds) {
    Made shop = shop(FOUR);
    List<String> faults = roundFaults(shop, 1, mark);
    assertEquals(holds, faults.isEmpty(), faults.toString());
  }

  private static List<String> roundFaults(Made shop, int round, String mark) {
    List<TorqueLine.Round> rounds = shop.line().method().rounds();
    TorqueLine.Round other =
        Altered.with(rounds.get(round), "setting", Optional.of(newtonMetres(mark)));
    return faults(shop, "method.rounds", Lists.replaced(rounds, rounds.get(round), it -> other));
  }

  @Test
  void theShopHasTheWrench() {
    assertOneFault(
        stageFaults(shop(PLAIN), "wrench", Optional.of("W9")),
        "the shop has no wrench W9 for stage 1");
  }

  /** Marks are counted from the lowest: 20.25, 22.25, 24.25 and so on. */
  @ParameterizedTest
  @CsvSource({"100.25, true", "98.25, true", "100, false", "101.25, false", "99.75, false"})
  void whatIsSetIsAMarkOfTheWrench(String mark, boolean holds) {
    String wrench = WRENCH.replace("from: 20", "from: 20.25").replace("step: 1", "step: 2");
    List<String> faults =
        stageFaults(shop(wrench, PLAIN), "setting", Optional.of(newtonMetres(mark)));
    assertEquals(holds, faults.isEmpty(), faults.toString());
  }

  /** A wrench with a display has tens of thousands of marks. */
  @Test
  void everyHundredthIsAMarkOfAWrenchWithADisplay() {
    String wrench = WRENCH.replace("from: 20", "from: 6.8").replace("step: 1", "step: 0.01");
    Made shop = shop(wrench, "bolt: {count: 1, torque: 250 ± 10 N·m}");
    for (int hundredths = 24_500; hundredths < 24_600; hundredths++) {
      Quantity mark = newtonMetres(BigDecimal.valueOf(hundredths, 2).toPlainString());
      assertEquals(List.of(), stageFaults(shop, "setting", Optional.of(mark)));
    }
    assertFault(
        stageFaults(shop, "setting", Optional.of(newtonMetres("250.005"))), "is no mark of W1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"19", "301"})
  void whatIsSetLiesOnTheScale(String mark) {
    assertFault(
        stageFaults(shop(PLAIN), "setting", Optional.of(newtonMetres(mark))),
        mark + " N·m of stage 1 is no mark of W1");
  }

  /** Calibrated on 15 June 2025, for twelve months. */
  @ParameterizedTest
  @CsvSource({"2025-06-15, true", "2026-06-15, true", "2025-06-14, false", "2026-06-16, false"})
  void theCalibrationHoldsOnTheDay(LocalDate day, boolean holds) {
    Made shop = shop(PLAIN);
    Resolved then = Altered.with(shop.resolved(), "date", day);
    List<String> faults = FigureCheck.faults(shop.sheet(), then);
    if (holds) {
      assertEquals(List.of(), faults);
    } else {
      assertOneFault(faults, "the calibration of W1 does not hold on " + day);
    }
  }

  /** An insert of 125 mm on 500 mm of wrench brings a quarter more than is set. */
  @Test
  void anInsertThatLengthensTheWrenchIsReckonedWith() {
    Made shop = shop("bolt: {count: 1, torque: 100 N·m, reach: {length: 125 mm, angle: 0°}}");
    TorqueLine.StageLine.Torque stage = (TorqueLine.StageLine.Torque) stages(shop).get(0);
    assertEquals(Optional.of(newtonMetres("80")), stage.setting());
    assertFault(
        stageFaults(shop, "setting", Optional.of(newtonMetres("100"))),
        "100 N·m of stage 1 brings a torque outside the band");
    Band reading = new Band(newtonMetres("95"), newtonMetres("105"), Band.Origin.SHOP);
    assertFault(
        stageFaults(shop, "reading", Optional.of(reading)),
        "the band of stage 1 as the wrench reads");
  }

  /** Without its length nobody knows what arrives at the bolt. */
  @Test
  void aWrenchOfUnknownLengthCarriesNoInsert() {
    String bolt = "bolt: {count: 1, torque: 100 N·m, reach: {length: 125 mm, angle: 90°}}";
    Resolved without = resolved(WRENCH.replace(" length: 500 mm,", ""), bolt);
    assertOneFault(
        FigureCheck.faults(shop(bolt).sheet(), without),
        "W1 carries an extension, and its length is not known");
  }

  /** With a remark, several units, stages or rounds, and on a wrench that an insert lengthens. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        STRETCH,
        RANGE,
        FOUR,
        "bolt: {count: 2, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100 N·m}",
        "bolt: {count: 1, torque: 100 N·m, reach: {length: 125 mm, angle: 60°}}"
      })
  void everyAlteredFigureOfASmallSheetIsFound(String bolt) {
    Made made = shop(bolt);
    AlteredFigures.all(made.sheet())
        .forEach(
            (what, sheet) ->
                assertTrue(!FigureCheck.faults(sheet, made.resolved()).isEmpty(), what));
  }
}
