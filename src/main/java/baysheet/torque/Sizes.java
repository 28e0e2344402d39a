package baysheet.torque;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the sizes of a form of head are written, and which sizes a range of them holds. */
enum Sizes {
  /** Millimetres, or inches as fractions. */
  ACROSS_FLATS("", "19 mm or 3/4 in"),
  /** Six-lobe recesses, ISO 10664. */
  T("T", "T60"),
  /** External six-lobe heads. */
  E("E", "E14"),
  /** Twelve-point recesses, named after the thread they come with. */
  M("M", "M10"),
  /** Cross recesses of ISO 4757. */
  CROSS("(?:PH|PZ)", "PH2");

  // The largest nut turned on a car is about 80 mm; below 2 mm nothing has a socket. No source.
  private static final Quantity LEAST = Quantity.of("2", Unit.MILLIMETRE);
  private static final Quantity MOST = Quantity.of("100", Unit.MILLIMETRE);
  private static final Pattern RANGE =
      Pattern.compile("(.+?)\\s*(?:\\.{2,3}|…|–|(?<=\\s)to(?=\\s))\\s*(.+)");

  private final Pattern numbered;
  private final String example;

  Sizes(String letters, String example) {
    this.numbered = Pattern.compile("(" + letters + ")([1-9][0-9]{0,2})");
    this.example = example;
  }

  /** One size in its one spelling, or what is wrong with it. */
  ParseResult<String> parse(String text) {
    return WrittenText.read(text, expected(), this::one);
  }

  private ParseResult<String> one(String text) {
    return this == ACROSS_FLATS ? acrossFlats(text) : number(text);
  }

  /**
   * The sizes a text names: one, or all in a range: whole millimetres, sixteenths of an inch, every
   * number.
   */
  ParseResult<List<String>> all(String text) {
    return WrittenText.read(text, expected(), this::each);
  }

  private ParseResult<List<String>> each(String text) {
    Matcher range = RANGE.matcher(text.strip());
    if (!range.matches()) {
      return parse(text).map(List::of);
    }
    return this == ACROSS_FLATS
        ? QuantityText.range(text, Dimension.LENGTH).then(ends -> between(ends, text))
        : parse(range.group(1)).then(low -> parse(range.group(2)).then(high -> run(low, high)));
  }

  private ParseResult<String> acrossFlats(String text) {
    return QuantityText.quantity(text, Dimension.LENGTH)
        .then(size -> made(size) ? new Parsed<>(spelling(size)) : misread(text));
  }

  private static boolean made(Quantity size) {
    boolean toolUnit = size.unit() == Unit.MILLIMETRE || size.unit() == Unit.INCH;
    return toolUnit && !size.isBelow(LEAST) && !size.isAbove(MOST);
  }

  /** 19.0 mm is 19 mm, 6/8 in and 0.75 in are 3/4 in: a size is found by its spelling. */
  private static String spelling(Quantity size) {
    String figure =
        size.unit() == Unit.INCH
            ? Fraction.spell(size.value())
            : size.times(BigDecimal.ONE).figure();
    return figure + " " + size.unit().symbol();
  }

  private ParseResult<String> number(String text) {
    String word = text.strip().toUpperCase(Locale.ROOT);
    return numbered.matcher(word).matches() ? new Parsed<>(word) : misread(text);
  }

  private <V> ParseResult<V> misread(String text) {
    return new ParseFailure<>(
        WrittenText.quoted(text) + " is not a size of this form of head", expected());
  }

  private String expected() {
    return "a size such as " + example;
  }

  private ParseResult<List<String>> between(List<Quantity> ends, String text) {
    Quantity low = ends.get(0);
    Quantity high = ends.get(1);
    if (low.unit() != high.unit() || !made(low) || !made(high)) {
      return misread(text);
    }
    String pace = low.unit() == Unit.INCH ? "0.0625" : "1";
    List<String> sizes = new ArrayList<>();
    Quantity step = Quantity.of(pace, low.unit());
    for (Quantity size = low; !size.isAbove(high); size = size.plus(step)) {
      sizes.add(spelling(size));
    }
    return new Parsed<>(sizes);
  }

  private ParseResult<List<String>> run(String low, String high) {
    Matcher from = numbered.matcher(low);
    Matcher to = numbered.matcher(high);
    boolean alike = from.matches() && to.matches() && from.group(1).equals(to.group(1));
    if (!alike || Integer.parseInt(from.group(2)) > Integer.parseInt(to.group(2))) {
      return misread(low + ".." + high);
    }
    List<String> sizes = new ArrayList<>();
    for (int n = Integer.parseInt(from.group(2)); n <= Integer.parseInt(to.group(2)); n++) {
      sizes.add(from.group(1) + n);
    }
    return new Parsed<>(sizes);
  }
}
