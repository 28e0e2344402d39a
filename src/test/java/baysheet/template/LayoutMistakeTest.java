package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.wording.Samples;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A mistake in a layout is shown where it was written, whatever lists and conditions did to it. */
class LayoutMistakeTest {
  private static final String HEAD =
      "<form largest=\"11pt\" smallest=\"8pt\" language=\"en-GB\" title=\"T\">\n";

  @Test
  void markupMistakeAfterALoopPointsAtTheLayoutsLine() {
    String layout =
        HEAD
            + "<#list 1..30 as i>\n<text>${i}</text>\n</#list>\n"
            + "<column>\n  <text>x</text><tabel/>\n</column></form>";
    assertEquals("6:17", place(layout));
  }

  @Test
  void mistakeInAMacroPointsIntoTheMacro() {
    String layout =
        "<#macro note words><text stile=\"x\">${words}</text></#macro>\n"
            + HEAD
            + "<@note words='a > b'/></form>";
    assertEquals("1:20", place(layout));
  }

  @Test
  void missingValuePointsAtItsInterpolationDespiteTheMarks() {
    String layout = HEAD + "<row><cell><text>${sheet.titel}</text></cell></row></form>";
    assertEquals("2:20", place(layout));
  }

  @Test
  void unclosedDirectivePointsAtALineOfTheLayout() {
    Problem problem = only(HEAD + "<text><#if true>x</text></form>");
    assertEquals("template-error", problem.code().word());
    assertTrue(problem.at().line() <= 2, problem.at().toString());
  }

  @Test
  void crossedTagsPointAtTheElementLastOpened() {
    assertEquals("2:7", place(HEAD + "<text><b>x</text></b></form>"));
  }

  @Test
  void entitiesAreNotExpanded() {
    String layout =
        "<!DOCTYPE form [<!ENTITY passwd SYSTEM \"file:///etc/passwd\">]>\n"
            + HEAD
            + "<text>&passwd;</text></form>";
    assertEquals("template-markup", only(layout).code().word());
  }

  @Test
  void allMistakesOfAnElementAreSaidAtOnce() {
    Problems problems = new Problems();
    fill(
        HEAD
            + "<rule thickness=\"3\"/><text align=\"middle\">x</text>"
            + "<field name=\"a\" kind=\"tick\" says=\"a\"/></form>",
        problems);
    assertEquals(
        List.of("2:1", "2:22", "2:51"),
        problems.all().stream().map(LayoutMistakeTest::point).toList());
  }

  @Test
  void lengthMistakeSaysWhatALengthIs() {
    Problem problem = only(HEAD + "<space height=\"3 mm\"/></form>");
    assertEquals("height=\"3 mm\" of <space>", problem.what());
    assertEquals(Optional.of("a length such as 3mm, 6pt or 0.5em"), problem.expected());
  }

  @Test
  void codeThatNoSheetHasSaysWhatOneIs() {
    Problem problem = only(HEAD + "<code text=\"2401\" size=\"10mm\"/></form>");
    assertEquals("text=\"2401\" of <code>", problem.what());
    assertEquals(Optional.of("16 capital letters and figures"), problem.expected());
  }

  private static String place(String layout) {
    return point(only(layout));
  }

  private static String point(Problem problem) {
    return problem.at().line() + ":" + problem.at().column();
  }

  private static Problem only(String layout) {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), fill(layout, problems));
    assertEquals(1, problems.all().size(), () -> problems.all().toString());
    return problems.all().get(0);
  }

  private static Optional<Form> fill(String layout, Problems problems) {
    return LayoutTemplate.parse(
            new LayoutSource(new Source("x.ftlx", layout)), Sandbox.configuration())
        .fill(new LayoutTemplate.OfSheet(Samples.text(Samples.oilService())), problems);
  }
}
