package baysheet.wording;

import baysheet.books.Glossary;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A finished sheet in American words: every sentence, whoever wrote it. Names of people, vehicles
 * and sources stay, and so does what somebody noted on the job.
 */
public final class AmericanWords {
  private final Glossary glossary;

  private AmericanWords(Glossary glossary) {
    this.glossary = glossary;
  }

  public static Sheet of(Sheet sheet, Glossary glossary) {
    return new AmericanWords(glossary).sheet(sheet);
  }

  private Sheet sheet(Sheet sheet) {
    return new Sheet(
        sheet.heading().titled(this::text),
        each(sheet.qualified(), this::qualified),
        each(sheet.cautions(), this::caution),
        texts(sheet.evening()),
        each(sheet.sections(), this::section),
        each(sheet.torque(), line -> line.worded(this::text)),
        sheet.sockets(),
        each(sheet.tools(), this::tool),
        each(sheet.parts(), this::part),
        texts(sheet.consumables()),
        each(sheet.tally(), this::tally),
        each(sheet.checks(), this::check),
        each(sheet.support(), this::support),
        sheet.time(),
        sheet.notes(),
        sheet.sources());
  }

  private String text(String text) {
    return glossary.translate(text);
  }

  private Optional<String> text(Optional<String> text) {
    return text.map(glossary::translate);
  }

  private List<String> texts(List<String> texts) {
    return each(texts, this::text);
  }

  private static <T> List<T> each(List<T> all, UnaryOperator<T> change) {
    return all.stream().map(change).toList();
  }

  private QualifiedWork qualified(QualifiedWork it) {
    return new QualifiedWork(
        it.qualification(),
        text(it.words()),
        it.steps(),
        it.by(),
        it.holds(),
        each(it.checks(), this::text),
        it.second());
  }

  private CautionLine caution(CautionLine it) {
    return new CautionLine(
        it.letter(),
        it.name(),
        it.signal(),
        text(it.command()),
        text(it.hazard()),
        text(it.consequence()),
        it.protect(),
        it.source(),
        it.steps(),
        it.onTop(),
        it.wholeJob(),
        it.collapsed(),
        it.waivedBy());
  }

  private Sheet.Section section(Sheet.Section it) {
    return new Sheet.Section(
        text(it.heading()),
        it.named(),
        text(it.note()),
        it.phase(),
        it.moment(),
        it.places(),
        each(it.steps(), this::step));
  }

  private Sheet.SheetStep step(Sheet.SheetStep it) {
    return new Sheet.SheetStep(
        it.n(),
        it.phase(),
        it.moment(),
        it.places(),
        it.procedure(),
        text(it.text()),
        texts(it.details()),
        it.undo(),
        it.doUp(),
        it.disturb(),
        it.circuits(),
        it.torque(),
        it.cautions(),
        it.cautionsAbove(),
        it.minutes(),
        it.hold(),
        texts(it.entries()),
        text(it.because()),
        text(it.good()),
        texts(it.ifStuck()));
  }

  private Sheet.ToolLine tool(Sheet.ToolLine it) {
    return new Sheet.ToolLine(text(it.name()), it.special(), it.owned(), it.ifStuck());
  }

  private Sheet.PartLine part(Sheet.PartLine it) {
    return new Sheet.PartLine(text(it.part()), it.count(), it.places(), it.fastener());
  }

  private Sheet.TallyLine tally(Sheet.TallyLine it) {
    return new Sheet.TallyLine(
        it.item(), text(it.words()), it.places(), it.count(), it.off(), it.on());
  }

  private CheckLine check(CheckLine it) {
    return new CheckLine(
        it.name(),
        it.moment(),
        text(it.text()),
        it.places(),
        it.because(),
        it.steps(),
        text(it.reason()),
        it.hold(),
        text(it.needs()),
        text(it.keepsOpen()),
        text(it.releasedBy()),
        it.source());
  }

  private Sheet.Support support(Sheet.Support it) {
    return new Sheet.Support(
        it.raised(), it.on(), it.load(), it.each(), it.rated(), texts(it.points()));
  }
}
