package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.layout.PageFit;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.wording.Samples;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a layout may write within its bounds is measured, however much and however deep. The time
 * limit is there for a failure only.
 */
class LargeLayoutTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          28 | <items label='natural'><entry> | <text>l</text></entry></items> | Fitted
          28 | <items label='natural'><entry><text>l</text> | </entry></items> | Fitted
          55 | <frame> | </frame> | Fitted
          28 | <row><cell vertical='baseline'> | </cell><cell><text>b</text></cell></row> | Fitted
          18 | <table title='t'><col width='natural'/><headings><td><text>h</text></td></headings><line><td> | </td></line></table> | Fitted
          28 | <columns count='2'><column> | </column></columns> | Overrun
          28 | <droppable group='g'> | <smaller><text>y</text></smaller></droppable> | Fitted
          """)
  void boxesInBoxesAreMeasuredOnceEach(int depth, String open, String close, String outcome) {
    assertEquals(outcome, outcome(open.repeat(depth) + "<text>x</text>" + close.repeat(depth)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          <column><#list 1..3000 as i><droppable group='n${i}'><text>x</text></droppable></#list></column> | Fitted
          <row><#list 1..9000 as i><cell width='natural'><text>x</text></cell></#list></row> | Overrun
          <columns count='3'><#list 1..9000 as i><text>word ${i}</text></#list></columns> | Overrun
          <text><#list 1..60000 as i>word </#list></text> | Overrun
          <text><#list 1..200000 as i>w</#list></text> | Overrun
          <drawing width='180mm' height='100mm' says='d'><#list 1..9000 as i><label x='500' y='500' height='40' text='1'/></#list></drawing> | Unprintable
          <column><#list 1..9000 as i><rule thickness='0.01pt'/></#list></column> | Fitted
          """)
  void thousandsOfBoxesAreMeasured(String body, String outcome) {
    assertEquals(outcome, outcome(body));
  }

  private static String outcome(String body) {
    return assertTimeoutPreemptively(
        Duration.ofSeconds(60), () -> fit(body).getClass().getSimpleName());
  }

  private static PageFit fit(String body) {
    String layout =
        "<form largest='11pt' smallest='8pt' language='en' title='t'>"
            + "<#list 1..3000 as i><group name='n${i}'/></#list><group name='g'/>"
            + body
            + "</form>";
    Problems problems = new Problems();
    Optional<Form> form =
        LayoutTemplate.parse(
                new LayoutSource(new Source("x.ftlx", layout)), Sandbox.configuration())
            .fill(new LayoutTemplate.OfSheet(Samples.text(Samples.oilService())), problems);
    return PageFit.fit(form.orElseThrow(() -> new AssertionError(problems.all())), Fonts.builtIn());
  }
}
