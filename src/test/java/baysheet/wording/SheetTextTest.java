package baysheet.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Glossary;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Remark;
import baysheet.books.Shop;
import baysheet.rules.Altered;
import baysheet.sheet.Detail;
import baysheet.sheet.Heading;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.TorqueLine;
import baysheet.sheet.TorqueLine.Reuse;
import baysheet.sheet.TorqueLine.StageLine;
import baysheet.torque.Quantity;
import baysheet.torque.Treatment;
import baysheet.torque.Unit;
import baysheet.wording.SampleLines.StepMaker;
import baysheet.wording.SheetText.BoxText;
import baysheet.wording.SheetText.StepText;
import baysheet.wording.TorqueTableText.RemarkText;
import baysheet.wording.TorqueTableText.TorqueLineText;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the paper says is what the plan says, in words that fit a hand that is busy. */
class SheetTextTest {
  private static final List<Place> BOTH = Samples.BOTH;

  @Test
  void pairOfSidesIsNamedOnceAndBoxedTwice() {
    TorqueLineText line = line(new LineMaker(7, "carrier bolt", BOTH, 2));
    assertEquals("front left and right", line.places());
    assertEquals(List.of("torque.7.front-left", "torque.7.front-right"), names(line.values()));
    assertEquals(List.of("L", "R"), line.values().stream().map(BoxText::label).toList());
    assertEquals(List.of("mark.7.front-left", "mark.7.front-right"), names(line.marks()));
  }

  @Test
  void onePlaceNeedsNoLetter() {
    TorqueLineText line = line(new LineMaker(1, "drive nut", List.of(Place.REAR_LEFT), 1));
    assertEquals("", line.values().get(0).label());
    assertTrue(line.values().get(0).says().endsWith("drive nut, rear left"));
  }

  @Test
  void frontAndRearAreNeverAbbreviatedToALetterThatAlsoMeansRight() {
    TorqueLineText line = line(new LineMaker(1, "nut", List.of(Place.FRONT, Place.REAR), 1));
    assertEquals(List.of("front", "rear"), line.values().stream().map(BoxText::label).toList());
  }

  @Test
  void figuresArePrintedAsTheBookWroteThem() {
    TorqueLineText line =
        line(new LineMaker(1, "bolt", BOTH, 2).stages(SampleLines.torque("27.50", "20.3", "W2")));
    assertEquals("27.50\u00a0N·m", line.stages().get(0).target());
    assertEquals("W2", line.stages().get(0).wrench());
    assertEquals("27.50\u00a0N·m", line.stages().get(0).setting());
    assertEquals("20.3\u00a0lbf·ft", line.stages().get(0).second());
  }

  /** 55 N·m with a crow-foot that makes the wrench read 50: 41 lbf·ft is what the bolt has. */
  @Test
  void noSecondUnitOfAnotherFigureThanTheSetting() {
    StageLine.Torque plain = (StageLine.Torque) SampleLines.torque("55", "41", "W3");
    StageLine.Torque crowFoot =
        new StageLine.Torque(
            plain.target(),
            plain.written(),
            plain.second(),
            plain.band(),
            plain.reading(),
            plain.wrench(),
            Optional.of(SampleLines.newtonMetres("50")),
            plain.arrives(),
            plain.insideBand(),
            plain.trouble());
    TorqueLineText line = line(new LineMaker(1, "nut", BOTH, 1).stages(crowFoot));
    assertEquals("50\u00a0N·m", line.stages().get(0).setting());
    assertEquals("", line.stages().get(0).second());
  }

  @Test
  void bandIsRoundedInwardsAndSaysWhoseItIs() {
    // 95 N·m ± 5 % is 90.25 to 99.75: one decimal more to either side would lie outside.
    TorqueLineText line =
        line(new LineMaker(1, "bolt", BOTH, 2).stages(SampleLines.torque("95", "70", "W3")));
    assertEquals("90.3…99.7", line.stages().get(0).band());
    assertTrue(line.stages().get(0).shopBand());
  }

  @Test
  void setNamesCountThreadClassHeadAndDrive() {
    TorqueLineText line =
        line(
            new LineMaker(1, "bolt", BOTH, 2)
                .thread("M12x1.75", "10.9")
                .head("hex 18 mm", "1/2 in", 6));
    assertEquals("2\u00a0×\u00a0M12×1.75 · 10.9 · hex\u00a018\u00a0mm, 1/2\u00a0in", line.set());
  }

  @Test
  void setWithoutAThreadLeavesNoDotBehind() {
    TorqueLineText line = line(new LineMaker(1, "cap", BOTH, 1).head("hex 27 mm", "1/2 in", 6));
    assertEquals("1\u00a0×\u00a0hex\u00a027\u00a0mm, 1/2\u00a0in", line.set());
  }

  @Test
  void furtherTurnStandsBesideItsTorque() {
    TorqueLineText line =
        line(
            new LineMaker(1, "head bolt", BOTH, 10)
                .stages(
                    SampleLines.torque("25", "18", "W2"),
                    SampleLines.torque("50", "37", "W2"),
                    SampleLines.turn("90"),
                    SampleLines.turn("90")));
    assertEquals(2, line.stages().size());
    assertEquals("50\u00a0N·m +90° +90°", line.stages().get(1).target());
    assertEquals("witness mark on the head", line.stages().get(1).remark());
  }

