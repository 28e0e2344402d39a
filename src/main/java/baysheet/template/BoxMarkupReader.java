package baysheet.template;

import baysheet.box.Box;
import baysheet.box.Column;
import baysheet.box.Columns;
import baysheet.box.Droppable;
import baysheet.box.Field;
import baysheet.box.Fill;
import baysheet.box.Frame;
import baysheet.box.Items;
import baysheet.box.KeepWithNext;
import baysheet.box.Length;
import baysheet.box.Row;
import baysheet.box.Rule;
import baysheet.box.Space;
import baysheet.box.Vertical;
import baysheet.box.Width;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Element;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the elements of the box markup as boxes. */
final class BoxMarkupReader {
  static final Map<String, Vertical> VERTICALS =
      Map.of(
          "top",
          Vertical.TOP,
          "middle",
          Vertical.MIDDLE,
          "bottom",
          Vertical.BOTTOM,
          "baseline",
          Vertical.BASELINE);
  private static final List<String> BOXES =
      List.of(
          "text",
          "row",
          "column",
          "columns",
          "held",
          "table",
          "items",
          "rule",
          "frame",
          "field",
          "drawing",
          "code",
          "square",
          "droppable",
          "space",
          "fill");
  private static final Width REST = new Width.Share(1);

  /** Half a point: the thinnest rule that survives a scan at 200 dots an inch is 0.35 pt. */
  private static final Length THIN = new Length(500, false);

  private final Names names;
  private final Faults faults;
  private final Set<String> fields = new HashSet<>();

  BoxMarkupReader(Names names, Faults faults) {
    this.names = names;
    this.faults = faults;
  }

  /** The elements in an element; words between them are a problem. */
  static List<Element> children(Element element, Faults faults) {
    List<Element> children = new ArrayList<>(element.content().size());
    for (MarkupNode node : element.content()) {
      if (node instanceof Element child) {
        children.add(child);
      } else if (node instanceof MarkupNode.Words words && !words.isIndent()) {
        faults.strayText(element.at(), element.name(), words.text().strip());
      }
    }
    return children;
  }

  /** What stands in an element as one box: several stand under one another, none is no height. */
  Box inside(Element element) {
    return together(element, children(element, faults));
  }

  Box together(Element element, List<Element> children) {
    List<Box> boxes = boxes(element, children);
    return switch (boxes.size()) {
      case 0 -> new Space(Length.ZERO, element.at());
      case 1 -> boxes.get(0);
      default -> new Column(boxes, Length.ZERO, false, element.at());
    };
  }

  private List<Box> boxes(Element parent, List<Element> children) {
    List<Box> boxes = new ArrayList<>(children.size());
    for (Element child : children) {
      box(child, parent).ifPresent(boxes::add);
    }
    return boxes;
  }

  private Optional<Box> box(Element element, Element parent) {
    Box box =
        switch (element.name()) {
          case "text" -> TextReader.read(element, names, faults);
          case "row" -> row(element);
          case "column" -> column(element);
          case "columns" -> columns(element);
          case "held" -> held(element);
          case "table" -> new TableReader(this, faults).read(element);
          case "items" -> items(element);
          case "rule" -> rule(element);
          case "frame" -> frame(element);
          case "field" -> field(element);
          case "drawing" -> DrawingReader.read(element, faults);
          case "code", "square" -> StampReader.read(element, faults);
          case "droppable" -> droppable(element);
          case "space" -> space(element);
          case "fill" -> fill(element);
          default -> null;
        };
    if (box == null) {
      faults.unknownElement(element.at(), element.name(), parent.name(), BOXES);
    }
    return Optional.ofNullable(box);
  }

  private Box row(Element element) {
    Attributes in = Attributes.of(element, faults, "gap");
    List<Row.Cell> cells = new ArrayList<>();
    for (Element child : children(element, faults)) {
      if (child.name().equals("cell")) {
        cells.add(cell(child));
      } else {
        faults.unknownElement(child.at(), child.name(), "row", List.of("cell"));
      }
    }
    return new Row(cells, in.length("gap", Length.ZERO), element.at());
  }

