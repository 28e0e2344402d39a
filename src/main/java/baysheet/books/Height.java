package baysheet.books;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;

/** How high the vehicle is while something is done at it. */
public enum Height {
  /** On its wheels. */
  GROUND("ground"),
  /** On a lift, the wheels just clear of the floor; whoever stands outside reaches everything. */
  WHEELS_CLEAR("wheels-clear"),
  /** On stands; a jack has no height between the ground and these. */
  STANDS("stands"),
  /** On a lift, at working height on its locks; written for a bay with a jack, on stands. */
  WORKING("working");

  private final String word;

  Height(String word) {
    this.word = word;
  }

  /** As written in files. */
  public String word() {
    return word;
  }

  /** Where a vehicle rests while people work under it, in a bay with this equipment. */
  public static Height raised(Bay.Equipment equipment) {
    return equipment == Bay.Equipment.LIFT ? WORKING : STANDS;
  }

  /** All heights that a bay has. */
  public static Set<Height> of(Bay.Equipment equipment) {
    return equipment == Bay.Equipment.LIFT
        ? EnumSet.of(GROUND, WHEELS_CLEAR, WORKING)
        : EnumSet.of(GROUND, STANDS);
  }

  /** Of what is written in a file, what a bay has. */
  public static Set<Height> in(Bay.Equipment equipment, Collection<Height> written) {
    Set<Height> heights = EnumSet.noneOf(Height.class);
    for (Height height : written) {
      heights.add(height == WORKING ? raised(equipment) : height);
    }
    heights.retainAll(of(equipment));
    return heights;
  }
}
