package baysheet.ledger;

import baysheet.ledger.Event.Value;
import baysheet.ledger.Tables.Table;
import baysheet.torque.Quantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every joint that was tightened with a wrench whose calibration was found bad, by vehicle, rated
 * by the error that was found (practice of ISO 9001, 7.1.5.2, and ISO 10012).
 *
 * @param from first day of the jobs that are looked at
 * @param to the last
 * @param errorPercent how much more than its scale showed the wrench gave; negative for less
 */
public record Recall(
    String wrench, LocalDate from, LocalDate to, Optional<BigDecimal> errorPercent) {
  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private static final List<Tables.Column> COLUMNS =
      Tables.columns(
          "PLATE", "plate",
          "SHEET", "sheet",
          "DATE", "date",
          "ROW", "row",
          "FASTENER", "fastener",
          "PLACE", "place",
          "BAND", "band",
          "READ", "read",
          "REACHED", "reached",
          "RATED", "rated",
          "WHY", "why");

  /** What the error means for a joint. */
  public enum Rating {
    INSIDE,
    OUTSIDE,
    UNKNOWN;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A joint and what became of it.
   *
   * @param reached what the joint got by the error
   * @param why why the rating is unknown
   */
  public record Affected(
      SheetStory story, Joint joint, Rating rating, Optional<Quantity> reached, String why) {}

  /** By plate, day, sheet and row; joints without a plate first. */
  public List<Affected> joints(Index index) {
    List<Affected> affected = new ArrayList<>();
    for (SheetStory story : index.sheets()) {
      LocalDate date = story.issued().date();
      if (!date.isBefore(from) && !date.isAfter(to) && story.mayHaveBeenUsed()) {
        story.issued().joints().forEach(it -> rated(story, it).ifPresent(affected::add));
      }
    }
    affected.sort(
        Comparator.comparing((Affected it) -> index.plate(it.story().id()).orElse(""))
            .thenComparing(it -> it.story().issued().date())
            .thenComparing(it -> it.story().id())
            .thenComparing(it -> it.joint().row())
            .thenComparing(it -> it.joint().place()));
    return affected;
  }

  private Optional<Affected> rated(SheetStory story, Joint joint) {
    boolean last = History.used(story, joint).filter(wrench::equals).isPresent();
    if (!last && !joint.earlier().contains(wrench)) {
      return Optional.empty();
    }
    Optional<Value> value = story.value(joint.box());
    if (!last) {
      return unknown(story, joint, "used before the last stage only");
    }
    if (value.isEmpty()) {
      return unknown(story, joint, "no figure was read from the sheet");
    }
    if (errorPercent.isEmpty()) {
      return unknown(story, joint, "no error was given");
    }
    Quantity reached = value.get().value().times(factor(errorPercent.get()));
    if (joint.band().isEmpty()) {
      return Optional.of(
          new Affected(
              story, joint, Rating.UNKNOWN, Optional.of(reached), "the sheet had no band"));
    }
    Rating rating = joint.band().get().contains(reached) ? Rating.INSIDE : Rating.OUTSIDE;
    return Optional.of(new Affected(story, joint, rating, Optional.of(reached), ""));
  }

  private static BigDecimal factor(BigDecimal percent) {
    return BigDecimal.ONE.add(percent.divide(HUNDRED));
  }

  private static Optional<Affected> unknown(SheetStory story, Joint joint, String why) {
    return Optional.of(new Affected(story, joint, Rating.UNKNOWN, Optional.empty(), why));
  }

  /** The joints as a table. */
  public static Table table(List<Affected> joints, Index index) {
    List<List<Object>> rows = new ArrayList<>();
    for (Affected it : joints) {
      rows.add(
          List.of(
              Tables.cell(index.plate(it.story().id())),
              it.story().id(),
              it.story().issued().date().toString(),
              it.joint().row(),
              it.joint().fastener(),
              it.joint().place(),
              Tables.cell(it.joint().band()),
              Tables.cell(it.story().value(it.joint().box()).map(Value::value)),
              Tables.cell(it.reached()),
              it.rating().word(),
              it.why()));
    }
    return new Table(COLUMNS, rows);
  }
}