  @Test
  void settingStandsFirstWithItsTurns() {
    List<TorqueTableText.StageText> stages =
        line(new LineMaker(1, "head bolt", BOTH, 10)
                .stages(SampleLines.torque("50", "37", "W2"), SampleLines.turn("90")))
            .stages();
    assertEquals("50\u00a0N·m +90°", stages.get(0).set());
    assertTrue(stages.get(0).once(), "the book's 50 N·m need not be printed again");
  }

  @Test
  void headNamesVinComplaintAndPromise() {
    HeadText head = Samples.text(Samples.oilService()).head();
    assertEquals("ZZ9AA1B2C3D456789", head.vehicle().vin());
    assertEquals("It pulls to the left when I brake", head.request().complaint());
    assertEquals("16:30", head.request().promised());
    assertEquals("", head.before().replaces());
  }

  @Test
  void newRevisionSaysWhatItReplaces() {
    Heading.Replaced before =
        new Heading.Replaced("2404-A-0d313a", List.of("row 1 was 20 N·m", "step 7 is new"));
    Sheet sheet = Samples.oilService().replacing(Optional.of(before));
    assertEquals(
        "Replaces 2404-A-0d313a: row 1 was 20\u00a0N·m; step 7 is new.",
        Samples.text(sheet).head().before().replaces());
  }

  @Test
  void everyFurtherTurnHasABoxForEachPlace() {
    TorqueLineText line =
        line(
            new LineMaker(4, "head bolt", BOTH, 10)
                .stages(
                    SampleLines.torque("50", "37", "W2"),
                    SampleLines.turn("90"),
                    SampleLines.turn("60")));
    assertEquals(
        List.of("+90°", "+60°"),
        line.turns().stream().map(TorqueTableText.TurnText::angle).toList());
    assertEquals(
        List.of("turn.4.2.front-left", "turn.4.2.front-right"), names(line.turns().get(1).boxes()));
  }

  @Test
  void figureAndUnitOfANoteStayTogether() {
    TorqueLineText line = line(new LineMaker(1, "nut", BOTH, 1).note("hold with 17 mm, 3 in line"));
    assertEquals("hold with 17\u00a0mm, 3 in line", line.remarks().get(0).words());
  }

  /** A figure at the end of one line and its unit on the next are read as two things. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "hold 30 s",
        "at 1500 rpm",
        "2.4 kgf·m",
        "15 psi",
        "50 mi",
        "1 h",
        "4 kN",
        "250 Ω",
        "81 ft-lb"
      })
  void everyUnitOfANoteStaysWithItsFigure(String note) {
    TorqueLineText line = line(new LineMaker(1, "nut", BOTH, 1).note(note));
    int unit = note.lastIndexOf(' ');
    assertEquals(
        note.substring(0, unit) + '\u00a0' + note.substring(unit + 1),
        line.remarks().get(0).words());
  }

  /** The words of its key stand before a remark, and all of it is in the language of the sheet. */
  @ParameterizedTest
  @CsvSource({
    "BRITISH,colour: grey at the tyre",
    "AMERICAN,color: gray at the tire",
  })
  void remarkStandsBehindTheWordsOfItsKey(Shop.Terms terms, String printed) {
    Remark.Key colour = new Remark.Key("colour-code", "colourCode", "colour: ", "color: ");
    TorqueLine line =
        new LineMaker(1, "nut", BOTH, 1)
            .remarks(new Remark(Remark.NOTE, "hold it"), new Remark(colour, "grey at the tyre"))
            .build();
    Heading british = Samples.heading("1", "Work", Optional.empty());
    Heading.Style style =
        new Heading.Style(
            british.style().paper(),
            terms,
            Glossary.of(Map.of("grey", "gray", "tyre", "tire")),
            british.style().torqueUnits(),
            british.style().distance());
    Language language = Language.of(Altered.with(british, "style", style));
    TorqueTableText table = new TorqueWords(List.of(line), Unit.NEWTON_METRE, language).table();
    assertEquals(
        List.of(new RemarkText("note", "hold it"), new RemarkText("colour-code", printed)),
        table.blocks().get(0).lines().get(0).remarks());
  }

  @Test
  void lineOfTwoVisitsHasABoxForSnug() {
    TorqueLineText line = line(new LineMaker(3, "bush bolt", BOTH, 1).atRideHeight());
    assertEquals(
        List.of("torque.3.front-left.snug", "torque.3.front-right.snug"), names(line.snug()));
    assertTrue(line.rideHeight());
  }

  @Test
  void threadAndReuseThatTheBookKeepsSilentAboutAreSaidToBeSo() {
    TorqueLineText line =
        line(
            new LineMaker(1, "bolt", BOTH, 1)
                .threads(Treatment.NOT_STATED)
                .reuse(Reuse.NOT_STATED));
    assertEquals("lubrication not stated", line.threads());
    assertEquals("re-use not stated", line.reuse());
  }

