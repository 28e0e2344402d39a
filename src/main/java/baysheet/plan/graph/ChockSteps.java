package baysheet.plan.graph;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.ToolNames;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.BlocksPart;
import baysheet.sheet.StepSource.HeightPart;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Puts a step of its own where chocks are set or taken away. Once a job raises the vehicle, chocks
 * hold it wherever wheels carry it: those of the axle that stays down before a jack raises the
 * other, one wheel when a lift has come down, every wheel on its block. None lies where wheels come
 * down or blocks go in. A parking brake counts only until a lift takes the vehicle off its wheels:
 * it acts on one axle, which may be the one that a jack raises, and may be what is repaired.
 */
public final class ChockSteps {
  /** Of items that are chocks under wheels. */
  static final String CHOCKS = "chocks";

  private static final Set<Place> AXLES = EnumSet.of(Place.FRONT, Place.REAR);

  private final Resolved resolved;
  private final boolean jack;
  private final List<PlacedStep> all = new ArrayList<>();
  private final Set<ItemAt> up = new LinkedHashSet<>();
  private final Set<Place> standing = EnumSet.copyOf(AXLES);

  /** Axles that are chocked; the vehicle for chocks at some wheel or other. */
  private final Set<Place> chocked = EnumSet.noneOf(Place.class);

  private PlannedStep raising;
  private boolean braked;

  private ChockSteps(Resolved resolved) {
    this.resolved = resolved;
    this.jack = resolved.bay().equipment() == Bay.Equipment.JACK;
  }

  /** The lines with the chocks that none of them sets or takes away itself. */
  public static List<PlacedStep> among(Resolved resolved, List<PlacedStep> lines) {
    ChockSteps chocks = new ChockSteps(resolved);
    for (int i = 0; i < lines.size(); i++) {
      boolean held = i + 1 < lines.size() && !chocks.set(lines.get(i + 1)).isEmpty();
      chocks.line(lines.get(i), held);
    }
    return chocks.all;
  }

  /**
   * @param heldNext whether the next line chocks a wheel itself
   */
  private void line(PlacedStep line, boolean heldNext) {
    Set<Place> leaving = leaving(line);
    raising = Lifting.raises(resolved, line.step()) ? line.step() : raising;
    if (!leaving.isEmpty()) {
      rise(line, leaving);
    } else if (!isStillRaising(line)) {
      clear();
    }
    all.add(line);
    braked |= ParkingBrake.isApplied(resolved, line);
    braked &= !ParkingBrake.isFreed(resolved, line);
    chocked.addAll(set(line));
    line.ends().stream()
        .filter(item -> resolved.thing(item).isOf(CHOCKS))
        .forEach(item -> chocked.removeAll(axles(item.place())));
    standing.removeAll(leaving);
    Set<Place> landing = landing(line);
    line.undo().stream().filter(item -> Lifting.holds(resolved, item)).forEach(up::add);
    up.removeAll(line.doUp());
    land(line, landing, heldNext);
  }

  /**
   * Before a jack raises an axle the other one is chocked; only then do its own chocks go. A lift
   * raises what its parking brake holds, or chocks at the axle on which that does not act.
   */
  private void rise(PlacedStep line, Set<Place> leaving) {
    if (jack) {
      Set<Place> staying = EnumSet.copyOf(standing);
      staying.removeAll(leaving);
      Set<Place> holding = staying.isEmpty() ? leaving : staying;
      int at = beginningOfRaising(line);
      boolean written = line.step().phase().isWork();
      Moment moment = written && up.isEmpty() ? Moment.BEFORE_LIFTING : line.moment();
      if (!isHeld(holding) || isPulledFirst(at)) {
        add(at++, moment, new StepSource.Chocks(true, place(holding), false));
      }
      if (!staying.isEmpty() && !isOffBlocks(line)) {
        for (Place axle : leaving) {
          if (chocked.contains(axle)) {
            add(behindItsOwn(at), moment, new StepSource.Chocks(false, axle, false));
          }
        }
      }
    } else if (Lifting.raises(resolved, line.step()) && !braked && !isHeld(standing)) {
      Place other = ParkingBrake.axle(resolved) == Place.REAR ? Place.FRONT : Place.REAR;
      StepSource.Chocks set = new StepSource.Chocks(true, other, false);
      add(beginningOfRaising(line), Moment.BEFORE_LIFTING, set);
    }
    if (isOffBlocks(line)) {
      // They stand on the blocks and come out with them.
      chocked.removeAll(leaving);
      chocked.remove(Place.VEHICLE);
    }
  }

