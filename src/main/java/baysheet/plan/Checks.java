package baysheet.plan;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Every check that is due, each once, by moment: from rules, from procedures, from the books. */
final class Checks {
  private final Resolved resolved;
  private final List<Laid> lines;
  private final List<TorqueLine> torque;

  Checks(Resolved resolved, List<Laid> lines, List<TorqueLine> torque) {
    this.resolved = resolved;
    this.lines = lines;
    this.torque = torque;
  }

  List<Sheet.CheckLine> all() {
    List<Sheet.CheckLine> checks = new ArrayList<>();
    checks.addAll(rules());
    checks.addAll(procedures());
    checks.addAll(rechecks());
    checks.sort(Comparator.comparing(Sheet.CheckLine::moment));
    return checks;
  }

  private List<Sheet.CheckLine> rules() {
    Triggers triggers = new Triggers(resolved, lines);
    List<Sheet.CheckLine> checks = new ArrayList<>();
    for (Catalogue.Rule rule : resolved.catalogue().rules().values()) {
      List<Integer> brought = triggers.lines(rule.when());
      if (!brought.isEmpty() || triggers.vehicle(rule.when())) {
        checks.add(check(rule, brought));
      }
    }
    return checks;
  }

  private Sheet.CheckLine check(Catalogue.Rule rule, List<Integer> brought) {
    TreeSet<Place> places = new TreeSet<>();
    brought.forEach(index -> places.addAll(lines.get(index).places()));
    return new Sheet.CheckLine(
        rule.name().value(),
        rule.moment().value(),
        rule.check().value(),
        List.copyOf(places),
        brought.stream().map(index -> index + 1).toList(),
        rule.because().map(Located::value),
        rule.hold(),
        rule.needs().map(Located::value),
        rule.keepsOpen().map(Located::value),
        rule.source().value());
  }

  private List<Sheet.CheckLine> procedures() {
    Map<Procedure.Check, TreeSet<Place>> places = new LinkedHashMap<>();
    Map<Procedure.Check, String> names = new LinkedHashMap<>();
    for (Task task : resolved.ranked()) {
      for (Procedure.Check check : task.procedure().checks()) {
        places.computeIfAbsent(check, key -> new TreeSet<>()).add(task.id().place());
        names.putIfAbsent(check, task.id().procedure());
      }
    }
    List<Sheet.CheckLine> checks = new ArrayList<>();
    places.forEach((check, where) -> checks.add(own(check, names.get(check), where)));
    return checks;
  }

  private static Sheet.CheckLine own(Procedure.Check check, String name, TreeSet<Place> where) {
    return new Sheet.CheckLine(
        name,
        check.moment().value(),
        check.text().value(),
        List.copyOf(where),
        List.of(),
        check.because().map(Located::value),
        check.hold(),
        Optional.empty(),
        Optional.empty(),
        "procedure " + name);
  }

  /**
   * The second look at fasteners after a distance; where a wheel was off and no book says when, an
   * empty box asks for it.
   */
  private List<Sheet.CheckLine> rechecks() {
    List<Sheet.CheckLine> checks = new ArrayList<>();
    for (TorqueLine line : torque) {
      line.recheck()
          .ifPresent(
              distance ->
                  checks.add(
                      recheck(line, Words.recheck(resolved, line, distance), Optional.empty())));
    }
    if (checks.isEmpty()) {
      wheels()
          .ifPresent(
              line ->
                  checks.add(
                      recheck(line, Words.recheckUnknown(line), Optional.of(Words.DISTANCE))));
    }
    return checks;
  }

  private Optional<TorqueLine> wheels() {
    return torque.stream().filter(line -> kinds(line).contains("wheel")).findFirst();
  }

  private List<String> kinds(TorqueLine line) {
    Catalogue.Item entry = resolved.catalogue().items().get(line.fastener());
    return entry == null ? List.of() : entry.kinds().stream().map(Located::value).toList();
  }

  private Sheet.CheckLine recheck(TorqueLine line, String text, Optional<String> needs) {
    List<Integer> steps = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      boolean undone =
          lines.get(i).undo().stream()
              .anyMatch(
                  item ->
                      item.item().equals(line.fastener()) && line.places().contains(item.place()));
      if (undone) {
        steps.add(i + 1);
      }
    }
    return new Sheet.CheckLine(
        "recheck-" + line.fastener(),
        Moment.RE_CHECK,
        text,
        line.places(),
        steps,
        Optional.empty(),
        false,
        needs,
        Optional.empty(),
        line.source());
  }
}
