package baysheet.torque;

import static baysheet.torque.Written.band;
import static baysheet.torque.Written.length;
import static baysheet.torque.Written.percent;
import static baysheet.torque.Written.reach;
import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class WrenchChoiceTest {
  private static final Wrench SMALL = WrenchTest.wrench("W1", "5 N·m", "25 N·m", "0.1 N·m");
  private static final Wrench MIDDLE = WrenchTest.wrench("W2", "20 N·m", "100 N·m", "0.5 N·m");
  private static final Wrench LARGE = WrenchTest.wrench("W3", "40 N·m", "200 N·m", "1 N·m");
  private static final Wrench FEET = WrenchTest.wrench("W4", "30 lbf·ft", "150 lbf·ft", "1 lbf·ft");

  private static WrenchChoice choose(String torque, List<Wrench> crib) {
    return choose(torque, Optional.empty(), crib);
  }

  private static WrenchChoice choose(String torque, Optional<Reach> reach, List<Wrench> crib) {
    Target target = Target.plain(torque(torque));
    return WrenchChoice.choose(
        target.nominal(),
        target.bandOr(percent("5")),
        reach,
        crib,
        it -> SocketFit.NONE_NEEDED,
        WrenchTest.DAY,
        12);
  }

  private static WrenchChoice within(String torque, String band, List<Wrench> crib) {
    return WrenchChoice.choose(
        torque(torque),
        band(band),
        Optional.empty(),
        crib,
        it -> SocketFit.NONE_NEEDED,
        WrenchTest.DAY,
        12);
  }

  private static Setting set(WrenchChoice choice) {
    return choice.setting().orElseThrow(() -> new AssertionError(choice));
  }

  @Test
  void theWrenchWhoseScaleHoldsItIsSet() {
    Setting setting = set(choose("85 N·m", List.of(SMALL, LARGE)));
    assertEquals(LARGE, setting.wrench());
    assertEquals(torque("85 N·m"), setting.setting());
    assertEquals(torque("85 N·m"), setting.arrives());
    assertTrue(setting.insideBand());
  }

  @Test
  void nothingIsSetBelowTheLowestMarkOrAboveTheEnd() {
    WrenchChoice choice = choose("30 N·m", List.of(SMALL, LARGE));
    assertEquals(WrenchChoice.Outcome.NONE_IN_RANGE, choice.outcome());
    assertTrue(choice.setting().isEmpty());
    assertEquals(
        List.of(
            "30\u00A0N·m is off its scale, 5\u00A0N·m to 25\u00A0N·m",
            "30\u00A0N·m is off its scale, 40\u00A0N·m to 200\u00A0N·m"),
        choice.candidates().stream().map(Candidate::why).toList());
  }

  @Test
  void bothEndsOfAScaleAreInReach() {
    assertEquals(MIDDLE, set(choose("20 N·m", List.of(MIDDLE))).wrench());
    assertEquals(MIDDLE, set(choose("100 N·m", List.of(MIDDLE))).wrench());
  }

  // 110 N·m = 81.13 lbf·ft; the mark 81 gives 81 × 1.3558179483314004 N·m.
  @Test
  void theSettingStandsInTheWrenchesUnitAndArrivesInTheTargets() {
    Setting setting = set(choose("110 N·m", List.of(FEET)));
    assertEquals(Quantity.of("81", Unit.POUND_FORCE_FOOT), setting.setting());
    assertEquals(new BigDecimal("109.8212538148434324"), setting.arrives().value());
    assertEquals(Unit.NEWTON_METRE, setting.arrives().unit());
  }

  // S = 110 · 370/(370 + 60) = 94.65 N·m; 94.5 set, 94.5 · 430/370 = 109.82 N·m arrive.
  @Test
  void anExtensionLowersTheSettingAndIsComputedBack() {
    Setting setting = set(choose("110 N·m", Optional.of(reach("60 mm", "0°")), List.of(MIDDLE)));
    assertEquals(torque("94.5 N·m"), setting.setting());
    assertEquals(109.824, setting.arrives().value().doubleValue(), 0.001);
  }

  @Test
  void anExtensionMayBringATorqueOntoAScaleOrOffIt() {
    Optional<Reach> straight = Optional.of(reach("60 mm", "0°"));
    assertEquals(WrenchChoice.Outcome.NONE_IN_RANGE, choose("110 N·m", List.of(MIDDLE)).outcome());
    assertEquals(WrenchChoice.Outcome.SET, choose("110 N·m", straight, List.of(MIDDLE)).outcome());
    assertEquals(
        WrenchChoice.Outcome.NONE_IN_RANGE, choose("20 N·m", straight, List.of(MIDDLE)).outcome());
  }

  @Test
  void anExtensionPastTheHandIsRefused() {
    WrenchChoice choice = choose("50 N·m", Optional.of(reach("400 mm", "180°")), List.of(MIDDLE));
    assertEquals("the extension points back past the hand", choice.candidates().get(0).why());
  }

  /** Bare, its scale says what arrives; with an extension nobody can say what to set. */
  @Test
  void aWrenchOfUnknownLengthIsSetOnlyWithoutAnExtension() {
    Wrench wrench =
        new Wrench(
            "W3",
            LARGE.drive(),
            LARGE.from(),
            LARGE.to(),
            LARGE.step(),
            LARGE.accuracyPercent(),
            Optional.empty(),
            LARGE.calibrated());
    assertEquals("110", set(choose("110 N·m", List.of(wrench))).setting().figure());
    WrenchChoice choice = choose("110 N·m", Optional.of(reach("60 mm", "0°")), List.of(wrench));
    assertEquals(WrenchChoice.Outcome.NONE_IN_RANGE, choice.outcome());
    assertEquals(
        "its length is not known, and the extension changes its setting",
        choice.candidates().get(0).why());
  }

  // Rule 1: 4 % of 60 stays inside ± 5 %, 6 % does not, though W9 is better placed otherwise.
  @Test
  void aDeviationInsideTheBandComesFirst() {
    Wrench wide = WrenchTest.wrench("W9", "20 N·m", "90 N·m", "1 N·m", "6", WrenchTest.DAY);
    Wrench narrow = WrenchTest.wrench("W8", "20 N·m", "220 N·m", "1 N·m", "4", WrenchTest.DAY);
    Setting setting = set(choose("60 N·m", List.of(wide, narrow)));
    assertEquals(narrow, setting.wrench());
    assertTrue(setting.insideBand());
  }

  @Test
  void aWrenchWiderThanTheBandIsSetButSaid() {
    Wrench wide = WrenchTest.wrench("W9", "20 N·m", "90 N·m", "1 N·m", "6", WrenchTest.DAY);
    WrenchChoice choice = choose("60 N·m", List.of(wide));
    assertFalse(set(choice).insideBand());
    assertEquals(
        "set to 60\u00A0N·m, its deviation is wider than the band",
        choice.candidates().get(0).why());
  }

  // 100 N·m ± 4 % is 96 to 104 N·m: the very ends of the band.
  @Test
  void aDeviationThatJustFillsTheBandIsInside() {
    assertTrue(set(within("100 N·m", "96..104 N·m", List.of(LARGE))).insideBand());
    assertFalse(set(within("100 N·m", "96.1..104 N·m", List.of(LARGE))).insideBand());
    assertFalse(set(within("100 N·m", "96..103.9 N·m", List.of(LARGE))).insideBand());
  }

  // Rule 2 (US Army TM 1-1500-204-23-9): 30 to 80 % of the scale; 85 of 100 is too high up.
  @Test
  void theMiddleOfAScaleComesBeforeItsEnds() {
    assertEquals(LARGE, set(choose("85 N·m", List.of(MIDDLE, LARGE))).wrench());
    assertEquals(MIDDLE, set(choose("80 N·m", List.of(MIDDLE, LARGE))).wrench());
    assertEquals(MIDDLE, set(choose("45 N·m", List.of(LARGE, MIDDLE))).wrench());
  }

  @Test
  void thirtyPercentOfTheScaleStillCounts() {
    Wrench low = WrenchTest.wrench("low", "20 N·m", "200 N·m", "1 N·m");
    Wrench high = WrenchTest.wrench("high", "20 N·m", "70 N·m", "1 N·m");
    assertEquals(low, set(choose("60 N·m", List.of(high, low))).wrench());
    assertEquals(high, set(choose("59 N·m", List.of(high, low))).wrench());
  }

  // Rule 3: 60.5 is a mark of half steps only.
  @Test
  void theFinerMarkComesNext() {
    Wrench coarse = WrenchTest.wrench("coarse", "20 N·m", "90 N·m", "1 N·m");
    Wrench fine = WrenchTest.wrench("fine", "20 N·m", "110 N·m", "0.5 N·m");
    assertEquals(fine, set(choose("60.5 N·m", List.of(coarse, fine))).wrench());
  }

  // Rule 4.
  @Test
  void theSmallerScaleComesNext() {
    Wrench large = WrenchTest.wrench("large", "20 N·m", "110 N·m", "1 N·m");
    Wrench small = WrenchTest.wrench("small", "20 N·m", "90 N·m", "1 N·m");
    assertEquals(small, set(choose("60 N·m", List.of(large, small))).wrench());
  }

  @Test
  void betweenEqualsTheCribsOrderDecides() {
    Wrench first = WrenchTest.wrench("first", "20 N·m", "90 N·m", "1 N·m");
    Wrench second = WrenchTest.wrench("second", "20 N·m", "90 N·m", "1 N·m");
    assertEquals(first, set(choose("60 N·m", List.of(first, second))).wrench());
    assertEquals(second, set(choose("60 N·m", List.of(second, first))).wrench());
  }

  @Test
  void aLapsedWrenchIsPassedOver() {
    Wrench lapsed =
        WrenchTest.wrench(
            "old", "20 N·m", "90 N·m", "1 N·m", "4", WrenchTest.DAY.minusMonths(12).minusDays(1));
    WrenchChoice choice = choose("60 N·m", List.of(lapsed, LARGE));
    assertEquals(LARGE, set(choice).wrench());
    assertEquals(
        "its calibration of 2025-03-01 does not hold on that day",
        choice.candidates().get(0).why());
  }

  @Test
  void onlyLapsedWrenchesAreTheirOwnOutcome() {
    Wrench lapsed =
        WrenchTest.wrench("old", "20 N·m", "90 N·m", "1 N·m", "4", WrenchTest.DAY.minusMonths(13));
    WrenchChoice choice = choose("60 N·m", List.of(lapsed, SMALL));
    assertEquals(WrenchChoice.Outcome.ONLY_LAPSED, choice.outcome());
    assertTrue(choice.setting().isEmpty());
    assertEquals(WrenchChoice.Outcome.NONE_IN_RANGE, choose("150 N·m", List.of(lapsed)).outcome());
  }

  @Test
  void aMarkThatArrivesOutsideTheBandIsNeverSet() {
    Wrench coarse = WrenchTest.wrench("coarse", "20 N·m", "90 N·m", "10 N·m");
    WrenchChoice choice = within("54 N·m", "52..56 N·m", List.of(coarse));
    assertEquals(WrenchChoice.Outcome.NONE_IN_RANGE, choice.outcome());
    assertEquals(
        "its nearest mark, 50\u00A0N·m, arrives outside the band",
        choice.candidates().get(0).why());
  }

  @Test
  void everyWrenchLookedAtIsNamedAndOneTaken() {
    WrenchChoice choice = choose("60 N·m", List.of(SMALL, MIDDLE, LARGE, FEET));
    assertEquals(
        List.of(SMALL, MIDDLE, LARGE, FEET),
        choice.candidates().stream().map(Candidate::wrench).toList());
    assertEquals(
        List.of(false, true, false, false),
        choice.candidates().stream().map(Candidate::taken).toList());
    assertEquals(
        "set to 60\u00A0N·m, its deviation stays inside the band",
        choice.candidates().get(1).why());
    assertEquals(
        "could be set to 60\u00A0N·m, but its scale is longer", choice.candidates().get(2).why());
  }

  @Test
  void aWrenchPastItsLastMarkIsSaid() {
    Wrench gap = WrenchTest.wrench("gap", "10 N·m", "59 N·m", "10 N·m");
    assertEquals(
        "56\u00A0N·m lies past its last mark",
        choose("56 N·m", List.of(gap)).candidates().get(0).why());
  }

  @Test
  void anEmptyCribHasNone() {
    assertEquals(WrenchChoice.Outcome.NONE_IN_RANGE, choose("60 N·m", List.of()).outcome());
  }

  @Test
  void aSettingOffItsScaleIsAFaultOfOurs() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Setting(SMALL, torque("26 N·m"), torque("26 N·m"), true));
    assertThrows(
        IllegalArgumentException.class,
        () -> new WrenchChoice(Optional.empty(), List.of(), WrenchChoice.Outcome.SET));
  }

  @Property
  void whatIsSetLiesOnTheScaleAndArrivesWithinHalfAStepOfTheTarget(
      @ForAll @BigRange(min = "3", max = "300") @Scale(2) BigDecimal figure,
      @ForAll @IntRange(min = 0, max = 200) int beyond,
      @ForAll @IntRange(min = 0, max = 180) int degrees,
      @ForAll @IntRange(min = 1, max = 40) int quarterSteps,
      @ForAll boolean poundFeet) {
    Unit unit = poundFeet ? Unit.POUND_FORCE_FOOT : Unit.NEWTON_METRE;
    Quantity target = new Quantity(figure, unit);
    List<Wrench> crib = new ArrayList<>(List.of(SMALL, MIDDLE, LARGE, FEET));
    String step = new BigDecimal(quarterSteps).multiply(new BigDecimal("0.25")) + " N·m";
    crib.add(WrenchTest.wrench("odd", "7 N·m", "153 N·m", step));
    Reach reach =
        new Reach(
            Quantity.of("" + beyond, Unit.MILLIMETRE), Quantity.of("" + degrees, Unit.DEGREE));
    Band wide = Target.plain(target).bandOr(percent("90"));
    WrenchChoice choice =
        WrenchChoice.choose(
            target,
            wide,
            Optional.of(reach),
            crib,
            it -> SocketFit.NONE_NEEDED,
            WrenchTest.DAY,
            12);
    choice.setting().ifPresent(setting -> assertHalfAStep(target, reach, setting));
  }

  /** Half a step at the square is half a step times (L + E cos a)/L at the nut. */
  private static void assertHalfAStep(Quantity target, Reach reach, Setting setting) {
    Wrench wrench = setting.wrench();
    assertTrue(wrench.holds(setting.setting()));
    double hand = wrench.length().orElseThrow().in(Unit.MILLIMETRE);
    double angle = Math.toRadians(reach.angle().in(Unit.DEGREE));
    double ratio = (hand + reach.length().in(Unit.MILLIMETRE) * Math.cos(angle)) / hand;
    double halfStep = wrench.step().in(Unit.NEWTON_METRE) / 2 * ratio;
    double error = setting.arrives().in(Unit.NEWTON_METRE) - target.in(Unit.NEWTON_METRE);
    assertTrue(Math.abs(error) <= halfStep + 1e-9, setting + " misses " + target);
  }

  @Property
  void whatArrivesIsAlwaysAccepted(
      @ForAll @BigRange(min = "5", max = "250") @Scale(1) BigDecimal figure,
      @ForAll @IntRange(min = 1, max = 10) int tolerance) {
    Target target = Target.plain(new Quantity(figure, Unit.NEWTON_METRE));
    Band band = target.bandOr(percent("" + tolerance));
    WrenchChoice choice =
        WrenchChoice.choose(
            target.nominal(),
            band,
            Optional.of(new Reach(length("60 mm"), Quantity.of("0", Unit.DEGREE))),
            List.of(SMALL, MIDDLE, LARGE, FEET),
            it -> SocketFit.NONE_NEEDED,
            WrenchTest.DAY,
            12);
    choice.setting().ifPresent(setting -> assertTrue(band.contains(setting.arrives())));
  }
}