  /**
   * Ahead of whatever is done before lifting, as slackening wheel nuts, or of the raising itself.
   */
  private int beginningOfRaising(PlacedStep line) {
    int at = all.size();
    while (at > 0
        && (all.get(at - 1).moment() == Moment.BEFORE_LIFTING
            || (line.step().source() instanceof StepSource.HeightChange
                && all.get(at - 1).step().source() instanceof StepSource.HeightChange))) {
      at--;
    }
    return at;
  }

  /** Behind the last line that sets chocks itself: they hold the vehicle from there. */
  private int behindItsOwn(int from) {
    int behind = from;
    for (int i = from; i < all.size(); i++) {
      behind = set(all.get(i)).isEmpty() ? behind : i + 1;
    }
    return behind;
  }

  /** Whether a procedure sets its own chocks only once somebody has pulled at a nut. */
  private boolean isPulledFirst(int at) {
    for (PlacedStep line : all.subList(at, all.size())) {
      boolean pulls = !line.slacken().isEmpty();
      if (pulls || !set(line).isEmpty()) {
        return pulls;
      }
    }
    return false;
  }

  /** Wheels that are up, and tried, come down again: no chock may lie under them. */
  private void clear() {
    for (Place axle : AXLES) {
      if (jack && !standing.contains(axle) && chocked.contains(axle)) {
        take(axle);
      }
    }
    if (standing.isEmpty() && !chocked.isEmpty()) {
      take(Place.VEHICLE);
    }
  }

  private void take(Place where) {
    Moment moment = all.get(all.size() - 1).moment();
    add(all.size(), moment, new StepSource.Chocks(false, where, false));
  }

  private void land(PlacedStep line, Set<Place> landing, boolean heldNext) {
    standing.addAll(landing);
    boolean onBlocks = isOnBlocks(line);
    if (!landing.isEmpty() && !heldNext && (onBlocks || !isHeld(standing))) {
      Moment moment = up.isEmpty() ? Moment.ON_THE_GROUND : Moment.RAISED;
      add(
          all.size(),
          moment,
          new StepSource.Chocks(true, jack ? place(landing) : Place.VEHICLE, onBlocks));
    }
  }

  private boolean isHeld(Set<Place> wheels) {
    return chocked.contains(Place.VEHICLE) || !Collections.disjoint(wheels, chocked);
  }

  private void add(int at, Moment moment, StepSource.Chocks chocks) {
    TaskId whole = new TaskId(raising.task().procedure(), Place.VEHICLE);
    PlannedStep step = PlannedStep.chocks(whole, chocks, raising.origin());
    Height height = at == 0 ? Height.GROUND : all.get(at - 1).height();
    all.add(at, PlacedStep.single(step, moment, height));
    if (chocks.set()) {
      chocked.add(chocks.where());
    } else if (chocks.where() == Place.VEHICLE) {
      chocked.clear();
    } else {
      chocked.remove(chocks.where());
    }
  }

  /** The axles whose wheels a line lifts off what they stand on. */
  private Set<Place> leaving(PlacedStep line) {
    StepSource source = line.step().source();
    if (source instanceof StepSource.HeightChange change) {
      HeightPart lifts = jack ? HeightPart.JACK : HeightPart.MOVE;
      return change.from() == Height.GROUND && change.part() == lifts ? ends(up) : Set.of();
    } else if (source instanceof StepSource.Blocks blocks) {
      return switch (blocks.part()) {
        case RAISE_CLEAR, RAISE_OFF, RAISE_AXLE, RAISE_AXLE_OFF -> axles(blocks.where());
        default -> Set.of();
      };
    }
    Set<Place> leaving = ends(line.undo());
    leaving.retainAll(standing);
    return leaving;
  }

