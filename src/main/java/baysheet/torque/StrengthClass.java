package baysheet.torque;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a fastener's material is proved to.
 *
 * <p>A nut's class is read as the class of bolt it is made to go with (ISO 898-2): the bolt carries
 * the load.
 *
 * @param label how it is printed: {@code 10.9}, {@code grade 5}, {@code A2-70}
 * @param strength its proof stresses
 */
public record StrengthClass(String label, Strength strength) {
  private static final Pattern STAINLESS = Pattern.compile("(?i)(A[1-5])[-\\s]?(50|70|80|100)");
  private static final String EXPECTED =
      "a class such as 8.8, 10.9, 12.9, a nut's 10, a thin nut's 05, grade 5 or A2-70";
  private static final Pattern AROUND = Pattern.compile("(?i)^class\\s+|\\.$|(?<=\\.[0-9])0+$");
  private static final Pattern GRADE = Pattern.compile("(?i)(?:sae\\s+)?grade\\s*([0-9](?:\\.2)?)");

  /** Of each nut class, the bolt class it carries in full (ISO 898-2, table 1). */
  private static final Map<String, String> BOLT_OF_NUT =
      Map.of("5", "5.8", "6", "6.8", "8", "8.8", "9", "9.8", "10", "10.9", "12", "12.9");

  /** Reads {@code 8.8}, a nut's {@code 10}, {@code grade 5}, {@code A2-70}. */
  public static ParseResult<StrengthClass> parse(String text) {
    return WrittenText.read(text, EXPECTED, StrengthClass::read);
  }

  private static ParseResult<StrengthClass> read(String text) {
    Optional<StrengthClass> known = known(text.strip());
    return known
        .<ParseResult<StrengthClass>>map(Parsed::new)
        .orElseGet(
            () ->
                new ParseFailure<StrengthClass>(
                        WrittenText.quoted(text) + " is not a known strength class", EXPECTED)
                    .near(nearest(text)));
  }

  private static Optional<StrengthClass> known(String word) {
    Matcher stainless = STAINLESS.matcher(word);
    Matcher grade = GRADE.matcher(word);
    String key = BOLT_OF_NUT.getOrDefault(word, word);
    String label = word;
    if (stainless.matches()) {
      key = "A-" + stainless.group(2);
      label = stainless.group(1).toUpperCase(Locale.ROOT) + "-" + stainless.group(2);
    } else if (grade.matches()) {
      key = "grade " + grade.group(1);
      label = key;
    }
    String its = label;
    return Optional.ofNullable(Strength.KNOWN.get(key)).map(it -> new StrengthClass(its, it));
  }

  /** Without a word before it, a comma, a full stop or a zero at its end. */
  private static Optional<String> nearest(String text) {
    String bare = AROUND.matcher(text.strip().replace(',', '.')).replaceAll("");
    return known(bare.strip()).map(StrengthClass::label);
  }

  /** Whether it is a class of stainless steel, ISO 3506-1. */
  public boolean isStainless() {
    return STAINLESS.matcher(label).matches();
  }

  /** Stress in MPa that the fastener is proved to stand, where the class reaches that diameter. */
  public OptionalDouble proofStressMPa(ScrewThread thread) {
    return strength.at(thread.diameterMm());
  }

  /**
   * Proof load in N: stress area times proof stress.
   *
   * <p>ISO 898-1, table 5: F = As · Sp.
   */
  public OptionalDouble proofLoadN(ScrewThread thread) {
    OptionalDouble stress = proofStressMPa(thread);
    return stress.isEmpty()
        ? stress
        : OptionalDouble.of(stress.getAsDouble() * thread.stressAreaMm2());
  }

  /**
   * A proof stress that steps with the diameter.
   *
   * @param proof MPa up to {@code stepMm}
   * @param proofAbove MPa above it
   * @param stepMm diameter in mm up to which the first figure holds
   * @param lastMm diameter in mm up to which the class is made
   */
  public record Strength(double proof, double proofAbove, double stepMm, double lastMm) {
    private static final double INCH = 25.4;
    private static final double KSI = 6.894757293168361;
    // ISO 898-1 covers threads to M39; 9.8 is made to M16 only.
    private static final double ISO_LAST = 39;

    static final Map<String, Strength> KNOWN = known();

    OptionalDouble at(double diameterMm) {
      return diameterMm > lastMm
          ? OptionalDouble.empty()
          : OptionalDouble.of(diameterMm <= stepMm ? proof : proofAbove);
    }

    private static Map<String, Strength> known() {
      Map<String, Strength> known = new LinkedHashMap<>();
      steels(known);
      grades(known);
      stainless(known);
      return known;
    }

    /** ISO 898-1:2013, table 3: proof stress Sp. */
    private static void steels(Map<String, Strength> known) {
      known.put("4.6", even(225, ISO_LAST));
      known.put("4.8", even(310, ISO_LAST));
      known.put("5.6", even(280, ISO_LAST));
      known.put("5.8", even(380, ISO_LAST));
      known.put("6.8", even(440, ISO_LAST));
      known.put("8.8", new Strength(580, 600, 16, ISO_LAST));
      known.put("9.8", even(650, 16));
      known.put("10.9", even(830, ISO_LAST));
      known.put("12.9", even(970, ISO_LAST));
      // Thin nuts, ISO 898-2, stress under proof load (from memory): the nut strips before the bolt
      // yields, so that it is the nut that must not be overloaded.
      known.put("04", even(380, ISO_LAST));
      known.put("05", even(500, ISO_LAST));
    }

    /** SAE J429, table 1, in ksi; 2 and 5 step down above 3/4 in and above 1 in. */
    private static void grades(Map<String, Strength> known) {
      known.put("grade 1", ksi(33, 33, 1.5));
      known.put("grade 2", ksi(55, 33, 0.75));
      known.put("grade 5", ksi(85, 74, 1));
      known.put("grade 5.2", even(85 * KSI, INCH));
      known.put("grade 7", ksi(105, 105, 1.5));
      known.put("grade 8", ksi(120, 120, 1.5));
      known.put("grade 8.2", even(120 * KSI, INCH));
    }

    /** ISO 3506-1, table 2: Rp0.2, which serves as proof; 70 and 80 are made to M24. */
    private static void stainless(Map<String, Strength> known) {
      known.put("A-50", even(210, ISO_LAST));
      known.put("A-70", even(450, 24));
      known.put("A-80", even(600, 24));
      known.put("A-100", even(800, 24));
    }

    private static Strength even(double proof, double lastMm) {
      return new Strength(proof, proof, lastMm, lastMm);
    }

    private static Strength ksi(double proof, double proofAbove, double stepInches) {
      return new Strength(proof * KSI, proofAbove * KSI, stepInches * INCH, 1.5 * INCH);
    }
  }
}
