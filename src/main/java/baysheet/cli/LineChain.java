package baysheet.cli;

import baysheet.books.Fastener;
import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.plan.TorqueLine;
import baysheet.plan.Wrenches;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.EffectiveBook;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.torque.Band;
import baysheet.torque.Believability;
import baysheet.torque.Stage;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.WrenchChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Tells of one torque line how it came about, from the line of a file to the printed setting. */
final class LineChain {
  private static final String WHOSE_BAND =
      "the shop's, for the book states none (common practice, no source)";

  private final Resolved resolved;
  private final TorqueLine line;
  private final Bound.OfBook thing;
  private final Fastener fastener;
  private final Rows rows = new Rows();

  private LineChain(Resolved resolved, TorqueLine line) {
    this.resolved = resolved;
    this.line = line;
    this.thing = (Bound.OfBook) resolved.thing(new ItemAt(line.fastener(), line.places().get(0)));
    this.fastener = thing.values();
  }

  /** The chain as plain text. */
  static String print(Resolved resolved, TorqueLine line) {
    return new LineChain(resolved, line).all();
  }

  private String all() {
    String places = line.places().stream().map(Place::word).collect(Collectors.joining(", "));
    rows.heading(
        "line " + line.n() + ": " + line.words() + " (" + line.fastener() + "), " + places);
    found();
    written();
    if (fastener.tightening().value() instanceof Tightening.Stages stages) {
      stages(stages.stages());
    } else {
      rows.row("setting", "none: the book gives no torque, and none is guessed");
    }
    rows.row("believable", belief());
    line.warnings().forEach(warning -> rows.row("warning", warning.text()));
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
            ? stages.stages().stream().map(Stage::print).collect(Collectors.joining(", then "))
            : line.kind().name().toLowerCase(Locale.ROOT);
    rows.row("written", value + ", at " + fastener.tightening().at());
    rows.row(
        "thread",
        line.thread().orElse("not stated")
            + ", class "
            + line.strength().orElse("not stated")
            + ", torque for a thread "
            + fastener.threads().value().phrase());
  }

  private void stages(List<Stage> stages) {
    int n = 1;
    for (Stage stage : stages) {
      if (stages.size() > 1) {
        rows.row("stage " + n++, stage.print());
      }
      if (stage instanceof Stage.Torque torque) {
        torque(torque.target());
      } else {
        rows.row("setting", "none: turned by hand with an angle gauge or let go, no torque wrench");
      }
    }
  }

  private void torque(Target target) {
    Shop shop = resolved.shop();
    Band band = target.bandOr(shop.band());
    WrenchChoice choice = Wrenches.choose(resolved, fastener, target);
    SettingRows told = new SettingRows(rows);
    told.converted(target, band, shop.torqueUnits());
    told.band(target, band, WHOSE_BAND);
    told.reach(target.nominal(), fastener.reach(), choice);
    told.wrenches(choice);
    told.setting(choice, band);
    passes();
  }

  private void passes() {
    if (!line.rounds().isEmpty()) {
      String rounds =
          line.rounds().stream().map(LineChain::round).collect(Collectors.joining(", then "));
      rows.row("passes", rounds + (line.passes().checkRound() ? ", then one round to check" : ""));
    }
  }

  private static String round(TorqueLine.Round round) {
    String mark =
        round
            .setting()
            .map(setting -> round.wrench().orElseThrow() + " at " + setting.print())
            .orElse("no wrench");
    return SettingRows.rounded(round.torque()) + " (" + mark + ")";
  }

  private String belief() {
    return Believability.explain(
            fastener.tightening().value(),
            fastener.thread().map(Located::value),
            fastener.strength().map(Located::value))
        .sentence();
  }
}
