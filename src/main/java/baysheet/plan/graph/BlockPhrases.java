package baysheet.plan.graph;

import baysheet.books.Bay;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.resolve.Resolved;
import java.util.ArrayList;
import java.util.List;

/** How the vehicle comes onto solid blocks, and off them. */
final class BlockPhrases {
  /** What the wheels stand on, and what keeps them there; cautions go by it. */
  static final List<Procedure.Use> TOOLS =
      PlanPhrases.UNDER_WHEELS.stream().map(name -> new Procedure.Use(name, false)).toList();

  private BlockPhrases() {}

  /** All four wheels, or the springs on one side would carry more than they do on the road. */
  public static String under(Resolved resolved) {
    return resolved.bay().equipment() == Bay.Equipment.LIFT
        ? "Set pads again, lift a little, push hard; solid blocks under all wheels; lower, chock on"
            + " them, rock the car settled"
        : "Jack each axle%s, solid blocks under all wheels; chock on them, rock the car settled"
            .formatted(jackedAt(resolved));
  }

  /** Both axles go up, so both points are named, the one of an axle that stayed down as well. */
  private static String jackedAt(Resolved resolved) {
    List<String> points = new ArrayList<>();
    for (Place axle : List.of(Place.FRONT, Place.REAR)) {
      resolved
          .book()
          .jacking(axle)
          .ifPresent(point -> points.add(PlanPhrases.place(axle) + ": " + point.value()));
    }
    return points.isEmpty() ? "" : " (" + String.join(", ", points) + ")";
  }

  public static String out(Resolved resolved) {
    return resolved.bay().equipment() == Bay.Equipment.LIFT
        ? "Set pads, lift, push hard; blocks and chocks out; lower"
        : "Jack each axle, blocks out; chock on the floor";
  }
}
