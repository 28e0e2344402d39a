package baysheet.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EventJsonTest {
  static java.util.List<Event> all() {
    return Events.all();
  }

  private static JsonObject json(String text) throws IOException {
    return JsonText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @MethodSource("all")
  void anEventIsReadAsItWasWritten(Event event) throws IOException {
    String written = JsonText.line(EventJson.write(event));
    assertEquals(event, EventJson.read(json(written)));
    assertFalse(written.contains("\n"), written);
  }

  @Test
  void everyKindIsTried() {
    Set<Class<?>> tried = Events.all().stream().map(Object::getClass).collect(Collectors.toSet());
    assertEquals(Set.copyOf(Arrays.asList(Event.class.getPermittedSubclasses())), tried);
  }

  /** Names and plates can be forgotten, so nothing that stays may hold one. */
  @ParameterizedTest
  @MethodSource("all")
  void noEventHoldsANameOrAPlate(Event event) {
    String written = JsonText.line(EventJson.write(event));
    assertFalse(written.contains("Wrenfold") || written.contains("PL 501"), written);
  }

  @Test
  void anUnknownEventOrAMissingKeyIsNamed() throws IOException {
    JsonObject unknown = json("{\"event\": \"issued-twice\", \"on\": \"2026-03-02\"}");
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> EventJson.read(unknown))
            .getMessage()
            .contains("issued-twice"));
    JsonObject lacking =
        json("{\"event\": \"closed\", \"on\": \"2026-03-02\", \"sheet\": \"501-A\"}");
    assertEquals(
        "there is no by",
        assertThrows(IllegalArgumentException.class, () -> EventJson.read(lacking)).getMessage());
  }

  @Test
  void aKeyThatStandsTwiceIsRefused() {
    assertThrows(IOException.class, () -> json("{\"by\": \"T1\", \"by\": \"T2\"}"));
  }
}
