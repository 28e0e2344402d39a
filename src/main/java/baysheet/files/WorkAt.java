package baysheet.files;

import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.report.Located;
import java.util.List;
import java.util.Optional;

/** At which places a procedure is listed and drafted. */
public final class WorkAt {
  private WorkAt() {}

  /** Both wheels of an axle at a time, since they hardly differ. */
  public static List<Place> places(Procedure procedure) {
    List<Place> all =
        switch (procedure.at().value()) {
          case WHEEL, AXLE -> List.of(Place.FRONT, Place.REAR);
          case SIDE -> List.of(Place.LEFT, Place.RIGHT);
          case ENGINE -> List.of(Place.ENGINE);
          case VEHICLE -> List.of(Place.VEHICLE);
        };
    Optional<Place> only = procedure.applicability().onlyAt().map(Located::value);
    return only.map(List::of).orElse(all);
  }
}