  private Row.Cell cell(Element element) {
    Attributes in = Attributes.of(element, faults, "width", "vertical");
    return new Row.Cell(
        in.width("width", REST), inside(element), in.choice("vertical", VERTICALS, Vertical.TOP));
  }

  private Box column(Element element) {
    Attributes in = Attributes.of(element, faults, "gap", "keep");
    return new Column(
        boxes(element, children(element, faults)),
        in.length("gap", Length.ZERO),
        in.yes("keep"),
        element.at());
  }

  private Box columns(Element element) {
    Attributes in = Attributes.of(element, faults, "count", "gap", "between");
    return new Columns(
        in.requiredWholes("count", 1, 8),
        boxes(element, children(element, faults)),
        in.length("gap", Length.ZERO),
        in.length("between", Length.ZERO),
        element.at());
  }

  private Box held(Element element) {
    Attributes.of(element, faults);
    return new KeepWithNext(inside(element), element.at());
  }

  private Box items(Element element) {
    Attributes in = Attributes.of(element, faults, "label", "gap", "between", "under");
    List<Items.Entry> entries = new ArrayList<>();
    for (Element child : children(element, faults)) {
      if (child.name().equals("entry")) {
        entries.add(entry(child));
      } else {
        faults.unknownElement(child.at(), child.name(), "items", List.of("entry"));
      }
    }
    return new Items(
        entries,
        in.width("label", new Width.Natural()),
        in.length("gap", Length.ZERO),
        in.length("between", Length.ZERO),
        in.yes("under"),
        element.at());
  }

  /** The first box of an entry is its label, the rest its body. */
  private Items.Entry entry(Element element) {
    Attributes.of(element, faults);
    List<Element> children = children(element, faults);
    if (children.size() < 2) {
      faults.count(element.at(), "entry", "boxes", children.size(), "a label and a body");
      return new Items.Entry(inside(element), new Space(Length.ZERO, element.at()));
    }
    return new Items.Entry(
        together(element, children.subList(0, 1)),
        together(element, children.subList(1, children.size())));
  }

  private Box rule(Element element) {
    Attributes in = Attributes.of(element, faults, "thickness");
    return new Rule(in.length("thickness", THIN), element.at());
  }

  private Box frame(Element element) {
    Attributes in = Attributes.of(element, faults, "border", "padding");
    return new Frame(
        inside(element),
        in.length("border", THIN),
        in.length("padding", Length.ZERO),
        element.at());
  }

  private Box field(Element element) {
    Attributes in =
        Attributes.of(element, faults, "name", "kind", "pen", "says", "required", "choice");
    String name = in.required("name");
    String kind = in.required("kind");
    if (!fields.add(name)) {
      faults.twice(element.at(), "field", name);
    }
    return new Field(
        name,
        kind,
        names.pen(element, in.text("pen").orElse(kind), faults),
        in.choice("required", Attributes.YES_OR_NO, true),
        in.text("choice").orElse(""),
        in.required("says"),
        element.at());
  }

  /** What stands in {@code <smaller>}, if anything, takes the place of the rest. */
  private Box droppable(Element element) {
    Attributes in = Attributes.of(element, faults, "group");
    List<Element> all = children(element, faults);
    List<Element> smaller = all.stream().filter(BoxMarkupReader::isSmaller).toList();
    List<Element> full = all.stream().filter(child -> !isSmaller(child)).toList();
    smaller.forEach(child -> Attributes.of(child, faults));
    if (smaller.size() > 1) {
      faults.count(element.at(), "droppable", "<smaller>", smaller.size(), "at most one");
    }
    return new Droppable(
        in.required("group"),
        together(element, full),
        smaller.stream().findFirst().map(this::inside),
        element.at());
  }

  private static boolean isSmaller(Element element) {
    return element.name().equals("smaller");
  }

  private Box space(Element element) {
    Attributes in = Attributes.of(element, faults, "height");
    if (in.text("height").isEmpty()) {
      faults.missing(element.at(), "space", "height");
    }
    return new Space(in.length("height", Length.ZERO), element.at());
  }

  private Box fill(Element element) {
    Attributes.of(element, faults);
    return new Fill(element.at());
  }
}
