package baysheet.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule finds the sentence that breaks it, and leaves those alone that keep to it. */
class SentenceRulesTest {
  private static final SentenceRules RULES =
      SentenceRules.british(
          Set.of(
              "remove",
              "fit",
              "check",
              "hold",
              "lower",
              "stop",
              "clean",
              "mark",
              "prove dead",
              "press",
              "turn"));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Remove the caliper.",
        "Remove and discard the nut",
        "If the pin turns, hold it with a 6 mm hexagon key",
        "With the engine cold, check the level",
        "Prove dead between the poles",
        "Remove the bolt while you hold its nut",
        "Check that the pin is seated and the bolt is in its groove",
        "Mark the wheel and its hub with an index mark",
        "Fit the brake pads, each on its own side",
        "Check that the lift pads are flat",
        "Clean the brake pipe",
        "Stop the jack at 100 mm",
        "Turn the nut 90° with a six-point socket",
      })
  void aPlainInstructionHasNoFault(String text) {
    assertEquals(List.of(), RULES.instruction(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Low, from outside: neutral | begins with no verb",
        "Bar on | begins with no verb",
        "See the hoses clipped | begins with no verb",
        "Remove the nut; fit the bolt | semicolon",
        "Remove the nut and fit the bolt | two actions",
        "Remove the nut, lower the arm | two actions",
        "Remove the nut. Lower the arm | second action",
        "Remove the nut while you fit the bolt | two actions",
        "Clean the nut before you remove it | two actions",
        "Lower the arm once you turn the nut | two actions",
        "Stop the engine. Check the plug | second action",
      })
  void oneActionThatBeginsWithAListedVerb(String text, String fault) {
    List<String> faults = RULES.instruction(text);
    assertTrue(faults.stream().anyMatch(it -> it.contains(fault)), faults.toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the pads are flat | which?",
        "the lines are open | brake pipe",
        "the fluid is old | which?",
        "set it at its mark | which?",
        "pull on the bar | which?",
        "undo the plug | which?",
        "clean the carrier | which?",
        "carry the arm | support",
        "fit the bolt again | second time",
        "the tally is right | removed and refitted",
        "what is used up | consumables",
        "the parts that are taken apart | removal",
        "low on its wheels | height",
        "as drawn on the card | diagram",
        "swing the arm up | move",
        "open it a hair | length",
        "push the pin home | fully seated",
        "a film of locking compound | threadlock",
        "as delivered by its maker | as supplied",
        "measured with a dial gauge | DTI",
        "a long bar | breaker bar",
        "a number of 12 in the air | without its unit",
        "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen"
            + " sixteen seventeen eighteen nineteen twenty more | 21 words",
      })
  void aWordThatStandsForTwoThingsOrForSomethingUnsaid(String text, String fault) {
    List<String> faults = RULES.sentence(text);
    assertTrue(faults.stream().anyMatch(it -> it.contains(fault)), faults.toString());
  }

  /** In America a pipe of the brakes is a line, and nobody says tyre. */
  @Test
  void americanSentencesHaveRulesOfTheirOwn() {
    SentenceRules american = SentenceRules.american(Set.of("install"));
    assertEquals(List.of(), american.sentence("the brake line is open"));
    assertEquals(1, american.sentence("the line is open").size());
    for (String british :
        List.of("the tyre", "a spanner", "axle stands", "guide pins", "an earth")) {
      assertEquals(1, american.sentence(british).size(), british);
    }
    assertEquals(List.of(), american.instruction("Install the rotor"));
  }
}