  @Test
  void linesForTheGroundStandInABlockOfTheirOwn() {
    TorqueTableText table = Samples.text(Samples.brakes()).torque();
    assertEquals(
        List.of("While raised", "On the ground or at ride height"),
        table.blocks().stream().map(TorqueTableText.TorqueBlock::heading).toList());
    assertEquals(
        List.of("4", "5"), table.blocks().get(1).lines().stream().map(TorqueLineText::n).toList());
    assertEquals("10", table.marks());
  }

  @Test
  void roundsSayTheFigureOfTheFirstOne() {
    TorqueLineText line =
        line(
            new LineMaker(1, "wheel nut", BOTH, 5)
                .stages(SampleLines.torque("110", "81", "W3"))
                .circle("A"));
    assertEquals(
        "rounds: 50\u00a0% (W3: 55\u00a0N·m), 100\u00a0%, then go round once more", line.rounds());
  }

  @Test
  void unitOfTheBoxesIsTheWrenchs() {
    TorqueLine.StageLine foot = foot();
    TorqueLineText line = line(new LineMaker(1, "nut", BOTH, 1).stages(foot));
    assertEquals("lbf·ft", line.unit());
  }

  private static TorqueLine.StageLine foot() {
    TorqueLine.StageLine.Torque metric =
        (TorqueLine.StageLine.Torque) SampleLines.torque("95", "70", "W9");
    return new TorqueLine.StageLine.Torque(
        metric.target(),
        metric.written(),
        metric.second(),
        metric.band(),
        metric.reading(),
        metric.wrench(),
        metric.second(),
        metric.arrives(),
        true,
        metric.trouble());
  }

  @Test
  void cautionOnTopIsNotRepeatedAtItsSteps() {
    Sheet brakes = Samples.brakes();
    StepText told = step(brakes, new StepMaker(90, "Look").letters("A", "C"));
    assertEquals("C", told.letters());
  }

  @Test
  void cautionReadsCommandHazardConsequence() {
    StepText lift = Samples.text(Samples.brakes()).sections().get(1).steps().get(4);
    assertEquals("C", lift.above().get(0).letter());
    assertEquals(
        "Brake dust in the air, asbestos on old cars: lung disease that shows years later.",
        lift.above().get(0).why());
    assertEquals("respirator, gloves", lift.above().get(0).protect());
  }

  @Test
  void torqueLinesThatTheDetailsNameAreNotNamedAgain() {
    Sheet brakes = Samples.brakes();
    assertEquals(
        "",
        step(brakes, new StepMaker(90, "Fit").torque(2).detail(new Detail.Installed(2))).torque());
    assertEquals("2,\u00a03", step(brakes, new StepMaker(90, "Fit").torque(2, 3)).torque());
  }

  @Test
  void runsOfStepsCloseUp() {
    assertEquals("2, 4, 5, 7–9", Phrases.ranges(List.of(2, 4, 5, 7, 8, 9)));
    assertEquals("", Phrases.ranges(List.of()));
  }

  @Test
  void checksThatStandBeforeTheFirstMoveAreTheGate() {
    List<SheetText.ChecksText> checks = Samples.text(Samples.brakes()).checks();
    assertEquals(
        List.of("Before the vehicle moves"),
        checks.stream().filter(SheetText.ChecksText::gate).map(c -> c.heading()).toList());
    assertEquals("check.3.hold", checks.get(1).checks().get(0).hold().boxes().get(0).name());
  }

  @Test
  void whatAnotherFirmMustDoKeepsTheSheetOpen() {
    assertEquals(
        List.of("Wheel alignment"),
        Samples.text(Samples.brakes()).openItems().stream()
            .map(SheetText.OpenItemText::text)
            .toList());
  }

  @Test
  void tallyCountsEveryPieceAtEveryPlace() {
    // 1 + 2 + 4 + 1 at two wheels each, and one undertray.
    assertEquals("17", Samples.text(Samples.brakes()).tally().off());
  }

  @Test
  void distanceOfTheRecheckHasABoxForTheOdometer() {
    SheetText.RecheckText recheck = Samples.text(Samples.brakes()).rechecks().get(0);
    assertEquals(Quantity.of("80", Unit.KILOMETRE).print(), recheck.distance());
    assertEquals("recheck.5.due", recheck.due().name());
  }

  private static StepText step(Sheet sheet, StepMaker step) {
    Sheet.Section section = Samples.section(Phase.WORK, Moment.RAISED, BOTH, step);
    return Samples.text(Samples.with(sheet, List.of(section), sheet.torque()))
        .sections()
        .get(0)
        .steps()
        .get(0);
  }

  private static TorqueLineText line(LineMaker line) {
    return table(line.build()).blocks().get(0).lines().get(0);
  }

  private static TorqueTableText table(TorqueLine line) {
    Sheet brakes = Samples.brakes();
    return Samples.text(Samples.with(brakes, brakes.sections(), List.of(line))).torque();
  }

  private static List<String> names(List<BoxText> boxes) {
    return boxes.stream().map(BoxText::name).toList();
  }
}
