package baysheet.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {
  private static final List<String> IN_ORDER =
      List.of(
          "01",
          "1",
          "2",
          "9",
          "10",
          "99",
          "100",
          "99999999999999999999",
          "A1",
          "A2",
          "A2-b",
          "A10",
          "floor",
          "floor2",
          "floor10");

  @Test
  void figuresCountAsNumbers() {
    for (int round = 0; round < 50; round++) {
      List<String> mixed = new ArrayList<>(IN_ORDER);
      Collections.shuffle(mixed, new Random(round));
      mixed.sort(NaturalOrder.NATURAL);
      assertEquals(IN_ORDER, mixed);
    }
  }

  @Test
  void differentNamesNeverCountAsOne() {
    for (String one : IN_ORDER) {
      for (String other : IN_ORDER) {
        if (!one.equals(other)) {
          assertNotEquals(0, NaturalOrder.NATURAL.compare(one, other), one + " " + other);
        }
      }
    }
  }
}
