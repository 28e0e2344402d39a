package baysheet.template;

import baysheet.report.Span;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.Markup.Broken;
import baysheet.template.Node.Attribute;
import baysheet.template.Node.Element;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Reads a filled layout as a tree of elements. */
final class ElementReader {
  /** The shipped layout needs 14; a deeper tree is a macro gone wrong. */
  private static final int DEEPEST = 60;

  private static final int MOST_LINES = 1_000_000;

  private final Markup in;
  private final Faults faults;
  private final Deque<Open> open = new ArrayDeque<>();
  private Span last;
  private Optional<Element> root = Optional.empty();

  private ElementReader(Markup filled, Faults faults) {
    this.in = filled;
    this.faults = faults;
    this.last = faults.start();
  }

  /** The root element; empty, with the reason in {@code faults}, where the text is not XML. */
  static Optional<Element> read(Markup filled, Faults faults) {
    return new ElementReader(filled, faults).run();
  }

  private Optional<Element> run() {
    try {
      while (!in.ended() && open.size() <= DEEPEST) {
        piece();
      }
      if (open.size() > DEEPEST) {
        faults.tooDeep(last, DEEPEST);
        return Optional.empty();
      }
      checkEnd();
      return root;
    } catch (Broken e) {
      faults.notWellFormed(last, e.getMessage());
      return Optional.empty();
    }
  }

  private void piece() throws Broken {
    if (!in.ahead('<')) {
      words(in.words());
    } else if (in.skip("</")) {
      endTag();
    } else if (!aside()) {
      startTag();
    }
  }

  /**
   * Whether it was none of the tags; comments and processing instructions say nothing to a page.
   */
  private boolean aside() throws Broken {
    if (in.skip("<!--")) {
      in.through("--");
      in.expect('>');
    } else if (in.skip("<![CDATA[")) {
      words(Node.Words.of(in.through("]]>")));
    } else if (in.skip("<?")) {
      in.through("?>");
    } else {
      return false;
    }
    return true;
  }

  private void words(Node.Words words) throws Broken {
    if (!open.isEmpty()) {
      open.peek().content.add(words);
    } else if (!words.isIndent()) {
      throw new Broken("words stand outside all elements");
    }
  }

  private void endTag() throws Broken {
    String name = in.name();
    if (open.isEmpty() || !open.peek().name.equals(name)) {
      String closed = open.isEmpty() ? "nothing" : "<" + open.peek().name + ">";
      throw new Broken("</" + name + "> closes " + closed);
    }
    in.skipSpaces();
    in.expect('>');
    close();
  }

  private void startTag() throws Broken {
    in.expect('<');
    String name = in.name();
    if (root.isPresent()) {
      throw new Broken("<" + name + "> stands after the end of <" + root.get().name() + ">");
    }
    List<Attribute> attributes = attributes();
    open.push(new Open(name, attributes, new ArrayList<>(), last));
    if (in.skip("/>")) {
      close();
    } else {
      in.expect('>');
    }
  }

  /** Those that say something to a page; the mark among them is where the element stands. */
  private List<Attribute> attributes() throws Broken {
    List<Attribute> attributes = new ArrayList<>(4);
    while (in.skipSpaces() && !in.ahead('>') && !in.ahead('/')) {
      String name = in.name();
      in.skipSpaces();
      in.expect('=');
      in.skipSpaces();
      String value = in.value();
      if (name.equals(MarkedText.MARK)) {
        last = where(value);
      } else if (!isForEditors(name)) {
        add(new Attribute(name, value), attributes);
      }
    }
    return attributes;
  }

  /** An element that came out of a string has no mark: it stands where the one before it stood. */
  private Span where(String mark) {
    int colon = mark.indexOf(':');
    int line = number(mark, 0, colon);
    int column = number(mark, colon + 1, mark.length());
    return line > 0 && column > 0 ? faults.span(new Position(line, column)) : last;
  }

  /** A number small enough for any layout; 0 where there is none. */
  private static int number(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9 || number > MOST_LINES) {
        return 0;
      }
      number = 10 * number + digit;
    }
    return number;
  }

  /** Names with a prefix, and the prefixes themselves: where the schema is. */
  private static boolean isForEditors(String name) {
    return name.indexOf(':') >= 0 || name.equals("xmlns");
  }

  private static void add(Attribute attribute, List<Attribute> attributes) throws Broken {
    for (Attribute other : attributes) {
      if (other.name().equals(attribute.name())) {
        throw new Broken("the attribute \"" + attribute.name() + "\" is given twice");
      }
    }
    attributes.add(attribute);
  }

  private void close() {
    Element closed = open.pop().close();
    if (open.isEmpty()) {
      root = Optional.of(closed);
    } else {
      open.peek().content.add(closed);
    }
  }

  private void checkEnd() throws Broken {
    if (!open.isEmpty()) {
      throw new Broken("<" + open.peek().name + "> is never closed");
    }
    if (root.isEmpty()) {
      throw new Broken("there is no element");
    }
  }

  private record Open(String name, List<Attribute> attributes, List<Node> content, Span at) {
    Element close() {
      return new Element(name, attributes, content, at);
    }
  }
}
