package baysheet.ledger;

import baysheet.json.JsonObject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What a sheet says otherwise than the revision before it, in numbers of rows, steps and checks and
 * in figures, so that whoever holds the old paper knows where to look.
 */
final class Changes {
  /** More than fit a line of the sheet; whoever sees that many reads the whole new sheet. */
  private static final int MOST = 8;

  /** Keys of a torque row that are neither its figures nor its number, and what they are called. */
  private static final Map<String, String> OF_ROW =
      words(
          "count", "count",
          "thread", "thread",
          "class", "strength class",
          "head", "head",
          "socket", "socket",
          "rounds", "rounds",
          "checkRound", "check round",
          "order", "tightening sequence",
          "threads", "thread treatment",
          "reuse", "rule for re-use",
          "lock", "lock",
          "moment", "moment",
          "recheck", "re-check",
          "source", "source",
          "warnings", "warning");

  private static final List<String> OF_STEP =
      List.of("details", "moment", "undo", "doUp", "disturb", "openCircuit", "hold", "entries");

  private static final List<String> OF_CHECK = List.of("text", "moment", "hold");

  /** Keys of the whole that are compared as they are. */
  private static final Map<String, String> OF_SHEET =
      words(
          "vehicle", "the vehicle's data",
          "people", "the people",
          "bay", "the bay",
          "sockets", "sockets",
          "tools", "tools",
          "parts", "new parts",
          "consumables", "consumables",
          "tally", "the list of removed items",
          "supports", "loads on the supports",
          "evening", "the work of the evening before",
          "sources", "sources",
          "time", "the estimated time",
          "work", "the works",
          "complaint", "the complaint",
          "notes", "the notes",
          "open", "what others must do");

  private final JsonObject old;
  private final JsonObject now;
  private final List<String> found = new ArrayList<>();

  private Changes(JsonObject old, JsonObject now) {
    this.old = old;
    this.now = now;
  }

