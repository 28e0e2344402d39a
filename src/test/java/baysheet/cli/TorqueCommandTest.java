package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TorqueCommandTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  /** Runs {@code torque}; the words are parted at blanks, as a command line is. */
  private Garage.Run torque(String words) {
    List<String> arguments = new ArrayList<>(List.of("torque"));
    arguments.addAll(List.of(words.replace("SHOP", garage.root.toString()).split(" ")));
    return garage.run(arguments.toArray(String[]::new));
  }

  private String told(String words) {
    Garage.Run run = torque(words);
    assertEquals(Exit.DONE, run.exit(), run.err());
    return Paper.words(run.out());
  }

  private JsonTree json(String words) {
    Garage.Run run = torque(words + " --json");
    assertEquals(Exit.DONE, run.exit(), run.err());
    return JsonTree.of(run.out().getBytes(StandardCharsets.UTF_8));
  }

  private void assertTold(String told, String part) {
    assertTrue(told.contains(part), part + " is not in\n" + told);
  }

  /** US Army TM 10-6640-238-13, appendix G: pairs as printed. */
  @ParameterizedTest
  @CsvSource({"31 lbf·ft, 42 N·m", "105 lbf·ft, 142 N·m"})
  void publishedPairsOfUnits(String pounds, String newtons) {
    assertTold(told(pounds), "printed as " + newtons);
  }

  /** FAA AC 43.13-1B, figure 7-2 (figures from memory): 135 in·lb, 10 in, 1.5 in: set 117. */
  @Test
  void thePublishedExampleOfAnExtension() {
    String told =
        told(
            "135 in-lb --from 100 in-lb --to 600 in-lb --step 1 in-lb --length 10 in --reach 1.5"
                + " in --angle 0 deg");
    assertTold(told, "S = 135·254/(254 + 38.1·cos 0°) = 117.39 lbf·in");
    assertTold(told, "setting the wrench at 117 lbf·in");
    // 117 · 11.5 / 10 = 134.55
    assertTold(told, "arrives 135 lbf·in at the fastener");
  }

  /** US Army TM 9-254, figure 4-5: at a right angle nothing is corrected. */
  @Test
  void anExtensionAtARightAngleChangesNothing() {
    JsonTree told = json("60 N·m --reach 60 mm --angle 90° --shop SHOP --wrench B2");
    assertEquals("60 N·m", told.quantity("setting"));
    assertEquals("60 N·m", told.quantity("arrives"));
  }

  @Test
  void anExtensionThatPointsBackAsksForMore() {
    // 60 · 370 / (370 − 60) = 71.61; marks are half a newton metre apart.
    assertEquals(
        "71.5 N·m",
        json("60 N·m --reach 60 mm --angle 180° --shop SHOP --wrench B1").quantity("setting"));
  }

  /**
   * VDI 2230 (edition 2003) as a distributor's catalogue reproduces it: M12x1.25, 10.9, friction
   * 0.12: 133 N·m for 70.5 kN.
   */
  @Test
  void theClampLoadOfAPublishedTable() {
    JsonTree told = json("133 N·m --thread M12x1.25 --class 10.9");
    assertEquals(70.5, told.figure("clampLoadKn").doubleValue(), 70.5 * 0.012);
    assertEquals("0.12", told.text("friction"));
    // ISO 898-1, table 7 (from memory): proof load 76.4 kN.
    assertEquals(76.4, told.figure("proofLoadKn").doubleValue(), 76.4 * 0.006);
    assertEquals(100 * 70.5 / 76.4, told.figure("percentOfProof").doubleValue(), 1.6);
  }

  @Test
  void theFrictionIsStatedBesideTheClampLoad() {
    String told = told("133 N·m --thread M12x1.25 --class 10.9");
    assertTold(told, "at friction 0.12 in thread and under the head (VDI 2230 form)");
    assertTold(told, "% of the proof load of class 10.9");
  }

  @Test
  void aValueInTheWrongUnitIsDoubtedButNotChanged() {
    JsonTree told = json("110 lbf·ft --thread M10 --class 8.8");
    assertEquals("110 lbf·ft", told.quantity("torque"));
    assertEquals("does-not-fit", told.list("warnings").get(0).text("code"));
  }

  @Test
  void aThreadUsedOtherThanPublishedIsWarnedOf() {
    String told = told("100 N·m --thread M12x1.5 --class 10.9 --treatment dry --used oiled");
    assertTold(told, "here it is oiled");
    assertTold(told, "more clamp load");
    assertFalse(
        told("100 N·m --thread M12x1.5 --treatment dry --used dry").contains("warning"), "like");
  }

  @Test
  void neverIsAValueCalledRight() {
    assertTold(told("42 N·m"), "it does not say that the value is right");
  }

  @Test
  void theCribIsSearchedAsForASheet() {
    JsonTree told = json("105 N·m --shop SHOP");
    assertEquals("B2", told.text("wrench"));
    assertEquals(3, told.list("wrenches").size());
    assertEquals("99.75", told.text("band.from"));
    assertEquals("shop", told.text("band.of"));
  }

  @Test
  void calibrationsMustHoldOnTheDay() {
    // B3 was calibrated on 1 February 2024, and the shop's interval is a year.
    assertTrue(json("105 N·m --shop SHOP --wrench B3 --on 2025-02-01").has("setting"));
    assertFalse(json("105 N·m --shop SHOP --wrench B3 --on 2025-02-02").has("setting"));
    assertFalse(json("105 N·m --shop SHOP --wrench B3").has("setting"));
  }

  @Test
  void withoutADayTodayCounts() {
    // It is 7 April 2026 in these tests; a calibration from tomorrow is none.
    garage.change("shop.yaml", "calibrated: 2025-12-01", "calibrated: 2026-04-07");
    assertTrue(json("105 N·m --shop SHOP --wrench B2").has("setting"));
    garage.change("shop.yaml", "calibrated: 2026-04-07", "calibrated: 2026-04-08");
    assertFalse(json("105 N·m --shop SHOP --wrench B2").has("setting"));
  }

  @Test
  void aToleranceOfTheValueGoesBeforeAnyOther() {
    JsonTree told = json("110 N·m ± 10 % --band 2 % --shop SHOP");
    assertEquals("99", told.text("band.from"));
    assertEquals("121", told.text("band.to"));
    assertEquals("book", told.text("band.of"));
  }

  @Test
  void theBandOfTheCommandLineGoesBeforeTheShops() {
    assertEquals("107.8", json("110 N·m --band 2 % --shop SHOP").text("band.from"));
    assertEquals("104.5", json("110 N·m").text("band.from"));
  }

  @ParameterizedTest
  @CsvSource({
    "110, has no unit",
    "110 mm, not a torque",
    "'1,5 N·m', comma",
    "-5 N·m, -5",
    "110 N·m --thread M12x9, --thread",
    "110 N·m --class 11.9, --class",
    "110 N·m --used wet, --used",
    "110 N·m --angle 90°, --reach",
    "110 N·m --wrench B1, --shop",
    "110 N·m --shop SHOP --wrench B9, 'B1, B2, B3'",
    "110 N·m --from 20 N·m, --to",
    "110 N·m --from 20 N·m --to 200 N·m --step 1 N·m --reach 60 mm, --length",
    "110 N·m --from 200 N·m --to 20 N·m --step 1 N·m, scale",
    "110 N·m --reach 60mm 5, --reach",
  })
  void whatCannotBeReadIsAMistakeOfTheCommandLine(String words, String told) {
    Garage.Run run = torque(words);
    assertEquals(Exit.USAGE, run.exit(), run.out() + run.err());
    assertEquals("", run.out());
    run.says(told);
  }

  @Test
  void aShopFileWithErrorsIsNotUsed() {
    garage.change("shop.yaml", "to: 200 N·m", "to: 200");
    Garage.Run run = torque("110 N·m --shop SHOP");
    assertEquals(Exit.PROBLEMS, run.exit());
    assertEquals("", run.out());
    run.says("shop.yaml:11:");
  }

  @Test
  void aShopFolderThatIsNotThereIsNamed() {
    Garage.Run run = torque("110 N·m --shop SHOP/nowhere");
    assertEquals(Exit.FILES, run.exit());
    run.says("nowhere/shop.yaml");
  }
}
