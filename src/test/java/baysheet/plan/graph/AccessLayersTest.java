package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What lies around a work: a plug behind an inner cover behind an outer one, and others. */
class AccessLayersTest {
  private static final TaskId PLUG = at("plug", Place.ENGINE);
  private static final TaskId INNER = at("inner", Place.ENGINE);
  private static final TaskId OUTER = at("outer", Place.ENGINE);
  private static final TaskId POWER = at("power-off", Place.ENGINE);
  private static final TaskId DRY = at("dry", Place.ENGINE);
  private static final TaskId GUARD = at("guard", Place.ENGINE);
  private static final TaskId DEEP = at("deep", Place.FRONT_LEFT);
  private static final TaskId FAR = at("deep", Place.REAR_LEFT);
  private static final TaskId BRAKE = at("brake-off", Place.VEHICLE);
  private static final TaskId ROLLER = at("roller-off", Place.FRONT_LEFT);
  private static final TaskId FRONT = at("jacked", Place.FRONT);
  private static final TaskId REAR = at("jacked", Place.REAR);

  private final AccessLayers layers =
      new AccessLayers(
          SmallShop.empty()
              .procedure("outer", "at: engine", "Outer off", "lid")
              .procedure("inner", "at: engine\nbehind: [outer, power-off]", "Inner off", "two")
              .procedure("power-off", "at: engine\nopen: [{do: Switch it off}]")
              .procedure("plug", "at: engine\nbehind: [inner]\nafter: [dry]", "Plug out", "three")
              .procedure("dry", "at: engine\nbehind: [guard]", "Dry it", "four")
              .procedure("guard", "at: engine", "Guard off", "stay")
              .procedure("brake-off", "at: vehicle\nopen: [{do: Release it}]")
              .procedure("drum", "at: wheel\nbehind: [brake-off, roller-off]", "Drum", "three")
              .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
              .job(
                  "floor",
                  "plug at engine",
                  "dry at engine",
                  "drum at rear-right",
                  "deep at front-left",
                  "deep at rear-left")
              .resolved());

  private static TaskId at(String procedure, Place place) {
    return new TaskId(procedure, place);
  }

  @Test
  void accessToAccessLiesAroundTheWorkToo() {
    assertEquals(Set.of(INNER, OUTER, POWER), layers.around(PLUG));
    assertEquals(Set.of(), layers.around(OUTER));
    assertTrue(layers.isBehind(PLUG, OUTER));
    assertFalse(layers.isBehind(OUTER, PLUG));
    assertFalse(layers.isBehind(PLUG, ROLLER));
  }

  @Test
  void whatAWorkComesAfterIsOpenedBeforeItWithItsAccess() {
    assertTrue(layers.isOpenedBefore(OUTER, PLUG));
    assertFalse(layers.isOpenedBefore(PLUG, OUTER));
    assertTrue(layers.isOpenedBefore(DRY, PLUG));
    assertTrue(layers.isOpenedBefore(GUARD, PLUG));
    assertFalse(layers.isOpenedBefore(PLUG, DRY));
    assertFalse(layers.isBehind(PLUG, DRY));
  }

  /** Covers, but not a switch: nothing of it has to stay open. */
  @Test
  void whatIsTakenOffOnTheGroundIsReachedFromThere() {
    assertEquals(Set.of(INNER, OUTER), Set.copyOf(layers.fromTheGround(PLUG)));
    assertEquals(List.of(), layers.fromTheGround(DEEP));
  }

  @Test
  void whatLiesBehindRaisingIsRaised() {
    assertTrue(layers.isRaised(FRONT));
    assertTrue(layers.isRaised(ROLLER));
    assertTrue(layers.isRaised(DEEP));
    assertFalse(layers.isRaised(PLUG));
  }

  /** A brake that is released for the work at one end concerns the raising of that end. */
  @Test
  void onlyTheEndOfTheWorkIsRaisedForIt() {
    assertEquals(Set.of(FRONT), layers.raising(List.of(DEEP)));
    assertEquals(Set.of(REAR), layers.raising(List.of(FAR)));
    assertEquals(Set.of(FRONT, REAR), layers.raising(List.of(DEEP, FAR)));
    assertEquals(Set.of(FRONT), layers.raising(List.of(ROLLER)));
    assertEquals(Set.of(REAR), layers.raising(List.of(BRAKE)));
    assertEquals(Set.of(), layers.raising(List.of(PLUG)));
  }

  @Test
  void whatTheAccessTakesOffIsOpenAroundTheWork() {
    ItemAt lid = new ItemAt("lid", Place.ENGINE);
    assertTrue(layers.isOpenAround(lid, PLUG));
    assertTrue(layers.isOpenAround(lid, INNER));
    assertFalse(layers.isOpenAround(lid, OUTER));
    assertFalse(layers.isOpenAround(new ItemAt("three", Place.ENGINE), PLUG));
  }
}
