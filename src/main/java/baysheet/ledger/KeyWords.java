package baysheet.ledger;

import baysheet.json.JsonObject;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What the keys of a record are called where one of them differs. A key without words of its own is
 * said by its name, so that none is forgotten.
 *
 * @param words by key; several keys of one thing have the same words
 * @param apart keys that are said in another way, or that follow from others
 */
record KeyWords(Map<String, String> words, Set<String> apart) {
  /** Keys of a torque row but its figures; its number and the letter of its drawing may shift. */
  static final KeyWords OF_ROW =
      of(
          Set.of("n", "fastener", "places", "stages", "kind", "drawing"),
          "words",
          "name",
          "count",
          "count",
          "thread",
          "thread",
          "class",
          "strength class",
          "head",
          "head",
          "socket",
          "socket",
          "passes",
          "rounds",
          "rounds",
          "rounds",
          "checkRound",
          "check round",
          "order",
          "tightening sequence",
          "threads",
          "thread treatment",
          "reuse",
          "rule for re-use",
          "lock",
          "lock",
          "note",
          "note",
          "moment",
          "moment",
          "rideHeight",
          "moment",
          "twoVisits",
          "number of visits",
          "recheck",
          "re-check",
          "source",
          "source",
          "overridden",
          "override by the job",
          "replaced",
          "override by the job",
          "warnings",
          "warning");

  /** Numbers of steps and rows and letters of cautions shift; times are said of the whole. */
  static final KeyWords OF_STEP =
      of(Set.of("n", "id", "torque", "cautions", "cautionsAbove", "minutes", "printedMinutes"));

  static final KeyWords OF_CAUTION = of(Set.of("letter", "steps"));

  static final KeyWords OF_CHECK = of(Set.of("because", "steps"));

  /** What a sheet is called and how it is laid out; its day and its paper are said as they were. */
  static final KeyWords OF_SHEET =
      of(
          Set.of("id", "hash", "code", "revision", "bodyPt", "dropped", "pages", "date", "paper"),
          "job",
          "the job's number",
          "stage",
          "the division into sheets",
          "stages",
          "the division into sheets",
          "title",
          "the title",
          "shop",
          "the name of the garage",
          "language",
          "the language",
          "units",
          "the units",
          "distanceUnit",
          "the units");

  /**
   * Keys of the whole. Sections, re-checks and rows of other sheets hold little but numbers of
   * steps and rows.
   */
  static final KeyWords OF_WHOLE =
      of(
          Set.of(
              "format",
              "sheet",
              "replaces",
              "steps",
              "sections",
              "torque",
              "linesElsewhere",
              "recheck",
              "rechecks",
              "cautions",
              "checks",
              "time",
              "boxes",
              "marks"),
          "vehicle",
          "the vehicle's data",
          "people",
          "the people",
          "bay",
          "the bay",
          "bayEquipment",
          "the bay",
          "wrenches",
          "torque wrenches",
          "sockets",
          "sockets",
          "tools",
          "tools",
          "parts",
          "new parts",
          "consumables",
          "consumables",
          "supplies",
          "consumables",
          "tally",
          "the list of removed items",
          "supports",
          "loads on the supports",
          "support",
          "loads on the supports",
          "protect",
          "protective equipment",
          "arrival",
          "the state of the vehicle at the start",
          "leaving",
          "the state of the vehicle at the end",
          "released",
          "who releases the vehicle",
          "evening",
          "the work of the evening before",
          "sources",
          "sources",
          "work",
          "the works",
          "works",
          "the works",
          "complaint",
          "the complaint",
          "promised",
          "the promised time",
          "notes",
          "the notes",
          "carried",
          "where the work began",
          "seen",
          "earlier findings",
          "open",
          "what others must do");

  private static KeyWords of(Set<String> apart, String... pairs) {
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      words.put(pairs[i], pairs[i + 1]);
    }
    return new KeyWords(words, apart);
  }

  /** What differs between two objects, each thing once, those with words of their own first. */
  List<String> differing(JsonObject old, JsonObject now) {
    Set<String> keys = new LinkedHashSet<>(words.keySet());
    keys.addAll(old.values().keySet());
    keys.addAll(now.values().keySet());
    keys.removeAll(apart);
    return keys.stream()
        .filter(key -> differ(old, now, key))
        .map(key -> words.getOrDefault(key, spaced(key)))
        .distinct()
        .toList();
  }

  /** Whether two objects have something else behind a key. */
  static boolean differ(JsonObject old, JsonObject now, String key) {
    return !Objects.equals(old.value(key), now.value(key));
  }

  /** {@code checkRound} as {@code check round}. */
  private static String spaced(String key) {
    return key.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ").toLowerCase(Locale.ROOT);
  }
}
