package baysheet.cli;

import baysheet.report.Span;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One value, key or item of a file, with everything that it stands in.
 *
 * @param path keys and the places in lists, from the file's root: {@code fasteners.wheels.wheel-nut
 *     .count}, {@code open.2.do}
 * @param keys the keys on the way, each as {@code file:line:column}
 * @param key the key before the value; none for an item of a list
 * @param node the value
 * @param inList whether it is an item of a list
 * @param flow whether brackets stand around it
 */
record WrittenFact(
    String path, List<String> keys, Optional<Scalar> key, Node node, boolean inList, boolean flow) {

  /** All values, keys and items of a file, outermost first. */
  static List<WrittenFact> in(Node root) {
    List<WrittenFact> facts = new ArrayList<>();
    walk(root, "", List.of(), isFlow(root), facts);
    return facts;
  }

  /** The single values of a file by their path; a list's items count by their text. */
  static Map<String, String> values(Node root) {
    Map<String, String> values = new TreeMap<>();
    for (WrittenFact fact : in(root)) {
      if (fact.node() instanceof Scalar scalar) {
        values.put(fact.path(), scalar.text());
      }
    }
    return values;
  }

  private static void walk(
      Node node, String path, List<String> keys, boolean flow, List<WrittenFact> facts) {
    if (node instanceof Mapping map) {
      for (Entry entry : map.entries()) {
        String its = path.isEmpty() ? entry.key().text() : path + "." + entry.key().text();
        List<String> all = new ArrayList<>(keys);
        all.add(entry.key().at().toString());
        facts.add(
            new WrittenFact(
                its, all, Optional.of(entry.key()), entry.value(), false, isFlow(node)));
        walk(entry.value(), its, all, flow, facts);
      }
    } else if (node instanceof Sequence list) {
      int index = 0;
      for (Node item : list.items()) {
        String its = path + "." + index++;
        facts.add(new WrittenFact(its, keys, Optional.empty(), item, true, isFlow(node)));
        walk(item, its, keys, flow, facts);
      }
    }
  }

  /** A node in brackets begins with one; a block begins with its first key or item. */
  private static boolean isFlow(Node node) {
    Span at = node.at();
    String line = at.source().lines().get(at.line() - 1);
    int index = line.offsetByCodePoints(0, at.column() - 1);
    return !(node instanceof Scalar)
        && index < line.length()
        && "{[".indexOf(line.charAt(index)) >= 0;
  }

  /** Where it begins: its key, or the item itself. */
  Span start() {
    return key.map(Scalar::at).orElse(node.at());
  }

  /** The file that it stands in. */
  String file() {
    return node.at().source().name();
  }
}
