package baysheet.yaml;

import baysheet.report.Span;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Keys with values, in the order in which they were written. No key stands in it twice. */
public record Mapping(List<Entry> entries, Span at) implements Node {
  public Mapping {
    entries = List.copyOf(entries);
    Set<String> seen = new HashSet<>();
    for (Entry entry : entries) {
      if (!seen.add(entry.key().text())) {
        throw new IllegalArgumentException("key twice: " + entry.key());
      }
    }
  }

  @Override
  public String shape() {
    return "a map of keys and values";
  }

  /** The first key, or the brackets of an empty map: where to point when something is not there. */
  public Span start() {
    return entries.isEmpty() ? at : entries.get(0).key().at();
  }
}
