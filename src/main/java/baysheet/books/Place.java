package baysheet.books;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Where on the vehicle; left and right as seen from the driver's seat facing forward. */
public enum Place {
  FRONT_LEFT("front-left", Kind.WHEEL),
  FRONT_RIGHT("front-right", Kind.WHEEL),
  REAR_LEFT("rear-left", Kind.WHEEL),
  REAR_RIGHT("rear-right", Kind.WHEEL),
  FRONT("front", Kind.AXLE),
  REAR("rear", Kind.AXLE),
  LEFT("left", Kind.SIDE),
  RIGHT("right", Kind.SIDE),
  ENGINE("engine", Kind.ENGINE),
  VEHICLE("vehicle", Kind.VEHICLE);

  /** The kinds of places at which a procedure can be done. */
  public enum Kind {
    WHEEL,
    AXLE,
    SIDE,
    ENGINE,
    VEHICLE;

    /** As written in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Asked for at every step of every search. */
  private static final Map<Place, List<Place>> OUTWARD = new EnumMap<>(Place.class);

  static {
    for (Place place : values()) {
      OUTWARD.put(place, place.widening());
    }
  }

  private final String word;
  private final Kind kind;

  Place(String word, Kind kind) {
    this.word = word;
    this.kind = kind;
  }

  /** As written in files. */
  public String word() {
    return word;
  }

  public Kind kind() {
    return kind;
  }

  /** The place written so, if there is one. */
  public static Optional<Place> of(String word) {
    return Stream.of(values()).filter(place -> place.word.equals(word)).findFirst();
  }

  /** The same place on the other side, for wheels and sides. */
  public Optional<Place> mirror() {
    return switch (this) {
      case FRONT_LEFT -> Optional.of(FRONT_RIGHT);
      case FRONT_RIGHT -> Optional.of(FRONT_LEFT);
      case REAR_LEFT -> Optional.of(REAR_RIGHT);
      case REAR_RIGHT -> Optional.of(REAR_LEFT);
      case LEFT -> Optional.of(RIGHT);
      case RIGHT -> Optional.of(LEFT);
      default -> Optional.empty();
    };
  }

  /** Whether this is the left one of a pair. */
  public boolean isLeft() {
    return this == LEFT || this == FRONT_LEFT || this == REAR_LEFT;
  }

  /** The axle that a wheel belongs to. */
  public Optional<Place> axle() {
    return switch (this) {
      case FRONT_LEFT, FRONT_RIGHT -> Optional.of(FRONT);
      case REAR_LEFT, REAR_RIGHT -> Optional.of(REAR);
      default -> kind == Kind.AXLE ? Optional.of(this) : Optional.empty();
    };
  }

  /** The side that a wheel belongs to. */
  public Optional<Place> side() {
    return switch (this) {
      case FRONT_LEFT, REAR_LEFT -> Optional.of(LEFT);
      case FRONT_RIGHT, REAR_RIGHT -> Optional.of(RIGHT);
      default -> kind == Kind.SIDE ? Optional.of(this) : Optional.empty();
    };
  }

  /** The wheels that belong to this place, left before right; none at the engine. */
  public List<Place> wheels() {
    return switch (this) {
      case FRONT -> List.of(FRONT_LEFT, FRONT_RIGHT);
      case REAR -> List.of(REAR_LEFT, REAR_RIGHT);
      case LEFT -> List.of(FRONT_LEFT, REAR_LEFT);
      case RIGHT -> List.of(FRONT_RIGHT, REAR_RIGHT);
      case VEHICLE -> List.of(FRONT_LEFT, FRONT_RIGHT, REAR_LEFT, REAR_RIGHT);
      case ENGINE -> List.of();
      default -> List.of(this);
    };
  }

  /** This place and those that contain it, the nearest first. */
  public List<Place> outward() {
    return OUTWARD.get(this);
  }

  /** Whether one of the two is part of the other: work at one can concern the other. */
  public boolean meets(Place other) {
    return outward().contains(other) || other.outward().contains(this);
  }

  private List<Place> widening() {
    Stream<Place> around = Stream.of(axle(), side()).flatMap(Optional::stream);
    return Stream.concat(Stream.concat(Stream.of(this), around), Stream.of(VEHICLE))
        .distinct()
        .toList();
  }

  @Override
  public String toString() {
    return word;
  }
}
