package baysheet.plan.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.plan.Planner;
import baysheet.report.Problems;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the work needs and the book does not have is asked for the evening before, and has a line
 * where it is used: never a gap, never a guess.
 */
class MissingFiguresTest {
  private static final String JOB = "2026-03-02/7.yaml";

  /** A garage of its own, with the built-in catalogue: what it fills are the built-in circuits. */
  private static ShopTexts shop(String circuit, String extra) {
    return ShopTexts.empty()
        .with(
            "shop.yaml",
            """
            shop: Mill Lane
            crib: {wrenches: [], sockets: []}
            bays:
              1: {lift: two-post, rated: 3000 kg}
              floor: {jack: trolley, rated: 2500 kg}
            people:
              T1: {name: R. Fenwake, grade: technician, qualifications: {refrigerant: {certificate: R 1, until: unlimited}}}
            """)
        .with(
            "vehicles/heron.yaml",
            """
            vehicle: heron
            name: Heron
            source: Heron sheet 3
            kerb-mass: 1300 kg
            front-share: 60 %
            """
                + extra)
        .with("catalogue/own.yaml", "items:\n  stopcock: {name: stopcock, kinds: [clip]}\n")
        .with(
            "procedures/let-down.yaml",
            """
            procedure: let-down
            title: Let down
            at: vehicle
            open:
              - {do: Open the stopcock, undo: stopcock, open-circuit: %s}
            """
                .formatted(circuit))
        .with(JOB, "job: 7\nvehicle: {book: heron}\nbay: 1\nby: T1\nwork: let-down at vehicle\n")
        .withBuiltIn();
  }

  private static Sheet sheet(ShopTexts shop) {
    Problems problems = new Problems();
    return shop.resolve(JOB, problems)
        .flatMap(it -> Planner.plan(it, problems))
        .orElseThrow(() -> new AssertionError(problems.all().toString()));
  }

  private static List<String> entries(Sheet sheet) {
    return sheet.steps().stream()
        .flatMap(step -> Printed.texts(sheet, step.entries()).stream())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "engine-oil, engine-oil, engine oil",
    "coolant, coolant, coolant",
    "gearbox-oil, gearbox-oil, gearbox oil",
    "brake-hydraulics, brake-fluid, brake fluid",
    "clutch-hydraulics, brake-fluid, brake fluid",
    "power-steering, power-steering, power steering",
    "refrigerant, refrigerant, refrigerant"
  })
  void everyCircuitAsksForWhatGoesIntoIt(String circuit, String fluid, String words) {
    Sheet sheet = sheet(shop(circuit, ""));
    assertTrue(entries(sheet).contains(words + " grade, by the maker"), entries(sheet).toString());
    assertTrue(
        entries(sheet).contains(words + " quantity, by the maker"), entries(sheet).toString());
    assertTrue(
        Printed.evening(sheet).stream().anyMatch(it -> it.contains(words + " grade and quantity")),
        Printed.evening(sheet).toString());
    assertTrue(
        sheet.checks().stream()
            .anyMatch(
                it ->
                    it.name().equals("fluid-of-" + fluid) && it.moment() == Moment.BEFORE_LIFTING),
        sheet.checks().toString());
  }

  @Test
  void onlyWhatIsMissingIsAskedFor() {
    Sheet sheet = sheet(shop("coolant", "fluids: {coolant: {grade: blue concentrate}}\n"));
    assertEquals(
        List.of("coolant quantity, by the maker"),
        entries(sheet).stream().filter(it -> it.startsWith("coolant")).toList());
    Sheet whole =
        sheet(shop("coolant", "fluids: {coolant: {grade: blue concentrate, capacity: 6.1 L}}\n"));
    assertEquals(
        List.of(), entries(whole).stream().filter(it -> it.startsWith("coolant")).toList());
    assertTrue(Printed.evening(whole).stream().noneMatch(it -> it.contains("the book gives none")));
    assertTrue(
        Printed.texts(whole, whole.equipment().consumables())
            .contains("coolant blue concentrate, 6.1\u00a0L"));
  }

  @Test
  void itIsWrittenInWhereTheCircuitIsFilled() {
    Sheet sheet = sheet(shop("engine-oil", ""));
    Sheet.SheetStep step =
        sheet.steps().stream().filter(it -> !it.entries().isEmpty()).findFirst().orElseThrow();
    assertEquals("oil-filled", step.procedure());
  }

  @Test
  void nobodyDrainsBeforeItIsKnown() {
    Sheet sheet = sheet(shop("engine-oil", ""));
    int gate =
        sheet.steps().stream()
            .filter(it -> it.phase() == Sheet.Phase.FINAL)
            .mapToInt(Sheet.SheetStep::n)
            .findFirst()
            .orElseThrow();
    int opens =
        sheet.steps().stream()
            .filter(it -> !it.actions().circuits().isEmpty())
            .mapToInt(Sheet.SheetStep::n)
            .findFirst()
            .orElseThrow();
    assertTrue(gate < opens, gate + " " + opens);
  }

  /** On stands both where it stands and where the jack goes; on a lift where the pads go. */
  @Test
  void whereTheVehicleIsCarriedIsAskedForToo() {
    ShopTexts raised =
        shop("fuel", "")
            .with(
                "procedures/up.yaml",
                """
                procedure: up
                title: Up
                at: axle
                needs: jack
                serves: raise
                open:
                  - {do: Raise it, undo: on-its-wheels}
                """)
            .with(
                "procedures/up-on-the-lift.yaml",
                """
                procedure: up-on-the-lift
                title: Up
                at: vehicle
                needs: lift
                serves: raise
                open:
                  - {do: Raise it, undo: on-its-wheels}
                """)
            .replacing(
                "procedures/let-down.yaml", "at: vehicle", "at: vehicle\nbehind: [raise at rear]")
            .replacing(
                "shop.yaml",
                "sockets: []}",
                "sockets: [], stands: {rated: 2000 kg, each: yes, count: 4}}");
    assertEquals(
        List.of("support points, front, by the maker", "support points, rear, by the maker"),
        points(sheet(raised)));
    Sheet onStands = sheet(raised.replacing(JOB, "bay: 1", "bay: floor"));
    assertEquals(
        List.of("support points, rear, by the maker", "jacking point, rear, by the maker"),
        points(onStands));
    assertEquals(
        2,
        Printed.evening(onStands).stream()
            .filter(it -> it.contains("the book gives none"))
            .count());
    assertEquals(
        List.of(),
        points(
            sheet(
                raised.replacing(
                    "vehicles/heron.yaml",
                    "kerb-mass",
                    "supports: {front: the sill, rear: the sill}\nkerb-mass"))));
  }

  private static List<String> points(Sheet sheet) {
    return Stream.of("support", "jacking")
        .flatMap(what -> entries(sheet).stream().filter(it -> it.startsWith(what)))
        .toList();
  }
}
