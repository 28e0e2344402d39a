package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Moment;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nobody tightens to a figure that is unknown, or does not fit its thread, without being asked. */
class UnverifiedTorqueCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "blank: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 17 mm, torque:"
                  + " unknown}",
              "odd: {count: 1, thread: M8, class: \"8.8\", head: hex 17 mm, torque: 80 N·m}",
              "late: {count: 1, thread: M8, class: \"8.8\", head: hex 17 mm, torque: 80 N·m, final:"
                  + " on-the-ground}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                blank: {name: blank, kinds: [fastener]}
                odd: {name: odd, kinds: [fastener]}
                late: {name: late, kinds: [fastener]}
              """);

  private static final String UNASKED = "line 1 has no figure to rely on, and no stop asks for one";
  private static final String NO_STOP = "is no hold point, and its figure is in doubt";
  private static final String MARK = "line 1 gives a mark to set, and its figure is in doubt";

  private static SmallShop shop(String fastener) {
    return SHOP.procedure("work", "at: wheel\nbehind: [raise]", "Undo it", fastener)
        .job("hoist", "work at front-left");
  }

  private static void assertUnasked(SmallShop shop, String component, Object value) {
    CheckLine check = shop.sheet().checks().get(0);
    Spoiled.of(shop).sheet("checks", List.of(Altered.with(check, component, value))).says(UNASKED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"blank", "odd", "late"})
  void aStopBeforeLiftingAsksForIt(String fastener) {
    SmallShop shop = shop(fastener);
    assertEquals(1, shop.sheet().checks().size());
    Spoiled.of(shop).sheet("checks", List.of()).says(UNASKED);
    assertUnasked(shop, "hold", false);
    assertUnasked(shop, "moment", Moment.ON_THE_GROUND);
    assertUnasked(shop, "name", "torque-of-roller-nut");
    assertUnasked(shop, "places", List.of(baysheet.books.Place.FRONT_RIGHT));
  }

  @Test
  void aStepLeadsToThatStopBeforeAnythingComesOff() {
    SmallShop shop = shop("odd");
    Spoiled.of(shop).without("checkpoint/before-lifting").says(UNASKED);
    Spoiled.of(shop).behind("Undo it", "checkpoint/before-lifting").says(UNASKED);
    Spoiled.of(shop)
        .before("height/ground/ground/brake", "checkpoint/before-lifting")
        .saysNothingOf(UNASKED);
  }

  @Test
  void nothingIsAskedWhereTheFigureFits() {
    SmallShop shop = shop("roller-nut");
    assertEquals(List.of(), shop.sheet().checks());
    Spoiled.of(shop);
  }

  @Test
  void aDoubtfulFigureIsUsedAtHoldPointsOnly() {
    String odd = "work/open/1/back/odd";
    Spoiled.of(shop("odd")).with(odd, "hold", false).isOnly(odd, NO_STOP);
    String late = "final-torque/late";
    Spoiled.of(shop("late")).with(late, "hold", false).isOnly(late, NO_STOP);
  }

  /** It needs no figure. */
  @Test
  void makingItSnugIsNoHoldPoint() {
    assertEquals(false, Spoiled.of(shop("late")).step("work/open/1/back/late").hold());
  }

  @Test
  void noMarkLiesReadyForADoubtfulFigure() {
    TorqueLine line = shop("odd").sheet().torque().get(0);
    TorqueLine.StageLine.Torque stage = (TorqueLine.StageLine.Torque) line.method().stages().get(0);
    Optional<Quantity> mark = Optional.of(stage.target());
    Spoiled.of(shop("odd"))
        .sheet(
            "torque",
            List.of(
                Altered.with(line, "method.stages", List.of(Altered.with(stage, "setting", mark)))))
        .says(MARK);
    TorqueLine.Round round =
        new TorqueLine.Round(
            java.math.BigDecimal.valueOf(50),
            stage.target(),
            Optional.empty(),
            mark,
            Optional.empty());
    Spoiled.of(shop("odd"))
        .sheet("torque", List.of(Altered.with(line, "method.rounds", List.of(round))))
        .says(MARK);
  }
}
