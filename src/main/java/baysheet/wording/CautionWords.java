package baysheet.wording;

import baysheet.books.Catalogue;
import baysheet.sheet.CautionLine;
import baysheet.wording.SheetText.CautionText;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Cautions in words: command, then the hazard and what it does. */
final class CautionWords {
  /** So many letters of a danger fit one line across the page. */
  private static final int ONE_LINE = 125;

  /** A mandatory sign of ISO 7010. */
  private static final Pattern NUMBER = Pattern.compile("M[0-9]{3}");

  private final Map<String, CautionLine> byLetter;
  private final List<CautionLine> all;
  private final Language language;

  CautionWords(List<CautionLine> cautions, Language language) {
    this.language = language;
    this.all = cautions;
    this.byLetter =
        cautions.stream().collect(Collectors.toMap(CautionLine::letter, Function.identity()));
  }

  List<CautionText> onTop() {
    return all.stream()
        .filter(caution -> caution.onTop() && caution.waivedBy().isEmpty())
        .map(this::text)
        .toList();
  }

  /** Whether it holds all the time, so that no step needs its letter. */
  boolean isAlways(String letter) {
    return byLetter.containsKey(letter)
        && byLetter.get(letter).onTop()
        && byLetter.get(letter).wholeJob();
  }

  /**
   * The minor ones that share a line. One that could hurt somebody keeps what it could do; where
   * only things can suffer the command is enough.
   */
  List<CautionText> also() {
    return all.stream()
        .filter(caution -> caution.collapsed() && caution.waivedBy().isEmpty())
        .map(caution -> text(caution, hurts(caution) ? why(caution) : ""))
        .toList();
  }

  private static boolean hurts(CautionLine caution) {
    return caution.signal() != Catalogue.Signal.NOTICE;
  }

  List<String> waived() {
    return all.stream()
        .filter(caution -> caution.waivedBy().isPresent())
        .map(
            caution ->
                "%s %s (%s) waived by %s"
                    .formatted(
                        caution.signal(),
                        caution.letter(),
                        Phrases.spaced(caution.name()),
                        caution.waivedBy().get()))
        .toList();
  }

  /** What to wear, each piece once, in the order in which it is first wanted. */
  List<String> protect() {
    Set<String> pieces = new LinkedHashSet<>();
    all.stream()
        .filter(caution -> caution.waivedBy().isEmpty())
        .forEach(caution -> caution.protect().forEach(piece -> pieces.add(piece)));
    return List.copyOf(pieces);
  }

  List<CautionText> of(List<String> letters) {
    return letters.stream()
        .filter(byLetter::containsKey)
        .map(byLetter::get)
        .map(this::text)
        .toList();
  }

  private CautionText text(CautionLine caution) {
    return text(caution, why(caution));
  }

  private CautionText text(CautionLine caution, String why) {
    String command = Phrases.sentence(language.text(caution.command()));
    return new CautionText(
        caution.letter(),
        caution.signal().name(),
        command,
        why,
        caution.protect().stream().map(CautionWords::number).collect(Collectors.joining(", ")),
        Phrases.counted("step", caution.steps()),
        from(caution),
        caution.source(),
        command.length() + from(caution).length() + why.length() < ONE_LINE);
  }

  private static String from(CautionLine caution) {
    return caution.wholeJob() || !caution.onTop() || caution.steps().isEmpty()
        ? ""
        : "from step" + Phrases.NBSP + caution.steps().get(0);
  }

  private String why(CautionLine caution) {
    String hazard = language.text(caution.hazard()).strip();
    String consequence = language.text(caution.consequence()).strip();
    return Phrases.sentence(
        hazard + (hazard.isEmpty() || consequence.isEmpty() ? "" : ": ") + consequence);
  }

  /** The number alone: the words stand once, on top. */
  private static String number(String protect) {
    Matcher number = NUMBER.matcher(protect);
    return number.find() ? number.group() : protect;
  }
}
