package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.box.Text;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.wording.Samples;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A layout that somebody sends us can set text and nothing else. */
class SandboxTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<#assign x='freemarker.template.utility.ObjectConstructor'?new()>",
        "<#assign x='freemarker.template.utility.JythonRuntime'?new()>",
        "${sheet?api.getClass()}",
        "${sheet.class}",
        "${sheet.getClass()}",
        "${sheet.hashCode()}",
        "${sheet.toString()}",
        "${sheet.sections.class}",
        "${sheet.sections.size()}",
        "${sheet.head.date.bytes}",
        "${sheet.title?api.getBytes()}",
        "${.data_model.sheet.class.protectionDomain}",
        "<#include '../../etc/passwd'>",
        "<#include '/etc/passwd'>",
        "<#include 'file:///etc/passwd'>",
        "<#import 'bay-sheet.ftlx' as b>",
        "<#include 'x.ftlx' parse=false>",
        "<#visit sheet>",
      })
  void reachingOutsideTheSheetIsAProblem(String attempt) {
    Problem problem = only("<text>" + attempt + "</text>");
    assertEquals("template-error", problem.code().word());
    assertEquals(1, problem.at().line());
  }

  @Test
  void runningAProgramIsAProblemAndRunsNothing() {
    Path witness = folder.resolve("witness");
    String attempt =
        "<#assign run='freemarker.template.utility.Execute'?new()>${run('touch %s')}"
            .formatted(witness);
    assertEquals("template-error", only(attempt).code().word());
    assertFalse(Files.exists(witness));
  }

  @Test
  void otherLayoutOfTheSameFolderCannotBeIncluded() throws IOException {
    Files.writeString(folder.resolve("a.ftlx"), "<#include 'b.ftlx'>");
    Files.writeString(folder.resolve("b.ftlx"), "<text>b</text>");
    Problems problems = new Problems();
    assertEquals(
        Optional.empty(),
        LayoutTemplates.in(folder).fill("a", Samples.text(Samples.oilService()), problems));
    assertTrue(problems.hasErrors());
  }

  @Test
  void listWithoutEndIsStopped() {
    assertTrue(only("<#list 1.. as i>0123456789</#list>").what().contains("never end"));
  }

  @Test
  void macroThatCallsItselfIsStopped() {
    assertTrue(only("<#macro a><@a/></#macro><@a/>").what().contains("without end"));
  }

  @Test
  void wordsOfASheetCannotBecomeMarkup() {
    String layout =
        "<form largest='9pt' smallest='9pt' language='en' title='t'>"
            + "<text>${sheet.head.title}</text></form>";
    Problems problems = new Problems();
    Form form =
        fill(layout, "<b>&amp;</b> ${1+1}", problems)
            .orElseThrow(() -> new AssertionError(problems.all().toString()));
    Text text = (Text) form.body();
    assertEquals("<b>&amp;</b> ${1+1}", text.runs().get(0).text());
    assertFalse(text.runs().get(0).bold());
  }

  private static Problem only(String layout) {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), fill(layout, "t", problems));
    assertEquals(1, problems.all().size(), () -> problems.all().toString());
    return problems.all().get(0);
  }

  private static Optional<Form> fill(String layout, String title, Problems problems) {
    return LayoutTemplate.parse(
            new LayoutSource(new Source("x.ftlx", layout)), Sandbox.configuration())
        .fill(new LayoutTemplate.OfSheet(Samples.text(Samples.oilService(title))), problems);
  }
}
