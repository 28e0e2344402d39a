package baysheet.template;

import baysheet.report.Span;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Attribute;
import baysheet.template.MarkupNode.Element;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads a filled layout, which is XML without a document type, as a tree of elements. */
final class ElementReader {
  /** The shipped layout needs 14; a deeper tree is a macro gone wrong. */
  private static final int DEEPEST = 60;

  private static final int MOST_LINES = 1_000_000;

  private final BoundedText filled;
  private final Faults faults;
  private final Deque<Open> open = new ArrayDeque<>();
  private Span last;
  private Optional<Element> root = Optional.empty();

  private ElementReader(BoundedText filled, Faults faults) {
    this.filled = filled;
    this.faults = faults;
    this.last = faults.start();
  }

  /** The root element; empty, with the reason in {@code faults}, where the text is not XML. */
  static Optional<Element> read(BoundedText filled, Faults faults) {
    return new ElementReader(filled, faults).run();
  }

  private Optional<Element> run() {
    try {
      XMLStreamReader in = hardened().createXMLStreamReader(filled.reader());
      while (in.hasNext()) {
        int event = in.next();
        if (event == XMLStreamConstants.DTD) {
          faults.documentType(last);
          return Optional.empty();
        }
        take(event, in);
        if (open.size() > DEEPEST) {
          faults.tooDeep(last, DEEPEST);
          return Optional.empty();
        }
      }
      return root;
    } catch (XMLStreamException e) {
      // The message of the JDK depends on the language of the machine.
      faults.notWellFormed(last, Optional.ofNullable(open.peek()).map(Open::name), near(e));
      return Optional.empty();
    }
  }

  /** A layout is data from outside: it must not read files, call hosts or expand entities. */
  private static XMLInputFactory hardened() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  private void take(int event, XMLStreamReader in) {
    switch (event) {
      case XMLStreamConstants.START_ELEMENT -> {
        List<Attribute> attributes = attributes(in);
        open.push(new Open(name(in), attributes, new ArrayList<>(), last));
      }
      case XMLStreamConstants.END_ELEMENT -> close();
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
          open.element().content().add(MarkupNode.Words.of(in.getText()));
      default -> {
        // Comments and processing instructions say nothing to a page.
      }
    }
  }

  private static String name(XMLStreamReader in) {
    String prefix = in.getPrefix();
    return prefix == null || prefix.isEmpty()
        ? in.getLocalName()
        : prefix + ":" + in.getLocalName();
  }

  /**
   * Those that say something to a page: not the mark, which is where the element stands, and not
   * those with a prefix, by which editors find the schema.
   */
  private List<Attribute> attributes(XMLStreamReader in) {
    List<Attribute> attributes = new ArrayList<>(in.getAttributeCount());
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String name = in.getAttributeLocalName(i);
      if (name.equals(MarkedText.MARK)) {
        last = where(in.getAttributeValue(i));
      } else if (in.getAttributeNamespace(i) == null) {
        attributes.add(new Attribute(name, in.getAttributeValue(i)));
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

  private void close() {
    Element closed = open.pop().close();
    if (open.isEmpty()) {
      root = Optional.of(closed);
    } else {
      open.peek().content.add(closed);
    }
  }

  /** The filled text up to where reading stopped, and to the end of a tag that is cut there. */
  private String near(XMLStreamException e) {
    String filled = this.filled.toString();
    int stop = Optional.ofNullable(e.getLocation()).map(Location::getCharacterOffset).orElse(0);
    int end = Math.min(Math.max(0, stop), filled.length());
    String before = MarkedText.unmarked(filled.substring(0, end));
    String seen = before.substring(Math.max(0, before.length() - 30));
    if (before.lastIndexOf('<') > before.lastIndexOf('>')) {
      String after = filled.substring(end, Math.min(filled.length(), end + 15));
      seen += after.substring(0, after.indexOf('>') + 1);
    }
    return seen.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
  }

  private record Open(String name, List<Attribute> attributes, List<MarkupNode> content, Span at) {
    Element close() {
      return new Element(name, attributes, content, at);
    }
  }
}
