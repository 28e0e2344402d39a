package baysheet.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same input gives the same bytes: what a machine knows of itself stays out of a sheet. */
class SameBytesTest {
  /**
   * Calls that are not made.
   *
   * @param owners class names
   * @param members a pattern for the member and its parameters: {@code now\(.*}
   * @param inCommands whether package cli is held to it as well
   */
  record Forbidden(String owners, String members, boolean inCommands, String because) {
    ArchRule rule() {
      String[] free = inCommands ? new String[] {"nowhere"} : new String[] {"baysheet.cli.."};
      return noClasses()
          .that()
          .resideOutsideOfPackages(free)
          .should()
          .accessTargetWhere(matches())
          .because(because);
    }

    private DescribedPredicate<JavaAccess<?>> matches() {
      Pattern owner = Pattern.compile(owners);
      Pattern member = Pattern.compile(members);
      return new DescribedPredicate<>(owners + "." + members) {
        @Override
        public boolean test(JavaAccess<?> access) {
          String full = access.getTarget().getFullName();
          String name = access.getTargetOwner().getFullName();
          return owner.matcher(name).matches()
              && full.startsWith(name + ".")
              && member.matcher(full.substring(name.length() + 1)).matches();
        }
      };
    }

    @Override
    public String toString() {
      return owners + "." + members;
    }
  }

  static List<Forbidden> calls() {
    String string = "java\\.lang\\.String";
    return List.of(
        not("java\\.time\\.\\w+", "now\\(.*", "the job's date counts, not the day of printing"),
        not("java\\.time\\.(Clock|InstantSource)", "system.*", "the clock comes in from outside"),
        not(
            "java\\.lang\\.System",
            "(?!arraycopy\\().*",
            "streams, clock, environment belong to commands"),
        not("java\\.lang\\.Runtime", ".*", "a machine's size does not show on a sheet"),
        never(".*", "printStackTrace\\(\\)", "a fault is reported on the stream it is given"),
        never("java\\.util\\.Locale", "getDefault\\(.*", "a sheet reads the same everywhere"),
        never("java\\.util\\.TimeZone", "getDefault\\(.*", "days are days in every zone"),
        not("java\\.time\\.ZoneId", "systemDefault\\(.*", "days are days in every zone"),
        never(string, "format\\(java\\.lang\\.String, .*", "figures take the machine's form: ROOT"),
        never(string, "to(Lower|Upper)Case\\(\\)", "a Turkish i is not an i: ROOT"),
        never(string, "getBytes\\(\\)", "bytes depend on the machine: UTF_8"),
        never(string, "<init>\\(\\[B\\)", "letters depend on the machine: UTF_8"),
        never("java\\.nio\\.charset\\.Charset", "defaultCharset\\(.*", "all files are UTF-8"),
        never(
            "java\\.io\\.(FileReader|FileWriter)",
            "<init>\\(java\\.(lang\\.String|io\\.File)(, boolean)?\\)",
            "letters depend on the machine: UTF_8"),
        never(
            "java\\.io\\.(InputStreamReader|OutputStreamWriter)",
            "<init>\\(java\\.io\\.\\w+Stream\\)",
            "letters depend on the machine: UTF_8"),
        never("java\\.lang\\.(Strict)?Math", "random\\(.*", "chance has no place on a sheet"),
        never(
            "java\\.util\\.(Random|concurrent\\.ThreadLocalRandom)|java\\.security\\.\\w*Random",
            ".*",
            "chance has no place on a sheet"),
        never("java\\.util\\.SplittableRandom", "<init>\\(\\)", "the same seed, the same search"),
        never("java\\.util\\.UUID", "randomUUID\\(.*", "an id follows from the content"),
        never("java\\.util\\.(Date|Calendar|GregorianCalendar)", ".*", "they carry a time zone"),
        never("java\\.text\\.\\w+Format", ".*", "figures take the machine's form"),
        never(
            "java\\.time\\.format\\.DateTimeFormatter",
            "ofPattern\\(java\\.lang\\.String\\)",
            "the names of months depend on the machine: ROOT"));
  }

  private static Forbidden not(String owners, String members, String because) {
    return new Forbidden(owners, members, false, because);
  }

  private static Forbidden never(String owners, String members, String because) {
    return new Forbidden(owners, members, true, because);
  }

  @ParameterizedTest
  @MethodSource("calls")
  void whatDependsOnTheMachineIsNotCalled(Forbidden call) {
    call.rule().check(Sources.CLASSES);
  }

  /** A pattern that matches nothing would hold for ever. */
  @ParameterizedTest
  @MethodSource("calls")
  void eachRuleCatchesTheOffender(Forbidden call) {
    JavaClasses offender = new ClassFileImporter().importClasses(Offender.class);
    assertTrue(call.rule().evaluate(offender).hasViolation(), call.toString());
  }

  /**
   * {@code formatted} has no form that takes a locale. With {@code %s} it prints what {@code
   * toString} gives; {@code %d} and {@code %f} take the machine's digits and commas.
   */
  @Test
  void textsWithoutALocaleHoldNoFiguresForIt() {
    Pattern figure = Pattern.compile("%(\\d+\\$)?[-+ 0,(#]*\\d*(\\.\\d+)?[dfeg]");
    TreeSet<String> found = new TreeSet<>();
    for (Path file : Sources.java(Sources.MAIN)) {
      String text = Sources.read(file);
      boolean rooted = text.contains("String.format(") && !text.contains(".formatted(");
      if (!rooted && figure.matcher(text).find()) {
        found.add(file.getFileName().toString());
      }
    }
    assertEquals(new TreeSet<>(), found);
  }
}
