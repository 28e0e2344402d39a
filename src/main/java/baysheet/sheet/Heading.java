package baysheet.sheet;

import baysheet.books.Shop;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What identifies the job.
 *
 * @param id job, revision and content hash: {@code 2417-A-7f3c9a}
 * @param bay name and equipment
 * @param torqueUnits the first is printed big, the second small
 */
public record Heading(
    String shop,
    String job,
    LocalDate date,
    String revision,
    String id,
    String title,
    Optional<String> customer,
    String book,
    String vehicle,
    Optional<String> years,
    Optional<String> plate,
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
    List<Unit> torqueUnits,
    Unit distance) {
  public Heading {
    state = List.copyOf(state);
    works = List.copyOf(works);
    torqueUnits = List.copyOf(torqueUnits);
  }

  /** The same with what is done put in other words. */
  public Heading titled(UnaryOperator<String> words) {
    return with(id, paper, words.apply(title), works.stream().map(words).toList());
  }

  Heading with(String id, Shop.Paper paper, String title, List<String> works) {
    return new Heading(
        shop,
        job,
        date,
        revision,
        id,
        title,
        customer,
        book,
        vehicle,
        years,
        plate,
        odometer,
        bay,
        bayEquipment,
        by,
        with,
        second,
        state,
        works,
        paper,
        terms,
        torqueUnits,
        distance);
  }

  /** Somebody named on the sheet. */
  public record Person(String id, String name, Shop.Grade grade) {}
}
