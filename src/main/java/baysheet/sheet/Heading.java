package baysheet.sheet;

import baysheet.books.Glossary;
import baysheet.books.Shop;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What identifies the job.
 *
 * @param works what the job asks for, each procedure once with its places
 */
public record Heading(
    String shop,
    String job,
    LocalDate date,
    String revision,
    Request request,
    Vehicle vehicle,
    Bay bay,
    Crew crew,
    List<Statement> works,
    Style style,
    Before before) {
  public Heading {
    works = List.copyOf(works);
  }

  /**
   * What happened before this sheet.
   *
   * @param carried where the work began, if that was on another day
   * @param replaces the revision before, where there is one
   * @param seen what was found on this vehicle or its kind before, the latest first
   */
  public record Before(Optional<Carried> carried, Optional<Replaced> replaces, List<Seen> seen) {
    public Before {
      seen = List.copyOf(seen);
    }
  }

  /**
   * What the customer wants.
   *
   * @param complaint what is wrong, in the customer's words
   * @param promised when the vehicle has to be ready
   */
  public record Request(
      Optional<String> customer, Optional<String> complaint, Optional<LocalTime> promised) {}

  /** The vehicle, with its spec book and the states that the job names. */
  public record Vehicle(
      String book,
      String name,
      Optional<String> years,
      Optional<String> plate,
      Optional<String> vin,
      Optional<Quantity> odometer,
      List<String> state) {
    public Vehicle {
      state = List.copyOf(state);
    }
  }

  /** Where the work is done. */
  public record Bay(String name, String equipment) {}

  /** Who does the work, who learns, and who looks at hold points. */
  public record Crew(Person by, Optional<Person> with, Optional<Person> second) {}

  /**
   * How the shop wants its sheets.
   *
   * @param torqueUnits the first is printed big, the second small
   */
  public record Style(
      Shop.Paper paper,
      Shop.Terms terms,
      Glossary glossary,
      List<Unit> torqueUnits,
      Unit distance) {
    public Style {
      torqueUnits = List.copyOf(torqueUnits);
    }
  }

  /** The same for another size of paper. */
  Heading on(Shop.Paper other) {
    return with(
        new Style(other, style.terms, style.glossary, style.torqueUnits, style.distance), before);
  }

  /** The same in place of another revision. */
  Heading replacing(Optional<Replaced> found) {
    return with(style, new Before(before.carried, found, before.seen));
  }

  /** The same with findings on this vehicle before those on its kind. */
  Heading seeing(List<Seen> onVehicle) {
    List<Seen> all = new ArrayList<>(onVehicle);
    all.addAll(before.seen);
    return with(style, new Before(before.carried, before.replaces, all));
  }

  private Heading with(Style other, Before earlier) {
    return new Heading(
        shop, job, date, revision, request, vehicle, bay, crew, works, other, earlier);
  }

  /**
   * Something that was found on an earlier day.
   *
   * @param onVehicle whether on this very vehicle; else on one of its kind
   */
  public record Seen(LocalDate on, String what, boolean onVehicle) {}

  /**
   * The revision before.
   *
   * @param sheet its id
   * @param changes what is different, as figures and numbers: {@code row 3 was 140 N·m}
   */
  public record Replaced(String sheet, List<String> changes) {
    public Replaced {
      changes = List.copyOf(changes);
    }
  }

  /**
   * The sheet on which the work began.
   *
   * @param from its day
   * @param step the last of its steps that was done
   * @param found what was found until then
   */
  public record Carried(LocalDate from, String sheet, Optional<Integer> step, List<String> found) {
    public Carried {
      found = List.copyOf(found);
    }
  }

  /** Somebody named on the sheet. */
  public record Person(String id, String name, Shop.Grade grade) {}
}
