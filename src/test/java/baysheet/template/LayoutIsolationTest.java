package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.box.Form;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.wording.Samples;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet depends on its shop folder and layout: no clock, no locale, no zone, no environment. */
class LayoutIsolationTest {
  private static final String HEAD =
      "<form largest='9pt' smallest='9pt' language='en' title='t'><text>\n";
  private static final String FOOT = "</text></form>";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${.now}",
        "${.now?string('yyyy')}",
        "${.now?long}",
        "${ .now ?date}",
        "<#assign t = .now>x",
        "<#if .now??>x</#if>",
        "<#list [.now] as t>x</#list>",
        "<@x .now/><#macro x y></#macro>",
        "${\"${.now?string('HH')}\"}",
        "${.locale}",
        "${.lang}",
        "${.locale_object}",
        "${.time_zone}",
        "${.version}",
        "${.incompatible_improvements}",
        "${.template_name}",
        "${.current_template_name}",
        "${.main_template_name}",
        "${.caller_template_name}",
        "${.output_format}",
        "${.output_encoding!}",
        "${.url_escaping_charset!}",
        "${.data_model?size}",
        "${.globals.sheet.title}",
        "${.vars['sheet'].title}",
        "${.namespace?size}",
        "${.main?size}",
        "${.get_optional_template('/etc/passwd').exists?c}",
        "${'2026-01-01'?date}",
        "${1?number_to_date}",
        "${0?number_to_datetime?iso_local}",
        "${1234.5?string.currency}",
        "${'x'?url}${'a b'?word_list?size}",
        "<#setting locale='tr_TR'>${'title'?upper_case}",
        "<#setting number_format='0.00'>${1}",
        "<#setting time_zone='Pacific/Auckland'>x",
        "<#noautoesc>${sheet.title}</#noautoesc>",
        "<#outputformat 'plainText'>${sheet.title}</#outputformat>",
        "${sheet.title?no_esc}",
        "<#escape x as x?upper_case>${sheet.title}</#escape>",
        "<#flush>",
        "#{1.5; M2}",
      })
  void isRefusedAtItsLine(String attempt) {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), fill(HEAD + attempt + FOOT, problems), attempt);
    assertEquals(1, problems.all().size(), () -> problems.all().toString());
    Problem problem = problems.all().get(0);
    assertEquals("template-error", problem.code().word(), problem.toString());
    assertEquals(2, problem.at().line(), problem.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<#ftl output_format='plainText'>",
        "<#ftl output_format='undefined'>",
        "<#ftl auto_esc=false>",
        "<#ftl output_format='HTML'>",
      })
  void aHeaderCannotTurnOffTheEscapingOfWords(String header) {
    Problems problems = new Problems();
    String layout = header + HEAD + "${sheet.title}" + FOOT;
    assertEquals(Optional.empty(), fill(layout, problems), header);
    assertEquals("template-error", problems.all().get(0).code().word(), problems.all().toString());
  }

  private static Optional<Form> fill(String layout, Problems problems) {
    return LayoutTemplate.parse(
            new LayoutSource(new Source("x.ftlx", layout)), Sandbox.configuration())
        .fill(new LayoutTemplate.OfSheet(Samples.text(Samples.oilService())), problems);
  }
}
