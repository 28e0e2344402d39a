package baysheet.rules;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.rules.made.early.Early;
import baysheet.rules.made.late.Late;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Data flow one way: who may import whom, and who alone may touch which library. */
class ArchitectureTest {
  private static final String ROOT = "baysheet.";
  private static final List<String> EVERYTHING = List.of("everything");
  private static final Pattern IMPORTS = Pattern.compile("May import: ((?:[^;.]|[.]\\w)+)[;.]");

  /** Two packages that break every rule. */
  private static final String MADE_ROOT = "baysheet.rules.made.";

  private static final JavaClasses MADE =
      new ClassFileImporter().importClasses(Early.class, Late.class);

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
              Map.entry(
                  "files",
                  List.of("report", "yaml", "books", "resolve", "layout", "ledger", "pdf")),
              Map.entry(
                  "output",
                  List.of(
                      "report",
                      "json",
                      "yaml",
                      "books",
                      "resolve",
                      "sheet",
                      "plan",
                      "plan.stage",
                      "wording",
                      "template",
                      "box",
                      "layout",
                      "record",
                      "ledger",
                      "pdf",
                      "scan",
                      "print",
                      "files")),
              Map.entry(
                  "collect",
                  List.of(
                      "report", "json", "yaml", "torque", "layout", "record", "ledger", "pdf",
                      "scan", "files", "output")),
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
    assertEquals(new TreeSet<>(MAY_IMPORT.keySet()), packages(ROOT, Sources.CLASSES));
  }

  @Test
  void aPackageWithoutARuleIsFound() {
    assertEquals(Set.of("early", "late"), packages(MADE_ROOT, MADE));
  }

  private static Set<String> packages(String root, JavaClasses classes) {
    Set<String> found = new TreeSet<>();
    classes.forEach(it -> found.add(it.getPackageName().substring(root.length())));
    return found;
  }

  @ParameterizedTest
  @MethodSource("packages")
  void aPackageImportsOnlyWhatStandsBeforeIt(String name) {
    List<String> allowed = MAY_IMPORT.get(name);
    if (!allowed.equals(EVERYTHING)) {
      assertEquals(List.of(), wrongImports(ROOT, name, allowed, Sources.CLASSES));
    }
  }

  @Test
  void anImportOfWhatStandsBehindIsFound() {
    assertFalse(wrongImports(MADE_ROOT, "early", List.of(), MADE).isEmpty());
    assertEquals(List.of(), wrongImports(MADE_ROOT, "early", List.of("late"), MADE));
    assertEquals(List.of(), wrongImports(MADE_ROOT, "late", List.of(), MADE));
  }

  /** Data flow one way. */
  private static List<String> wrongImports(
      String root, String name, List<String> allowed, JavaClasses classes) {
    String[] packages =
        Stream.concat(Stream.of(name), allowed.stream())
            .map(it -> root + it)
            .toArray(String[]::new);
    DescribedPredicate<JavaClass> elsewhere =
        resideInAPackage("baysheet..").and(DescribedPredicate.not(resideInAnyPackage(packages)));
    return faults(
        noClasses().that().resideInAPackage(root + name).should().dependOnClassesThat(elsewhere),
        classes);
  }

  private static List<String> faults(ArchRule rule, JavaClasses classes) {
    return rule.evaluate(classes).getFailureReport().getDetails();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void aPackageSaysInOneSentenceWhatItIsAndWhatItMayImport(String name) {
    String file = "src/main/java/baysheet/" + name.replace('.', '/') + "/package-info.java";
    assertEquals("", wrongWords(Sources.read(file), MAY_IMPORT.get(name)));
  }

  @Test
  void wrongWordsOfAPackageAreFound() {
    String words = "/**\n * Makes it.\n *\n * <p>May import: yaml, books; no more.\n */";
    assertEquals("", wrongWords(words, List.of("books", "yaml")));
    assertEquals("it says [books, yaml]", wrongWords(words, List.of("books")));
    assertEquals(
        "not one sentence", wrongWords(words.replace("it.", "it. And that."), List.of("books")));
    assertEquals("not one sentence", wrongWords(words.replace("it.", "it"), List.of("books")));
    assertEquals(
        "it does not say what it may import",
        wrongWords(words.replace("May import", "Imports"), List.of("books")));
  }

  /** What is wrong with a package-info; nothing where it is as it should be. */
  private static String wrongWords(String file, List<String> mayImport) {
    String comment = file.substring(0, file.indexOf("*/")).replaceAll("(?m)^\\s*/?\\*+ ?", " ");
    String text = comment.strip().replaceAll("\\s+", " ");
    Matcher imports = IMPORTS.matcher(text);
    if (!imports.find()) {
      return "it does not say what it may import";
    }
    String sentence = text.substring(0, text.indexOf(" <p>")).strip();
    if (sentence.indexOf(". ") >= 0 || !sentence.endsWith(".")) {
      return "not one sentence";
    }
    String bare = imports.group(1).replaceAll("\\([^)]*\\)", "").strip();
    Set<String> named =
        bare.equals("nothing of the project") ? Set.of() : Set.of(bare.split("\\s*,\\s*"));
    return named.equals(Set.copyOf(mayImport)) ? "" : "it says " + new TreeSet<>(named);
  }

  @ParameterizedTest
  @MethodSource("onlyPlaces")
  void aLibraryIsTouchedInItsPlaceOnly(Only only) {
    String[] places = only.packages().stream().map(it -> ROOT + it).toArray(String[]::new);
    assertEquals(List.of(), strayUses(only.library(), places, Sources.CLASSES), only.because());
    // A rule about a library that nobody uses would hold whatever its name.
    assertTrue(isUsed(only.library(), Sources.CLASSES), only.library() + " is used nowhere");
  }

  @Test
  void aLibraryOutsideItsPlaceIsFound() {
    String library = "org.yaml.snakeyaml..";
    assertFalse(strayUses(library, new String[] {MADE_ROOT + "late"}, MADE).isEmpty());
    assertEquals(List.of(), strayUses(library, new String[] {MADE_ROOT + "early"}, MADE));
    assertTrue(isUsed(library, MADE));
    assertFalse(isUsed("picocli..", MADE));
  }

  private static List<String> strayUses(String library, String[] places, JavaClasses classes) {
    return faults(
        noClasses()
            .that()
            .resideOutsideOfPackages(places)
            .should()
            .dependOnClassesThat()
            .resideInAPackage(library),
        classes);
  }

  private static boolean isUsed(String library, JavaClasses classes) {
    return classes.stream()
        .flatMap(it -> it.getDirectDependenciesFromSelf().stream())
        .anyMatch(it -> resideInAPackage(library).test(it.getTargetClass()));
  }

  /** What one stage hands to the next does not change any more. */
  @Test
  void nothingIsKeptInFieldsThatChangeOutsideTheirClass() {
    ArchRule rule = classes().that().areRecords().should().haveOnlyFinalFields();
    assertEquals(List.of(), faults(rule, Sources.CLASSES));
    assertFalse(faults(rule, MADE).isEmpty());
  }
}
