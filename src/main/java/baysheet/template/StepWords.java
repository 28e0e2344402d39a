package baysheet.template;

import baysheet.plan.Sheet.Section;
import baysheet.plan.Sheet.SheetStep;
import baysheet.template.SheetText.BoxText;
import baysheet.template.SheetText.SectionText;
import baysheet.template.SheetText.StepText;
import java.util.List;

/** The sequence in words. */
final class StepWords {
  private final CautionWords cautions;
  private final CheckWords checks;

  StepWords(CautionWords cautions, CheckWords checks) {
    this.cautions = cautions;
    this.checks = checks;
  }

  SectionText section(Section section) {
    return new SectionText(
        section.heading(),
        Phrases.orNothing(section.note()),
        section.phase().word(),
        section.moment().word(),
        section.steps().stream().map(this::step).toList());
  }

  private StepText step(SheetStep step) {
    return new StepText(
        String.valueOf(step.n()),
        Phrases.sentence(step.text()),
        PlaceWords.boxes("tick." + step.n(), "step " + step.n() + " done", step.places()),
        cautions.of(step.cautionsAbove()),
        letters(step),
        step.details(),
        torque(step),
        checks.dueAt(step),
        Phrases.minutes(step.minutes().mean()),
        step.because().map(String::strip).orElse(""),
        step.good().map(String::strip).orElse(""),
        step.ifStuck(),
        Phrases.orNothing(step.entry()),
        entries(step),
        hold(step));
  }

  /** Letters of cautions whose words stand at another step; those on top hold all the time. */
  private String letters(SheetStep step) {
    return String.join(
        ", ",
        step.cautions().stream()
            .filter(letter -> !step.cautionsAbove().contains(letter))
            .filter(letter -> !cautions.isOnTop(letter))
            .toList());
  }

  /** Nothing where the details name the lines already. */
  private static String torque(SheetStep step) {
    boolean told =
        step.details().stream().anyMatch(detail -> detail.contains("line" + Phrases.NBSP));
    return told ? "" : Phrases.numbers(step.torque()).replace(" ", Phrases.NBSP);
  }

  private static List<BoxText> entries(SheetStep step) {
    return step.entry().isEmpty()
        ? List.of()
        : PlaceWords.boxes(
            "entry." + step.n(), step.entry().get() + ", step " + step.n(), step.places());
  }

  private static List<BoxText> hold(SheetStep step) {
    String name = "hold." + step.n();
    String says = "initials of the second person who looked at step " + step.n();
    if (!step.hold()) {
      return List.of();
    }
    return step.places().size() == 1
        ? List.of(new BoxText(name, "", says))
        : PlaceWords.boxes(name, says, step.places());
  }
}
