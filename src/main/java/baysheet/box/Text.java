package baysheet.box;

import baysheet.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A paragraph.
 *
 * @param style size, weight, alignment
 * @param role what the paragraph is to a screen reader
 */
public record Text(List<Run> runs, TextStyle style, Role role, Span at) implements Box {
  public Text {
    runs = List.copyOf(runs);
  }

  @Override
  public List<Box> children() {
    return List.of();
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    List<Run> kept =
        Kept.of(
            runs,
            run ->
                run.group().filter(groups::contains).isPresent()
                    ? Optional.empty()
                    : Optional.of(run));
    return Optional.of(kept == runs ? this : new Text(kept, style, role, at));
  }

  @Override
  public List<String> groups() {
    List<String> groups = List.of();
    for (Run run : runs) {
      if (run.group().isPresent()) {
        groups = groups.isEmpty() ? new ArrayList<>() : groups;
        groups.add(run.group().get());
      }
    }
    return groups;
  }

  @Override
  public List<Printed> printed() {
    return runs.stream().map(run -> new Printed(run.text(), run.bold())).toList();
  }

  @Override
  public String element() {
    return "text";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.text(this);
  }

  /**
   * A stretch of text in one weight.
   *
   * @param group the group with which it is dropped, if any
   */
  public record Run(String text, boolean bold, Optional<String> group) {}

  /** What a paragraph is to a screen reader. */
  public enum Role {
    TITLE,
    HEADING,
    SUBHEADING,
    PARAGRAPH,
    DECORATION
  }
}
