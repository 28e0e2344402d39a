package baysheet.wording;

import baysheet.books.Place;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.Sheet.Section;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.StepSource;
import baysheet.wording.SheetText.BoxText;
import baysheet.wording.SheetText.EntryText;
import baysheet.wording.SheetText.HoldText;
import baysheet.wording.SheetText.SectionText;
import baysheet.wording.SheetText.StepText;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The sequence in words. */
final class StepWords {
  private final Language language;
  private final StepSentences sentences;
  private final CautionWords cautions;
  private final CheckWords checks;
  private final List<QualifiedWork> qualified;
  private final List<StepSource> sources;

  StepWords(Sheet sheet, CautionWords cautions, CheckWords checks) {
    this.language = Language.of(sheet.heading());
    this.sentences = new StepSentences(sheet);
    this.cautions = cautions;
    this.checks = checks;
    this.qualified = sheet.safety().qualified();
    this.sources = sheet.steps().stream().map(SheetStep::source).toList();
  }

  SectionText section(Section section) {
    return new SectionText(
        sentences.heading(section),
        sentences.where(section),
        section.title() == Sheet.Title.RAISE,
        section.oneSideFirst().map(sentences::sideBySide).orElse(""),
        section.steps().stream().map(step -> step(step, section)).toList());
  }

  private StepText step(SheetStep step, Section section) {
    Optional<String> good = step.teaching().good().map(language::text).map(String::strip);
    boolean torques = step.details().stream().anyMatch(StepSentences::isTorque);
    return new StepText(
        String.valueOf(step.n()),
        place(step, section),
        Phrases.sentence(sentences.text(step.source())),
        step.source() instanceof StepSource.Checkpoint
            ? List.of()
            : PlaceWords.boxes("tick." + step.n(), "step " + step.n() + " done", step.places()),
        cautions.of(step.letters().above()),
        letters(step),
        sentences.detailTexts(step, good.filter(it -> torques)),
        torque(step),
        checks.dueAt(step),
        minutes(step),
        language.text(step.teaching().because()).map(String::strip).orElse(""),
        good.filter(it -> !torques).orElse(""),
        language.texts(step.teaching().ifStuck()),
        entries(step),
        hold(step));
  }

  /**
   * For both sides of a pair together. A step that waits says itself for how long: minutes beside
   * it would be taken for that.
   */
  private String minutes(SheetStep step) {
    boolean waits = sentences.text(step.source()).matches("(.*, w|W)ait .*");
    String minutes = waits ? "" : Phrases.minutes(step.minutes().mean());
    return minutes.isEmpty() || step.places().size() != 2
        ? minutes
        : language.own(Phrase.BOTH_SIDES, minutes);
  }

  /**
   * Steps of several places may share a heading that names none: before the vehicle goes up, or
   * once it is down. A final torque has its place in the table, and says it where another step of
   * the sheet torques the same elsewhere.
   */
  private String place(SheetStep step, Section section) {
    boolean alike =
        step.source() instanceof StepSource.FinalTorque
            && Collections.frequency(sources, step.source()) > 1;
    boolean own =
        (alike || step.phase() != Phase.FINAL) && !step.places().equals(List.of(Place.VEHICLE));
    // A check with the wheels clear is of all wheels, whichever of them brings it.
    boolean all = step.phase() == Phase.CHECK && section.title() == Sheet.Title.WHEELS_CLEAR;
    return !section.places().isEmpty() || !own || all
        ? ""
        : Phrases.capital(PlaceWords.words(step.places()));
  }

  /** Letters of cautions whose words stand elsewhere, without those that hold all the time. */
  private String letters(SheetStep step) {
    return String.join(
        ", ",
        step.letters().all().stream()
            .filter(letter -> !step.letters().above().contains(letter))
            .filter(letter -> !cautions.isAlways(letter))
            .toList());
  }

  /** Nothing where the details name the lines already. */
  private static String torque(SheetStep step) {
    boolean told = step.details().stream().anyMatch(StepSentences::isTorque);
    return told ? "" : Phrases.numbers(step.torque()).replace(" ", Phrases.NBSP);
  }

  /** The first keeps the plain name: most steps have but one. */
  private List<EntryText> entries(SheetStep step) {
    List<EntryText> entries = new ArrayList<>();
    for (String words : language.statements(step.entries())) {
      String name = "entry." + step.n() + (entries.isEmpty() ? "" : "-" + (entries.size() + 1));
      String says = words + ", step " + step.n();
      entries.add(new EntryText(words, PlaceWords.boxes(name, says, step.places())));
    }
    return List.copyOf(entries);
  }

  private HoldText hold(SheetStep step) {
    if (!step.hold()) {
      return new HoldText(List.of(), "");
    }
    String name = "hold." + step.n();
    String says = "initials of the second person who looked at step " + step.n();
    return new HoldText(
        step.places().size() == 1
            ? List.of(new BoxText(name, "", says))
            : PlaceWords.boxes(name, says, step.places()),
        QualifiedWords.looker(qualified, work -> work.holds().contains(step.n())));
  }
}
