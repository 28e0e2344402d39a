package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Socket;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShopReaderTest {
  private static final Shop WHOLE =
      ShopReader.read(Shelf.whole("shop.yaml"), new Problems()).orElseThrow();

  @Test
  void theHoursAreReadWithTheirBreaksInOrder() {
    OpeningHours hours = WHOLE.hours().orElseThrow();
    assertEquals(LocalTime.of(8, 0), hours.opens());
    assertEquals(LocalTime.of(17, 0), hours.closes());
    assertEquals(
        List.of(
            new OpeningHours.Break(LocalTime.of(9, 30), LocalTime.of(9, 45)),
            new OpeningHours.Break(LocalTime.of(12, 0), LocalTime.of(12, 30))),
        hours.breaks());
    assertEquals("../sheets", WHOLE.out().orElseThrow().value());
  }

  @Test
  void theGarageIsReadAsWritten() {
    assertEquals("Garage of the Tests", WHOLE.name().value());
    assertEquals(Shop.Paper.LETTER, WHOLE.paper());
    assertEquals(List.of(Unit.POUND_FORCE_FOOT, Unit.NEWTON_METRE), WHOLE.units().torque());
    assertEquals(Unit.MILE, WHOLE.units().distance());
    assertEquals(Unit.POUND, WHOLE.units().mass());
    assertEquals(Shop.Terms.AMERICAN, WHOLE.terms());
    assertEquals(Quantity.of("4", Unit.PERCENT), WHOLE.wrenchUse().band());
    assertEquals(6, WHOLE.wrenchUse().calibrationMonths());
    assertEquals(
        List.of(Drive.QUARTER, Drive.HALF), List.copyOf(WHOLE.wrenchUse().drives().keySet()));
    assertEquals(Quantity.of("300", Unit.NEWTON_METRE), WHOLE.wrenchUse().drives().get(Drive.HALF));
  }

  @Test
  void aWrenchIsReadAsWritten() {
    Located<Wrench> first = WHOLE.crib().wrenches().get(0);
    assertEquals(
        new Wrench(
            "W2",
            Drive.THREE_EIGHTHS,
            Quantity.of("20", Unit.NEWTON_METRE),
            Quantity.of("100", Unit.NEWTON_METRE),
            Quantity.of("0.5", Unit.NEWTON_METRE),
            new BigDecimal(4),
            Optional.of(Quantity.of("370", Unit.MILLIMETRE)),
            LocalDate.of(2025, 9, 14)),
        first.value());
    assertEquals("shop.yaml:10:7", first.at().toString());
  }

  /** 12.5 mm is the metric name of the half-inch square (ISO 1174-1). */
  @Test
  void aWrenchKeepsTheUnitsOfItsScale() {
    Wrench second = WHOLE.crib().wrenches().get(1).value();
    assertEquals(Drive.HALF, second.drive());
    assertEquals(Unit.POUND_FORCE_FOOT, second.unit());
    assertEquals(Quantity.of("20", Unit.INCH), second.length().orElseThrow());
  }

  @Test
  void aRangeOfSocketsIsSpelledOut() {
    assertEquals(
        new Socket(Drive.HALF, Head.Form.HEX, List.of("10 mm", "11 mm", "12 mm"), 6, true, false),
        socket(0));
  }

  @Test
  void aHexagonSocketOfTwelvePointsStaysOne() {
    assertEquals(
        new Socket(Drive.HALF, Head.Form.HEX, List.of("24 mm", "27 mm"), 12, false, true),
        socket(1));
    assertTrue(socket(1).fits(new Head(Head.Form.TWELVE_POINT, "27 mm")));
    assertFalse(socket(0).fits(new Head(Head.Form.TWELVE_POINT, "12 mm")));
  }

  @Test
  void everyFormOfHeadHasItsKey() {
    List<Head.Form> forms =
        WHOLE.crib().sockets().stream().map(it -> it.value().form()).distinct().toList();
    assertEquals(List.of(Head.Form.values()), forms);
    assertEquals(List.of("T30", "T40"), socket(3).sizes());
    assertEquals(12, socket(2).points());
  }

  @Test
  void standsSayWhetherTheirFigureIsForEach() {
    Shop.Stands stands = WHOLE.crib().stands().orElseThrow();
    assertFalse(stands.each());
    assertEquals(Quantity.of("2000", Unit.KILOGRAM), stands.rated().value());
    assertEquals(4, stands.count().value());
  }

  @Test
  void baysAndPeopleAreKnownByTheirKeys() {
    assertEquals(List.of("1", "floor"), List.copyOf(WHOLE.bays().keySet()));
    Bay floor = WHOLE.bays().get("floor");
    assertEquals("floor", floor.name().value());
    assertEquals(Bay.Equipment.JACK, floor.equipment());
    assertEquals("trolley", floor.description().value());
    assertEquals(Quantity.of("2500", Unit.KILOGRAM), floor.rated().value());
    assertEquals(Shop.Grade.APPRENTICE, WHOLE.people().get("A1").grade());
    assertEquals("N. Tepperly", WHOLE.people().get("A1").name().value());
    assertEquals("ball joint splitter", WHOLE.crib().special().get(0).name().value());
    assertEquals(Optional.empty(), WHOLE.crib().special().get(0).drive());
    assertEquals(Drive.HALF, WHOLE.crib().special().get(1).drive().orElseThrow().value());
  }

  /** Five percent is common practice, no source; a year is the interval of ISO 6789-1. */
  @Test
  void whatIsLeftOutIsAsUsual() {
    Problems problems = new Problems();
    Optional<Shop> shop =
        Shelf.parse(
                "shop: Small\ncrib: {}\nbays: {1: {jack: trolley, rated: 2 t}}\n"
                    + "people: {T1: {name: N, grade: technician}}\n",
                problems)
            .flatMap(node -> ShopReader.read(node, problems));
    assertEquals(List.of(), problems.all());
    assertEquals(Shop.Paper.A4, shop.orElseThrow().paper());
    assertEquals(List.of(Unit.NEWTON_METRE), shop.get().units().torque());
    assertEquals(Unit.KILOMETRE, shop.get().units().distance());
    assertEquals(Unit.KILOGRAM, shop.get().units().mass());
    assertEquals(Shop.Terms.BRITISH, shop.get().terms());
    assertEquals(Quantity.of("5", Unit.PERCENT), shop.get().wrenchUse().band());
    assertEquals(12, shop.get().wrenchUse().calibrationMonths());
    assertEquals(Optional.empty(), shop.get().crib().stands());
  }

  private static Socket socket(int index) {
    return WHOLE.crib().sockets().get(index).value();
  }
}
