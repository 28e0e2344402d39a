package baysheet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A record of more than twelve components is grouped by meaning. */
class RecordSizeTest {
  private static final int MOST = 12;

  /**
   * Those that still have more, with their number: the words that layouts read, whose names stand
   * in the layouts of garages. None may grow and none may come; a smaller one gives its new number
   * here.
   */
  private static final Map<String, Integer> LARGER =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("StepText", 15),
              Map.entry("TorqueLineText", 23),
              Map.entry("SheetText", 27)));

  @Test
  void recordsAreGrouped() {
    assertEquals(LARGER, larger(Sources.CLASSES));
  }

  @Test
  void aLargeRecordIsFound() {
    JavaClasses fixture = new ClassFileImporter().importClasses(Thirteen.class, Twelve.class);
    assertEquals(Map.of("Thirteen", 13), larger(fixture));
  }

  private static Map<String, Integer> larger(JavaClasses classes) {
    Map<String, Integer> found = new TreeMap<>();
    for (JavaClass each : classes) {
      int size = components(each);
      if (each.isRecord() && size > MOST) {
        found.put(each.getSimpleName(), size);
      }
    }
    return found;
  }

  private static int components(JavaClass record) {
    return (int)
        record.getFields().stream()
            .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
            .count();
  }

  record Twelve(
      int a, int b, int c, int d, int e, int f, int g, int h, int i, int j, int k, int l) {
    static final int NO_COMPONENT = 0;
  }

  record Thirteen(
      int a, int b, int c, int d, int e, int f, int g, int h, int i, int j, int k, int l, int m) {}
}
