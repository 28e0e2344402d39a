package baysheet.plan;

import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Head;
import baysheet.wording.Printed;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A plan as plain text, one line a thing, for comparing and for reading. */
public final class PlanText {
  private PlanText() {}

  /** The whole sheet. */
  public static String print(Sheet sheet) {
    StringBuilder text = new StringBuilder();
    text.append("title: ").append(Printed.title(sheet)).append('\n');
    Printed.evening(sheet).forEach(line -> text.append("evening: ").append(line).append('\n'));
    text.append(sequence(sheet));
    sheet.torque().forEach(line -> text.append(torque(sheet, line)).append('\n'));
    sheet.equipment().sockets().forEach(line -> text.append("socket: ").append(line).append('\n'));
    sheet.equipment().tools().forEach(line -> text.append("tool: ").append(line).append('\n'));
    sheet.equipment().parts().forEach(line -> text.append("part: ").append(line).append('\n'));
    Printed.texts(sheet, sheet.equipment().consumables())
        .forEach(line -> text.append("consumable: ").append(line).append('\n'));
    sheet.tally().forEach(line -> text.append("tally: ").append(line).append('\n'));
    sheet.safety().cautions().forEach(line -> text.append(caution(line)).append('\n'));
    sheet.checks().forEach(line -> text.append(check(sheet, line)).append('\n'));
    sheet.safety().support().forEach(line -> text.append("support: ").append(line).append('\n'));
    text.append("time: ").append(sheet.time()).append('\n');
    return text.toString();
  }

  /** Headings and steps only. */
  public static String sequence(Sheet sheet) {
    StringBuilder text = new StringBuilder();
    for (Sheet.Section section : sheet.sections()) {
      text.append("== ").append(Printed.heading(sheet, section)).append('\n');
      section.steps().forEach(step -> text.append(step(sheet, step)).append('\n'));
    }
    return text.toString();
  }

  private static String step(Sheet sheet, Sheet.SheetStep step) {
    StringBuilder line = new StringBuilder();
    line.append(
        String.format(Locale.ROOT, "%2d %s: %s", step.n(), places(step), Printed.text(step)));
    Printed.details(sheet, step).forEach(detail -> line.append(" | ").append(detail));
    if (!step.letters().all().isEmpty()) {
      line.append(" {").append(String.join("", step.letters().all())).append('}');
    }
    return line + (step.hold() ? " HOLD" : "");
  }

  private static String places(Sheet.SheetStep step) {
    return step.places().stream().map(Object::toString).collect(Collectors.joining("+"));
  }

  private static String torque(Sheet sheet, TorqueLine line) {
    List<String> stages = line.method().stages().stream().map(Object::toString).toList();
    return "torque %d: %s %s %d %s %s %s %s %s %s %s"
        .formatted(
            line.n(),
            line.fastener(),
            line.places(),
            line.count(),
            line.hardware().head().map(Head::print).orElse("-"),
            line.kind(),
            stages,
            line.visits().moment(),
            line.visits().two() ? "two visits" : "",
            line.refitting().reuse().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            line.origin().warnings().stream()
                .map(
                    it ->
                        "Warning[code="
                            + it.code()
                            + ", text="
                            + Printed.text(sheet, it.text())
                            + "]")
                .toList());
  }

  private static String caution(CautionLine line) {
    return "caution %s %s %s %s%s: %s"
        .formatted(
            line.letter(),
            line.signal(),
            line.name(),
            line.steps(),
            line.onTop() ? " top" : line.collapsed() ? " also" : "",
            line.command());
  }

  private static String check(Sheet sheet, CheckLine line) {
    return "check %s %s%s %s: %s %s"
        .formatted(
            line.moment(),
            line.name(),
            line.hold() ? " HOLD" : "",
            line.because(),
            Printed.text(sheet, line.text()),
            line.needs().orElse(""));
  }
}
