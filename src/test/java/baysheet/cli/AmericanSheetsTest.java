package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Glossary;
import baysheet.books.Shop;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.layout.Item;
import baysheet.output.MadeSheet;
import baysheet.report.Problems;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.wording.Samples;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a garage in America gets: its words and its paper, the same work and figures. */
class AmericanSheetsTest {
  private static final String SHOP = "shop.yaml";

  @TempDir private static Path folder;
  private static Map<String, List<MadeSheet>> british;
  private static Map<String, List<MadeSheet>> american;
  private static Glossary glossary;

  @BeforeAll
  static void make() {
    british = faultless(CopyOfTheDemo.in(folder.resolve("british")));
    CopyOfTheDemo over = CopyOfTheDemo.in(folder.resolve("american"));
    american =
        faultless(
            over.replacing(SHOP, "terms: british", "terms: american")
                .replacing(SHOP, "paper: A4", "paper: Letter"));
    glossary =
        new ShopFolders(Fonts.builtIn())
            .read(over.root(), new Problems())
            .orElseThrow()
            .catalogue()
            .glossary();
  }

  /** The sheets of each job. */
  private static Map<String, List<MadeSheet>> faultless(CopyOfTheDemo shop) {
    Problems problems = new Problems();
    Map<String, MadeSheet> made = shop.made(problems);
    assertEquals(List.of(), problems.all());
    return made.values().stream()
        .collect(
            Collectors.groupingBy(
                it -> it.sheet().heading().job(), TreeMap::new, Collectors.toList()));
  }

  @Test
  void everySheetIsMade() {
    assertTrue(british.size() >= 14, british.keySet().toString());
    assertEquals(british.keySet(), american.keySet());
    american.values().stream()
        .flatMap(List::stream)
        .forEach(it -> assertEquals(Shop.Paper.LETTER, paper(it)));
  }

  private static Shop.Paper paper(MadeSheet made) {
    return made.sheet().heading().style().paper();
  }

  @Test
  void noBritishWordIsLeft() {
    List<String> words =
        glossary.american().entrySet().stream()
            .filter(entry -> !entry.getKey().equals(entry.getValue()))
            .map(Map.Entry::getKey)
            .toList();
    assertTrue(words.size() > 50, words.toString());
    Pattern any =
        Pattern.compile("(?i)(?<![\\p{L}-])(" + String.join("|", words) + ")s?(?![\\p{L}-])");
    american.forEach(
        (job, made) ->
            assertEquals(
                List.of(), any.matcher(texts(made)).results().map(it -> it.group()).toList(), job));
    assertFalse(any.matcher(texts(british.get("2405"))).results().toList().isEmpty());
  }

  private static String texts(List<MadeSheet> made) {
    return made.stream().map(AmericanSheetsTest::text).collect(Collectors.joining(" "));
  }

  /** What the page says, and what it would say with more room; without what somebody noted. */
  private static String text(MadeSheet made) {
    String page =
        made.page().items().stream()
            .filter(Item.Glyphs.class::isInstance)
            .map(item -> ((Item.Glyphs) item).text())
            .collect(Collectors.joining(" "));
    String more =
        Samples.text(made.sheet()).sections().stream()
            .flatMap(section -> section.steps().stream())
            .flatMap(
                step ->
                    Stream.concat(Stream.of(step.because(), step.good()), step.ifStuck().stream()))
            .collect(Collectors.joining(" "));
    String noted = made.sheet().notes().orElse("");
    String complaint = made.sheet().heading().request().complaint().orElse("");
    return plain(page + " " + more).replace(plain(noted), "").replace(plain(complaint), "");
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }

  @Test
  void stepsTorquesAndChecksAreTheSame() {
    american.forEach(
        (job, made) -> {
          List<MadeSheet> ours = british.get(job);
          assertEquals(figures(ours), figures(made), job);
          assertEquals(
              all(ours, sheet -> sheet.steps().stream().map(Sheet.SheetStep::n)),
              all(made, sheet -> sheet.steps().stream().map(Sheet.SheetStep::n)),
              job);
          assertEquals(
              all(ours, sheet -> sheet.checks().stream().map(CheckLine::name)),
              all(made, sheet -> sheet.checks().stream().map(CheckLine::name)));
          assertEquals(
              all(ours, sheet -> sheet.sources().stream()),
              all(made, sheet -> sheet.sources().stream()),
              job);
          Sheet here = ours.get(0).sheet();
          Sheet there = made.get(0).sheet();
          assertEquals(here.notes(), there.notes(), job);
          assertEquals(here.heading().vehicle().name(), there.heading().vehicle().name(), job);
        });
  }

  /** What all sheets of a job say, each thing once: on other paper a job has more sheets. */
  private static <T> Set<T> all(List<MadeSheet> made, Function<Sheet, Stream<T>> of) {
    return made.stream().flatMap(it -> of.apply(it.sheet())).collect(Collectors.toSet());
  }

  private static Set<String> figures(List<MadeSheet> made) {
    return all(
        made,
        sheet ->
            sheet.torque().stream()
                .flatMap(
                    line ->
                        line.places().stream()
                            .map(
                                place ->
                                    line.n()
                                        + line.fastener()
                                        + place
                                        + line.count()
                                        + line.hardware().head()
                                        + line.method().stages()
                                        + line.refitting().threads())));
  }

  @Test
  void aBritishSheetTakesNothingFromTheGlossary() {
    String terms = "terms: {wheel: hoop, bolt: pin}\n";
    CopyOfTheDemo same =
        CopyOfTheDemo.in(folder.resolve("same")).with("catalogue/terms.yaml", terms);
    assertEquals(texts(british.get("2405")), texts(same.made("2405")));
    CopyOfTheDemo other =
        CopyOfTheDemo.in(folder.resolve("other"))
            .replacing(SHOP, "terms: british", "terms: american")
            .with("catalogue/terms.yaml", terms);
    String text = texts(other.made("2405"));
    assertTrue(text.contains("Hoop pin") || text.contains("hoops"), text);
  }
}
