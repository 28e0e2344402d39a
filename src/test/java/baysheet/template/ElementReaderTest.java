package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.template.Node.Element;
import java.io.StringReader;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Our reader of the box markup takes what the JDK's reader of XML takes, and as the same tree. It
 * goes further in one thing only: {@code ]]>} may stand among words.
 */
class ElementReaderTest {
  @Property(tries = 20_000)
  void piecesOfMarkupReadAsTheJdkReadsThem(@ForAll("pieces") String markup) {
    assertEquals(byTheJdk(markup), shape(markup), markup);
  }

  /** With tags that close what is open, so that most of what comes out holds together. */
  @Property(tries = 5000)
  void treesReadAsTheJdkReadsThem(@ForAll("trees") String markup) {
    assertEquals(byTheJdk(markup), shape(markup), markup);
  }

  @Provide
  Arbitrary<String> pieces() {
    return Arbitraries.of(
            "<a>",
            "</a>",
            "<a ",
            "<b/>",
            "</b >",
            "<b>",
            ">",
            "/>",
            " x='1'",
            " x = \"2\"",
            " y='",
            "'",
            "\"",
            "=",
            " ",
            "\n",
            "\t",
            "words",
            "Ω",
            "\ud83d\ude97",
            "&lt;",
            "&amp;",
            "&#65;",
            "&#x3A9;",
            "&#10;",
            "&#0;",
            "&#x110000;",
            "&;",
            "&nobody;",
            "&",
            ";",
            "<!--",
            "-->",
            "--",
            "<![CDATA[c<&]]>",
            "<",
            "<!DOCTYPE a>",
            "\u0001",
            "\uffff",
            "1",
            "-",
            "é")
        .list()
        .ofMaxSize(12)
        .map(pieces -> "<a>" + String.join("", pieces) + "</a>");
  }

  @Provide
  Arbitrary<String> trees() {
    Arbitrary<String> leaf =
        Arbitraries.of(
            "word", " ", "\n  ", "&lt;&amp;&quot;", "<!-- - -->", "<![CDATA[<&]]>", "<b/>", "°");
    return Arbitraries.lazyOf(
            () -> leaf,
            () -> leaf,
            () -> trees().list().ofMaxSize(4).map(inner -> String.join("", inner)))
        .map(inner -> "<el x='&apos;\n1' y=\"'2'\" >" + inner + "</el>");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<a><b></a> | </a> closes <b>",
        "<a/></a> | </a> closes nothing",
        "<a><b> | <b> is never closed",
        "<a/><c/> | <c> stands after the end of <a>",
        "<a/>words | words stand outside all elements",
        "<a x='1' x='2'/> | the attribute \"x\" is given twice",
        "<a x=1/> | a value is not in quotes",
        "<a x='1/><b/> | \"'\" is missing",
        "<a><![CDATA[\u0001]]></a> | U+1 is no character of a text",
        "<a>&nobody;</a> | \"&nobody;\" is no character",
        "<a>this & that</a> | \"&\" stands without \";\"",
        "<!-- nothing --> | there is no element",
        "<a><![CDATA[\u0001]]></a> | U+1 is no character of a text",
        "<!DOCTYPE a><a/> | a name is missing",
      })
  void whatDoesNotHoldTogetherIsSaid(String markup, String why) {
    Problem problem = problem(markup).orElseThrow();
    assertTrue(problem.what().endsWith(": " + why), problem.what());
  }

  @Test
  void whatIsThereForEditorsOnlyIsPassedOver() {
    String markup =
        "<?xml version='1.0'?><a xmlns:xsi='http://www.w3.org/2001/XMLSchema-instance'"
            + " xsi:noNamespaceSchemaLocation='box-markup.xsd' x='1'/>";
    assertEquals(Optional.of("<a x=1></a>"), shape(markup));
  }

  @Test
  void elementKnowsWhereItWasWritten() {
    Element root = read("<a at='3:7'><b at='12:1'/></a>", new Problems()).orElseThrow();
    assertEquals(at(3, 7), place(root.at()));
    assertEquals(at(12, 1), place(((Element) root.content().get(0)).at()));
  }

  @Test
  void markThatIsNoPlaceIsThatOfTheElementBefore() {
    Element root = read("<a at='3:7'><b at='0:1'/><c at='x'/></a>", new Problems()).orElseThrow();
    for (Node inner : root.content()) {
      assertEquals(at(3, 7), place(((Element) inner).at()));
    }
  }

  private static Position at(int line, int column) {
    return new Position(line, column);
  }

  private static Position place(Span span) {
    return new Position(span.line(), span.column());
  }

  private static Optional<String> shape(String markup) {
    return read(markup, new Problems()).map(root -> asOneSpace(shape(root)));
  }

  private static String shape(Node node) {
    if (node instanceof Element element) {
      Map<String, String> attributes = new TreeMap<>();
      element.attributes().forEach(each -> attributes.put(each.name(), each.value()));
      StringBuilder inside = new StringBuilder();
      element.content().forEach(inner -> inside.append(shape(inner)));
      return tag(element.name(), attributes) + inside + "</" + element.name() + ">";
    }
    return ((Node.Words) node).text();
  }

  private static String tag(String name, Map<String, String> attributes) {
    StringBuilder tag = new StringBuilder("<" + name);
    attributes.forEach((key, value) -> tag.append(' ').append(key).append('=').append(value));
    return tag.append('>').toString();
  }

  /** How white space is written says nothing to a page. */
  private static String asOneSpace(String shape) {
    return shape.replaceAll("[ \t\n\r]+", " ");
  }

  private static Optional<Problem> problem(String markup) {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), read(markup, problems));
    return problems.all().stream().findFirst();
  }

  private static Optional<Element> read(String markup, Problems problems) {
    return ElementReader.read(
        Markup.of(markup), new LayoutSource(new Source("x", markup)).collect(problems));
  }

  private static Optional<String> byTheJdk(String markup) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    try {
      XMLStreamReader in = factory.createXMLStreamReader(new StringReader(markup));
      StringBuilder shape = new StringBuilder();
      while (in.hasNext()) {
        shape.append(shape(in.next(), in));
      }
      return Optional.of(asOneSpace(shape.toString()));
    } catch (XMLStreamException e) {
      return Optional.empty();
    }
  }

  private static String shape(int event, XMLStreamReader in) {
    return switch (event) {
      case XMLStreamConstants.START_ELEMENT -> tag(in.getLocalName(), attributes(in));
      case XMLStreamConstants.END_ELEMENT -> "</" + in.getLocalName() + ">";
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> in.getText();
      default -> "";
    };
  }

  private static Map<String, String> attributes(XMLStreamReader in) {
    Map<String, String> attributes = new TreeMap<>();
    for (int i = 0; i < in.getAttributeCount(); i++) {
      attributes.put(in.getAttributeLocalName(i), in.getAttributeValue(i));
    }
    return attributes;
  }
}
