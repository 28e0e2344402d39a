package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Job;
import baysheet.books.JobReader;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.files.ShopFolders;
import baysheet.layout.PageFit;
import baysheet.plan.Planner;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.Resolver;
import baysheet.sheet.Sheet;
import baysheet.template.Layouts;
import baysheet.wording.Samples;
import baysheet.yaml.YamlFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * How many single works and pairs of works one page holds, over every book of the demo shop: {@code
 * mvn test -Dtest=WorksOnOnePageTest -Dworks=all}, some minutes. The figures go to the output.
 */
@EnabledIfSystemProperty(named = "works", matches = "all")
class WorksOnOnePageTest {
  private static final LocalDate DAY = LocalDate.parse("2026-03-02");
  private static final List<Place> AXLES = List.of(Place.FRONT, Place.REAR);
  private static final List<Place> CORNERS = List.of(Place.FRONT_LEFT, Place.REAR_LEFT);

  /** A lift and a floor, for not every bay serves every work. */
  private static final List<String> BAYS = List.of("1", "floor");

  private static ShopFolder folder;
  private static final Layouts LAYOUTS = Layouts.builtIn();

  /** What became of a job. */
  private enum Came {
    ONE_PAGE,
    MORE,
    REFUSED
  }

  @BeforeAll
  static void read() {
    Problems problems = new Problems();
    folder = new ShopFolders(DemoSheets.FONTS).read(Path.of("jobs"), problems).orElseThrow();
  }

  @Test
  void singleWorksMostlyTakeOnePage() {
    List<List<String>> jobs = new ArrayList<>();
    for (Procedure procedure : works()) {
      for (Place place : Place.values()) {
        if (place.kind() == procedure.at().value()) {
          jobs.add(List.of(work(procedure, place)));
        }
      }
    }
    assertAtLeast(35, "single works", jobs);
  }

  @Test
  void pairsAtOneCorner() {
    assertAtLeast(5, "pairs at one corner", pairs(CORNERS));
  }

  @Test
  void pairsOnOneAxle() {
    assertAtLeast(5, "pairs on one axle", pairs(AXLES));
  }

  /** At a corner what is done at wheels; on an axle that, on both sides, and what is done there. */
  private static List<List<String>> pairs(List<Place> places) {
    List<Procedure> works =
        works().stream()
            .filter(it -> Set.of(Place.Kind.WHEEL, Place.Kind.AXLE).contains(it.at().value()))
            .filter(it -> places == AXLES || it.at().value() == Place.Kind.WHEEL)
            .toList();
    List<List<String>> pairs = new ArrayList<>();
    for (Place place : places) {
      for (int i = 0; i < works.size(); i++) {
        for (int j = i + 1; j < works.size(); j++) {
          pairs.add(List.of(work(works.get(i), place), work(works.get(j), place)));
        }
      }
    }
    return pairs;
  }

  /** Procedures that are not only there to give access to others. */
  private static List<Procedure> works() {
    Set<String> access =
        folder.procedures().values().stream()
            .flatMap(it -> it.behind().stream().map(each -> each.value().procedure()))
            .collect(Collectors.toSet());
    return folder.procedures().values().stream()
        .filter(it -> it.serves().isEmpty() && !access.contains(it.name().value()))
        .toList();
  }

  private static String work(Procedure procedure, Place place) {
    return procedure.name().value() + " at " + place.word();
  }

  /** Of those that plan at all. */
  private static void assertAtLeast(int percent, String what, List<List<String>> jobs) {
    Map<Came, Integer> counts = new TreeMap<>();
    for (String book : folder.books().keySet()) {
      jobs.forEach(works -> counts.merge(came(book, works), 1, Integer::sum));
    }
    int one = counts.getOrDefault(Came.ONE_PAGE, 0);
    int planned = one + counts.getOrDefault(Came.MORE, 0);
    String said = "%s: %s, %d %% on one page".formatted(what, counts, 100 * one / planned);
    System.out.println(said);
    assertTrue(planned >= 100 && 100 * one >= percent * planned, said);
  }

  private static Came came(String book, List<String> works) {
    return BAYS.stream()
        .flatMap(bay -> sheet(book, works, bay).stream())
        .findFirst()
        .map(sheet -> fits(sheet) ? Came.ONE_PAGE : Came.MORE)
        .orElse(Came.REFUSED);
  }

  private static boolean fits(Sheet sheet) {
    return LAYOUTS
        .fill("bay-sheet", Samples.text(sheet), new Problems())
        .filter(form -> PageFit.fitsAt(form, DemoSheets.FONTS, form.smallest()))
        .isPresent();
  }

  private static Optional<Sheet> sheet(String book, List<String> works, String bay) {
    String text =
        "job: 9000\nvehicle: {book: %s, plate: TEST, odometer: 50000 km}\nbay: %s\nby: T1\nwork:\n"
                .formatted(book, bay)
            + works.stream().map(it -> "  - " + it + "\n").collect(Collectors.joining());
    Problems problems = new Problems();
    Optional<Job> job =
        YamlFile.parse(new Source("9000.yaml", text), problems)
            .flatMap(node -> JobReader.read(node, "9000", folder.procedures().values(), problems));
    return job.flatMap(it -> Resolver.resolve(it, folder, DAY, problems))
        .filter(it -> !problems.hasErrors())
        .flatMap(it -> Planner.plan(it, problems))
        .filter(it -> !problems.hasErrors());
  }
}
