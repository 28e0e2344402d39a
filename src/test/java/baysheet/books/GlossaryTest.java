package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GlossaryTest {
  private static final Glossary WORDS =
      Glossary.of(
          words(
              List.of(
                  "tyre=tire",
                  "spanner=wrench",
                  "open spanner=open-end wrench",
                  "track rod=tie rod",
                  "track rod end=tie rod end",
                  "anti-roll bar=sway bar",
                  "gearbox=transmission",
                  "clutch plate=clutch disc",
                  "disc=rotor",
                  "wing=fender",
                  "wing nut=wing nut",
                  "spindle=axle",
                  "bonnet=hood")));

  private static Map<String, String> words(List<String> pairs) {
    Map<String, String> words = new LinkedHashMap<>();
    pairs.forEach(
        pair ->
            words.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1)));
    return words;
  }

  /** The American words are from a trade list of part names; common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "Lift the tyre off, Lift the tire off",
    "the tyre's back, the tire's back",
    "both tyres, both tires",
    "Tyre on its rim, Tire on its rim",
    "NO TYRE, NO TIRE",
    "flare nut spanner, flare nut wrench",
    "a 17 mm open spanner, a 17 mm open-end wrench",
    "torque wrench, torque wrench",
    "the track rod end and the track rod, the tie rod end and the tie rod",
    "the clutch plate, the clutch disc",
    "a wing nut on the wing, a wing nut on the fender",
    "an anti-roll bar link, a sway bar link",
    "An anti-roll bar link, A sway bar link",
    "a spindle, an axle",
    "a bonnet, a hood",
  })
  void wholeWordsAreReplacedTheLongestFirst(String british, String american) {
    assertEquals(american, WORDS.translate(british));
  }

  @ParameterizedTest
  @ValueSource(strings = {"gearbox-oil", "tyred", "disco", "rewing", "W1: 102 N·m, line 3"})
  void partsOfWordsAndFiguresStay(String text) {
    assertEquals(text, WORDS.translate(text));
  }

  @Test
  void aSpaceThatDoesNotBreakIsASpace() {
    assertEquals("tie rod end\u00a0×", WORDS.translate("track\u00a0rod end\u00a0×"));
  }

  @Test
  void nothingIsTranslatedTwice() {
    Glossary both = Glossary.of(words(List.of("plate=disc", "disc=rotor")));
    assertEquals("disc and rotor", both.translate("plate and disc"));
  }

  /** Its capitals are letters of words, not of a heading. */
  @Test
  void whatStandsForAnAbbreviationHasNoCapitals() {
    Glossary glossary = Glossary.of(Map.of("DTI", "dial indicator"));
    assertEquals("with a dial indicator", glossary.translate("with a DTI"));
  }

  @Test
  void anEmptyGlossaryChangesNothing() {
    assertEquals("a tyre", Glossary.of(Map.of()).translate("a tyre"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "M12", "two  blanks", "10 mm"})
  void figuresAreNoTerms(String term) {
    assertThrows(IllegalArgumentException.class, () -> Glossary.of(Map.of(term, "word")));
    assertThrows(IllegalArgumentException.class, () -> Glossary.of(Map.of("word", term)));
  }
}
