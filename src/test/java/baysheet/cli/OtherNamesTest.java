package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Catalogue;
import baysheet.books.ShopFolder;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.output.SheetMaker;
import baysheet.plan.Planner;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.template.LayoutTemplates;
import baysheet.wording.Printed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A garage may call its procedures, its items and its fasteners as it likes: the same cautions,
 * checks and holds appear, at as many steps. The demo days and a day of rarer jobs, which between
 * them bring up every caution and every check there is, are planned under the shipped names and
 * under names that the built-in catalogue does not know.
 */
class OtherNamesTest {
  private static final Path RARER = Path.of("src/test/resources/cases/workshop");
  private static final Fonts FONTS = Fonts.builtIn();

  /** Where a procedure is named. */
  private static final Set<String> PROCEDURES =
      Set.of(
          "procedure/procedure",
          "procedure/behind",
          "procedure/after",
          "procedure/before",
          "procedure/not-with/*",
          "procedure/serves",
          "job/work");

  /** Where an item or a fastener is named. */
  private static final Set<String> ITEMS =
      Set.of(
          "procedure/open/undo",
          "procedure/open/do-up",
          "procedure/open/disturb",
          "procedure/open/slacken",
          "procedure/open/ends",
          "procedure/open/takes-away",
          "procedure/open/apply",
          "procedure/work/undo",
          "procedure/work/do-up",
          "procedure/work/disturb",
          "procedure/work/slacken",
          "procedure/work/ends",
          "procedure/work/takes-away",
          "procedure/work/apply",
          "procedure/close/undo",
          "procedure/close/do-up",
          "procedure/close/disturb",
          "procedure/close/slacken",
          "procedure/close/ends",
          "procedure/close/takes-away",
          "procedure/close/apply",
          "procedure/parts/renews",
          "book/fasteners/*/*:",
          "book/fasteners/*/absent",
          "job/override/*:");

  @TempDir private Path shipped;
  @TempDir private Path renamed;

  @Test
  void whatProceduresAndItemsAreCalledChangesNoCautionNoCheckAndNoHold() {
    CopyOfTheDemo.in(shipped).with(RARER);
    Map<String, List<String>> before = planned(shipped);
    assertTrue(before.size() > 30, "jobs: " + before.keySet());
    rename();
    Map<String, List<String>> after = planned(renamed);
    assertEquals(before.keySet(), after.keySet());
    before.forEach((job, expected) -> assertEquals(expected, after.get(job), job));
  }

  /** No rule asks for a name that a garage may choose; circuits are words of the rules. */
  @Test
  void noBuiltInRuleAsksForAProcedureAnItemOrAFastener() {
    Catalogue catalogue = folder(Path.of("jobs"), new Problems()).catalogue();
    List<String> asked = new ArrayList<>();
    Stream.concat(
            catalogue.cautions().values().stream().flatMap(it -> it.when().stream()),
            catalogue.rules().values().stream().flatMap(it -> it.when().stream()))
        .flatMap(trigger -> trigger.asked().keySet().stream())
        .map(condition -> condition.key())
        .filter(Set.of("undo", "do-up", "disturb", "procedure")::contains)
        .forEach(asked::add);
    assertEquals(List.of(), asked);
    Set<String> kinds = catalogue.vocabulary().kinds().keySet();
    List<String> off =
        catalogue.rules().values().stream()
            .flatMap(rule -> rule.step().stream())
            .flatMap(step -> step.whileOff().stream())
            .map(Located::value)
            .filter(name -> !kinds.contains(name))
            .toList();
    assertEquals(List.of(), off);
  }

