package baysheet.cli;

import baysheet.books.Fastener;
import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.plan.content.WrenchSelection;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.EffectiveBook;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.TorqueLine;
import baysheet.torque.AcrossFlats;
import baysheet.torque.Band;
import baysheet.torque.Setting;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningStage;
import baysheet.torque.WrenchChoice;
import baysheet.wording.Language;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Shows how one torque line came about, from the line of a file to the printed setting. */
final class TorqueTrace {
  private static final String WHOSE_BAND =
      "the shop's, for the book states none (common practice, no source)";

  private final Resolved resolved;
  private final TorqueLine line;
  private final WrenchSelection selection;
  private final Bound.OfBook thing;
  private final Fastener fastener;
  private final Rows rows = new Rows();

  private TorqueTrace(Resolved resolved, TorqueLine line, WrenchSelection selection) {
    this.resolved = resolved;
    this.selection = selection;
    this.line = line;
    this.thing = (Bound.OfBook) resolved.thing(new ItemAt(line.fastener(), line.places().get(0)));
    this.fastener = thing.values();
  }

  /**
   * The chain as plain text.
   *
   * @param selection what the plan selected for the line: nothing is chosen here
   * @param sheets on which of several sheets the line stands; none where the job has one
   */
  static String print(
      Resolved resolved, TorqueLine line, WrenchSelection selection, List<String> sheets) {
    return new TorqueTrace(resolved, line, selection).all(sheets);
  }

  private String all(List<String> sheets) {
    String places = line.places().stream().map(Place::word).collect(Collectors.joining(", "));
    rows.heading(
        "line " + line.n() + ": " + line.words() + " (" + line.fastener() + "), " + places);
    sheets.forEach(sheet -> rows.row("sheet", sheet));
    found();
    written();
    if (fastener.tightening().value() instanceof Tightening.Stages stages) {
      stages(stages.stages());
    } else {
      rows.row("setting", "none: the book gives no torque, and none is guessed");
    }
    rows.row("plausible", fastener.plausibility().sentence());
    acrossFlats();
    line.origin()
        .warnings()
        .forEach(it -> rows.row(it.code().severity().word(), Language.BRITISH.source(it.text())));
    return rows.print();
  }

  /** Where it was looked for; the first place won. */
  private void found() {
    List<String> texts = new ArrayList<>();
    thing.chain().forEach(place -> texts.add(place.at() + "  " + place.value()));
    texts.set(0, texts.get(0) + " (wins)");
    rows.rows("found", texts);
    rows.rows("passed over", passedOver());
    rows.row("source", thing.source() + (thing.overridden() ? ", by the job's override" : ""));
  }

  /** Entries of the same name for wider groups of places: the most specific one counts. */
  private List<String> passedOver() {
    List<String> texts = new ArrayList<>();
    for (Map.Entry<EffectiveBook.Key, EffectiveBook.Merged> entry :
        resolved.book().entries().entrySet()) {
      EffectiveBook.Key key = entry.getKey();
      boolean same =
          key.name().equals(line.fastener()) && key.group().contains(thing.item().place());
      if (same && !inChain(entry.getValue())) {
        texts.add(
            entry.getValue().name().at()
                + "  "
                + key.group()
                + ", a wider group of "
                + key.group().places().size()
                + " places");
      }
    }
    return texts;
  }

  private boolean inChain(EffectiveBook.Merged merged) {
    return thing.chain().stream().map(Located::at).anyMatch(at -> at.equals(merged.name().at()));
  }

  private void written() {
    String value =
        fastener.tightening().value() instanceof Tightening.Stages stages
            ? stages.stages().stream()
                .map(TighteningStage::print)
                .collect(Collectors.joining(", then "))
            : line.kind().name().toLowerCase(Locale.ROOT);
    rows.row("written", value + ", at " + fastener.tightening().at());
    rows.row(
        "thread",
        line.hardware().thread().orElse("not stated")
            + ", class "
            + line.hardware().strength().orElse("not stated")
            + ", torque for a thread "
            + fastener.threads().phrase());
  }

  private void stages(List<TighteningStage> stages) {
    Iterator<WrenchChoice> choices = selection.stages().iterator();
    int n = 1;
    for (TighteningStage stage : stages) {
      if (stages.size() > 1) {
        rows.row("stage " + n++, stage.print());
      }
      if (stage instanceof TighteningStage.Torque torque) {
        // A figure in doubt has no choices: the plan looked at no wrench for it.
        torque(torque.target(), choices.hasNext() ? Optional.of(choices.next()) : Optional.empty());
      } else {
        new SettingRows(rows).unset(stage instanceof TighteningStage.Angle);
      }
    }
    socket();
    passes();
  }

  private void torque(Target target, Optional<WrenchChoice> choice) {
    Shop shop = resolved.shop();
    Band band = target.bandOr(shop.wrenchUse().band());
    SettingRows shown = new SettingRows(rows);
    if (choice.isEmpty()) {
      // In no other unit, for none is printed: a figure in doubt must not lie ready to be set.
      shown.band(target, band, WHOSE_BAND);
      shown.doubtful();
      return;
    }
    shown.converted(target, band, shop.units().torque());
    shown.band(target, band, WHOSE_BAND);
    shown.reach(target.nominal(), fastener.reach(), choice.get());
    shown.wrenches(choice.get());
    shown.setting(choice.get(), band);
  }

  private void socket() {
    selection
        .socket()
        .filter(socket -> !socket.reasons().isEmpty())
        .ifPresent(socket -> rows.row("socket", String.join("; ", socket.reasons())));
    rows.rows("adapter", selection.adapters());
  }

  private void passes() {
    if (!line.method().rounds().isEmpty()) {
      String rounds =
          line.method().rounds().stream().map(this::round).collect(Collectors.joining(", then "));
      rows.row(
          "passes",
          rounds + (line.method().passes().checkRound() ? ", then one round to check" : ""));
      selection.rounds().forEach(this::early);
    }
  }

  /** An early round on another wrench than the last: which were looked at for it. */
  private void early(WrenchSelection.RoundChoice round) {
    boolean other =
        round.setting().map(Setting::wrench).isPresent()
            && !round.setting().map(Setting::wrench).equals(last().map(Setting::wrench));
    if (other) {
      new SettingRows(rows)
          .wrenches(
              "round " + SettingRows.plain(round.percent()) + "\u00A0%",
              round.choice().orElseThrow());
    }
  }

  private Optional<Setting> last() {
    List<WrenchChoice> stages = selection.stages();
    return stages.isEmpty() ? Optional.empty() : stages.get(stages.size() - 1).setting();
  }

  private String round(TorqueLine.Round round) {
    if (line.inDoubt()) {
      return SettingRows.plain(round.percent()) + "\u00A0% (not set)";
    }
    String mark =
        round
            .setting()
            .map(setting -> wrench(round) + " at " + setting.print())
            .orElse("no wrench");
    return SettingRows.rounded(round.torque()) + " (" + mark + ")";
  }

  private static String wrench(TorqueLine.Round round) {
    String name = round.wrench().orElseThrow();
    return round.with().map(with -> name + " with " + with).orElse(name);
  }

  /** Makers differ, so another size than the standard's is no fault: it is only mentioned. */
  private void acrossFlats() {
    if (fastener.written().pieces().thread().isPresent()
        && fastener.written().pieces().head().isPresent()) {
      AcrossFlats.note(
              fastener.written().pieces().thread().get().value(),
              fastener.written().pieces().head().get().value())
          .ifPresent(note -> rows.row("head", note));
    }
  }
}
