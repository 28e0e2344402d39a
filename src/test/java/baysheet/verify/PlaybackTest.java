package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is off or on, and up or down, at each step of a sheet that is gone through as printed. */
class PlaybackTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .procedure("lidded", "at: vehicle", "Lid off", "lid")
          .procedure("opened", "at: wheel\nopen: [{do: Open it, undo: one}]")
          .procedure("deep", "at: wheel\nbehind: [opened at front-right]", "Two off", "two")
          .procedure(
              "closed",
              """
              at: vehicle
              behind: [lidded]
              open:
                - {do: Three off, undo: three}
              close:
                - {do: Three on, do-up: three}
              """)
          .jacked()
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "three")
          .procedure("near", "at: wheel\nbehind: [raise]", "Near", "one")
          .procedure(
              "early",
              """
              at: wheel
              behind: [lidded, roller-off]
              open:
                - {do: Ease it, slacken: two, moment: before-lifting}
                - {do: Pull it, undo: one}
              """)
          .procedure(
              "driven",
              """
              at: vehicle
              behind: [lidded, raise]
              work:
                - {do: Look at it}
                - {do: Rock it, moment: on-the-ground}
                - {do: Drive it, moment: road-test}
              """);

  private static final SmallShop CLOSED = SHOP.job("floor", "closed at vehicle");
  private static final SmallShop BELOW = SHOP.job("floor", "below at vehicle");
  private static final SmallShop DRIVEN = SHOP.job("floor", "driven at vehicle");
  private static final SmallShop EARLY = SHOP.job("hoist", "early at front-left");

  private static final Place LEFT = Place.FRONT_LEFT;
  private static final Place RIGHT = Place.FRONT_RIGHT;

  @Test
  void nothingComesOffThatIsOffOrGoesOnThatIsOn() {
    String on = "Three on";
    Spoiled.of(CLOSED)
        .twice("Three off")
        .is("Three off", "undoes three@vehicle, which is off already");
    Spoiled.of(CLOSED).twice(on).is(on, "does up three@vehicle, which is on already");
    Spoiled.of(CLOSED).behind(on, "Three off").is(on, "does up three@vehicle, which was never off");
  }

  @Test
  void whatComesOffGoesBackOn() {
    Spoiled spoiled = Spoiled.of(CLOSED).without("Three on");
    spoiled.says("three@vehicle comes off and never goes back on");
    spoiled.says("closed at vehicle does up three@vehicle, and no step does");
  }

  @Test
  void whatAProcedureTakesOffComesOff() {
    Spoiled.of(CLOSED)
        .without("Three off")
        .says("closed at vehicle undoes three@vehicle, and no step does");
  }

  @Test
  void whatIsInTheWayIsOff() {
    Spoiled.of(CLOSED)
        .before("Lid off", "Three off")
        .is("Three off", "needs lid@vehicle off, and it is on");
  }

  /** Only raising need not be done for what is due while the vehicle stands on its wheels. */
  @Test
  void whatIsInTheWayIsOffBeforeLiftingToo() {
    Spoiled.of(EARLY)
        .before("Lid off", "Ease it")
        .is("Ease it", "needs lid@vehicle off, and it is on");
    Spoiled.of(EARLY).saysNothingOf("needs feet@vehicle off");
    Spoiled.of(EARLY)
        .before("Roller off", "Pull it")
        .is("Pull it", "needs roller@front-left off, and it is on");
  }

  @Test
  void whatIsInTheWayIsOffOnTheGroundToo() {
    Spoiled.of(DRIVEN)
        .behind("Refit the lid", "Rock it")
        .is("Rock it", "needs lid@vehicle off, and it is on");
  }

  @Test
  void nobodyDrivesWithTheLidOff() {
    Spoiled driven = Spoiled.of(DRIVEN);
    List<Integer> order =
        Stream.of("Refit the lid", "Drive it").map(step -> driven.step(step).n()).toList();
    assertTrue(order.get(0) < order.get(1), order.toString());
    driven.saysNothingOf("needs");
  }

  @Test
  void aStepSaysWhetherTheVehicleIsUp() {
    Spoiled.of(BELOW)
        .with("Below", "where.moment", Moment.ON_THE_GROUND)
        .is("Below", "is for ON_THE_GROUND, and the vehicle is up");
    Spoiled.of(DRIVEN)
        .with("Rock it", "where.moment", Moment.RAISED)
        .is("Rock it", "is for RAISED, and the vehicle is on its wheels");
  }

  @Test
  void thatNoEndStaysDownIsSaidWhereTheFirstGoesUp() {
    String second = "raises a second end, and no step before says so";
    Spoiled.of(BELOW)
        .with("Jack it up [front]", "details", List.of())
        .is("Jack it up [rear]", second);
    Spoiled.of(BELOW).with("Jack it up [rear]", "details", List.of()).saysNothingOf(second);
  }

  @Test
  void bothWheelsOfAnAxleAreOneEnd() {
    SmallShop shop =
        SHOP.procedure(
                "jacked",
                """
                at: wheel
                serves: raise
                needs: jack
                open:
                  - {do: Jack it up, undo: feet}
                close:
                  - {do: Let it down, do-up: feet}
                """)
            .job("floor", "near at front-left", "near at front-right", "near at rear-left");
    String second = "raises a second end";
    Spoiled.of(shop)
        .behind("Jack it up [front-right]", "Let it down [front-left]")
        .saysNothingOf(second);
    Spoiled.of(shop).behind("Jack it up [rear-left]", "Let it down [front-right]").says(second);
  }

  private static List<ItemAt> both(String item) {
    return List.of(new ItemAt(item, LEFT), new ItemAt(item, RIGHT));
  }

  /** Both lefts need the right side open, and both sides are said to be opened and worked at. */
  private static Spoiled together(List<Place> places) {
    SmallShop shop =
        SHOP.job(
            "floor",
            "deep at front-left",
            "deep at front-right",
            "opened at front-left",
            "opened at front-right");
    return Spoiled.of(shop)
        .without("Open it [front-left]")
        .without("Two off [front-left]")
        .with("Open it [front-right]", "actions.undo", both("one"))
        .with("Open it [front-right]", "where.places", places)
        .with("Two off [front-right]", "actions.undo", both("two"))
        .with("Two off [front-right]", "where.places", places);
  }

  @Test
  void sidesThatNeedEachOtherAreNotGoneThroughOneByOne() {
    for (List<Place> places : List.of(List.of(LEFT, RIGHT), List.of(RIGHT, LEFT))) {
      Spoiled spoiled = together(places);
      spoiled.is("Two off", "needs one@front-right off, and it is on");
      assertEquals(1, spoiled.faults().stream().filter(it -> it.contains("needs one@")).count());
    }
  }

  /** The right side is closed before the left is worked at, and opened again only then. */
  @Test
  void sidesThatNeedEachOtherAreNotGoneThroughLineByLine() {
    List<Place> places = List.of(LEFT, RIGHT);
    ItemAt right = new ItemAt("one", RIGHT);
    Spoiled spoiled =
        together(places)
            .with("Open it", "where.places", List.of(LEFT))
            .with("Refit the one [front-right]", "where.places", places)
            .with("Refit the one [front-left, front-right]", "actions.doUp", both("one"))
            .before("Two off", "Refit the one [front-left, front-right]")
            .with(
                "Two off",
                "actions.undo",
                Stream.concat(both("two").stream(), Stream.of(right)).toList());
    spoiled.is("Two off", "needs one@front-right off, and it is on");
  }

  @Test
  void aStepOfNoWorkIsNoStep() {
    Spoiled stranger = Spoiled.of(CLOSED).with("Three off", "procedure", "stranger");
    assertTrue(
        assertThrows(IllegalStateException.class, stranger::faults)
            .getMessage()
            .contains("is of no task: stranger at vehicle"));
  }

  @Test
  void aSheetThatDoesNotHoldIsNotGivenAway() {
    assertDoesNotThrow(() -> PlanVerifier.prove(CLOSED.sheet(), CLOSED.resolved()));
    Spoiled spoiled = Spoiled.of(CLOSED).without("Three on");
    IllegalStateException refused =
        assertThrows(
            IllegalStateException.class,
            () -> PlanVerifier.prove(spoiled.sheet(), CLOSED.resolved()));
    assertTrue(
        refused.getMessage().startsWith("the plan of job 1 does not hold:\n  "),
        refused.getMessage());
    spoiled.faults().forEach(fault -> assertTrue(refused.getMessage().contains(fault), fault));
  }

  /** What lies in the way of what lies in the way is in the way. */
  @Test
  void whatIsInTheWayOfAnAccessIsOff() {
    SmallShop shop =
        SHOP.procedure("inner", "at: vehicle\nbehind: [closed]", "Four off", "four")
            .job("floor", "inner at vehicle");
    Spoiled.of(shop)
        .before("Four off", "Refit the lid")
        .is("Four off", "needs lid@vehicle off, and it is on");
  }

  /** A step at both sides may name what is at neither; the playback has to play that as well. */
  @Test
  void whatBelongsToNoSideIsNotTakenOffTwice() {
    SmallShop shop =
        SHOP.job("floor", "lidded at vehicle", "opened at front-left", "opened at front-right");
    List<ItemAt> more =
        Stream.concat(both("one").stream(), Stream.of(new ItemAt("lid", Place.VEHICLE))).toList();
    Spoiled.of(shop)
        .behind("Lid off", "Open it [front-left, front-right]")
        .with("Open it [front-left, front-right]", "actions.undo", more)
        .says("undoes lid@vehicle, which is off already");
  }
}
