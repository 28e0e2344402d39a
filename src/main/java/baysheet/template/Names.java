package baysheet.template;

import baysheet.box.Form;
import baysheet.box.PenSize;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Element;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The styles and pen boxes that a layout declares in its head, by name.
 *
 * @param body the style of text that names none
 */
record Names(Map<String, Style> styles, Map<String, PenSize> pens, Style body) {
  static final Map<String, TextStyle.Align> ALIGNS =
      Map.of(
          "left", TextStyle.Align.LEFT,
          "centre", TextStyle.Align.CENTRE,
          "right", TextStyle.Align.RIGHT,
          "decimal", TextStyle.Align.DECIMAL);
  static final Map<String, Text.Role> ROLES =
      Map.of(
          "title", Text.Role.TITLE,
          "heading", Text.Role.HEADING,
          "subheading", Text.Role.SUBHEADING,
          "paragraph", Text.Role.PARAGRAPH,
          "decoration", Text.Role.DECORATION);

  /** Whether a style goes by the size of text read in the hand. */
  private static final Map<String, Boolean> OF = Map.of("body", false, "hand", true);

  /** No text is larger than this, whatever the body size. */
  private static final long LARGEST = 72_000;

  /** A layout that sets no floor still cannot print what nobody can read. */
  private static final long SMALLEST = Form.LEAST_TEXT;

  Names {
    styles = Map.copyOf(styles);
    pens = Map.copyOf(pens);
  }

  /** How a paragraph is set when it says nothing else. */
  record Style(TextStyle text, boolean bold, Text.Role role) {
    Style aligned(TextStyle.Align align) {
      return new Style(
          new TextStyle(text.hand(), text.scale(), text.floor(), text.ceiling(), align),
          bold,
          role);
    }
  }

  /** Reads the declarations among a form's children. */
  static Names read(List<Element> children, Faults faults) {
    Map<String, Style> styles = new LinkedHashMap<>();
    Map<String, PenSize> pens = new LinkedHashMap<>();
    for (Element child : children) {
      if (child.name().equals("style")) {
        put(styles, child, style(child, faults), faults);
      } else if (child.name().equals("pen")) {
        put(pens, child, pen(child, faults), faults);
      }
    }
    TextStyle plain = new TextStyle(false, 1000, SMALLEST, LARGEST, TextStyle.Align.LEFT);
    return new Names(
        styles, pens, styles.getOrDefault("body", new Style(plain, false, Text.Role.PARAGRAPH)));
  }

  private static <T> void put(Map<String, T> names, Element element, T value, Faults faults) {
    String name = element.attribute("name").orElse("?");
    if (names.put(name, value) != null) {
      faults.twice(element.at(), element.name(), name);
    }
  }

  private static Style style(Element element, Faults faults) {
    Attributes in =
        Attributes.of(
            element, faults, "name", "of", "scale", "floor", "ceiling", "bold", "align", "role");
    in.required("name");
    long floor = in.points("floor", SMALLEST);
    long ceiling = in.points("ceiling", LARGEST);
    if (floor < SMALLEST || ceiling < floor) {
      faults.badValue(
          element.at(), "style", "floor, ceiling", "out of order", "7pt ≤ floor ≤ ceiling");
      ceiling = LARGEST;
      floor = SMALLEST;
    }
    TextStyle text =
        new TextStyle(
            in.choice("of", OF, false),
            in.scale("scale", 1000),
            floor,
            ceiling,
            in.choice("align", ALIGNS, TextStyle.Align.LEFT));
    return new Style(text, in.yes("bold"), in.choice("role", ROLES, Text.Role.PARAGRAPH));
  }

  private static PenSize pen(Element element, Faults faults) {
    Attributes in =
        Attributes.of(element, faults, "name", "width", "height", "least-width", "least-height");
    in.required("name");
    long width = in.requiredPoints("width");
    long height = in.requiredPoints("height");
    long leastWidth = in.points("least-width", width);
    long leastHeight = in.points("least-height", height);
    if (leastWidth < 1 || leastHeight < 1 || leastWidth > width || leastHeight > height) {
      faults.badValue(
          element.at(), "pen", "least-width, least-height", "out of order", "0 < least ≤ wanted");
      return new PenSize(1, 1, 1, 1);
    }
    return new PenSize(width, height, leastWidth, leastHeight);
  }

  /** The named style; the body's, with a problem, where there is none of that name. */
  Style style(Element at, String name, Faults faults) {
    if (!styles.containsKey(name)) {
      faults.undeclared(at.at(), "style", name, styles.keySet().stream().sorted().toList());
    }
    return styles.getOrDefault(name, body);
  }

  /** The named pen box; a speck, with a problem, where there is none of that name. */
  PenSize pen(Element at, String name, Faults faults) {
    if (!pens.containsKey(name)) {
      faults.undeclared(at.at(), "pen", name, pens.keySet().stream().sorted().toList());
    }
    return pens.getOrDefault(name, new PenSize(1, 1, 1, 1));
  }
}
