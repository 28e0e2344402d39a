package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.List;

/**
 * The sheet of a small shop, which holds, with something wrong. A step is named by the beginning of
 * its text or of its source, each with its places: {@code Jack it up [rear]}. It keeps its number.
 */
final class Spoiled {
  private final SmallShop shop;
  private Sheet sheet;
  private final List<SheetStep> steps;

  private Spoiled(SmallShop shop) {
    this.shop = shop;
    this.sheet = shop.sheet();
    this.steps = new ArrayList<>(sheet.steps());
  }

  static Spoiled of(SmallShop shop) {
    Spoiled unspoiled = new Spoiled(shop);
    assertEquals(List.of(), unspoiled.faults());
    return unspoiled;
  }

  Spoiled without(String step) {
    steps.remove(at(step));
    return this;
  }

  Spoiled twice(String step) {
    steps.add(at(step), step(step));
    return this;
  }

  Spoiled before(String next, String step) {
    SheetStep moved = steps.remove(at(step));
    steps.add(at(next), moved);
    return this;
  }

  Spoiled behind(String last, String step) {
    SheetStep moved = steps.remove(at(step));
    steps.add(at(last) + 1, moved);
    return this;
  }

  /** With one more step directly ahead of another. */
  Spoiled before(String next, SheetStep step) {
    steps.add(at(next), step);
    return this;
  }

  /** With another value for a component of a step, or for one in it: {@code actions.undo}. */
  Spoiled with(String step, String component, Object value) {
    steps.set(at(step), Altered.with(step(step), component, value));
    return this;
  }

  /** With another value for a component of the sheet, or for one in it. */
  Spoiled sheet(String component, Object value) {
    sheet = Altered.with(sheet, component, value);
    return this;
  }

  SheetStep step(String step) {
    return steps.get(at(step));
  }

  private int at(String step) {
    for (int i = 0; i < steps.size(); i++) {
      SheetStep one = steps.get(i);
      if ((Printed.text(one) + " " + one.places()).startsWith(step)
          || (one.source().id() + " " + one.places()).startsWith(step)) {
        return i;
      }
    }
    throw new AssertionError("no " + step + " in " + shop.steps());
  }

  /** The sheet as it is spoiled. */
  Sheet sheet() {
    return AlteredSheets.inOrder(sheet, steps);
  }

  List<String> faults() {
    return shop.faults(sheet());
  }

  /** Whether the playback says something of a step. */
  void is(String step, String what) {
    String fault = "step " + step(step).n() + " " + what;
    assertTrue(faults().contains(fault), () -> fault + " in\n" + String.join("\n", faults()));
  }

  /** Whether the playback finds that and nothing else. */
  void isOnly(String step, String what) {
    assertEquals(List.of("step " + step(step).n() + " " + what), faults());
  }

  /** Whether some fault has these words. */
  void says(String words) {
    assertTrue(
        faults().stream().anyMatch(fault -> fault.contains(words)),
        () -> words + " in\n" + String.join("\n", faults()));
  }

  /** Whether no fault has these words. */
  void saysNothingOf(String words) {
    assertTrue(
        faults().stream().noneMatch(fault -> fault.contains(words)),
        () -> words + " in\n" + String.join("\n", faults()));
  }
}