  /**
   * The axles whose wheels a line brings down: an axle is up until nothing holds a wheel of it, and
   * one that came down with the vehicle stands already.
   */
  private Set<Place> landing(PlacedStep line) {
    StepSource source = line.step().source();
    if (source instanceof StepSource.Blocks blocks) {
      return isOnBlocks(line)
              || blocks.part() == BlocksPart.LOWER_TO_FLOOR
              || blocks.part() == BlocksPart.LOWER_AXLE_TO_FLOOR
          ? axles(blocks.where())
          : Set.of();
    }
    boolean whole =
        source instanceof StepSource.HeightChange change
            && change.to() == Height.GROUND
            && change.part() == HeightPart.MOVE;
    Set<Place> landing = ends(whole ? up : line.doUp());
    landing.removeAll(standing);
    if (!whole) {
      landing.removeAll(ends(up.stream().filter(item -> !line.doUp().contains(item)).toList()));
    }
    return landing;
  }

  private static boolean isOnBlocks(PlacedStep line) {
    return line.step().source() instanceof StepSource.Blocks blocks
        && (blocks.part() == BlocksPart.LOWER_ONTO || blocks.part() == BlocksPart.LOWER_AXLE_ONTO);
  }

  private static boolean isOffBlocks(PlacedStep line) {
    return line.step().source() instanceof StepSource.Blocks blocks
        && (blocks.part() == BlocksPart.RAISE_OFF || blocks.part() == BlocksPart.RAISE_AXLE_OFF);
  }

  /** Whether a line goes on with raising, up to the last test. */
  private boolean isStillRaising(PlacedStep line) {
    if (line.step().source() instanceof StepSource.Blocks blocks) {
      return blocks.part() == BlocksPart.PUSH
          || blocks.part() == BlocksPart.RAISE
          || blocks.part() == BlocksPart.LOCKS;
    }
    return Lifting.isRaising(resolved, line.step())
        || (line.step().source() instanceof StepSource.HeightChange change
            && change.to() != Height.GROUND);
  }

  /** Where a procedure's own step sets chocks: what raises an axle chocks the other. */
  private Set<Place> set(PlacedStep line) {
    PlannedStep step = line.step();
    Set<Place> set = EnumSet.noneOf(Place.class);
    for (ItemAt item : line.disturb()) {
      if (resolved.thing(item).isOf(CHOCKS)) {
        set.add(item.place().axle().orElse(Place.VEHICLE));
      }
    }
    boolean uses =
        step.phase().isWork()
            && step.uses().stream()
                .filter(use -> !use.ifStuck())
                .map(use -> resolved.catalogue().vocabulary().tool(use.name()))
                .anyMatch(names -> names.contains(ToolNames.WHEEL_CHOCKS));
    if (uses && set.isEmpty()) {
      set.add(Place.VEHICLE);
    }
    if (!set.isEmpty() && Lifting.isRaising(resolved, step) && step.place().axle().isPresent()) {
      set = EnumSet.copyOf(AXLES);
      set.remove(step.place().axle().get());
    }
    return set;
  }

  private Set<Place> ends(Collection<ItemAt> items) {
    Set<Place> ends = EnumSet.noneOf(Place.class);
    items.stream()
        .filter(item -> Lifting.holds(resolved, item))
        .forEach(item -> ends.addAll(axles(item.place())));
    return ends;
  }

  private static Set<Place> axles(Place place) {
    return place.axle().<Set<Place>>map(EnumSet::of).orElse(AXLES);
  }

  private static Place place(Set<Place> axles) {
    return axles.size() == 1 ? axles.iterator().next() : Place.VEHICLE;
  }
}
