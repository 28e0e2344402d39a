package baysheet.ledger;

import baysheet.json.JsonObject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  private final JsonObject old;
  private final JsonObject now;
  private final List<String> found = new ArrayList<>();

  private Changes(JsonObject old, JsonObject now) {
    this.old = old;
    this.now = now;
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
    boolean stayed() {
      return old.isPresent() && now.isPresent();
    }

    boolean differs(KeyWords words) {
      return stayed() && !words.differing(old.get(), now.get()).isEmpty();
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
        row(pair.old().get(), pair.now().get(), "row " + pair.now().get().number("n"));
      }
    }
  }

  private void row(JsonObject before, JsonObject after, String name) {
    if (!figures(before).equals(figures(after))) {
      found.add(name + " was " + figures(before));
    } else if (!settings(before).equals(settings(after))) {
      found.add(name + " was set to " + settings(before));
    } else if (!bands(before).equals(bands(after))) {
      found.add(name + " had the band " + String.join(", ", bands(before)));
    } else if (KeyWords.differ(before, after, "stages") || KeyWords.differ(before, after, "kind")) {
      found.add(name + ": figure changed");
    }
    for (String word : KeyWords.OF_ROW.differing(before, after)) {
      found.add(name + ": " + word + " changed");
    }
    if (!drawing(before).equals(drawing(after))) {
      found.add(name + ": drawing changed");
    }
  }

  /** Without its letter, which follows from the drawings of other rows. */
  private static Optional<List<Object>> drawing(JsonObject row) {
    return row.object("drawing")
        .map(it -> Arrays.asList(it.value("arrangement"), it.value("rows")));
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
    List<Pair> pairs = stepPairs();
    int known = found.size();
    for (Pair pair : pairs) {
      String number = "step " + pair.now().or(pair::old).get().number("n");
      if (pair.old().isEmpty()) {
        found.add(number + " is new");
      } else if (pair.now().isEmpty()) {
        found.add("old " + number + " is gone");
      } else if (pair.differs(KeyWords.OF_STEP)) {
        found.add(number + " is different");
      }
    }
    List<Integer> before = numbers(pairs, Pair::old);
    if (!before.stream().sorted().toList().equals(before)) {
      found.add("the steps are in another order");
    }
    if (found.size() == known && !headings(old).equals(headings(now))) {
      found.add("the headings of the steps changed");
    }
  }

  /** Steps that come and go bring their headings and take them along. */
  private static List<Object> headings(JsonObject whole) {
    return whole.objects("sections").stream()
        .map(it -> (Object) Arrays.asList(it.value("heading"), it.value("oneSideFirst")))
        .toList();
  }

  /** Old numbers of the steps that stayed, in the new order. */
  private static List<Integer> numbers(
      List<Pair> pairs, Function<Pair, Optional<JsonObject>> side) {
    return pairs.stream().filter(Pair::stayed).map(it -> side.apply(it).get().number("n")).toList();
  }

  private void cautions() {
    for (Pair pair : pairs("cautions", it -> it.text("hazard"))) {
      String letter = pair.now().or(pair::old).get().text("letter");
      if (pair.old().isEmpty()) {
        found.add("caution " + letter + " is new");
      } else if (pair.now().isEmpty()) {
        found.add("old caution " + letter + " is gone");
      } else if (KeyWords.differ(pair.old().get(), pair.now().get(), "signal")) {
        found.add("caution " + letter + " was " + pair.old().get().text("signal"));
      } else if (pair.differs(KeyWords.OF_CAUTION)) {
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
      } else if (pair.differs(KeyWords.OF_CHECK)) {
        found.add("check " + number + " is different");
      }
    }
    gone.stream().sorted().forEach(rule -> found.add("the check " + rule + " is gone"));
  }

  private void rest() {
    add(KeyWords.OF_WHOLE.differing(old, now));
    if (KeyWords.differ(old, now, "time") || timesOfSteps()) {
      found.add("the estimated time changed");
    }
    JsonObject before = sheet(old);
    JsonObject after = sheet(now);
    add(KeyWords.OF_SHEET.differing(before, after));
    if (KeyWords.differ(before, after, "date")) {
      found.add("the day was " + before.text("date"));
    }
    if (KeyWords.differ(before, after, "paper")) {
      before.maybeText("paper").ifPresent(it -> found.add("the paper was " + it));
    }
  }

  private void add(List<String> words) {
    words.forEach(it -> found.add(it + " changed"));
  }

  private static JsonObject sheet(JsonObject whole) {
    return whole.object("sheet").orElseThrow();
  }

  /** Minutes can move from one step to another; records of earlier versions have no halves. */
  private boolean timesOfSteps() {
    return stepPairs().stream()
        .filter(Pair::stayed)
        .anyMatch(
            it ->
                KeyWords.differ(it.old().get(), it.now().get(), "minutes")
                    || it.old().get().has("printedMinutes")
                        && KeyWords.differ(it.old().get(), it.now().get(), "printedMinutes"));
  }

  private List<Pair> stepPairs() {
    return pairs("steps", it -> it.text("procedure") + it.texts("places") + it.text("text"));
  }
}
