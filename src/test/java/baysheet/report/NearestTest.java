package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LowerChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> FASTENERS =
      List.of("wheel-nut", "carrier-bolt", "drive-nut", "lower-arm-bush-bolt");

  @Test
  void aMissingLetterIsForgiven() {
    assertEquals(Optional.of("carrier-bolt"), Nearest.of("carier-bolt", FASTENERS));
  }

  @Test
  void twoSwappedLettersAreOneSlip() {
    // Four letters allow one slip; as two substitutions this would be too far.
    assertEquals(Optional.of("lift"), Nearest.of("lfit", List.of("jack", "lift")));
  }

  @Test
  void caseSpacesAndUnderscoresWeighNothing() {
    assertEquals(Optional.of("drive-nut"), Nearest.of("Drive_NUT", FASTENERS));
    assertEquals(Optional.of("wheel-nut"), Nearest.of("wheel nut", FASTENERS));
  }

  @Test
  void aSlipIsWithinEachWordOfAName() {
    List<String> items = List.of("coil-bolt", "caliper-carrier");
    assertEquals(Optional.empty(), Nearest.slip("rail-bolt", items));
    assertEquals(Optional.of("coil-bolt"), Nearest.slip("coul-bott", items));
    assertEquals(Optional.of("coil-bolt"), Nearest.slip("co-il-bolt", items));
    assertEquals(Optional.of("caliper-carrier"), Nearest.slip("calipper-carier", items));
  }

  @Test
  void whatIsFarFromEverythingHasNoNearest() {
    assertEquals(Optional.empty(), Nearest.of("sump-plug", FASTENERS));
  }

  @Test
  void aShortWordIsNotGuessedAt() {
    assertEquals(Optional.empty(), Nearest.of("by", List.of("at", "do")));
    assertEquals(Optional.of("at"), Nearest.of("AT", List.of("by", "at")));
  }

  @Test
  void ofEqualsTheFirstGivenIsTaken() {
    assertEquals(Optional.of("front"), Nearest.of("fromt", List.of("front", "fromp")));
    assertEquals(Optional.of("fromp"), Nearest.of("fromt", List.of("fromp", "front")));
  }

  @Test
  void anEmptyListHasNoNearest() {
    assertEquals(Optional.empty(), Nearest.of("anything", List.of()));
  }

  @Property
  void anyLetterLeftOutOfAWordIsForgiven(
      @ForAll @LowerChars @StringLength(min = 6, max = 30) String word,
      @ForAll @IntRange(max = 5) int at) {
    String written = word.substring(0, at) + word.substring(at + 1);
    assertEquals(Optional.of(word), Nearest.of(written, List.of("0000000000000", word)));
  }

  @Property
  void capitalsNeverMatter(@ForAll @AlphaChars @StringLength(min = 1, max = 20) String word) {
    assertEquals(
        Optional.of(word), Nearest.of(word.toUpperCase(java.util.Locale.ROOT), List.of(word)));
  }
}
