package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.Quantity;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One day's work on one vehicle.
 *
 * @param number what the job is called; also the name of its sheets
 * @param date the day; where absent the day folder's name is the date
 * @param bay name of the bay
 * @param work what is asked for, in the order written
 */
public record Job(
    Located<String> number,
    Optional<Located<LocalDate>> date,
    Request request,
    Vehicle vehicle,
    Condition condition,
    Located<String> bay,
    Crew crew,
    List<Located<Work>> work,
    Exceptions exceptions,
    Optional<Located<String>> notes,
    Sheets sheets,
    Span at) {
  /** So many sheets can be asked for: as many as a job of several days has. */
  public static final int MOST_WANTED = 9;

  /** So many sheets a job can have where one page takes few of its steps. */
  public static final int MOST_STAGES = 20;

  public Job {
    work = List.copyOf(work);
  }

  /** The same job with another letter for its sheet. */
  public Job revised(String letter) {
    Sheets other = new Sheets(sheets.revision.map(it -> letter), sheets.stages, sheets.carried);
    return new Job(
        number, date, request, vehicle, condition, bay, crew, work, exceptions, notes, other, at);
  }

  /**
   * What the customer wants, and when.
   *
   * @param complaint what is wrong, in the customer's words
   * @param arrives when the vehicle comes in
   * @param readyBy when it is promised
   */
  public record Request(
      Optional<Located<String>> customer,
      Optional<Located<String>> complaint,
      Optional<Located<LocalTime>> arrives,
      Optional<Located<LocalTime>> readyBy) {}

  /**
   * How the vehicle comes in.
   *
   * @param state rusty …
   * @param load what stays in it, by axle
   */
  public record Condition(List<Located<String>> state, Map<Place, Located<Quantity>> load) {
    public Condition {
      state = List.copyOf(state);
      load = Collections.unmodifiableMap(new LinkedHashMap<>(load));
    }
  }

  /**
   * Who works on it.
   *
   * @param by who answers for it
   * @param with an apprentice who takes part
   * @param second who looks at the hold points
   * @param qualified who does the work that needs a qualification, where that is not {@code by}
   */
  public record Crew(
      Located<String> by,
      Optional<Located<String>> with,
      Optional<Located<String>> second,
      Map<String, Qualified> qualified) {
    public Crew {
      qualified = Collections.unmodifiableMap(new LinkedHashMap<>(qualified));
    }
  }

  /**
   * What does not hold for this job.
   *
   * @param overrides values that replace the book's
   * @param waive cautions left out, with who answers for it
   */
  public record Exceptions(List<Replacement> overrides, Map<String, Located<String>> waive) {
    public Exceptions {
      overrides = List.copyOf(overrides);
      waive = Collections.unmodifiableMap(new LinkedHashMap<>(waive));
    }
  }

  /**
   * Which sheets are made of it.
   *
   * @param revision their letter
   * @param stages among how many the work is to be divided at least
   * @param carried from which sheet the work goes on
   */
  public record Sheets(
      Located<String> revision, Optional<Located<Integer>> stages, Optional<Carried> carried) {}

  /**
   * The vehicle on which it is done.
   *
   * @param vin its identification number
   */
  public record Vehicle(
      Located<String> book,
      Optional<Located<String>> plate,
      Optional<Located<String>> vin,
      Optional<Located<Quantity>> odometer) {}

  /**
   * Work that began on another day.
   *
   * @param sheet id of the sheet that it stopped on
   * @param step the last step that was done
   * @param found what was found until then
   */
  public record Carried(
      Located<LocalDate> from,
      Located<String> sheet,
      Optional<Located<Integer>> step,
      List<Located<String>> found) {
    public Carried {
      found = List.copyOf(found);
    }
  }

  /** Who does the work that needs a qualification. */
  public record Qualified(Located<String> qualification, Located<String> person) {}

  /** A procedure at a place: {@code lower-arm at front-left}. */
  public record Work(String procedure, Place place) {
    @Override
    public String toString() {
      return procedure + " at " + place;
    }
  }

  /**
   * Values of one fastener at one place that replace the book's: only what is written replaces.
   *
   * @param item the fastener's name
   * @param place where
   * @param values what replaces the book's values
   * @param source where the new values come from
   */
  public record Replacement(
      Located<String> item, Place place, FastenerText values, Located<String> source) {}
}
