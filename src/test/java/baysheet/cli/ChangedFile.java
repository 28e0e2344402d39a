package baysheet.cli;

import baysheet.yaml.Scalar;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a changed file says now of a fact that it said before.
 *
 * @param values its single values by their path
 */
record ChangedFile(Map<String, String> values) {
  private static final Pattern ITEM = Pattern.compile("(.*\\.)[0-9]+(?:\\..*)?");
  private static final Pattern ON_ONE_AXLE =
      Pattern.compile("fasteners\\.(?:front|rear)-wheels\\.(.*)");

  private static final Pattern MINUTES = Pattern.compile("([0-9.]+(?:/[0-9.]+)*) min");

  Optional<String> value(WrittenFact fact) {
    return Optional.ofNullable(values.get(fact.path()));
  }

  /** Whether it gives nothing for the key any more. */
  boolean lacks(WrittenFact fact) {
    return value(fact).isEmpty() && at(values, fact.path()).isEmpty();
  }

  /** Whether only spaces, or dots between units, are others. */
  boolean spellsTheSame(WrittenFact fact) {
    return fact.node() instanceof Scalar scalar
        && value(fact).filter(now -> plain(now).equals(plain(scalar.text()))).isPresent();
  }

  /** Whether minutes differ by less than what is printed of them. */
  boolean isWithinHalfAMinute(WrittenFact fact) {
    List<Double> before = minutes(fact.node() instanceof Scalar scalar ? scalar.text() : "");
    List<Double> after = minutes(value(fact).orElse(""));
    return !before.isEmpty()
        && before.size() == after.size()
        && IntStream.range(0, before.size())
            .allMatch(i -> Math.abs(before.get(i) - after.get(i)) < 0.5);
  }

  private static List<Double> minutes(String text) {
    Matcher minutes = MINUTES.matcher(text);
    return minutes.matches()
        ? Stream.of(minutes.group(1).split("/")).map(Double::valueOf).toList()
        : List.of();
  }

  private static String plain(String text) {
    return text.strip()
        .replaceAll("[\\h\\v]+", " ")
        .replaceAll("(?<=\\p{L})·+(?=\\p{L})", "")
        .replaceAll("(?<=[0-9]) (?=\\p{L})", "");
  }

  /** Whether a list has the same item, maybe at another place. */
  boolean movesItem(WrittenFact fact, Map<String, String> before) {
    Matcher item = ITEM.matcher(fact.path());
    if (!item.matches()) {
      return false;
    }
    String list = item.group(1);
    String index = fact.path().substring(list.length()).replaceFirst("\\..*", "");
    Map<String, String> said = at(before, list + index);
    return values.keySet().stream()
        .filter(it -> it.startsWith(list))
        .map(it -> list + it.substring(list.length()).replaceFirst("\\..*", ""))
        .distinct()
        .anyMatch(it -> at(values, it).equals(said));
  }

  private static Map<String, String> at(Map<String, String> values, String path) {
    Map<String, String> within = new TreeMap<>();
    values.forEach(
        (its, value) -> {
          if (its.startsWith(path + ".")) {
            within.put(its.substring(path.length()), value);
          }
        });
    return within;
  }

  /** Whether what stood for the wheels of one axle stands for all wheels now. */
  boolean isForAllWheels(WrittenFact fact) {
    Matcher axle = ON_ONE_AXLE.matcher(fact.path());
    return axle.matches()
        && fact.node() instanceof Scalar scalar
        && scalar.text().equals(values.get("fasteners.wheels." + axle.group(1)));
  }
}
