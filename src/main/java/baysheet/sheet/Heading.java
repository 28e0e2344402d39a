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
 * @param replaces the revision before, where there is one
 */
public record Heading(
    String shop,
    String job,
    LocalDate date,
    String revision,
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
    List<Statement> works,
    Shop.Paper paper,
    Shop.Terms terms,
    Glossary glossary,
    List<Unit> torqueUnits,
    Unit distance,
    Optional<LocalTime> promised,
    Optional<Carried> carried,
    Optional<Replaced> replaces) {
  public Heading {
    state = List.copyOf(state);
    works = List.copyOf(works);
    torqueUnits = List.copyOf(torqueUnits);
  }

  /** The same for another size of paper. */
  Heading on(Shop.Paper other) {
    return with(other, replaces);
  }

  /** The same in place of another revision. */
  Heading replacing(Optional<Replaced> before) {
    return with(paper, before);
  }

  private Heading with(Shop.Paper other, Optional<Replaced> before) {
    return new Heading(
        shop,
        job,
        date,
        revision,
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
        carried,
        before);
  }

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
