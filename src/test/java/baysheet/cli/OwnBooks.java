package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * A second, plain reading of a shop folder: which fasteners a job touches, and what its book and
 * its overrides say of them. It shares no code with the program.
 */
final class OwnBooks {
  private static final Map<String, List<String>> GROUPS =
      Map.of(
          "wheels", List.of("front-left", "front-right", "rear-left", "rear-right"),
          "front-wheels", List.of("front-left", "front-right"),
          "rear-wheels", List.of("rear-left", "rear-right"),
          "front", List.of("front-left", "front-right"),
          "rear", List.of("rear-left", "rear-right"));

  private final Path root;

  OwnBooks(Path root) {
    this.root = root;
  }

  /**
   * The entries of every fastener that a job takes off or puts on, by {@code name@place}. A {@code
   * source} stands in each, and {@code overridden} where the job has its own figure.
   */
  Map<String, Map<String, Object>> fasteners(Path file) {
    Map<String, Object> job = read(file);
    Map<String, Object> book = book(text(map(job.get("vehicle")).get("book")));
    Map<String, Map<String, Object>> all = new LinkedHashMap<>();
    for (String task : tasks(job)) {
      String place = task.substring(task.indexOf('@') + 1);
      for (String item : items(read(procedure(task.substring(0, task.indexOf('@')))))) {
        entry(book, item, place).ifPresent(it -> all.put(item + "@" + place, it));
      }
    }
    map(job.getOrDefault("override", Map.of()))
        .forEach((key, change) -> all.forEach((item, it) -> override(key, map(change), item, it)));
    return all;
  }

  Map<String, Object> shop() {
    return read(root.resolve("shop.yaml"));
  }

  /** The crib's wrenches. */
  List<Map<String, Object>> wrenches() {
    List<Map<String, Object>> wrenches = new ArrayList<>();
    list(map(shop().get("crib")).get("wrenches")).forEach(it -> wrenches.add(map(it)));
    return wrenches;
  }

  private static void override(
      String key, Map<String, Object> change, String item, Map<String, Object> entry) {
    String[] words = key.split(" at ");
    String[] at = item.split("@");
    boolean covers = words[1].equals(at[1]) || places(words[1]).contains(at[1]);
    if (words[0].equals(at[0]) && covers) {
      entry.put("replaced", change.containsKey("torque") ? entry.get("torque") : null);
      entry.putAll(change);
      entry.put("overridden", true);
    }
  }

  /** A book with everything of the one it is like, its own values over it. */
  private Map<String, Object> book(String name) {
    Map<String, Object> own = read(root.resolve("vehicles").resolve(name + ".yaml"));
    Map<String, Object> groups = new LinkedHashMap<>();
    if (own.containsKey("like")) {
      groups.putAll(book(text(own.get("like"))));
    }
    map(own.get("fasteners")).forEach((group, entries) -> merge(groups, group, entries, own));
    return groups;
  }

  private static void merge(
      Map<String, Object> groups, String group, Object entries, Map<String, Object> own) {
    Map<String, Object> merged = map(groups.computeIfAbsent(group, key -> new LinkedHashMap<>()));
    map(entries)
        .forEach(
            (name, values) -> {
              Map<String, Object> entry =
                  map(merged.computeIfAbsent(name, k -> new LinkedHashMap<>()));
              entry.put("source", own.get("source"));
              entry.putAll(values instanceof String line ? onOneLine(line) : map(values));
            });
  }

  /** {@code 3 x M8 class 8.8, hex 13 mm, 20 N·m, dry, re-use}, as these books write it. */
  private static Map<String, Object> onOneLine(String line) {
    List<String> parts = List.of(line.split(", "));
    List<String> first = List.of(parts.get(0).split(" x | class "));
    Map<String, Object> entry = new LinkedHashMap<>();
    entry.put("count", Integer.parseInt(first.get(0)));
    entry.put("thread", first.get(1));
    first.stream().skip(2).forEach(it -> entry.put("class", it));
    entry.put("head", parts.get(1));
    entry.put("torque", parts.get(2).replace("torque ", ""));
    parts.stream().skip(4).forEach(any -> entry.put("threads", parts.get(3)));
    entry.put("reuse", parts.get(parts.size() - 1).equals("re-use"));
    return entry;
  }

  /** The entry of the smallest group that has the place. */
  private static Optional<Map<String, Object>> entry(
      Map<String, Object> book, String item, String place) {
    return book.entrySet().stream()
        .filter(group -> group.getKey().equals(place) || places(group.getKey()).contains(place))
        .filter(group -> map(group.getValue()).containsKey(item))
        .min((one, other) -> size(one.getKey()) - size(other.getKey()))
        .map(group -> new LinkedHashMap<>(map(map(group.getValue()).get(item))));
  }

  private static int size(String group) {
    return Math.max(1, places(group).size());
  }

  private static List<String> places(String group) {
    return GROUPS.getOrDefault(group, List.of());
  }

  /** The works of a job and all that gives access to them, as {@code procedure@place}. */
  private Set<String> tasks(Map<String, Object> job) {
    Set<String> tasks = new LinkedHashSet<>();
    list(job.get("work")).forEach(work -> reach(text(work), "", tasks));
    return tasks;
  }

  private void reach(String written, String from, Set<String> tasks) {
    String[] words = written.split(" at ");
    // What serves to raise the car or to hold it from below depends on the bay, and touches no
    // fastener.
    if (List.of("raise", "hub-held", "arm-held").contains(words[0])) {
      return;
    }
    Map<String, Object> procedure = read(procedure(words[0]));
    for (String place : at(text(procedure.get("at")), words.length > 1 ? words[1] : from)) {
      tasks.add(words[0] + "@" + place);
      list(procedure.getOrDefault("behind", List.of()))
          .forEach(access -> reach(text(access), place, tasks));
    }
  }

  private static List<String> at(String kind, String place) {
    return switch (kind) {
      case "wheel" -> places(place).isEmpty() ? List.of(place) : places(place);
      case "vehicle", "engine" -> List.of(kind);
      case "axle" -> List.of(place.startsWith("rear") ? "rear" : "front");
      default -> throw new AssertionError("not reckoned with: at " + kind);
    };
  }

  private Path procedure(String name) {
    return root.resolve("procedures").resolve(name + ".yaml");
  }

  /** Everything that the steps of a procedure take off or put on. */
  private static Set<String> items(Map<String, Object> procedure) {
    Set<String> items = new LinkedHashSet<>();
    for (String phase : List.of("open", "work", "close")) {
      for (Object step : list(procedure.getOrDefault(phase, List.of()))) {
        for (String key : List.of("undo", "do-up")) {
          list(map(step).getOrDefault(key, List.of())).forEach(item -> items.add(text(item)));
        }
      }
    }
    return items;
  }

  private static Map<String, Object> read(Path file) {
    try {
      return map(new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(file)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  static String text(Object value) {
    return String.valueOf(value);
  }

  @SuppressWarnings("unchecked") // YAML maps of these files have texts as keys, tested by use
  static Map<String, Object> map(Object value) {
    return (Map<String, Object>) value;
  }

  /** A list as it is; one thing as a list of one. */
  static List<?> list(Object value) {
    return value instanceof List<?> list ? list : List.of(value);
  }
}
