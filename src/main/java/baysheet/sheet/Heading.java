package baysheet.sheet;

import baysheet.books.Glossary;
import baysheet.books.Shop;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * What identifies the job.
 *
 * @param complaint what is wrong, in the customer's words
 * @param bay name and equipment
 * @param torqueUnits the first is printed big, the second small
 * @param promised when the vehicle has to be ready
 * @param carried where the work began, if that was on another day
 */
public record Heading(
    String shop,
    String job,
    LocalDate date,
    String revision,
    String title,
    Optional<String> customer,
    Optional<String> complaint,
    String book,
    String vehicle,
    Optional<String> years,
    Optional<String> plate,
    Optional<String> vin,
    Optional<Quantity> odometer,
    String bay,
    String bayEquipment,
    Person by,
    Optional<Person> with,
    Optional<Person> second,
    List<String> state,
    List<String> works,
    Shop.Paper paper,
    Shop.Terms terms,
    Glossary glossary,
    List<Unit> torqueUnits,
    Unit distance,
    Optional<LocalTime> promised,
    Optional<Carried> carried) {
  public Heading {
    state = List.copyOf(state);
    works = List.copyOf(works);
    torqueUnits = List.copyOf(torqueUnits);
  }

  /** The same for another size of paper. */
  Heading on(Shop.Paper other) {
    return new Heading(
        shop,
        job,
        date,
        revision,
        title,
        customer,
        complaint,
        book,
        vehicle,
        years,
        plate,
        vin,
        odometer,
        bay,
        bayEquipment,
        by,
        with,
        second,
        state,
        works,
        other,
        terms,
        glossary,
        torqueUnits,
        distance,
        promised,
        carried);
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
