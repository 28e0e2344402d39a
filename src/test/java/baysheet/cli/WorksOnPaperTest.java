package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.files.ShopFolders;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.template.LayoutTemplates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whether every single work and every pair of works that can be planned also prints, and how many
 * take one page, over every book of the demo shop, on a lift and on the floor: {@code mvn test
 * -Dtest=WorksOnPaperTest -Dworks=all}, half an hour. The figures go to the output.
 */
@EnabledIfSystemProperty(named = "works", matches = "all")
class WorksOnPaperTest {
  private static final List<Place> AXLES = List.of(Place.FRONT, Place.REAR);
  private static final List<Place> CORNERS = List.of(Place.FRONT_LEFT, Place.REAR_LEFT);

  /** A lift and a floor, for what holds the vehicle up decides where the work may rest. */
  private static final List<String> BAYS = List.of("1", "floor");

  private static final ShopFolders FOLDERS = new ShopFolders(DemoSheets.FONTS);
  private static final ShopFolder SHOP =
      FOLDERS.read(Path.of("jobs"), new Problems()).orElseThrow();

  private final SheetMaker maker =
      new SheetMaker(FOLDERS, LayoutTemplates.builtIn(), DemoSheets.FONTS, Optional.empty());

  @TempDir private Path folder;
  private Path file;

  /** What became of a job. */
  private enum Result {
    ONE_PAGE,
    STAGES,
    /** It cannot be planned: a figure is missing, or the vehicle has no such part. */
    NOT_PLANNED,
    /** It is planned and no page takes it. */
    NOT_PRINTED,
    /** The program failed. */
    FAULT
  }

  @BeforeEach
  void day() throws IOException {
    file = Files.createDirectory(folder.resolve("2026-03-02")).resolve("9000.yaml");
  }

  @Test
  void singleWorks() throws IOException {
    List<List<String>> jobs = new ArrayList<>();
    for (Procedure procedure : works()) {
      for (Place place : Place.values()) {
        boolean bothSides =
            place.kind() == Place.Kind.AXLE && procedure.at().value() == Place.Kind.WHEEL;
        if (place.kind() == procedure.at().value() || bothSides) {
          jobs.add(List.of(work(procedure, place)));
        }
      }
    }
    assertAllPrint("single works", jobs);
  }

  @Test
  void pairsAtOneCorner() throws IOException {
    assertAllPrint("pairs at one corner", pairs(CORNERS));
  }

  @Test
  void pairsOnOneAxle() throws IOException {
    assertAllPrint("pairs on one axle", pairs(AXLES));
  }

  /**
   * Any two works, the first at its first place and the second at its last: what one leaves off
   * while the other raises, lowers, starts the engine or needs a brake.
   */
  @Test
  void pairsAcrossTheVehicle() throws IOException {
    List<Procedure> works = works();
    List<List<String>> pairs = new ArrayList<>();
    for (Procedure first : works) {
      for (Procedure second : works) {
        if (first != second) {
          List<Place> of = places(second);
          pairs.add(
              List.of(work(first, places(first).get(0)), work(second, of.get(of.size() - 1))));
        }
      }
    }
    assertAllPrint("pairs across the vehicle", pairs);
  }

  private static List<Place> places(Procedure procedure) {
    return Stream.of(Place.values()).filter(it -> it.kind() == procedure.at().value()).toList();
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
        SHOP.procedures().values().stream()
            .flatMap(it -> it.behind().stream().map(each -> each.value().procedure()))
            .collect(Collectors.toSet());
    return SHOP.procedures().values().stream()
        .filter(it -> it.serves().isEmpty() && !access.contains(it.name().value()))
        .toList();
  }

  private static String work(Procedure procedure, Place place) {
    return procedure.name().value() + " at " + place.word();
  }

  private void assertAllPrint(String what, List<List<String>> jobs) throws IOException {
    Map<Result, Integer> counts = new TreeMap<>();
    List<String> notPrinted = new ArrayList<>();
    int part = Integer.getInteger("works.part", 0);
    int parts = Integer.getInteger("works.parts", 1);
    int number = 0;
    for (String book : SHOP.books().keySet()) {
      for (List<String> works : jobs) {
        for (String bay : BAYS) {
          if (number++ % parts != part) {
            continue;
          }
          String job = book + ", bay " + bay + ": " + String.join(", ", works);
          Result result;
          try {
            result = result(book, works, bay);
          } catch (RuntimeException fault) {
            result = Result.FAULT;
            System.out.println(job + ": " + fault);
          }
          counts.merge(result, 1, Integer::sum);
          if (result == Result.NOT_PRINTED || result == Result.FAULT) {
            notPrinted.add(job);
          }
        }
      }
    }
    System.out.println(what + ": " + counts + " of " + number);
    notPrinted.forEach(System.out::println);
    assertEquals(List.of(), notPrinted);
    int printed = counts.getOrDefault(Result.ONE_PAGE, 0) + counts.getOrDefault(Result.STAGES, 0);
    assertTrue(printed >= 100, printed + " printed");
  }

  private Result result(String book, List<String> works, String bay) throws IOException {
    Files.writeString(
        file,
        "job: 9000\nvehicle: {book: %s, plate: TEST, odometer: 50000 km}\nbay: %s\nby: T1\nwork:\n"
                .formatted(book, bay)
            + works.stream().map(it -> "  - " + it + "\n").collect(Collectors.joining()));
    Problems problems = new Problems();
    List<MadeSheet> made = maker.make(file, SHOP, problems);
    if (made.isEmpty()) {
      assertTrue(problems.hasErrors());
      return problems.all().stream().anyMatch(it -> it.code() == ProblemCode.PAGE_OVERRUN)
          ? Result.NOT_PRINTED
          : Result.NOT_PLANNED;
    }
    return made.size() == 1 ? Result.ONE_PAGE : Result.STAGES;
  }
}
