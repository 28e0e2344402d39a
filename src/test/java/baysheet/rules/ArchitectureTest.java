package baysheet.rules;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Data flow one way: who may import whom, and who alone may touch which library. */
class ArchitectureTest {
  private static final String ROOT = "baysheet.";
  private static final List<String> EVERYTHING = List.of("everything");

  /** The directions. Each package says the same in its package-info. */
  private static final Map<String, List<String>> MAY_IMPORT =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("json", List.of("torque")),
              Map.entry("report", List.of("json")),
              Map.entry("torque", List.of()),
              Map.entry("day", List.of()),
              Map.entry("print", List.of()),
              Map.entry("yaml", List.of("report")),
              Map.entry("books", List.of("report", "yaml", "torque")),
              Map.entry("resolve", List.of("report", "torque", "books")),
              Map.entry("sheet", List.of("report", "torque", "books", "resolve")),
              Map.entry("verify", List.of("report", "torque", "books", "resolve", "sheet")),
              Map.entry("garage", List.of("report", "torque", "books", "resolve", "sheet", "day")),
              Map.entry(
                  "wording", List.of("report", "torque", "books", "resolve", "sheet", "garage")),
              Map.entry(
                  "plan",
                  List.of(
                      "report",
                      "torque",
                      "books",
                      "resolve",
                      "sheet",
                      "verify",
                      "plan.graph",
                      "plan.content",
                      "plan.stage")),
              Map.entry("plan.graph", List.of("report", "torque", "books", "resolve", "sheet")),
              Map.entry(
                  "plan.content",
                  List.of("report", "torque", "books", "resolve", "sheet", "plan.graph")),
              Map.entry(
                  "plan.stage",
                  List.of(
                      "report",
                      "torque",
                      "books",
                      "resolve",
                      "sheet",
                      "verify",
                      "plan.graph",
                      "plan.content")),
              Map.entry("box", List.of("report")),
              Map.entry("template", List.of("report", "wording", "box")),
              Map.entry("layout", List.of("report", "box")),
              Map.entry(
                  "record",
                  List.of(
                      "report", "json", "torque", "books", "sheet", "garage", "wording", "layout")),
              Map.entry("pdf", List.of("report", "layout")),
              Map.entry("ledger", List.of("report", "json", "torque", "books", "record")),
              Map.entry("scan", List.of("record")),
              Map.entry("cli", EVERYTHING)));

  /** A library and the packages that may touch it. */
  private record Only(String library, List<String> packages, String because) {
    @Override
    public String toString() {
      return library;
    }
  }

  static List<Only> onlyPlaces() {
    return List.of(
        new Only("org.yaml.snakeyaml..", List.of("yaml"), "our tree keeps spans and plain texts"),
        new Only(
            "freemarker..", List.of("template"), "a layout is data from outside, kept shut in"),
        new Only(
            "org.apache.pdfbox.cos..",
            List.of("pdf", "scan"),
            "equal bytes need its traps in one place; scans are only read"),
        new Only(
            "org.apache.pdfbox.pdmodel..",
            List.of("pdf", "scan"),
            "a page knows nothing of its file"),
        new Only(
            "com.google.zxing..",
            List.of("template", "scan"),
            "a layout writes the code, a scan is searched for it"),
        new Only("org.apache.fontbox..", List.of("layout", "pdf"), "all others ask a face"),
        new Only("picocli..", List.of("cli"), "a stage is a function, not a command"),
        new Only("com.fasterxml.jackson..", List.of("json"), "all others build and read objects"));
  }

  static List<String> packages() {
    return List.copyOf(MAY_IMPORT.keySet());
  }

  @Test
  void everyPackageHasItsRule() {
    TreeSet<String> found = new TreeSet<>();
    Sources.CLASSES.forEach(it -> found.add(it.getPackageName().substring(ROOT.length())));
    assertEquals(new TreeSet<>(MAY_IMPORT.keySet()), found);
  }

  @ParameterizedTest
  @MethodSource("packages")
  void aPackageImportsOnlyWhatStandsBeforeIt(String name) {
    List<String> allowed = new ArrayList<>(MAY_IMPORT.get(name));
    if (allowed.equals(EVERYTHING)) {
      return;
    }
    allowed.add(name);
    String[] packages = allowed.stream().map(it -> ROOT + it).toArray(String[]::new);
    DescribedPredicate<JavaClass> elsewhere =
        resideInAPackage("baysheet..").and(DescribedPredicate.not(resideInAnyPackage(packages)));
    noClasses()
        .that()
        .resideInAPackage(ROOT + name)
        .should()
        .dependOnClassesThat(elsewhere)
        .because("data flows one way: " + name + " may import " + MAY_IMPORT.get(name))
        .check(Sources.CLASSES);
  }

  @ParameterizedTest
  @MethodSource("packages")
  void aPackageSaysInOneSentenceWhatItIsAndWhatItMayImport(String name) {
    PackageWords words = PackageWords.of(name);
    assertTrue(words.sentence().endsWith("."), words.sentence());
    assertFalse(words.sentence().substring(0, words.sentence().length() - 1).contains(". "));
    assertEquals(new TreeSet<>(MAY_IMPORT.get(name)), new TreeSet<>(words.mayImport()));
  }

  @ParameterizedTest
  @MethodSource("onlyPlaces")
  void aLibraryIsTouchedInItsPlaceOnly(Only only) {
    String[] places = only.packages().stream().map(it -> ROOT + it).toArray(String[]::new);
    noClasses()
        .that()
        .resideOutsideOfPackages(places)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(only.library())
        .because(only.because())
        .check(Sources.CLASSES);
    // A rule about a library that nobody uses would hold whatever its name.
    boolean used =
        Sources.CLASSES.stream()
            .flatMap(it -> it.getDirectDependenciesFromSelf().stream())
            .anyMatch(it -> resideInAPackage(only.library()).test(it.getTargetClass()));
    assertTrue(used, only.library() + " is used nowhere");
  }

  @Test
  void nothingIsKeptInFieldsThatChangeOutsideTheirClass() {
    classes()
        .that()
        .areRecords()
        .should()
        .haveOnlyFinalFields()
        .because("what one stage hands to the next does not change any more")
        .check(Sources.CLASSES);
  }

  /** What a package-info says. */
  private record PackageWords(String text, String sentence, List<String> mayImport) {
    private static final Pattern IMPORTS = Pattern.compile("May import: ((?:[^;.]|[.]\\w)+)[;.]");

    static PackageWords of(String name) {
      String file =
          Sources.read("src/main/java/baysheet/" + name.replace('.', '/') + "/package-info.java");
      String words =
          file.substring(0, file.indexOf("*/")).replaceAll("(?m)^\\s*/?\\*+ ?", " ").strip();
      String text = words.replaceAll("\\s+", " ");
      Matcher imports = IMPORTS.matcher(text);
      assertTrue(imports.find(), name + " does not say what it may import");
      return new PackageWords(
          text, text.substring(0, text.indexOf(" <p>")).strip(), names(imports.group(1)));
    }

    private static List<String> names(String listed) {
      String bare = listed.replaceAll("\\([^)]*\\)", "").strip();
      return bare.equals("nothing of the project") ? List.of() : List.of(bare.split("\\s*,\\s*"));
    }
  }
}
