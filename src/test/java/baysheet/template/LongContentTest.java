package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.layout.PageFit;
import baysheet.report.Problems;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.Sheet.Section;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.TorqueLine;
import baysheet.wording.LineMaker;
import baysheet.wording.SampleLines;
import baysheet.wording.SampleLines.StepMaker;
import baysheet.wording.Samples;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What becomes of a job with very much to say: it is refused with reasons, never cut. */
class LongContentTest {
  private static final Fonts FONTS = Fonts.builtIn();

  @ParameterizedTest
  @ValueSource(strings = {"Undo it", "Take the bolts out crosswise and lift the bracket clear"})
  void seventyStepsEighteenLinesAndTwelveCautionsAreRefusedWithReasons(String step) {
    PageFit.Overrun overrun = assertInstanceOf(PageFit.Overrun.class, fit(sheet(step)));
    assertTrue(overrun.byMillimetres() > 0, "by " + overrun.by());
    assertEquals(List.of(), overrun.tooWide());
    List<String> tallest =
        overrun.tallest().subList(0, 2).stream().map(PageFit.Tall::what).sorted().toList();
    assertEquals(
        List.of(
            "columns “L R  Front left and right: work”",
            "table “Torque table in tightening sequence”"),
        tallest);
  }

  private static PageFit fit(Sheet sheet) {
    Problems problems = new Problems();
    Form form =
        LayoutTemplates.builtIn().fill("bay-sheet", Samples.text(sheet), problems).orElseThrow();
    return PageFit.fit(form, FONTS);
  }

  private static Sheet sheet(String words) {
    Sheet brakes = Samples.brakes();
    List<SheetStep> steps =
        IntStream.rangeClosed(1, 70)
            .mapToObj(n -> new StepMaker(n, words).at(Phase.WORK, Moment.RAISED, Samples.BOTH))
            .toList();
    List<TorqueLine> lines =
        IntStream.rangeClosed(1, 18)
            .mapToObj(
                n ->
                    new LineMaker(n, "bracket bolt " + n, Samples.BOTH, 2)
                        .thread("M12x1.75", "10.9")
                        .head("hex 18 mm", "1/2 in", 6)
                        .stages(SampleLines.torque("95", "70", "W3"))
                        .build())
            .toList();
    List<CautionLine> cautions =
        IntStream.rangeClosed(1, 12)
            .mapToObj(
                n ->
                    SampleLines.caution(
                        String.valueOf((char) ('A' + n - 1)),
                        "WARNING",
                        "Keep hands out of gap number " + n,
                        "the arm springs back",
                        "crushed fingers",
                        List.of()))
            .toList();
    return Samples.with(
        brakes,
        List.of(new Section(Sheet.Title.WORK, Samples.BOTH, Optional.empty(), steps)),
        lines,
        cautions);
  }
}
