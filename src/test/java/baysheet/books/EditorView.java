package baysheet.books;

import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Pattern;

/**
 * A file as an editor hands it to a schema: plain values are typed by their looks, which our own
 * readers never do.
 */
enum EditorView {
  /** YAML 1.2, core schema, 10.3.2: what editors take unless told otherwise. */
  YAML_1_2("true|True|TRUE", "false|False|FALSE"),

  /**
   * YAML 1.1 as well knows yes, no and on, as keys too, and dates, which are handed on with the
   * time of midnight (its types bool and timestamp); its 010 and 1:30 are not needed by any file
   * here.
   */
  YAML_1_1("true|True|TRUE|yes|Yes|YES|on|On|ON", "false|False|FALSE|no|No|NO|off|Off|OFF"),

  /** YAML 1.2 with dates as objects of JavaScript, in which a validator finds no property. */
  DATE_OBJECTS("true|True|TRUE", "false|False|FALSE");

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Pattern WHOLE = Pattern.compile("[-+]?[0-9]+");
  private static final Pattern NULL = Pattern.compile("|~|null|Null|NULL");
  private static final Pattern FLOAT =
      Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?");

  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private final Pattern yes;
  private final Pattern no;

  EditorView(String yes, String no) {
    this.yes = Pattern.compile(yes);
    this.no = Pattern.compile(no);
  }

  JsonNode of(Node node) {
    if (node instanceof Mapping mapping) {
      ObjectNode object = JSON.objectNode();
      for (Entry entry : mapping.entries()) {
        object.set(key(entry.key()), of(entry.value()));
      }
      return object;
    }
    if (node instanceof Sequence sequence) {
      ArrayNode array = JSON.arrayNode();
      sequence.items().forEach(item -> array.add(of(item)));
      return array;
    }
    Scalar scalar = (Scalar) node;
    return scalar.quoted() ? JSON.textNode(scalar.text()) : plain(scalar.text());
  }

  private String key(Scalar key) {
    boolean isBoolean =
        this == YAML_1_1
            && !key.quoted()
            && (isYes(key.text()) || no.matcher(key.text()).matches());
    return isBoolean ? String.valueOf(isYes(key.text())) : key.text();
  }

  private boolean isYes(String text) {
    return yes.matcher(text).matches();
  }

  private JsonNode date(String text) {
    return switch (this) {
      case YAML_1_2 -> JSON.textNode(text);
      case YAML_1_1 -> JSON.textNode(text + "T00:00:00.000Z");
      case DATE_OBJECTS -> JSON.objectNode();
    };
  }

  private JsonNode plain(String text) {
    if (DATE.matcher(text).matches()) {
      return date(text);
    }
    if (NULL.matcher(text).matches()) {
      return JSON.nullNode();
    }
    if (isYes(text) || no.matcher(text).matches()) {
      return JSON.booleanNode(isYes(text));
    }
    if (WHOLE.matcher(text).matches()) {
      return JSON.numberNode(new BigInteger(text));
    }
    return FLOAT.matcher(text).matches()
        ? JSON.numberNode(new BigDecimal(text))
        : JSON.textNode(text);
  }
}
