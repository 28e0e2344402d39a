package baysheet.torque;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is on a thread when it is tightened; a torque figure belongs to one of these. */
public enum Treatment {
  DRY("dry", "dry", "a dry thread"),
  OILED("oiled", "oiled", "an oiled thread"),
  LOCKING_COMPOUND("locking-compound", "with threadlock", "a thread with threadlock"),
  ANTI_SEIZE("anti-seize", "with anti-seize paste", "a thread with anti-seize paste"),
  GREASE("grease", "greased", "a greased thread"),
  SEALANT("sealant", "with sealant", "a thread with sealant"),
  AS_DELIVERED("as-delivered", "as supplied", "a thread as supplied"),
  NOT_STATED("not-stated", "with no lubrication stated", "a thread with no lubrication stated");

  private final String word;
  private final String phrase;
  private final String thread;

  Treatment(String word, String phrase, String thread) {
    this.word = word;
    this.phrase = phrase;
    this.thread = thread;
  }

  /** Reads the word of the files: {@code dry}, {@code locking-compound} … */
  public static ParseResult<Treatment> parse(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(treatment -> treatment.word.equals(word))
        .findFirst()
        .<ParseResult<Treatment>>map(Parsed::new)
        .orElseGet(
            () ->
                new ParseFailure<>(
                    WrittenText.quoted(text) + " is not a treatment of a thread", words()));
  }

  /** The word of the files. */
  public String word() {
    return word;
  }

  /** The word for the sheet. */
  public String print() {
    return switch (this) {
      case LOCKING_COMPOUND -> "threadlock";
      case AS_DELIVERED -> phrase;
      case NOT_STATED -> "lubrication not stated";
      default -> word;
    };
  }

  /** What has to be at hand for it; nothing for a thread that goes on dry or as it comes. */
  public Optional<String> product() {
    return switch (this) {
      case DRY, AS_DELIVERED, NOT_STATED -> Optional.empty();
      case OILED -> Optional.of("oil for threads");
      default -> Optional.of(print());
    };
  }

  /** For sentences: the thread is "oiled", "with sealant". */
  public String phrase() {
    return phrase;
  }

  /** For sentences: a torque for "an oiled thread". */
  public String thread() {
    return thread;
  }

  private static String words() {
    return Arrays.stream(values()).map(Treatment::word).collect(Collectors.joining(", "));
  }
}
