package baysheet.template;

import baysheet.template.Box.Where;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.Node.Element;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads a filled layout as a tree of elements. */
final class ElementReader {
  /** The shipped layout needs 14; a deeper tree is a macro gone wrong. */
  private static final int DEEPEST = 60;

  private static final int MOST_DIGITS = 7;

  private final Faults faults;
  private final Deque<Open> open = new ArrayDeque<>();
  private Where last = new Where(1, 1);
  private Optional<Element> root = Optional.empty();

  private ElementReader(Faults faults) {
    this.faults = faults;
  }

  /** The root element; empty, with the reason in {@code faults}, where the text is not XML. */
  static Optional<Element> read(String filled, Faults faults) {
    return new ElementReader(faults).run(filled);
  }

  private Optional<Element> run(String filled) {
    try {
      XMLStreamReader in = factory().createXMLStreamReader(new StringReader(filled));
      while (in.hasNext() && open.size() <= DEEPEST) {
        take(in.next(), in);
      }
    } catch (XMLStreamException e) {
      faults.notWellFormed(last, firstSentence(e));
      return Optional.empty();
    }
    if (!open.isEmpty()) {
      faults.tooDeep(last, DEEPEST);
      return Optional.empty();
    }
    return root;
  }

  /** The JDK's own reader, whatever else is on the class path, cut off from files and networks. */
  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  private void take(int event, XMLStreamReader in) {
    switch (event) {
      case XMLStreamConstants.START_ELEMENT -> start(in);
      case XMLStreamConstants.END_ELEMENT -> end();
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> words(in.getText());
      default -> {
        // Comments and processing instructions say nothing to a page.
      }
    }
  }

  private void start(XMLStreamReader in) {
    Map<String, String> attributes = new LinkedHashMap<>();
    for (int i = 0; i < in.getAttributeCount(); i++) {
      String space = in.getAttributeNamespace(i);
      // Attributes of another namespace are for editors: where the schema is.
      if (space == null || space.isEmpty()) {
        attributes.put(in.getAttributeLocalName(i), in.getAttributeValue(i));
      }
    }
    last = where(attributes.remove(MarkedText.MARK));
    open.push(new Open(in.getLocalName(), attributes, new ArrayList<>(), last));
  }

  /** An element that came out of a string has no mark: it stands where the one before it stood. */
  private Where where(String mark) {
    int colon = mark == null ? -1 : mark.indexOf(':');
    if (colon < 0 || !isNumber(mark, 0, colon) || !isNumber(mark, colon + 1, mark.length())) {
      return last;
    }
    return new Where(
        Integer.parseInt(mark, 0, colon, 10), Integer.parseInt(mark, colon + 1, mark.length(), 10));
  }

  /** From 1, and small enough for any layout. */
  private static boolean isNumber(String text, int from, int to) {
    boolean number = from < to && to - from <= MOST_DIGITS && text.charAt(from) != '0';
    for (int i = from; number && i < to; i++) {
      number = text.charAt(i) >= '0' && text.charAt(i) <= '9';
    }
    return number;
  }

  private void end() {
    Element closed = open.pop().close();
    if (open.isEmpty()) {
      root = Optional.of(closed);
    } else {
      open.peek().content.add(closed);
    }
  }

  private void words(String text) {
    if (!open.isEmpty()) {
      open.peek().content.add(new Node.Words(text));
    }
  }

  /** The reader's message without its position, which counts lines of the filled text. */
  private static String firstSentence(XMLStreamException e) {
    String message = String.valueOf(e.getMessage());
    int start = message.indexOf("Message: ");
    String text = start < 0 ? message : message.substring(start + "Message: ".length());
    return text.lines().findFirst().orElse("").strip();
  }

  private record Open(String name, Map<String, String> attributes, List<Node> content, Where at) {
    Element close() {
      return new Element(name, attributes, content, at);
    }
  }
}
