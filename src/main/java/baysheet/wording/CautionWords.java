package baysheet.wording;

import baysheet.books.Catalogue;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.wording.SheetText.CautionText;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Cautions in words: command, then the hazard and what it does. */
final class CautionWords {
  /** So many letters of a danger fit one line across the page. */
  private static final int ONE_LINE = 125;

  private final Map<String, CautionLine> byLetter;
  private final List<CautionLine> all;
  private final List<String> protect;
  private final Language language;

  CautionWords(Sheet.Safety safety, Language language) {
    this.language = language;
    this.all = safety.cautions();
    this.protect = safety.protect();
    this.byLetter =
        all.stream().collect(Collectors.toMap(CautionLine::letter, Function.identity()));
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

  /** What to wear for the job. */
  List<String> protect() {
    return worn(protect);
  }

  private List<String> worn(List<String> numbers) {
    return numbers.stream()
        .filter(ProtectiveEquipment::isWorn)
        .map(number -> language.text(ProtectiveEquipment.words(number)))
        .toList();
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
        String.join(", ", worn(caution.protect())),
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

  /** The hazard and what it does to people or things, then what else a sign asks for. */
  private String why(CautionLine caution) {
    String hazard = language.text(caution.hazard()).strip();
    String consequence = language.text(caution.consequence()).strip();
    String both = hazard + (hazard.isEmpty() || consequence.isEmpty() ? "" : ": ") + consequence;
    return Stream.concat(
            Stream.of(both),
            caution.protect().stream()
                .filter(number -> !ProtectiveEquipment.isWorn(number))
                .map(number -> language.text(ProtectiveEquipment.words(number))))
        .map(Phrases::sentence)
        .filter(sentence -> !sentence.isEmpty())
        .collect(Collectors.joining(" "));
  }
}
