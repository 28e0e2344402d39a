package baysheet.verify;

import baysheet.plan.SmallShop;
import org.junit.jupiter.api.Test;

/** What came off last goes on first, unless a procedure of the job says otherwise. */
class ReinstallOrderTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure(
              "layered",
              """
              at: vehicle
              open:
                - {do: One off, undo: one}
                - {do: Two off, undo: two}
                - {do: Three off, undo: three}
              """)
          .procedure(
              "other",
              """
              at: vehicle
              open:
                - {do: Two off first, undo: two}
                - {do: One off then, undo: one}
              """)
          .procedure(
              "closing",
              """
              at: vehicle
              open:
                - {do: Both off, undo: [one, two]}
              close:
                - {do: One on, do-up: one}
                - {do: Two on, do-up: two}
              """);

  private static String over(String item, String other) {
    return "does up %s@vehicle over %s@vehicle, which is still off".formatted(item, other);
  }

  private static final SmallShop LAYERED = SHOP.job("floor", "layered at vehicle");

  @Test
  void whatIsBelowGoesOnFirst() {
    Spoiled.of(LAYERED)
        .before("Refit the three", "Refit the two")
        .isOnly("Refit the two", over("two", "three"));
  }

  @Test
  void eachThingBelowIsNamed() {
    Spoiled spoiled = Spoiled.of(LAYERED).before("Refit the three", "Refit the one");
    spoiled.is("Refit the one", over("one", "two"));
    spoiled.is("Refit the one", over("one", "three"));
    spoiled.saysNothingOf("does up two");
    spoiled.saysNothingOf("does up three");
  }

  /** Neither can lie below the other where another procedure takes them off the other way round. */
  @Test
  void whatComesOffInEitherOrderGoesOnInEither() {
    Spoiled spoiled = Spoiled.of(SHOP.job("floor", "layered at vehicle", "other at vehicle"));
    spoiled.before("Refit the two", "Refit the one").saysNothingOf(over("one", "two"));
    spoiled.before("Refit the three", "Refit the one").is("Refit the one", over("one", "three"));
  }

  @Test
  void whatAClosingHasInItsOrderGoesOnInThat() {
    SmallShop shop = SHOP.job("floor", "layered at vehicle", "closing at vehicle");
    Spoiled spoiled = Spoiled.of(shop);
    spoiled.saysNothingOf(over("one", "two"));
    spoiled.before("Refit the three", "One on").is("One on", over("one", "three"));
  }

  @Test
  void whatAClosingPutsOnLaterMayNotGoOnFirst() {
    SmallShop shop =
        SHOP.procedure(
                "closing",
                """
                at: vehicle
                open:
                  - {do: Both off, undo: [one, two]}
                close:
                  - {do: Two on, do-up: two}
                  - {do: One on, do-up: one}
                """)
            .job("floor", "layered at vehicle", "closing at vehicle");
    Spoiled.of(shop).before("Two on", "One on").is("One on", over("one", "two"));
  }

  private static SmallShop early(String item) {
    return SHOP.procedure(
            "early",
            """
            at: vehicle
            open:
              - {do: One off, undo: one}
              - {do: Two off, undo: two}
            work:
              - {do: Look}
              - {do: Early on, do-up: %s}
              - {do: Look again}
            """
                .formatted(item))
        .job("floor", "early at vehicle");
  }

  /** What lies below is still off, for the procedure wants it so. */
  @Test
  void aProcedureMaySayItselfWhenSomethingGoesOn() {
    Spoiled.of(early("one"));
    Spoiled.of(early("two")).behind("Refit the one", "Early on").saysNothingOf(over("one", "two"));
  }

  /** What gives access takes four off first, so it lies above all that is behind it. */
  @Test
  void whatGivesAccessGoesOnLast() {
    Spoiled.of(
        SHOP.procedure(
                "lidded",
                """
                at: vehicle
                open:
                  - {do: Lid off, undo: lid}
                  - {do: Four off, undo: four}
                """)
            .procedure(
                "inner",
                """
                at: vehicle
                behind: [lidded]
                open:
                  - {do: One off, undo: one}
                  - {do: Four off too, undo: four}
                  - {do: Two off, undo: two}
                """)
            .job("floor", "inner at vehicle"));
  }

  @Test
  void whatIsBelowGoesOnFirstBehindAnAccess() {
    SmallShop shop =
        SHOP.procedure("lidded", "at: vehicle", "Lid off", "lid")
            .procedure(
                "inner",
                """
                at: vehicle
                behind: [lidded]
                open:
                  - {do: One off, undo: one}
                  - {do: Two off, undo: two}
                """)
            .job("floor", "inner at vehicle");
    Spoiled.of(shop)
        .before("Refit the two", "Refit the one")
        .is("Refit the one", over("one", "two"));
  }

  @Test
  void aProcedureThatClosesInItsOwnOrderIsTrusted() {
    Spoiled.of(
        SHOP.procedure(
                "own",
                """
                at: vehicle
                open:
                  - {do: One off, undo: one}
                  - {do: Two off, undo: two}
                close:
                  - {do: One on, do-up: one}
                  - {do: Two on, do-up: two}
                """)
            .job("floor", "own at vehicle"));
  }
}
