package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.Quantity;
import java.util.Locale;

/** A place to work in, with what raises a vehicle there. */
public record Bay(
    Located<String> name,
    Equipment equipment,
    Located<String> description,
    Located<Quantity> rated,
    Span at) {
  /** What raises a vehicle. */
  public enum Equipment {
    LIFT,
    JACK;

    /** As written in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
