package baysheet.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.box.Form;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.sheet.Sheet;
import baysheet.wording.Samples;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.SAXException;

/** The schema that editors read and the reader that pages are made by say the same. */
class BoxMarkupSchemaTest {
  private static final String HEAD =
      "<form largest='11pt' smallest='8pt' language='en' title='t'>"
          + "<pen name='tick' width='5mm' height='5mm'/>";

  static List<Sheet> sheets() {
    return List.of(Samples.oilService(), Samples.brakes(), Samples.big());
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void shippedLayoutIsValidForEverySheet(Sheet sheet) throws Exception {
    Problems problems = new Problems();
    String filled =
        LayoutTemplates.builtIn().write("bay-sheet", Samples.text(sheet), problems).orElseThrow();
    validate(filled);
    assertEquals(List.of(), problems.all());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<text style='body' align='decimal'>a <b>b <run group='g'>c</run></b></text>",
        "<row gap='1mm'><cell width='2*' vertical='baseline'/><cell width='natural'/></row>",
        "<column keep='yes' gap='0.5em'><rule/><rule thickness='0.4pt'/><space"
            + " height='0mm'/></column>",
        "<columns count='3' between='4mm'><held><text>h</text></held><text>t</text></columns>",
        "<table title='t' padding='1pt' between='2mm'><col"
            + " width='3mm'/><headings><td/></headings><line heavy='no'><td/></line></table>",
        "<items label='5mm'"
            + " between='1pt'><entry><text>1</text><text>a</text><text>b</text></entry></items>",
        "<frame border='1pt' padding='1mm'><field name='f' kind='tick' says='s'/></frame>",
        "<field name='f' kind='square' pen='tick' says='s' required='no'/>",
        "<row><cell><code text='AB2C3D4E5F6G7H8J' size='10mm'/></cell></row><square size='4.5mm'/>",
        "<drawing width='20mm' says='s'><line x1='0' y1='0' x2='9' y2='9'/>"
            + "<circle x='5' y='5' radius='3'/><label x='5' y='5' height='2' text='1'/>"
            + "<triangle x1='0' y1='0' x2='9' y2='0' x3='5' y3='9'/></drawing>",
        "<droppable group='g'><text>a</text><smaller><text>b</text></smaller></droppable><fill/>",
      })
  void whatTheReaderTakesTheSchemaTakes(String boxes) throws Exception {
    String form = HEAD + "<style name='body'/><group name='g' until='8pt'/>" + boxes + "</form>";
    assertEquals(List.of(), problems(form));
    validate(form);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<txt>a</txt>",
        "<text align='middle'>a</text>",
        "<text><row/></text>",
        "<row>loose words</row>",
        "<row><text>a</text></row>",
        "<rule thickness='3'/>",
        "<rule thickness='-3mm'/>",
        "<columns count='0'/>",
        "<columns/>",
        "<space/>",
        "<code text='AB2C3D4E5F6G7H8J'/>",
        "<code size='10mm'/>",
        "<square/>",
        "<square size='1em'/>",
        "<table title='t'/>",
        "<table title='t'><col/><headings><td><td/></td></headings></table>",
        "<items><entry><text>only a label</text></entry></items>",
        "<field name='f' kind='tick'/>",
        "<field name=' ' kind='tick' says='s'/>",
        "<drawing says='s'/>",
        "<drawing width='20mm' says='s'><circle x='5' y='5' radius='0'/></drawing>",
        "<drawing width='20mm' says='s'><circle x='-5' y='5' radius='1'/></drawing>",
        "<droppable><text>a</text></droppable>",
        "<fill height='3mm'/>",
        "<style scale='big' name='s'/>",
        "<group until='8pt'/>",
        "<group name='g' until='1em'/>",
        "<pen name='p' width='1em' height='1mm'/>",
        "<column keep='perhaps'/>",
      })
  void whatTheReaderRefusesTheSchemaRefuses(String boxes) {
    String form = HEAD + "<text>x</text>" + boxes + "</form>";
    assertTrue(!problems(form).isEmpty(), boxes);
    assertThrows(SAXException.class, () -> validate(form), boxes);
  }

  private static List<String> problems(String form) {
    Problems problems = new Problems();
    Optional<Form> read =
        FormReader.read(
            ElementReaderTest.filled(form),
            new LayoutSource(new Source("x", form)).collect(problems));
    assertEquals(problems.hasErrors(), read.isEmpty());
    return problems.all().stream().map(problem -> problem.what()).toList();
  }

  private static void validate(String markup) throws SAXException, IOException {
    SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
    Schema schema =
        factory.newSchema(
            BoxMarkupSchemaTest.class.getResource("/baysheet/template/box-markup.xsd"));
    schema.newValidator().validate(new StreamSource(new StringReader(markup)));
  }
}