  private void rename() {
    Map<String, Catalogue.Item> items = folder(shipped, new Problems()).catalogue().items();
    Set<String> fasteners = new TreeSet<>();
    try (Stream<Path> files = Files.walk(shipped)) {
      for (Path file : files.filter(it -> it.toString().endsWith(".yaml")).toList()) {
        String name = shipped.relativize(file).toString().replace('\\', '/');
        String kind = NamedPlaces.kind(name);
        String text =
            NamedPlaces.replaced(kind, Files.readString(file), place -> other(place, items));
        String as =
            kind.equals("procedure") ? "procedures/" + other(YamlFiles.name(file)) + ".yaml" : name;
        Path to = renamed.resolve(as);
        Files.createDirectories(to.getParent());
        Files.writeString(to, text);
      }
      Files.writeString(renamed.resolve("catalogue/renamed.yaml"), catalogue(items));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String other(String name) {
    return "our-" + name + "-x";
  }

  private static boolean isCircuit(Catalogue.Item item) {
    return item.kinds().stream().anyMatch(kind -> kind.value().equals("circuit"));
  }

  private static String other(NamedPlaces place, Map<String, Catalogue.Item> items) {
    String text = place.scalar().text();
    if (place.path().endsWith("/apply")) {
      int on = text.indexOf(" on ");
      return on < 0 ? text : text.substring(0, on + 4) + other(text.substring(on + 4));
    }
    if (!PROCEDURES.contains(place.path()) && !ITEMS.contains(place.path())) {
      return text;
    }
    int at = text.indexOf(" at ");
    String name = at < 0 ? text : text.substring(0, at);
    boolean role = PROCEDURES.contains(place.path()) && ROLES.contains(name);
    boolean circuit = items.containsKey(name) && isCircuit(items.get(name));
    return role || circuit ? text : other(name) + (at < 0 ? "" : text.substring(at));
  }

  /** What procedures serve is a word between procedures, as kinds are between items. */
  private static final Set<String> ROLES = Set.of("raise", "arm-held", "hub-held");

  /** The items under their other names; each keeps its kinds and its words. */
  private static String catalogue(Map<String, Catalogue.Item> items) {
    StringBuilder text = new StringBuilder("items:\n");
    for (Catalogue.Item item : items.values()) {
      text.append(
          "  %s: {name: \"%s\"".formatted(other(item.name().value()), item.british().value()));
      item.back().ifPresent(back -> text.append(", back: \"" + back.value() + "\""));
      List<String> kinds = item.kinds().stream().map(Located::value).toList();
      text.append(", kinds: [" + String.join(", ", kinds) + "]}\n");
    }
    return text.toString();
  }

  private static ShopFolder folder(Path root, Problems problems) {
    return new ShopFolders(FONTS)
        .read(root, problems)
        .orElseThrow(() -> new AssertionError(problems.all()));
  }

  /** What stands on each job's sheet that cautions, checks and holds bring. */
  private static Map<String, List<String>> planned(Path root) {
    Problems problems = new Problems();
    ShopFolder folder = folder(root, problems);
    SheetMaker maker =
        new SheetMaker(new ShopFolders(FONTS), LayoutTemplates.builtIn(), FONTS, Optional.empty());
    Map<String, List<String>> planned = new TreeMap<>();
    for (Path job : DayFolders.all(root)) {
      maker
          .resolve(job, folder, problems)
          .flatMap(resolved -> Planner.plan(resolved, problems))
          .ifPresent(sheet -> planned.put(YamlFiles.name(job), said(sheet)));
    }
    assertEquals(List.of(), problems.all().stream().filter(Problem::isError).toList());
    return planned;
  }

  private static List<String> said(Sheet sheet) {
    List<String> said = new ArrayList<>();
    for (CautionLine caution : sheet.safety().cautions()) {
      said.add("caution " + caution.name() + " at " + caution.steps().size() + " steps");
    }
    for (CheckLine check : sheet.checks()) {
      said.add(
          "check "
              + Printed.text(sheet, check.text())
              + " at "
              + check.moment()
              + (check.hold() ? " hold" : ""));
    }
    sheet.sections().stream()
        .flatMap(section -> section.steps().stream())
        .filter(step -> step.phase() == Sheet.Phase.CHECK || step.hold())
        .forEach(step -> said.add("step " + Printed.text(step) + (step.hold() ? " hold" : "")));
    Printed.evening(sheet).forEach(line -> said.add("evening " + line));
    said.sort(String::compareTo);
    assertFalse(said.isEmpty());
    return said;
  }
}
