package baysheet.ledger;

import baysheet.json.JsonObject;
import baysheet.torque.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Something that happened to a sheet. Events hold ids, hashes, figures and the ids of the crew; no
 * name, no plate and no free text, which {@link PersonalFiles} keeps apart.
 */
public sealed interface Event {
  /** The day on which it was written down. */
  LocalDate on();

  /** The sheets that it concerns, by their ids. */
  default List<String> sheets() {
    return List.of(sheet());
  }

  /** The sheet that it concerns; of several, {@link #sheets}. */
  String sheet();

  /**
   * A sheet was made, and may be printed.
   *
   * @param stage which of several sheets of the job it is
   * @param date the day of the job
   * @param prints what the sheet is recognised by
   * @param replaces the id of the revision before, where there is one, with what changed
   * @param crew ids of those named on the sheet, the one who does the work first
   * @param open ids of the rules that ask somebody else for something, in the order of the boxes
   *     {@code open.1}, {@code open.2} …
   */
  record Issued(
      LocalDate on,
      String sheet,
      String job,
      Optional<Part> stage,
      LocalDate date,
      String revision,
      Prints prints,
      Optional<Replaced> replaces,
      List<String> crew,
      Optional<Quantity> odometer,
      List<Joint> joints,
      List<String> open)
      implements Event {
    public Issued {
      crew = List.copyOf(crew);
      joints = List.copyOf(joints);
      open = List.copyOf(open);
    }

    /**
     * What the ledger keeps of a record.
     *
     * @param page SHA-256 of the sheet's PDF
     * @throws IllegalArgumentException when these are not the bytes of a record
     */
    public static Issued of(byte[] record, String page, Optional<Replaced> replaces, LocalDate on) {
      KeptRecord kept = KeptRecord.of(record);
      return new Issued(
          on,
          kept.id(),
          kept.job(),
          kept.stageOfSeveral(),
          kept.date(),
          kept.revision(),
          new Prints(Hash.of(record), page, kept.code()),
          replaces,
          kept.crew(),
          kept.odometer(),
          kept.joints(),
          List.copyOf(kept.open().keySet()));
    }

    /** The same with joints that are equal to its own. */
    Issued with(List<Joint> same) {
      return new Issued(
          on, sheet, job, stage, date, revision, prints, replaces, crew, odometer, same, open);
    }

    /** Names it among all sheets of the garage, whatever its revision. */
    public String name() {
      return Part.name(job, stage);
    }

    /** The day's folder below that of the sheets. */
    public String day() {
      return date.toString();
    }
  }

  /**
   * Which of several sheets of one job.
   *
   * @param n counted from 1
   */
  record Part(int n, int of) {
    /** {@code 2417}, or {@code 2417-2} for the second of several sheets. */
    public static String name(String job, Optional<Part> stage) {
      return job + stage.map(it -> "-" + it.n()).orElse("");
    }

    /** As the keys of a sheet say it; none where the job has one. */
    static Optional<Part> of(JsonObject sheet) {
      return sheet.maybeNumber("stage").map(n -> new Part(n, sheet.number("stages")));
    }
  }

  /**
   * What a sheet is recognised by.
   *
   * @param record SHA-256 of its record, as kept
   * @param page SHA-256 of its PDF
   * @param code the printed code, where the sheet has one
   */
  record Prints(String record, String page, Optional<String> code) {}

  /**
   * The revision before.
   *
   * @param changes what is different, as figures and numbers: {@code row 3 was 140 N·m}
   */
  record Replaced(String sheet, List<String> changes) {
    public Replaced {
      changes = List.copyOf(changes);
    }

    /** {@code Replaces 2402-A-0d313a: row 3 was 140 N·m; step 7 is new}. */
    public String sentence() {
      return "Replaces " + sheet + ": " + String.join("; ", changes);
    }
  }

  /**
   * A signed sheet came back and its boxes were looked at. A box that is in no list was not read.
   *
   * @param scan SHA-256 of the signed page, as kept
   */
  record Returned(
      LocalDate on,
      String sheet,
      String scan,
      List<String> marked,
      List<String> empty,
      List<String> doubtful)
      implements Event {
    public Returned {
      marked = List.copyOf(marked);
      empty = List.copyOf(empty);
      doubtful = List.copyOf(doubtful);
    }
  }

  /**
   * What a person read on a signed sheet.
   *
   * @param by the id of that person
   * @param decisions what was settled of boxes
   * @param excepted boxes that are right as they are, for a reason that stands in the notes
   */
  record Values(
      LocalDate on,
      String sheet,
      String by,
      List<Value> values,
      List<Decision> decisions,
      List<String> excepted)
      implements Event {
    public Values {
      values = List.copyOf(values);
      decisions = List.copyOf(decisions);
      excepted = List.copyOf(excepted);
    }
  }

  /**
   * A figure that was written by hand.
   *
   * @param wrench what it was reached with, where known
   */
  record Value(String box, Quantity value, Optional<String> wrench) {}

  /** Whether a box has a mark in it. */
  record Decision(String box, boolean marked) {}

  /** A person declared a sheet complete. */
  record Closed(LocalDate on, String sheet, String by) implements Event {}

  /**
   * A signed sheet went with an invoice.
   *
   * @param how append, embed or reference
   * @param invoice SHA-256 of the invoice that it went with
   * @param incomplete whether the sheet was not closed; the reason stands in the notes
   */
  record Attached(LocalDate on, String sheet, String how, String invoice, boolean incomplete)
      implements Event {}

  /** A later revision took a sheet's place. */
  record Superseded(LocalDate on, String sheet, String by) implements Event {}

  /**
   * An unfinished job goes on another day.
   *
   * @param to that day
   * @param step where it was stopped
   */
  record Carried(LocalDate on, String sheet, LocalDate to, Optional<Integer> step)
      implements Event {}

  /** The job of a sheet is no longer there. */
  record Withdrawn(LocalDate on, String sheet) implements Event {}

  /**
   * Names, plates, pages and notes were deleted.
   *
   * @param before jobs of earlier days are concerned
   */
  record Forgotten(LocalDate on, LocalDate before, List<String> sheets) implements Event {
    public Forgotten {
      sheets = List.copyOf(sheets);
    }

    @Override
    public String sheet() {
      throw new IllegalStateException("a forgotten event concerns " + sheets.size() + " sheets");
    }
  }
}