  private static Map<String, String> words(String... pairs) {
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      words.put(pairs[i], pairs[i + 1]);
    }
    return words;
  }

  /** Never empty: two sheets that say the same are laid out in another way. */
  static List<String> between(KeptRecord old, KeptRecord now) {
    Changes changes = new Changes(old.whole(), now.whole());
    changes.rows();
    changes.steps();
    changes.cautions();
    changes.checks();
    changes.rest();
    return bounded(changes.found.isEmpty() ? List.of(unseen(old, now)) : changes.found);
  }

  /**
   * An id says the same of all that is on the sheet, so that one id with another page is a layout.
   */
  private static String unseen(KeptRecord old, KeptRecord now) {
    return old.id().equals(now.id()) ? "another layout" : "other words";
  }

  private static List<String> bounded(List<String> all) {
    if (all.size() <= MOST) {
      return List.copyOf(all);
    }
    List<String> first = new ArrayList<>(all.subList(0, MOST - 1));
    first.add((all.size() - first.size()) + " more changes");
    return List.copyOf(first);
  }

  /**
   * Two entries that are the same thing in both revisions; one is empty where it is new or gone.
   */
  private record Pair(Optional<JsonObject> old, Optional<JsonObject> now) {
    boolean differsIn(String key) {
      return !Objects.equals(value(old, key), value(now, key));
    }

    private static Object value(Optional<JsonObject> side, String key) {
      return side.map(it -> it.value(key)).orElse(null);
    }
  }

  private List<Pair> pairs(String list, Function<JsonObject, String> identity) {
    Map<String, JsonObject> before = byIdentity(old.objects(list), identity);
    List<Pair> pairs = new ArrayList<>();
    byIdentity(now.objects(list), identity)
        .forEach(
            (id, it) ->
                pairs.add(new Pair(Optional.ofNullable(before.remove(id)), Optional.of(it))));
    before.values().forEach(it -> pairs.add(new Pair(Optional.of(it), Optional.empty())));
    return pairs;
  }

  /** Of several that look the same the first is the first in both. */
  private static Map<String, JsonObject> byIdentity(
      List<JsonObject> entries, Function<JsonObject, String> identity) {
    Map<String, JsonObject> found = new LinkedHashMap<>();
    for (JsonObject entry : entries) {
      String id = identity.apply(entry);
      int count = 1;
      while (found.containsKey(id + " " + count)) {
        count++;
      }
      found.put(id + " " + count, entry);
    }
    return found;
  }

  private void rows() {
    for (Pair pair : pairs("torque", row -> row.text("fastener") + row.texts("places"))) {
      if (pair.old().isEmpty()) {
        found.add("row " + pair.now().get().number("n") + " is new");
      } else if (pair.now().isEmpty()) {
        found.add("old row " + pair.old().get().number("n") + " is gone");
      } else {
        row(pair, pair.old().get(), "row " + pair.now().get().number("n"));
      }
    }
  }

  private void row(Pair pair, JsonObject before, String name) {
    if (!figures(before).equals(figures(pair.now().get()))) {
      found.add(name + " was " + figures(before));
    } else if (!settings(before).equals(settings(pair.now().get()))) {
      found.add(name + " was set to " + settings(before));
    } else if (!bands(before).equals(bands(pair.now().get()))) {
      found.add(name + " had the band " + String.join(", ", bands(before)));
    }
    OF_ROW.forEach(
        (key, word) -> {
          if (pair.differsIn(key)) {
            found.add(name + ": " + word + " changed");
          }
        });
  }

  /** {@code 30 N·m + 60°}; {@code unknown} where there is none. */
  private static String figures(JsonObject row) {
    List<String> stages = new ArrayList<>();
    for (JsonObject stage : row.objects("stages")) {
      stage.quantity("torque").ifPresent(it -> stages.add(words(stage, "torque")));
      if (stage.value("angle") instanceof BigDecimal angle) {
        stages.add(angle.toPlainString() + "°");
      }
      if (stage.truth("loosen")) {
        stages.add("loosened");
      }
    }
    return stages.isEmpty() ? "unknown" : String.join(" + ", stages);
  }

  private static String words(JsonObject stage, String key) {
    return stage.quantity(key).map(Tables::plain).orElse("nothing");
  }

  private static String settings(JsonObject row) {
    List<String> settings =
        row.objects("stages").stream()
            .filter(it -> it.has("torque"))
            .map(
                it ->
                    words(it, "setting") + it.maybeText("wrench").map(w -> " with " + w).orElse(""))
            .toList();
    return String.join(", ", settings);
  }

  private static List<String> bands(JsonObject row) {
    return row.objects("stages").stream()
        .flatMap(it -> it.object("band").stream())
        .map(Joint::band)
        .map(Tables::band)
        .toList();
  }

  private void steps() {
    List<Pair> pairs =
        pairs("steps", it -> it.text("procedure") + it.texts("places") + it.text("text"));
    for (Pair pair : pairs) {
      String number = "step " + pair.now().or(pair::old).get().number("n");
      if (pair.old().isEmpty()) {
        found.add(number + " is new");
      } else if (pair.now().isEmpty()) {
        found.add("old " + number + " is gone");
      } else if (OF_STEP.stream().anyMatch(pair::differsIn)) {
        found.add(number + " is different");
      }
    }
    List<Integer> before = numbers(pairs, Pair::old);
    if (!before.stream().sorted().toList().equals(before)) {
      found.add("the steps are in another order");
    }
  }

  /** Old numbers of the steps that stayed, in the new order. */
  private static List<Integer> numbers(
      List<Pair> pairs, Function<Pair, Optional<JsonObject>> side) {
    return pairs.stream()
        .filter(it -> it.old().isPresent() && it.now().isPresent())
        .map(it -> side.apply(it).get().number("n"))
        .toList();
  }

  private void cautions() {
    for (Pair pair : pairs("cautions", it -> it.text("hazard"))) {
      String letter = pair.now().or(pair::old).get().text("letter");
      if (pair.old().isEmpty()) {
        found.add("caution " + letter + " is new");
      } else if (pair.now().isEmpty()) {
        found.add("old caution " + letter + " is gone");
      } else if (pair.differsIn("signal")) {
        found.add("caution " + letter + " was " + pair.old().get().text("signal"));
      } else if (pair.differsIn("text")) {
        found.add("caution " + letter + " is different");
      }
    }
  }

  private void checks() {
    Set<String> gone = new HashSet<>();
    int number = 0;
    for (Pair pair : pairs("checks", it -> it.text("rule") + it.texts("places"))) {
      number++;
      if (pair.old().isEmpty()) {
        found.add("check " + number + " is new");
      } else if (pair.now().isEmpty()) {
        gone.add(pair.old().get().text("rule"));
      } else if (OF_CHECK.stream().anyMatch(pair::differsIn)) {
        found.add("check " + number + " is different");
      }
    }
    gone.stream().sorted().forEach(rule -> found.add("the check " + rule + " is gone"));
  }

  private void rest() {
    OF_SHEET.forEach(
        (key, words) -> {
          if (!Objects.equals(old.value(key), now.value(key))) {
            found.add(words + " changed");
          }
        });
    Optional<String> date = old.object("sheet").map(it -> it.text("date"));
    if (!date.equals(now.object("sheet").map(it -> it.text("date")))) {
      date.ifPresent(it -> found.add("the day was " + it));
    }
    Optional<String> paper = old.object("sheet").flatMap(it -> it.maybeText("paper"));
    if (!paper.equals(now.object("sheet").flatMap(it -> it.maybeText("paper")))) {
      paper.ifPresent(it -> found.add("the paper was " + it));
    }
  }
}
