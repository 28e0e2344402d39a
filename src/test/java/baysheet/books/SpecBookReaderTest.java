package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.torque.Band;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningStage;
import baysheet.torque.Treatment;
import baysheet.torque.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpecBookReaderTest {
  private static final SpecBook WHOLE =
      SpecBookReader.read(Shelf.whole("test-book.yaml"), "test-book", new Problems()).orElseThrow();

  @Test
  void theVehicleIsReadAsWritten() {
    assertEquals("test-book", WHOLE.vehicle().value());
    assertEquals(Optional.of("Book of the tests"), WHOLE.model().title().map(Located::value));
    assertEquals(Optional.of("2015..2019"), WHOLE.model().years().map(Located::value));
    assertEquals(Optional.of("sheet 4 of 2016"), WHOLE.origin().source().map(Located::value));
    assertEquals("T1", WHOLE.origin().checked().orElseThrow().by().value());
    assertEquals(LocalDate.of(2026, 1, 12), WHOLE.origin().checked().orElseThrow().on().value());
    assertEquals(Quantity.of("1480", Unit.KILOGRAM), WHOLE.mass().kerb().orElseThrow().value());
    assertEquals(Quantity.of("58", Unit.PERCENT), WHOLE.mass().frontShare().orElseThrow().value());
    assertEquals(
        Quantity.of("2600", Unit.MILLIMETRE), WHOLE.mass().wheelbase().orElseThrow().value());
    assertEquals(
        List.of("abs", "front-wheel-drive"),
        WHOLE.traits().own().stream().map(Located::value).toList());
    assertEquals("the flat ahead of the notch", WHOLE.points().supports().get(Place.REAR).value());
    SpecBook.Fluid oil = WHOLE.fluids().get("engine-oil");
    assertEquals("engine-oil", oil.name().value());
    assertEquals(Quantity.of("4.2", Unit.LITRE), oil.capacity().orElseThrow().value());
    assertEquals("0W-30", oil.grade().orElseThrow().value());
  }

  @Test
  void groupsKeepTheirOrderAndTheirPlaces() {
    assertEquals(
        List.of("wheels", "front-wheels", "engine"),
        WHOLE.fasteners().stream().map(group -> group.places().value().word()).toList());
    assertEquals(
        List.of(Place.FRONT_LEFT, Place.FRONT_RIGHT),
        WHOLE.fasteners().get(1).places().value().places());
  }

  @Test
  void aWheelNutIsReadAsWritten() {
    Fastener nut = fastener(0, "wheel-nut");
    assertEquals(5, nut.count().value());
    assertEquals("M12x1.5", nut.written().pieces().thread().orElseThrow().value().designation());
    assertEquals("10", nut.written().pieces().strength().orElseThrow().value().label());
    assertEquals(
        new Head(Head.Form.HEX, "19 mm"), nut.written().pieces().head().orElseThrow().value());
    assertEquals(
        Optional.of(Target.plain(Quantity.of("110", Unit.NEWTON_METRE))),
        stages(nut).plainTorque());
    assertEquals(new Fastener.Order.Circle(), nut.written().method().order().orElseThrow().value());
    assertEquals(
        List.of(new BigDecimal(50), new BigDecimal(100)),
        nut.written().method().passes().orElseThrow().value().percents());
    assertEquals(Treatment.DRY, nut.threads());
    assertEquals(Fastener.Moment.ON_THE_GROUND, nut.moment());
    assertEquals(
        Quantity.of("80", Unit.KILOMETRE), nut.written().method().recheck().orElseThrow().value());
    assertEquals("test-book.yaml:16:24", nut.count().at().toString());
  }

  @Test
  void whatTheBookDoesNotSayIsNotGuessed() {
    Fastener nut = fastener(0, "wheel-nut");
    assertEquals(Optional.empty(), nut.written().pieces().reuse());
    assertEquals(Optional.empty(), nut.written().method().lock());
    assertEquals(Optional.empty(), nut.written().source());
    Fastener plug = fastener(2, "plug");
    assertEquals(new Tightening.Unknown(), plug.tightening().value());
    assertEquals(Treatment.NOT_STATED, plug.threads());
    assertEquals(Optional.empty(), plug.written().pieces().thread());
    assertEquals(Fastener.Moment.AT_ONCE, plug.moment());
  }

  @Test
  void aStakedNutIsReadAsWritten() {
    Fastener nut = fastener(1, "drive-nut");
    assertTrue(nut.written().pieces().thread().orElseThrow().value().designation().endsWith(" LH"));
    assertEquals(Quantity.of("165", Unit.POUND_FORCE_FOOT), stages(nut).torques().get(0).nominal());
    assertEquals(Optional.of(false), nut.written().pieces().reuse().map(Located::value));
    assertEquals(
        Optional.of(Fastener.Lock.STAKE), nut.written().method().lock().map(Located::value));
    assertTrue(nut.deep());
    assertEquals(List.of(new Remark(Remark.NOTE, "hold the disc")), nut.written().remarks());
  }

  @Test
  void anArmBoltIsReadAsWritten() {
    Fastener bolt = fastener(1, "arm-bolt");
    Band band = stages(bolt).torques().get(0).band().orElseThrow();
    assertEquals(Quantity.of("90", Unit.NEWTON_METRE), band.low());
    assertEquals(Quantity.of("100", Unit.NEWTON_METRE), band.high());
    assertEquals(Treatment.LOCKING_COMPOUND, bolt.threads());
    assertEquals(Optional.of(true), bolt.written().pieces().reuse().map(Located::value));
    assertEquals(Fastener.Moment.RIDE_HEIGHT, bolt.moment());
    assertEquals(
        Optional.of(
            new Reach(
                Quantity.of("60", Unit.MILLIMETRE),
                Quantity.of("90", Unit.DEGREE),
                Reach.Tool.OPEN_ENDED_INSERT)),
        bolt.reach());
    assertEquals(Optional.of("bulletin 9"), bolt.written().source().map(Located::value));
    assertFalse(bolt.deep());
  }

  @Test
  void stagesKeepTheirOrder() {
    assertEquals(
        List.of("25\u00A0N·m", "loosen", "50\u00A0N·m", "+90°"),
        stages(fastener(2, "head-bolt")).stages().stream().map(TighteningStage::print).toList());
  }

  @Test
  void ordersAreRowsOrPositions() {
    assertEquals(
        new Fastener.Order.Rows(List.of(5, 5)),
        fastener(2, "head-bolt").written().method().order().orElseThrow().value());
    assertEquals(
        new Fastener.Order.Given(List.of(2, 1, 3)),
        fastener(2, "cover-screw").written().method().order().orElseThrow().value());
  }

  @Test
  void onePassIsTheWholeTorque() {
    assertEquals(
        List.of(new BigDecimal(100)),
        fastener(2, "pump-bolt").written().method().passes().orElseThrow().value().percents());
    assertEquals(new Tightening.Snug(), fastener(2, "cover-screw").tightening().value());
    assertEquals(
        Optional.of(Fastener.Lock.LOCK_WIRE),
        fastener(2, "pump-bolt").written().method().lock().map(Located::value));
  }

  @Test
  void overAnotherBookOnlyWhatDiffersIsWritten() {
    SpecBook like =
        SpecBookReader.read(Shelf.whole("like-book.yaml"), "like-book", new Problems())
            .orElseThrow();
    assertEquals(Optional.of("test-book"), like.like().map(Located::value));
    assertEquals(Optional.empty(), like.model().title());
    assertEquals(
        Quantity.of("1050", Unit.MILLIMETRE), like.mass().behindFront().orElseThrow().value());
    SpecBook.Entry nut = like.fasteners().get(0).fasteners().get("wheel-nut");
    assertEquals(Optional.empty(), nut.text().pieces().count());
    assertEquals(Optional.empty(), nut.text().complete(nut.name()));
    Fastener whole = nut.text().over(text(0, "wheel-nut")).complete(nut.name()).orElseThrow();
    assertEquals(5, whole.count().value());
    assertEquals(Fastener.Moment.AT_ONCE, whole.moment());
    assertEquals(Quantity.of("120", Unit.NEWTON_METRE), stages(whole).torques().get(0).nominal());
  }

  /** Neither book is wrong by itself: the order is one's and the count is the other's. */
  @Test
  void valuesOfTwoBooksAreHeldAgainstOneAnother() {
    FastenerText base = text(2, "cover-screw");
    FastenerText four = parsed("{count: 4}");
    Problems problems = new Problems();
    FastenerCheck.check(base, problems);
    FastenerCheck.check(four, problems);
    assertEquals(List.of(), problems.all());
    FastenerCheck.check(four.over(base), problems);
    assertEquals(
        List.of("bad-order"),
        problems.all().stream().map(problem -> problem.code().word()).toList());
  }

  private static FastenerText parsed(String text) {
    Problems problems = new Problems();
    return Shelf.parse(text, problems)
        .flatMap(node -> FastenerReader.PARTIAL.read(node, problems))
        .orElseThrow()
        .value();
  }

  private static FastenerText text(int group, String name) {
    return WHOLE.fasteners().get(group).fasteners().get(name).text();
  }

  private static Fastener fastener(int group, String name) {
    SpecBook.Entry entry = WHOLE.fasteners().get(group).fasteners().get(name);
    return entry.text().complete(entry.name()).orElseThrow();
  }

  private static Tightening.Stages stages(Fastener fastener) {
    return (Tightening.Stages) fastener.tightening().value();
  }
}
