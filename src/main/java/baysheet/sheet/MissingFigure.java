package baysheet.sheet;

import baysheet.books.Place;
import java.util.List;

/** A figure other than a torque that the work needs and no book gives. */
public sealed interface MissingFigure {
  /** What a circuit is filled with. */
  record OfFluid(String fluid, List<Property> lacking) implements MissingFigure {
    public OfFluid {
      lacking = List.copyOf(lacking);
    }
  }

  /** What a book says of a fluid. */
  enum Property {
    GRADE,
    QUANTITY
  }

  /** Where the vehicle is carried, or lifted with a jack. */
  record Point(boolean jacking, Place axle) implements MissingFigure {}
}
