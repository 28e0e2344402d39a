package baysheet.template;

import baysheet.box.Box;
import baysheet.box.Droppable;
import baysheet.box.Text;
import java.util.stream.Collectors;

/** Everything in a form that may give way, as text. */
final class DroppedWords {
  private DroppedWords() {}

  static String of(Box box) {
    if (box instanceof Droppable droppable) {
      return droppable.child().toString() + "\n";
    }
    if (box instanceof Text text) {
      return text.runs().stream()
          .filter(run -> run.group().isPresent())
          .map(Text.Run::text)
          .collect(Collectors.joining("\n"));
    }
    StringBuilder inside = new StringBuilder();
    box.children().forEach(child -> inside.append(of(child)));
    return inside.toString();
  }
}
