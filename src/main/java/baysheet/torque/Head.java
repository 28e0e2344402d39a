package baysheet.torque;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a tool takes hold of.
 *
 * @param form the shape
 * @param size its size, in one spelling whatever was written: {@code 19 mm}, {@code 3/4 in}, {@code
 *     T60}, {@code E14}
 */
public record Head(Form form, String size) {
  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final Pattern NO_DIGITS = Pattern.compile("\\D+");
  private static final String EXPECTED =
      "a form and its size, such as hex 19 mm, 12-point 36 mm, six-lobe T60 or hexagon key 8 mm";

  /** Shapes of heads, by the words of the trade. */
  public enum Form {
    HEX("hex", Sizes.ACROSS_FLATS),
    TWELVE_POINT("12-point", Sizes.ACROSS_FLATS),
    SIX_LOBE("six-lobe", Sizes.T),
    EXTERNAL_SIX_LOBE("external six-lobe", Sizes.E),
    HEX_KEY("hexagon key", Sizes.ACROSS_FLATS),
    TWELVE_POINT_KEY("12-point key", Sizes.M),
    SQUARE("square", Sizes.ACROSS_FLATS),
    SLOT("slot", Sizes.ACROSS_FLATS),
    CROSS("cross", Sizes.CROSS);

    private final String word;
    private final Sizes sizes;

    Form(String word, Sizes sizes) {
      this.word = word;
      this.sizes = sizes;
    }

    /** The form as people write it. */
    public String word() {
      return word;
    }

    /** How sizes of this form are written. */
    Sizes sizes() {
      return sizes;
    }
  }

  /**
   * @throws IllegalArgumentException when {@code size} is none of the form's
   */
  public Head {
    ParseResult<String> read = form.sizes().parse(size);
    if (read instanceof ParseFailure<String> misread) {
      throw new IllegalArgumentException(form.word() + ": " + misread.what());
    }
    size = read.found().orElseThrow();
  }

  /** Reads {@code hex 19 mm}, {@code 12-point 36 mm}, {@code six-lobe T60}, {@code hex 3/4 in}. */
  public static ParseResult<Head> parse(String text) {
    return WrittenText.read(text, EXPECTED, Head::read);
  }

  private static ParseResult<Head> read(String text) {
    String spaced = text.strip().replace('\u00A0', ' ');
    String written = SPACES.matcher(spaced).replaceAll(" ");
    return forms()
        .filter(form -> starts(written, form.word()))
        .findFirst()
        .map(form -> sized(form, written))
        .orElseGet(
            () ->
                new ParseFailure<>(
                    WrittenText.quoted(written) + " does not begin with a form of head", EXPECTED));
  }

  /** Its size as a number: across flats in millimetres, or the number after the letter. */
  BigDecimal measure() {
    return QuantityText.quantity(size, Dimension.LENGTH)
        .found()
        .map(across -> across.to(Unit.MILLIMETRE).value())
        .orElseGet(() -> new BigDecimal(NO_DIGITS.matcher(size).replaceAll("")));
  }

  /** As printed; a line never breaks inside it. */
  public String print() {
    return (form.word() + " " + size).replace(' ', '\u00A0');
  }

  private static ParseResult<Head> sized(Form form, String written) {
    return form.sizes()
        .parse(written.substring(form.word().length()))
        .map(size -> new Head(form, size));
  }

  private static boolean starts(String written, String word) {
    return written.toLowerCase(Locale.ROOT).startsWith(word + " ");
  }

  /** Longest word first: a hexagon key is no hex, a 12-point key no 12-point. */
  private static Stream<Form> forms() {
    return List.of(Form.values()).stream()
        .sorted(Comparator.comparing((Form form) -> -form.word().length()));
  }
}
