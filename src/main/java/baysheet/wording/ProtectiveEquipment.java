package baysheet.wording;

import java.util.Map;
import java.util.Set;

/** Words for the mandatory-action signs of ISO 7010 that concern protective equipment. */
final class ProtectiveEquipment {
  // Numbers and referents: ISO 7010 register as reproduced in ASR A1.3; M013, M016, M017, M019,
  // M021, M022, M026 from memory.
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("M002", "read the instructions"),
          Map.entry("M003", "ear protection"),
          Map.entry("M004", "eye protection"),
          Map.entry("M008", "safety footwear"),
          Map.entry("M009", "gloves"),
          Map.entry("M010", "protective clothing"),
          Map.entry("M011", "wash your hands"),
          Map.entry("M013", "face shield"),
          Map.entry("M014", "head protection"),
          Map.entry("M015", "high-visibility clothing"),
          Map.entry("M016", "mask"),
          Map.entry("M017", "respirator"),
          Map.entry("M019", "welding mask"),
          Map.entry("M021", "disconnect before the work"),
          Map.entry("M022", "apply barrier cream"),
          Map.entry("M026", "apron"));

  private static final Set<String> ACTIONS = Set.of("M002", "M011", "M021", "M022");

  private ProtectiveEquipment() {}

  /** Its words; the number alone where it is not a sign for equipment. */
  static String words(String number) {
    return WORDS.getOrDefault(number, number);
  }

  /** Whether a person wears it; the other signs ask for an action. */
  static boolean isWorn(String number) {
    return !ACTIONS.contains(number);
  }
}
