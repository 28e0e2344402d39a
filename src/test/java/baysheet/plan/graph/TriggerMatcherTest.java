package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Trigger;
import baysheet.plan.SmallShop;
import baysheet.resolve.Resolved;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which steps of a job set a rule off, by what the rule asks for. */
class TriggerMatcherTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height, reuse: no}")
          .procedure(
              "pads",
              "at: wheel\nserves: pads\nuses: [piston tool]\nopen:\n"
                  + "  - {do: First, undo: one, uses: [lamp]}\n"
                  + "  - {do: Second, undo: two, impact: yes}")
          .with(
              "catalogue/words.yaml",
              "traits: {air-springs: carried by air}\n"
                  + "measures: {disc thickness: what is left of a disc}\n"
                  + "tools:\n"
                  + "  lamp: {means: gives light}\n"
                  + "  mirror: {means: shows what is hidden}\n"
                  + "  piston tool: {means: presses pistons back}\n")
          .procedure("dark", "at: wheel", "In the dark", "one");

  private static final String FIRST = "pads/open/1";
  private static final String SECOND = "pads/open/2";

  private static TriggerMatcher matcher(Resolved resolved) {
    List<PlacedStep> lines =
        StepGraph.of(resolved).drafts().stream()
            .map(step -> PlacedStep.onTheGround(step, Moment.RAISED))
            .toList();
    return new TriggerMatcher(resolved, lines);
  }

  private static SmallShop ruled(SmallShop shop, String when) {
    return shop.with(
        "catalogue/rules.yaml",
        "consequences:\n"
            + "  it: {when: {%s}, check: See it, moment: raised, source: us}\n".formatted(when));
  }

  private static List<Trigger> when(Resolved resolved) {
    return resolved.catalogue().rules().get("it").when();
  }

  /** Source and place of the steps that set a rule off. */
  private static Set<String> found(SmallShop shop, String when) {
    Resolved resolved = ruled(shop, when).resolved();
    List<PlannedStep> steps = StepGraph.of(resolved).drafts();
    Set<String> found = new TreeSet<>();
    for (int line : matcher(resolved).lines(when(resolved))) {
      found.add(steps.get(line).source().id() + " " + steps.get(line).place().word());
    }
    return found;
  }

  private static final SmallShop BOTH_ENDS =
      SHOP.job("hoist", "pads at front-left", "pads at rear-left");

  /** Work at both ends has its cautions at both, but not at each step. */
  @Test
  void aProcedureCountsAtItsFirstStepAtEachPlace() {
    Set<String> first = Set.of(FIRST + " front-left", FIRST + " rear-left");
    assertEquals(first, found(BOTH_ENDS, "procedure: pads"));
    assertEquals(first, found(BOTH_ENDS, "serves: pads"));
    assertEquals(Set.of(), found(BOTH_ENDS, "procedure: dark"));
  }

  @Test
  void aProcedureWithADeedCountsWhereTheDeedIsDone() {
    assertEquals(
        Set.of(SECOND + " front-left", SECOND + " rear-left"),
        found(BOTH_ENDS, "procedure: pads, undo: two"));
    assertEquals(
        Set.of(SECOND + " front-left", SECOND + " rear-left"),
        found(BOTH_ENDS, "serves: pads, undo: two"));
    SmallShop shop = SHOP.job("hoist", "dark at front-left", "pads at rear-left");
    assertEquals(Set.of("dark/open/1 front-left"), found(shop, "procedure: dark, undo: one"));
  }

  @Test
  void aToolThatAProcedureNamesAsAWholeCountsAtItsFirstStep() {
    assertEquals(
        Set.of(FIRST + " front-left", FIRST + " rear-left"), found(BOTH_ENDS, "uses: piston tool"));
  }

  @Test
  void aToolOfAStepCountsAtThatStep() {
    assertEquals(
        Set.of(FIRST + " rear-left"),
        found(SHOP.job("hoist", "dark at front-left", "pads at rear-left"), "uses: lamp"));
  }

  /** A lamp at one wheel lights nothing at another. */
  @Test
  void aToolIsMissedOnlyWhereNoStepUsesIt() {
    assertEquals(
        Set.of("dark/open/1 front-left"),
        found(
            SHOP.job("hoist", "dark at front-left", "pads at rear-left"),
            "undo: one, where-unused: lamp"));
  }

  @Test
  void aWheelCountsForItsAxleAndSide() {
    assertEquals(Set.of(FIRST + " rear-left"), found(BOTH_ENDS, "undo: one, at: rear"));
    assertEquals(
        Set.of(FIRST + " front-left", FIRST + " rear-left"),
        found(BOTH_ENDS, "undo: one, at: left"));
    assertEquals(Set.of(), found(BOTH_ENDS, "undo: one, at: right"));
  }

  @Test
  void anImpactWrenchCountsWhereTheStepAllowsIt() {
    SmallShop shop = SHOP.job("hoist", "pads at front-left");
    assertEquals(Set.of(SECOND + " front-left"), found(shop, "undo: [one, two], impact: yes"));
    assertEquals(Set.of(FIRST + " front-left"), found(shop, "undo: [one, two], impact: no"));
  }

  private static final SmallShop SPRAYED =
      SHOP.with("catalogue/wet.yaml", "products: {paste: {means: keeps wet out}}\n")
          .procedure(
              "sprayed",
              "at: wheel\nopen:\n"
                  + "  - {do: Roller off, undo: roller}\n"
                  + "  - {do: Turn it, disturb: four}\n"
                  + "close:\n"
                  + "  - {do: Spray it, apply: paste on four}\n"
                  + "  - {do: Roller on, do-up: roller}")
          .job("hoist", "sprayed at front-left");

  private static Set<String> sprayed(String step) {
    return Set.of("sprayed/" + step + " front-left");
  }

  /** What comes off is not what goes on, and what is only touched is neither. */
  @Test
  void whatIsDoneToAnItemCountsWhereItIsDone() {
    assertEquals(sprayed("open/1"), found(SPRAYED, "undo: roller"));
    assertEquals(sprayed("close/2"), found(SPRAYED, "do-up: roller"));
    assertEquals(sprayed("open/2"), found(SPRAYED, "disturb: four"));
    assertEquals(Set.of(), found(SPRAYED, "undo: four"));
    assertEquals(Set.of(), found(SPRAYED, "disturb: roller"));
  }

  @Test
  void aKindCountsForAllItsItems() {
    assertEquals(sprayed("open/1"), found(SPRAYED, "kind: wheel"));
    assertEquals(sprayed("close/2"), found(SPRAYED, "do-up-kind: wheel"));
    assertEquals(Set.of(), found(SPRAYED, "kind: fastener"));
  }

  @Test
  void aProductCountsWhereItIsApplied() {
    assertEquals(sprayed("close/1"), found(SPRAYED, "apply: paste"));
  }

  /** Whoever opens the brakes lets air in, whichever part he takes off for it. */
  @Test
  void aCircuitCountsWhereItIsOpened() {
    SmallShop shop =
        SHOP.with("catalogue/wet.yaml", "items: {brakes: {name: brakes, kinds: [circuit]}}\n")
            .procedure(
                "hose",
                "at: wheel\nopen: [{do: Look}, {do: Hose off, undo: one, open-circuit: brakes}]")
            .job("hoist", "hose at front-left");
    assertEquals(Set.of("hose/open/2 front-left"), found(shop, "circuit: brakes"));
  }

  /** Each trigger of a rule is enough by itself. */
  @Test
  void oneOfSeveralTriggersIsEnough() {
    Resolved resolved =
        SPRAYED
            .with(
                "catalogue/rules.yaml",
                "consequences:\n"
                    + "  it: {when: [{undo: roller}, {apply: paste}], check: See it, moment: raised,"
                    + " source: us}\n")
            .resolved();
    assertEquals(2, matcher(resolved).lines(when(resolved)).size());
  }

  /** A bolt that stretches is new each time; a wheel nut goes on again. */
  @Test
  void aSingleUseFastenerIsRenewed() {
    SmallShop shop =
        SHOP.procedure("bush", "at: wheel", "Bush", "deep-bolt", "roller-nut")
            .job("hoist", "bush at front-left");
    assertEquals(
        Set.of("bush/open/1/back/deep-bolt front-left"), found(shop, "renew-kind: fastener"));
  }

  @Test
  void anItemForWhichThereIsANewPartIsRenewed() {
    SmallShop shop =
        SHOP.procedure(
                "seal",
                "at: wheel\nparts: [{part: seal kit, count: 1, renews: roller}]\n"
                    + "open: [{do: Seal out, undo: roller}]")
            .procedure("wheel", "at: wheel", "Wheel off", "roller")
            .job("hoist", "seal at front-left", "wheel at rear-left");
    assertEquals(Set.of("seal/open/1/back/roller front-left"), found(shop, "renew-kind: wheel"));
  }

  @Test
  void aFigureCountsWhereItIsMeasured() {
    SmallShop shop =
        SHOP.procedure(
                "measured",
                "at: wheel\nwork: [{do: Look}, {do: Measure it, measure: disc thickness}]")
            .job("hoist", "measured at front-left");
    assertEquals(Set.of("measured/work/2 front-left"), found(shop, "measure: disc thickness"));
  }

  /** A look does nothing to the vehicle, but whoever makes it holds the lamp. */
  @Test
  void aCheckCountsOnlyByWhatItIsMadeWith() {
    SmallShop shop =
        SHOP.with(
                "catalogue/looks.yaml",
                "consequences:\n"
                    + "  look: {when: {undo: two}, check: Look, moment: raised, step: {uses: mirror},"
                    + " source: us}\n")
            .job("hoist", "pads at front-left", "dark at rear-left");
    assertEquals(Set.of("check/look front-left"), found(shop, "uses: mirror"));
    assertEquals(Set.of("check/look front-left"), found(shop, "uses: mirror, at: front"));
    assertEquals(Set.of("check/look front-left"), found(shop, "uses: mirror, impact: no"));
    assertEquals(Set.of(), found(shop, "uses: mirror, impact: yes"));
    assertEquals(Set.of(), found(shop, "uses: mirror, at: rear"));
  }

  private static SmallShop rusty() {
    SmallShop job = SHOP.job("hoist", "dark at front-left");
    return new SmallShop(
        job.texts().replacing("2026-03-02/1.yaml", "bay: hoist", "state: [rusty]\nbay: hoist"));
  }

  private static final Set<String> DARK = Set.of("dark/open/1 front-left");

  @Test
  void theStateOfTheVehicleCountsWhereTheJobNamesIt() {
    SmallShop states =
        new SmallShop(
            rusty()
                .texts()
                .with(
                    "catalogue/states.yaml",
                    "states: {rusty: {likely: 1.5, possible: 1.2, source: us}}\n"));
    assertEquals(DARK, found(states, "undo: one, state: rusty"));
  }

  @Test
  void whatTheBayHasCounts() {
    SmallShop shop = SHOP.job("hoist", "dark at front-left");
    assertEquals(DARK, found(shop, "undo: one, bay: lift"));
    assertEquals(Set.of(), found(shop, "undo: one, bay: jack"));
  }

  private static SmallShop withTrait() {
    return new SmallShop(
            SHOP.texts()
                .replacing("vehicles/any.yaml", "kerb-mass", "traits: [air-springs]\nkerb-mass"))
        .job("hoist", "dark at front-left");
  }

  @Test
  void aTraitCountsWhereTheVehicleHasIt() {
    SmallShop without = SHOP.job("hoist", "dark at front-left");
    assertEquals(DARK, found(withTrait(), "undo: one, trait: air-springs"));
    assertEquals(Set.of(), found(withTrait(), "undo: one, without: air-springs"));
    assertEquals(DARK, found(without, "undo: one, without: air-springs"));
    assertEquals(Set.of(), found(without, "undo: one, trait: air-springs"));
  }

  /** Of a high-voltage car is warned whatever is done to it; of its open brakes only then. */
  @Test
  void aVehicleAloneSetsOffOnlyWhatAsksForNoDeed() {
    assertTrue(vehicle("trait: air-springs"));
    assertFalse(vehicle("trait: air-springs, undo: one"));
    assertFalse(vehicle("trait: air-springs, procedure: dark"));
    assertFalse(vehicle("without: air-springs"));
    assertEquals(Set.of(), found(withTrait(), "trait: air-springs"));
  }

  private static boolean vehicle(String when) {
    Resolved resolved = ruled(withTrait(), when).resolved();
    return matcher(resolved).vehicle(when(resolved));
  }
}
