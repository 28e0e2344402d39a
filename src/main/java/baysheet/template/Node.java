package baysheet.template;

import baysheet.template.Box.Where;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A piece of a filled layout before it is known what boxes it makes. */
sealed interface Node {
  /** An element, with the place in the layout where it was written. */
  record Element(String name, Map<String, String> attributes, List<Node> content, Where at)
      implements Node {
    public Element {
      Objects.requireNonNull(name);
      attributes =
          attributes.isEmpty()
              ? Map.of()
              : Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
      content = List.copyOf(content);
      Objects.requireNonNull(at);
    }
  }

  /** Text between tags, as it came. */
  record Words(String text) implements Node {
    public Words {
      Objects.requireNonNull(text);
    }

    /** Whether it is only there to indent the markup; a non-breaking space is not. */
    boolean isIndent() {
      for (int i = 0; i < text.length(); i++) {
        if (!isXmlSpace(text.charAt(i))) {
          return false;
        }
      }
      return true;
    }

    /** The white space of XML 1.0, production 3. */
    static boolean isXmlSpace(int c) {
      return c == ' ' || c == '\t' || c == '\n' || c == '\r';
    }
  }
}
