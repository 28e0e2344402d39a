package baysheet.template;

import baysheet.box.Drawing;
import baysheet.box.Length;
import baysheet.box.Mark;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Element;
import java.util.List;
import java.util.Optional;

/** Reads {@code <drawing>}; coordinates are thousandths of its width. */
final class DrawingReader {
  /** A drawing four times as high as wide is still a drawing. */
  private static final int FARTHEST = 4000;

  private DrawingReader() {}

  static Drawing read(Element element, Faults faults) {
    Attributes in = Attributes.of(element, faults, "width", "height", "says");
    Length none = new Length(1, false);
    List<Mark> marks =
        BoxMarkupReader.children(element, faults).stream()
            .flatMap(child -> mark(child, faults).stream())
            .toList();
    Length width = in.length("width", none);
    if (in.text("width").isEmpty()) {
      faults.missing(element.at(), "drawing", "width");
    }
    return new Drawing(width, in.length("height", width), marks, in.required("says"), element.at());
  }

  private static Optional<Mark> mark(Element element, Faults faults) {
    return switch (element.name()) {
      case "line" -> Optional.of(line(element, faults));
      case "circle" -> Optional.of(circle(element, faults));
      case "triangle" -> Optional.of(triangle(element, faults));
      case "label" -> Optional.of(label(element, faults));
      default -> {
        faults.unknownElement(
            element.at(),
            element.name(),
            "drawing",
            List.of("line", "circle", "triangle", "label"));
        yield Optional.empty();
      }
    };
  }

  private static Mark line(Element element, Faults faults) {
    Attributes in = Attributes.of(element, faults, "x1", "y1", "x2", "y2", "heavy");
    return new Mark.Line(at(in, "x1"), at(in, "y1"), at(in, "x2"), at(in, "y2"), in.yes("heavy"));
  }

  private static Mark circle(Element element, Faults faults) {
    Attributes in = Attributes.of(element, faults, "x", "y", "radius", "heavy");
    return new Mark.Circle(
        at(in, "x"), at(in, "y"), in.requiredWhole("radius", 1, FARTHEST), in.yes("heavy"));
  }

  private static Mark triangle(Element element, Faults faults) {
    Attributes in = Attributes.of(element, faults, "x1", "y1", "x2", "y2", "x3", "y3");
    return new Mark.Triangle(
        at(in, "x1"), at(in, "y1"), at(in, "x2"), at(in, "y2"), at(in, "x3"), at(in, "y3"));
  }

  private static Mark label(Element element, Faults faults) {
    Attributes in = Attributes.of(element, faults, "x", "y", "height", "text", "bold");
    return new Mark.Label(
        at(in, "x"),
        at(in, "y"),
        in.requiredWhole("height", 1, FARTHEST),
        in.required("text"),
        in.yes("bold"));
  }

  private static int at(Attributes in, String name) {
    return in.requiredWhole(name, 0, FARTHEST);
  }
}
