package baysheet.verify;

import baysheet.books.Moment;
import baysheet.plan.SmallShop;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What was off is in a table, and every row of the torque table is worked through. */
class ListingCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m}")
          .procedure(
              "propped",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: Set the stay, undo: stay}
                - {do: Take it off, undo: [deep-bolt, one]}
              """)
          .job("hoist", "propped at front-left");

  private static final String FINAL = "final-torque/roller-nut";

  private static List<TorqueLine> rows() {
    return SHOP.sheet().torque();
  }

  private static int row(String fastener) {
    return rows().stream().filter(it -> it.fastener().equals(fastener)).findFirst().get().n();
  }

  /** What carries the vehicle and what is only there meanwhile are no parts of it. */
  @Test
  void onlyPartsOfTheVehicleAreTallied() {
    for (String item : List.of("roller", "one")) {
      List<Sheet.TallyLine> fewer =
          SHOP.sheet().tally().stream().filter(it -> !it.item().equals(item)).toList();
      Spoiled.of(SHOP)
          .sheet("tally", fewer)
          .says(item + "@front-left was off and is not in the tally");
    }
  }

  @Test
  void everyFastenerHasOneRow() {
    for (TorqueLine row : rows()) {
      List<TorqueLine> others = rows().stream().filter(it -> !it.equals(row)).toList();
      Spoiled.of(SHOP)
          .sheet("torque", others)
          .says(row.fastener() + "@front-left has 0 torque lines");
      Spoiled.of(SHOP)
          .sheet("torque", Stream.concat(rows().stream(), Stream.of(row)).toList())
          .says(row.fastener() + "@front-left has 2 torque lines");
    }
  }

  @Test
  void noRowIsIdle() {
    String nut = "torque line " + row("roller-nut");
    Spoiled.of(SHOP).without(FINAL).says(nut + " is reached by 1 steps");
    Spoiled.of(SHOP).without(FINAL).says(nut + " never gets its final torque on the ground");
    Spoiled.of(SHOP)
        .with("propped/open/2/back/deep-bolt", "actions.torque", List.of())
        .says("torque line " + row("deep-bolt") + " is reached by 0 steps");
  }

  @Test
  void aFigureForTheGroundIsGivenThere() {
    String never = "torque line " + row("roller-nut") + " never gets its final torque";
    Spoiled.of(SHOP).with(FINAL, "where.moment", Moment.RAISED).says(never);
    Spoiled.of(SHOP).with(FINAL, "where.moment", Moment.BEFORE_MOVING).saysNothingOf(never);
    // Twice made snug is not tight.
    Spoiled.of(SHOP).without(FINAL).twice("roller-off/open/1/back/roller-nut").says(never);
  }
}
