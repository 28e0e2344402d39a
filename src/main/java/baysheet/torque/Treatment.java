package baysheet.torque;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is on a thread when it is tightened; a torque figure belongs to one of these. */
public enum Treatment {
  DRY("dry", "dry"),
  OILED("oiled", "oiled"),
  LOCKING_COMPOUND("locking-compound", "with locking compound"),
  ANTI_SEIZE("anti-seize", "with anti-seize paste"),
  GREASE("grease", "greased"),
  SEALANT("sealant", "with sealant"),
  AS_DELIVERED("as-delivered", "as delivered"),
  NOT_STATED("not-stated", "in a state the book does not say");

  private final String word;
  private final String phrase;

  Treatment(String word, String phrase) {
    this.word = word;
    this.phrase = phrase;
  }

  /** Reads the word of the files: {@code dry}, {@code locking-compound} … */
  public static Reading<Treatment> parse(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(treatment -> treatment.word.equals(word))
        .findFirst()
        .<Reading<Treatment>>map(Read::new)
        .orElseGet(
            () -> new Misread<>('"' + text.strip() + "\" is no treatment of a thread", words()));
  }

  /** The word of the files. */
  public String word() {
    return word;
  }

  /** The word for the sheet. */
  public String print() {
    return word.replace('-', ' ');
  }

  /** For sentences on a thread: "this torque is for a thread …". */
  public String phrase() {
    return phrase;
  }

  private static String words() {
    return Arrays.stream(values()).map(Treatment::word).collect(Collectors.joining(", "));
  }
}
