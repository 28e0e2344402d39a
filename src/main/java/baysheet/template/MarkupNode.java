package baysheet.template;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;

/** A piece of a filled layout before it is known what boxes it makes. */
sealed interface MarkupNode {
  /**
   * An element, with the place in the layout where it was written.
   *
   * @param attributes as they came, no two of one name
   */
  record Element(String name, List<Attribute> attributes, List<MarkupNode> content, Span at)
      implements MarkupNode {
    public Element {
      attributes = List.copyOf(attributes);
      content = List.copyOf(content);
    }

    /** The value of an attribute, if it is given. */
    Optional<String> attribute(String wanted) {
      for (Attribute attribute : attributes) {
        if (attribute.name.equals(wanted)) {
          return Optional.of(attribute.value);
        }
      }
      return Optional.empty();
    }
  }

  /** What an element says of itself. */
  record Attribute(String name, String value) {}

  /** Text between tags, in which any white space is one space: more says nothing to a page. */
  record Words(String text) implements MarkupNode {
    /** Words with white space as somebody wrote it; a non-breaking space is none. */
    static Words of(String written) {
      StringBuilder out = new StringBuilder(written.length());
      boolean after = false;
      for (int i = 0; i < written.length(); i++) {
        boolean space = isXmlSpace(written.charAt(i));
        if (!space || !after) {
          out.append(space ? ' ' : written.charAt(i));
        }
        after = space;
      }
      return new Words(out.toString());
    }

    /** Whether it is only there to indent the markup; a non-breaking space is not. */
    boolean isIndent() {
      return text.isEmpty() || text.equals(" ");
    }

    /** The white space of XML 1.0, production 3. */
    private static boolean isXmlSpace(char c) {
      return c == ' ' || c == '\t' || c == '\n' || c == '\r';
    }
  }
}
