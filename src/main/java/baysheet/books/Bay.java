package baysheet.books;

import baysheet.report.Located;
import baysheet.torque.Quantity;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** A place to work in, with what raises a vehicle there. */
public record Bay(
    Located<String> name,
    Equipment equipment,
    Located<String> description,
    Located<Quantity> rated) {
  /** What a step may ask for, whether or not the shop has one. */
  static final Set<String> KINDS =
      Set.of(
          "lift",
          "jack",
          "arms",
          "two-post",
          "four-post",
          "scissor",
          "platform",
          "trolley",
          "bottle");

  /** Lifts without arms, by a word in their description; any other may have arms. */
  private static final Pattern ARMLESS =
      Pattern.compile("scissor|four.?post|4.?post|platform|ramp|drive.?on");

  /** Whether its lift may have arms, each with a lock of its own. */
  public boolean hasArms() {
    String lift = description.value().toLowerCase(Locale.ROOT);
    return equipment == Equipment.LIFT && !ARMLESS.matcher(lift).find();
  }

  /** Whether it is a {@code lift}, a {@code jack}, has {@code arms}, or is of a kind as written. */
  public boolean isOf(String kind) {
    return kind.equalsIgnoreCase(description.value())
        || kind.equals(equipment.word())
        || (kind.equals("arms") && hasArms());
  }

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
