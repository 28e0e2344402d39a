package baysheet.books;

import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Sequence;
import com.networknt.schema.JsonNodePath;
import com.networknt.schema.ValidationMessage;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/** What a validator says, as lines of the file. */
final class SchemaMarks {
  private SchemaMarks() {}

  static Set<Integer> lines(Node file, Collection<ValidationMessage> messages) {
    Set<Integer> lines = new TreeSet<>();
    for (ValidationMessage message : messages) {
      if (!isOvertaken(message, messages)) {
        lines.add(line(file, message));
      }
    }
    return lines;
  }

  /**
   * Where one thing or a list of them may stand, a fault within the list is also reported as the
   * list not being one thing.
   */
  private static boolean isOvertaken(
      ValidationMessage message, Collection<ValidationMessage> messages) {
    JsonNodePath path = message.getInstanceLocation();
    return Set.of("type", "enum", "not").contains(message.getType())
        && messages.stream()
            .map(ValidationMessage::getInstanceLocation)
            .anyMatch(
                other -> other.getNameCount() > path.getNameCount() && other.startsWith(path));
  }

  private static Node at(Node file, JsonNodePath path) {
    Node node = file;
    for (int i = 0; i < path.getNameCount(); i++) {
      node =
          node instanceof Sequence list
              ? list.items().get(Integer.parseInt(path.getName(i)))
              : entry((Mapping) node, path.getName(i)).value();
    }
    return node;
  }

  private static Entry entry(Mapping map, String key) {
    return map.entries().stream()
        .filter(entry -> entry.key().text().equals(key))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no key " + key + " at " + map.at()));
  }

  private static int line(Node file, ValidationMessage message) {
    if (message.getEvaluationPath().getName(0).equals("anyOf")) {
      // One key or another has to be there: where none is, the file is at fault.
      return ((Mapping) file).start().line();
    }
    Node node = at(file, message.getInstanceLocation());
    if (message.getType().equals("additionalProperties")) {
      return entry((Mapping) node, message.getProperty()).key().at().line();
    }
    if (message.getType().equals("uniqueItems")) {
      return again((Sequence) node);
    }
    return node instanceof Mapping map ? map.start().line() : node.at().line();
  }

  /** The first item that has stood before. */
  private static int again(Sequence list) {
    Set<Object> seen = new HashSet<>();
    return list.items().stream()
        .filter(item -> !seen.add(EditorView.YAML_1_2.of(item)))
        .findFirst()
        .orElseThrow(() -> new AssertionError("all differ: " + list.at()))
        .at()
        .line();
  }
}
