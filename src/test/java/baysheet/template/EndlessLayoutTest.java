package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.wording.Samples;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A layout that would run for ever or fill the memory is stopped by a count, and the problem names
 * its line. The time limit is there for a failure only: it is some hundred times what each takes.
 */
class EndlessLayoutTest {
  private static final String HEAD =
      "<form largest='9pt' smallest='9pt' language='en' title='t'><text>\n";
  private static final String FOOT = "</text></form>";

  @ParameterizedTest
  @ValueSource(
      strings = {
        // Lists
        "<#list 1.. as i></#list>",
        "<#list 1..2000000000 as i></#list>",
        "<#list 1.. as i><#if i lt 0>x</#if></#list>",
        "<#list 1..9999 as a><#list 1..9999 as b><#list 1..9999 as c></#list></#list></#list>",
        "<#list 1..2000000000><#items as i></#items></#list>",
        "${(1..2000000000)?join('')}",
        "${(1..2000000000)?map(x -> x)?size}",
        "${(1..2000000000)?filter(x -> x gt 3)?size}",
        "<#assign a = [1,2,3,4,5,6,7,8,9]><#list 1..99 as i><#assign a = a + a></#list>${a?size}",
        "<#assign e = []><#list 1..99 as i><#assign e = e + e></#list>${e?size}",
        "<#assign e = []><#list 1..99 as i><#assign e = (e + e)?chunk(2)></#list>${e?size}",
        "<#assign a = [1]><#list 1..99 as i><#assign a = [a, a]></#list>${a?size}",
        // Texts
        "<#assign s = 'abc'><#list 1..99 as i><#assign s = s + s></#list>${s?length}",
        "<#assign s = 'abc'><#list 1..99 as i><#assign s += s></#list>${s?length}",
        "<#assign s = 'abc'><#list 1..99 as i><#assign s = '${s}${s}'></#list>${s?length}",
        "<#assign s = 'abc'><#list 1..99 as i><#assign s>${s}${s}</#assign></#list>x",
        "<#assign s = 'abc'><#list 1..99 as i><#assign s = s?replace('', s)></#list>${s?length}",
        "<#assign s = 'abc'><#list 1..99 as i><#assign s = [s, s]?join(s)></#list>${s?length}",
        "<#assign a = ['abc']><#list 1..99 as i><#assign a = [a[0] + a[0]]></#list>${a[0]?length}",
        "<#macro d s><@d s + s/></#macro><@d 'abc'/>",
        "<#function d s n><#return (n == 0)?then(s?length, d(s + s, n - 1))></#function>${d('a',"
            + " 50)}",
        "<#function d s><#return s + s></#function>"
            + "${d(d(d(d(d(d(d(d(d(d(d(d(d(d(d(d(d(d(d(d('abc'))))))))))))))))))))?length}",
        "${''?left_pad(2000000000)}",
        "${'x'?right_pad(2000000000, 'abc')}",
        "${'%2000000000d'?string}${'x'?left_pad(9999999999)}",
        // Numbers
        "<#assign n = 9><#list 1..99 as i><#assign n = n * n></#list>${n}",
        "<#assign n = 9><#list 1..99 as i><#assign n *= n></#list>${n}",
        "${'1e999999999'?number + 1}",
        "${'1e-999999999'?number + 1}",
        "${'1e999999999'?number}",
        // Macros and functions
        "<#macro a><@a/><@a/></#macro><@a/>",
        "<#macro a n><#if n gt 0><@a n - 1/><@a n - 1/></#if></#macro><@a 50/>",
        "<#macro a><@b/></#macro><#macro b><@a/></#macro><@a/>",
        "<#macro a><#list 1..999 as i><#nested/></#list></#macro><@a><@a><@a>x</@a></@a></@a>",
        "<#function f n><#return f(n - 1) + f(n - 2)></#function>${f(40)}",
        "<#function f n><#if n lt 2><#return 1></#if><#return f(n - 1) + f(n -"
            + " 2)></#function>${f(40)}",
        "<#function f n a=f(n, 1)><#return 1></#function>${f(1)}",
        "<#function f n a=(n lt 1)?then(1, f(n - 1) + f(n - 1))><#return 1></#function>${f(60)}",
        "<#function p x><#return [1,2,3,4,5,6,7,8,9]?filter(y -> p(y))?size gt 0></#function>"
            + "${[1]?filter(p)?size}",
        // Programs made at run time
        "${'1.. as i'?eval}",
        "<#assign t = '<#list 1.. as i></#list>'?interpret><@t/>",
        "${'[1,2]'?eval_json?size}",
        // Patterns that backtrack
        "${'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!'?matches('(a+)+b')?c}",
        "${'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!'?replace('(a+)+b', 'x', 'r')}",
        "<#attempt><#list 1.. as i></#list><#recover>x</#attempt>",
      })
  void isStoppedAtALineOfTheLayout(String attempt) {
    Problem problem = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> only(attempt));
    assertEquals("template-error", problem.code().word(), problem.toString());
    assertEquals("x.ftlx", problem.at().source().name());
    assertEquals(2, problem.at().line(), problem.toString());
  }

  @Test
  void deepNestingIsAProblemAndNoFault() {
    String brackets = "${" + "(".repeat(20_000) + "1" + ")".repeat(20_000) + "}";
    String conditions = "<#if true>".repeat(20_000) + "x" + "</#if>".repeat(20_000);
    String lists = "<#list 1..2 as i>".repeat(300) + "x" + "</#list>".repeat(300);
    for (String attempt : new String[] {brackets, conditions, lists}) {
      Problem problem = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> only(attempt));
      assertEquals("template-error", problem.code().word(), problem.toString());
    }
  }

  @Test
  void ordinaryWorkIsFarFromTheLimit() {
    Problems problems = new Problems();
    String layout = HEAD + "<#list 1..2000 as i>${i}: <b>${i * 2}</b>, </#list>" + FOOT;
    assertTrue(fill(layout, problems).isPresent(), problems.all().toString());
  }

  private static Problem only(String layout) {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), fill(HEAD + layout + FOOT, problems), layout);
    assertEquals(1, problems.all().size(), () -> problems.all().toString());
    return problems.all().get(0);
  }

  private static Optional<Form> fill(String layout, Problems problems) {
    return LayoutTemplate.parse(
            new LayoutSource(new Source("x.ftlx", layout)), Sandbox.configuration())
        .fill(new LayoutTemplate.OfSheet(Samples.text(Samples.oilService())), problems);
  }
}
