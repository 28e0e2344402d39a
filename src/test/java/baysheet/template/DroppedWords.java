package baysheet.template;

import java.util.stream.Collectors;

/** Everything in a form that may give way, as text. */
final class DroppedWords {
  private DroppedWords() {}

  static String of(Box box) {
    if (box instanceof Box.Droppable droppable) {
      return droppable.child().toString() + "\n";
    }
    if (box instanceof Box.Text text) {
      return text.runs().stream()
          .filter(run -> run.group().isPresent())
          .map(Box.Run::text)
          .collect(Collectors.joining("\n"));
    }
    StringBuilder inside = new StringBuilder();
    Boxes.forEachChild(box, child -> inside.append(of(child)));
    return inside.toString();
  }
}
