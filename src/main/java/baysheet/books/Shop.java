package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.Drive;
import baysheet.torque.Quantity;
import baysheet.torque.Socket;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The garage.
 *
 * @param name what sheets print
 * @param paper default size of paper
 * @param terms which words the sheets use
 * @param hours when the garage works
 * @param out the folder of the sheets, seen from the shop folder
 */
public record Shop(
    Located<String> name,
    Paper paper,
    Units units,
    Terms terms,
    WrenchUse wrenchUse,
    Crib crib,
    Map<String, Bay> bays,
    Map<String, Person> people,
    Optional<OpeningHours> hours,
    Optional<Located<String>> out,
    Span at) {
  public Shop {
    bays = Collections.unmodifiableMap(new LinkedHashMap<>(bays));
    people = Collections.unmodifiableMap(new LinkedHashMap<>(people));
  }

  /**
   * The units in which sheets print.
   *
   * @param torque the first is shown big, the second small
   * @param distance of odometers and distances
   */
  public record Units(List<Unit> torque, Unit distance, Unit mass) {
    static final Units USUAL = new Units(List.of(Unit.NEWTON_METRE), Unit.KILOMETRE, Unit.KILOGRAM);

    public Units {
      torque = List.copyOf(torque);
    }
  }

  /**
   * How far wrenches and squares are trusted.
   *
   * @param band accepted band where a book gives none, in percent
   * @param calibrationMonths a wrench older than this is not used
   * @param drives working limits that replace the built-in ones
   */
  public record WrenchUse(Quantity band, int calibrationMonths, Map<Drive, Quantity> drives) {
    public WrenchUse {
      drives = Collections.unmodifiableMap(new LinkedHashMap<>(drives));
    }
  }

  /** A size of paper. */
  public enum Paper {
    A4("A4"),
    LETTER("Letter");

    private final String word;

    Paper(String word) {
      this.word = word;
    }

    /** As written in files and on the command line. */
    public String word() {
      return word;
    }
  }

  /** Whose English the sheets speak. */
  public enum Terms {
    BRITISH,
    AMERICAN
  }

  /** The garage's tools. */
  public record Crib(
      List<Located<Wrench>> wrenches,
      List<Located<Socket>> sockets,
      List<Special> special,
      Optional<Stands> stands) {
    public Crib {
      wrenches = List.copyOf(wrenches);
      sockets = List.copyOf(sockets);
      special = List.copyOf(special);
    }
  }

  /**
   * A special tool and how many there are.
   *
   * @param drive the square of what stands between wrench and head: a crow-foot has but one
   */
  public record Special(
      Located<String> name, Located<Integer> count, Optional<Located<Drive>> drive) {}

  /**
   * Axle stands.
   *
   * @param rated the figure on them
   * @param each whether the figure is for each stand, or for a pair
   */
  public record Stands(Located<Quantity> rated, boolean each, Located<Integer> count) {}

  /**
   * Somebody who works here.
   *
   * @param certificates what they are certified for
   */
  public record Person(
      Located<String> id, Located<String> name, Grade grade, List<Certificate> certificates) {
    public Person {
      certificates = List.copyOf(certificates);
    }

    /** The certificate for a qualification, valid or not. */
    public Optional<Certificate> certificate(String qualification) {
      return certificates.stream()
          .filter(it -> it.qualification().value().equals(qualification))
          .findFirst();
    }
  }

  /**
   * That somebody is certified for something.
   *
   * @param qualification its name in the catalogue
   * @param number what stands on the certificate
   * @param until the last day on which it is valid; absent where it has no end
   */
  public record Certificate(
      Located<String> qualification, Located<String> number, Optional<LocalDate> until) {
    public boolean isValidOn(LocalDate day) {
      return until.map(last -> !day.isAfter(last)).orElse(true);
    }
  }

  /** What somebody may sign. */
  public enum Grade {
    TECHNICIAN,
    APPRENTICE
  }
}
