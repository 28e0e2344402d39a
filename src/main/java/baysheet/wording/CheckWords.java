package baysheet.wording;

import baysheet.books.Moment;
import baysheet.sheet.CheckLine;
import baysheet.sheet.DueChecks;
import baysheet.sheet.Heading;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.wording.SheetText.BoxText;
import baysheet.wording.SheetText.CheckText;
import baysheet.wording.SheetText.ChecksText;
import baysheet.wording.SheetText.HoldText;
import baysheet.wording.SheetText.OpenItemText;
import baysheet.wording.SheetText.RecheckText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Checks by moment, and what stays open after them. */
final class CheckWords {
  private final List<CheckLine> checks;
  private final List<QualifiedWork> qualified;
  private final DueChecks due;
  private final Language language;

  /** Of rows of other sheets the number of that sheet. */
  private final Map<Integer, Integer> sheets;

  CheckWords(Sheet sheet, Language language) {
    this.language = language;
    this.sheets = sheet.stage().map(Stage::sheets).orElse(Map.of());
    this.checks = sheet.checks();
    this.qualified = sheet.safety().qualified();
    this.due = new DueChecks(checks, sheet.steps());
  }

  /** The checks that a step of the sequence leads to. */
  List<CheckText> dueAt(SheetStep step) {
    List<CheckText> texts = new ArrayList<>();
    for (int i : due.at(step)) {
      texts.add(check(step.n() + "." + (texts.size() + 1), i + 1, checks.get(i)));
    }
    return List.copyOf(texts);
  }

  /** All others. */
  List<ChecksText> byMoment() {
    Map<Moment, List<CheckText>> groups = new TreeMap<>();
    for (int i : due.later()) {
      groups
          .computeIfAbsent(checks.get(i).moment(), any -> new ArrayList<>())
          .add(check("", i + 1, checks.get(i)));
    }
    return groups.entrySet().stream()
        .map(
            group ->
                new ChecksText(
                    language.own(Phrase.valueOf(group.getKey().name())),
                    group.getKey() == Moment.BEFORE_MOVING,
                    group.getKey().compareTo(Moment.BEFORE_MOVING) < 0,
                    group.getValue()))
        .toList();
  }

  private String text(Statement check) {
    if (check instanceof Statement.TorqueRecorded recorded) {
      return new Statements(language).torqueRecorded(recorded.row(), where(recorded.row().n()));
    } else if (check instanceof Statement.OfRows of) {
      return new Statements(language).ofRows(of, this::where);
    }
    return language.text(check);
  }

  private String where(int row) {
    return sheets.containsKey(row)
        ? language.own(Phrase.ROW_OF_SHEET, row, sheets.get(row))
        : String.valueOf(row);
  }

  private CheckText check(String number, int n, CheckLine check) {
    String name = "check." + n;
    return new CheckText(
        number,
        Phrases.sentence(text(check.text())),
        List.of(new BoxText(name, "", "check " + n + " done")),
        new HoldText(
            check.hold()
                ? List.of(
                    new BoxText(name + ".hold", "", "initials of the second person, check " + n))
                : List.of(),
            QualifiedWords.looker(qualified, work -> work.checks().contains(check.text()))),
        Phrases.counted("step", check.because()),
        check.reason().map(language::text).map(String::strip).orElse(""),
        check.needs().map(Statement::writtenIn).map(language::text).orElse(""),
        check.needs().isPresent()
            ? List.of(new BoxText(name + ".figure", "", "figure from the data, check " + n))
            : List.of());
  }

  /** Each thing once, though several checks may bring it. */
  List<OpenItemText> openItems() {
    List<String> items =
        checks.stream()
            .flatMap(check -> language.text(check.keepsOpen()).stream())
            .distinct()
            .toList();
    List<OpenItemText> open = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      String text = items.get(i);
      open.add(
          new OpenItemText(
              Phrases.capital(text), new BoxText("open." + (i + 1), "", text + " done")));
    }
    return List.copyOf(open);
  }

  /** Of several sheets the last one is for the whole job. */
  String releasedBy(Optional<Stage> stage, Heading heading) {
    List<String> people =
        Stream.concat(
                checks.stream().flatMap(check -> check.releasedBy().stream()),
                stage.stream().flatMap(it -> it.releasedBy().stream()))
            .map(language::text)
            .distinct()
            .toList();
    // Whoever that is may be the technician, and then a second person signs all the same.
    return Phrases.capital(
        people.isEmpty()
            ? second(heading)
            : language.own(Phrase.BESIDE, second(heading), String.join(" and ", people)));
  }

  /** Two people sign: by name where the job names the second, and never who did the work. */
  private String second(Heading heading) {
    return heading
        .crew()
        .second()
        .map(it -> language.own(Phrase.SECOND_PERSON, it.name()))
        .orElseGet(() -> language.own(Phrase.SECOND_PERSON_BUT, heading.crew().by().name()));
  }

  /** Of several sheets the last one has them all. */
  List<RecheckText> rechecks(List<TorqueLine> lines, Optional<Stage> stage) {
    if (stage.filter(it -> !it.isLast()).isPresent()) {
      return List.of();
    }
    return Stream.concat(stage.stream().flatMap(it -> it.elsewhere().stream()), lines.stream())
        .sorted(Comparator.comparing(TorqueLine::n))
        .filter(line -> line.visits().recheck().isPresent())
        .map(
            line ->
                new RecheckText(
                    language.text(line.words()),
                    line.visits().recheck().get().print(),
                    new BoxText(
                        "recheck." + line.n() + ".due",
                        "",
                        "odometer at which "
                            + language.text(line.words())
                            + " is due for its re-check"),
                    new BoxText(
                        "recheck." + line.n() + ".told",
                        "",
                        "customer told of the re-check of the " + language.text(line.words()))))
        .toList();
  }
}
