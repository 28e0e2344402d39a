package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.template.MarkupNode.Attribute;
import baysheet.template.MarkupNode.Element;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ElementReaderTest {
  /** Where it says that the text breaks: the open element and the text around the fault. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<a><b></a> | inside <b>: \"<a><b></a>\"",
        "<a/></a> | outside all elements: \"<a/></a>\"",
        "<a><b> | inside <b>: \"<a><b>\"",
        "<a/><c/> | outside all elements: \"<a/><c/>\"",
        "<a/>words | outside all elements: \"<a/>\"",
        "<z><a x='1' x='2'/></z> | inside <z>: \"<z><a x='1' x='2'/>\"",
        "<z><a at='1:2' at='1:2'/></z> | inside <z>: \"<z><a at='1:2' at='1:2'/>\"",
        "<z><a x=1/></z> | inside <z>: \"<z><a x=1/>\"",
        "<z><a x='1/><b/></z> | inside <z>: \"<z><a x='1/>\"",
        "<a><![CDATA[\u0001]]></a> | inside <a>: \"<a><![CDATA[ ]]>\"",
        "<a>\u0001</a> | inside <a>: \"<a>\"",
        "<a>&nobody;</a> | inside <a>: \"<a>&nobody;\"",
        "<a>this & that</a> | inside <a>: \"<a>this &\"",
        "<a>this ]]> that</a> | inside <a>: \"<a>this ]]>\"",
        "<z><x:a/></z> | inside <z>: \"<z><x:a/>\"",
        "<!-- nothing --> | outside all elements: \"<!-- nothing -->\"",
        "'' | outside all elements",
      })
  void brokenMarkupIsShownWhereItBreaks(String markup, String where) {
    Problem problem = problem(markup);
    assertEquals(
        "the markup is not well-formed at or after this element, " + where, problem.what());
  }

  /** The JDK's own words come in the machine's language. */
  @Test
  void problemIsTheSameInEveryLanguage() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ENGLISH);
      Problem english = problem("<a><b></a>");
      Locale.setDefault(Locale.GERMAN);
      assertEquals(english, problem("<a><b></a>"));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void onlyTheLastWordsBeforeTheFaultAreShownAndNoMarks() {
    String markup = "<a>" + "word ".repeat(100) + "<b at=\"3:7\">x</b>\n <c at=\"4:1\"></a>";
    String what = problem(markup).what();
    assertTrue(what.endsWith(", inside <c>: \"word word word <b>x</b> <c></a>\""), what);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!DOCTYPE a><a/>",
        "<!DOCTYPE a SYSTEM 'file:///etc/passwd'><a/>",
        "<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/passwd'>]><a>&b;</a>",
        "<!DOCTYPE a [<!ENTITY b 'x'><!ENTITY c '&b;&b;&b;'>]><a>&c;</a>",
      })
  void documentTypesAreRefused(String markup) {
    assertEquals("a layout cannot have a document type", problem(markup).what());
  }

  @Test
  void treeOfElementsIsRead() {
    String markup =
        "<a x='&apos;\n1' y=\"'2'\" >&lt;&#65;&#x3A9;\n  \t&amp;<!-- - --><![CDATA[<&]]><b /> z </a>";
    Element root = read(markup, new Problems()).orElseThrow();
    assertEquals(List.of(new Attribute("x", "' 1"), new Attribute("y", "'2'")), root.attributes());
    assertEquals("<A\u03A9 &<&", words(root.content().subList(0, root.content().size() - 2)));
    assertEquals("b", ((Element) root.content().get(root.content().size() - 2)).name());
    assertEquals(
        " z ", words(root.content().subList(root.content().size() - 1, root.content().size())));
  }

  @Test
  void sixtyLevelsAreReadAndNoMore() {
    assertTrue(read("<a>".repeat(60) + "</a>".repeat(60), new Problems()).isPresent());
    Problem problem = problem("<a at='1:1'>".repeat(60) + "<b at='9:2'>" + "<c at='10:1'>");
    assertEquals("elements are nested more than 60 deep", problem.what());
    assertEquals(at(9, 2), place(problem.at()));
  }

  @Test
  void whatIsThereForEditorsOnlyIsPassedOver() {
    String markup =
        "<?xml version='1.0'?><a xmlns:xsi='http://www.w3.org/2001/XMLSchema-instance'"
            + " xsi:noNamespaceSchemaLocation='box-markup.xsd' x='1'/>";
    Element root = read(markup, new Problems()).orElseThrow();
    assertEquals(List.of(new Attribute("x", "1")), root.attributes());
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
    for (MarkupNode inner : root.content()) {
      assertEquals(at(3, 7), place(((Element) inner).at()));
    }
  }

  private static Position at(int line, int column) {
    return new Position(line, column);
  }

  private static Position place(Span span) {
    return new Position(span.line(), span.column());
  }

  private static String words(List<MarkupNode> nodes) {
    return nodes.stream()
        .map(node -> ((MarkupNode.Words) node).text())
        .collect(Collectors.joining());
  }

  private static Problem problem(String markup) {
    Problems problems = new Problems();
    assertEquals(Optional.empty(), read(markup, problems));
    assertEquals(1, problems.all().size(), () -> problems.all().toString());
    return problems.all().get(0);
  }

  private static Optional<Element> read(String markup, Problems problems) {
    LayoutSource source = new LayoutSource(new Source("x", "\n".repeat(20)));
    return ElementReader.read(filled(markup), source.collect(problems));
  }

  /** A text as a layout would have written it. */
  static BoundedText filled(String markup) {
    BoundedText filled = new BoundedText(markup.length());
    try {
      filled.write(markup);
    } catch (IOException e) {
      throw new UncheckedIOException("writing into memory", e);
    }
    return filled;
  }
}
