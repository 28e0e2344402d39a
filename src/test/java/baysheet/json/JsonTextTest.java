package baysheet.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** JSON is that of RFC 8259: objects in section 4, numbers in section 6, escapes in section 7. */
class JsonTextTest {
  private static final JsonObject OBJECT =
      new JsonObject()
          .put("n", 3)
          .put("value", new BigDecimal("1E+3"))
          .put("digits", new BigDecimal("1.50"))
          .put("text", "a \"b\"\n")
          .put("hold", true)
          .put("torque", Quantity.of("110", Unit.NEWTON_METRE))
          .put("gone", Optional.empty())
          .put("there", Optional.of("yes"))
          .put("list", List.of(1, 2))
          .put("none", List.of())
          .listIfAny("left", List.of());

  private static JsonObject read(String text) throws IOException {
    return JsonText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aLineKeepsTheOrderAndTheDigits() {
    assertEquals(
        "{\"n\":3,\"value\":1000,\"digits\":1.50,\"text\":\"a \\\"b\\\"\\n\",\"hold\":true,"
            + "\"torque\":{\"value\":110,\"unit\":\"N·m\"},\"there\":\"yes\",\"list\":[1,2],"
            + "\"none\":[]}",
        JsonText.line(OBJECT));
  }

  @Test
  void eachFormIsReadAsItWasWritten() throws IOException {
    JsonObject line = read(JsonText.line(OBJECT));
    assertEquals(line, read(JsonText.indented(OBJECT)));
    assertEquals(line, read(JsonText.lines(OBJECT)));
    assertEquals(line, read(JsonText.canonical(OBJECT)));
    assertEquals(JsonText.line(OBJECT), JsonText.line(line));
  }

  @Test
  void everyEntryOfAListIsALine() {
    JsonObject object =
        new JsonObject()
            .put("n", 1)
            .list("steps", List.of("a", "b"), id -> new JsonObject().put("id", id));
    assertEquals(
        "{\n\"n\":1,\n\"steps\":[\n{\"id\":\"a\"},\n{\"id\":\"b\"}]\n}\n", JsonText.lines(object));
  }

  @Test
  void filesHavePlainSpacesAndALineTheSpacesOfItsText() {
    JsonObject object = new JsonObject().put("set", "110\u00A0N·m");
    assertEquals("{\"set\":\"110 N·m\"}", JsonText.canonical(object));
    assertEquals("{\n\"set\":\"110 N·m\"\n}\n", JsonText.lines(object));
    assertEquals("{\"set\":\"110\u00A0N·m\"}", JsonText.line(object));
  }

  @Test
  void theCanonicalFormSortsKeys() {
    assertEquals(
        "{\"a\":1,\"b\":{\"c\":2,\"d\":3}}",
        JsonText.canonical(
            new JsonObject().put("b", new JsonObject().put("d", 3).put("c", 2)).put("a", 1)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"[1]", "{\"a\":1} {}", "{\"a\":1,\"a\":2}", "{\"a\":null}", "{\"a\"", ""})
  void whatIsNoObjectIsRefused(String text) {
    assertThrows(IOException.class, () -> read(text));
  }

  @Test
  void aMissingKeyAndAnotherTypeAreNamed() throws IOException {
    JsonObject read = read("{\"n\":1.5,\"list\":[1],\"torque\":{\"value\":1,\"unit\":\"cubit\"}}");
    assertEquals("there is no by", message(() -> read.text("by")));
    assertEquals("n is not what it should be", message(() -> read.text("n")));
    assertEquals("list is not what it should be", message(() -> read.texts("list")));
    assertEquals("there is no unit cubit", message(() -> read.quantity("torque")));
    assertThrows(ArithmeticException.class, () -> read.number("n"));
    assertEquals(Optional.empty(), read.maybeText("by"));
    assertEquals(List.of(), read.objects("steps"));
    assertFalse(read.truth("more"));
  }

  private static String message(Runnable reading) {
    return assertThrows(IllegalArgumentException.class, reading::run).getMessage();
  }
}
