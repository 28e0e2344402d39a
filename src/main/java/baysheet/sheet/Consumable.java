package baysheet.sheet;

import baysheet.torque.Quantity;
import java.util.Optional;

/**
 * What is used up: a product, or the fluid of a circuit.
 *
 * @param words as printed
 * @param capacity how much the circuit takes, where the book says so
 */
public record Consumable(
    String words, String name, Optional<String> grade, Optional<Quantity> capacity) {
  /** A product. */
  public static Consumable of(String product) {
    return new Consumable(product, product, Optional.empty(), Optional.empty());
  }
}
