package baysheet.books;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An item as a step names it.
 *
 * @param item the name of a fastener or of an item of the catalogue
 * @param where where it is; the place of the procedure when nothing is written
 */
public record ItemAt(String item, Optional<Where> where) {
  public ItemAt {
    Objects.requireNonNull(item);
    Objects.requireNonNull(where);
  }

  /**
   * What a step's {@code undo}, {@code do-up} or {@code disturb} says.
   *
   * @param written as it stands in a {@link Step}
   * @throws IllegalArgumentException when no reader can have let it pass
   */
  public static ItemAt of(String written) {
    return PlaceText.item(written)
        .fold(
            item -> item,
            bad -> {
              throw new IllegalArgumentException(bad.what());
            });
  }

  /** As written in files. */
  @Override
  public String toString() {
    return item + where.map(place -> " at " + place).orElse("");
  }

  /** Where an item is. */
  public sealed interface Where permits At, Around {
    /** The place or kind of place written so, if there is one; a place before a kind. */
    static Optional<Where> of(String word) {
      Stream<Where> places = Stream.of(Place.values()).map(At::new);
      Stream<Where> kinds = Stream.of(Place.Kind.values()).map(Around::new);
      return Stream.concat(places, kinds)
          .filter(where -> where.toString().equals(word))
          .findFirst();
    }
  }

  /** At one place, whatever the procedure's. */
  public record At(Place place) implements Where {
    public At {
      Objects.requireNonNull(place);
    }

    @Override
    public String toString() {
      return place.word();
    }
  }

  /** At the place of this kind that belongs to the procedure's: its axle, its side. */
  public record Around(Place.Kind kind) implements Where {
    public Around {
      Objects.requireNonNull(kind);
    }

    @Override
    public String toString() {
      return kind.word();
    }
  }
}
