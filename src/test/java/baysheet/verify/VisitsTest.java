package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which steps of a sheet tighten a row, and what else is looked up by what is printed. */
class VisitsTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m}")
          .with(
              "catalogue/more.yaml",
              """
              cautions:
                pads: {signal: WARNING, when: {kind: support}, do: Set the pads, hazard: it slides, consequence: it crushes, source: us}
              """)
          .procedure("work", "at: wheel\nbehind: [roller-off]", "Work", "deep-bolt", "one")
          .job("hoist", "work at front-left", "work at front-right");

  private static final Sheet SHEET = SHOP.sheet();
  private static final String SNUG = "roller-off/open/1/back/roller-nut";
  private static final String FINAL = "final-torque/roller-nut";

  private static TorqueLine row(String fastener) {
    return SHEET.torque().stream().filter(it -> it.fastener().equals(fastener)).findFirst().get();
  }

  private static Sheet.SheetStep step(String step) {
    return Spoiled.of(SHOP).step(step);
  }

  @Test
  void theLastVisitGivesTheFinalTorque() {
    for (Place place : List.of(Place.FRONT_LEFT, Place.FRONT_RIGHT)) {
      assertEquals(step(FINAL).n(), Visits.last(SHEET, row("roller-nut"), place));
      assertEquals(
          step("work/open/1/back/deep-bolt").n(), Visits.last(SHEET, row("deep-bolt"), place));
    }
    assertEquals(0, Visits.last(SHEET, row("deep-bolt"), Place.REAR_LEFT));
  }

  @Test
  void aVisitIsAtTheFastenersPlaceOrWhereTheWorkWas() {
    TorqueLine nuts = row("roller-nut");
    Sheet.SheetStep left = Altered.with(step(FINAL), "where.places", List.of(Place.FRONT_LEFT));
    assertEquals(true, Visits.isOne(left, nuts, Place.FRONT_LEFT));
    assertEquals(false, Visits.isOne(left, nuts, Place.FRONT_RIGHT));
    Sheet.SheetStep elsewhere = Altered.with(left, "where.places", List.of(Place.VEHICLE));
    assertEquals(true, Visits.isOne(elsewhere, nuts, Place.FRONT_RIGHT));
    assertEquals(true, Visits.isOne(step(SNUG), nuts, Place.FRONT_LEFT));
    assertEquals(false, Visits.isOne(step(SNUG), nuts, Place.REAR_LEFT));
    assertEquals(false, Visits.isOne(step(SNUG), row("deep-bolt"), Place.FRONT_LEFT));
  }

  @Test
  void aStepNamesTheRowsOfWhatItTakesOffAndPutsOn() {
    int nuts = row("roller-nut").n();
    for (String step : List.of("Roller off", SNUG, FINAL)) {
      assertEquals(Set.of(nuts), Visits.named(step(step)), step);
    }
    assertEquals(Set.of(nuts), Visits.named(Altered.with(step(SNUG), "actions.torque", List.of())));
    assertEquals(
        Set.of(nuts), Visits.named(Altered.with(step(FINAL), "actions.torque", List.of())));
    assertEquals(Set.of(nuts), Visits.named(Altered.with(step(FINAL), "details", List.of())));
    assertEquals(Set.of(), Visits.named(step("Hoist it")));
  }

  @Test
  void stepsAndCautionsAreFoundByWhatIsPrinted() {
    SheetIndex printed = new SheetIndex(SHEET);
    Sheet.SheetStep last = printed.steps().get(printed.steps().size() - 1);
    assertEquals(SHEET.steps().size() - 1, printed.at(last));
    Sheet.SheetStep stranger = Altered.with(last, "hold", true);
    assertThrows(IllegalArgumentException.class, () -> printed.at(stranger));
    assertEquals("A", printed.caution("pads").orElseThrow().letter());
    assertEquals(Optional.empty(), printed.caution("acid"));
  }
}
