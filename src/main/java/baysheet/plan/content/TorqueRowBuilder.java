package baysheet.plan.content;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.report.Located;
import baysheet.report.ProblemCode;
import baysheet.resolve.Bound;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Band;
import baysheet.torque.Friction;
import baysheet.torque.Plausibility;
import baysheet.torque.Quantity;
import baysheet.torque.Rounding;
import baysheet.torque.Setting;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningStage;
import baysheet.torque.Treatment;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Works out one torque line: stages, wrench settings, socket, order, treatment and warnings. */
final class TorqueRowBuilder {
  private final Resolved resolved;
  private final List<BoundStep.BoundApply> applied;
  private final WrenchSelection selection;
  private final SocketNeeds sockets;
  private final List<ItemAt> items;
  private final Bound.OfBook thing;
  private final Fastener fastener;
  private final Plausibility plausibility;

  /**
   * For the same fasteners at one place or at mirrored places.
   *
   * @param applied what the steps of the job put on things, in order
   */
  TorqueRowBuilder(
      Resolved resolved,
      List<BoundStep.BoundApply> applied,
      WrenchSelection selection,
      SocketNeeds sockets,
      List<ItemAt> items) {
    this.resolved = resolved;
    this.applied = applied;
    this.selection = selection;
    this.sockets = sockets;
    this.items = items;
    this.thing = (Bound.OfBook) resolved.thing(items.get(0));
    this.fastener = thing.values();
    this.plausibility = fastener.plausibility();
  }

  TorqueLine line(
      int n, List<Place> places, Moment moment, boolean twoVisits, SequenceLetters letters) {
    List<TorqueLine.StageLine> stages = stages();
    return new TorqueLine(
        n,
        thing.item().item(),
        capital(thing.in(resolved.shop().terms())),
        places,
        fastener.count().value(),
        kind(),
        new TorqueLine.Hardware(
            fastener.written().pieces().thread().map(thread -> thread.value().designation()),
            fastener.written().pieces().strength().map(strength -> strength.value().label()),
            fastener.written().pieces().head().map(Located::value),
            sockets.of(items)),
        new TorqueLine.Method(
            stages,
            WrenchSelector.passes(fastener),
            rounds(),
            SequenceLetters.positions(fastener),
            letters.drawing(fastener)),
        new TorqueLine.Refitting(
            fastener.threads(),
            reuse(),
            fastener.written().method().lock().map(Located::value),
            fastener.written().remarks()),
        new TorqueLine.Visits(
            moment,
            twoVisits && fastener.moment() == Fastener.Moment.RIDE_HEIGHT,
            twoVisits,
            fastener.written().method().recheck().map(Located::value)),
        new TorqueLine.Origin(
            thing.source(),
            thing.overridden(),
            thing.replaced().map(Tightening::print),
            warnings(stages)));
  }

  private TorqueLine.Kind kind() {
    Tightening tightening = fastener.tightening().value();
    if (tightening instanceof Tightening.Snug) {
      return TorqueLine.Kind.SNUG;
    }
    return tightening instanceof Tightening.Unknown
        ? TorqueLine.Kind.UNKNOWN
        : TorqueLine.Kind.PUBLISHED;
  }

  private TorqueLine.Reuse reuse() {
    return fastener
        .written()
        .pieces()
        .reuse()
        .map(reuse -> reuse.value() ? TorqueLine.Reuse.AGAIN : TorqueLine.Reuse.NEW)
        .orElse(TorqueLine.Reuse.NOT_STATED);
  }

  private List<TorqueLine.StageLine> stages() {
    List<TorqueLine.StageLine> stages = new ArrayList<>();
    Iterator<WrenchChoice> choices = selection.stages().iterator();
    if (fastener.tightening().value() instanceof Tightening.Stages given) {
      for (TighteningStage stage : given.stages()) {
        stages.add(stage(stage, choices));
      }
    }
    return stages;
  }

  private TorqueLine.StageLine stage(TighteningStage stage, Iterator<WrenchChoice> choices) {
    if (stage instanceof TighteningStage.Torque torque) {
      Band band = torque.target().bandOr(resolved.shop().wrenchUse().band());
      return plausibility.isDoubtful()
          ? unset(torque.target(), band)
          : torque(torque.target(), band, choices.next());
    }
    return stage instanceof TighteningStage.Angle angle
        ? new TorqueLine.StageLine.Angle(angle.angle())
        : new TorqueLine.StageLine.Loosen();
  }

  private TorqueLine.StageLine torque(Target target, Band band, WrenchChoice choice) {
    Optional<Setting> setting = choice.setting();
    return new TorqueLine.StageLine.Torque(
        target.nominal(),
        target.written(),
        second(target.nominal(), band),
        band.printed(),
        setting.filter(Setting::readsOtherwise).map(chosen -> chosen.reading(band)),
        setting.map(chosen -> chosen.wrench().name()),
        setting.map(Setting::setting),
        setting.map(chosen -> Rounding.within(chosen.arrives(), band)),
        setting.map(Setting::insideBand).orElse(false),
        trouble(choice));
  }

  /**
   * Only the book's own words: a figure that does not fit must not lie ready as a mark to be set,
   * in whatever unit.
   */
  private static TorqueLine.StageLine unset(Target target, Band band) {
    return new TorqueLine.StageLine.Torque(
        target.nominal(),
        target.written(),
        Optional.empty(),
        band.printed(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty());
  }

  private List<TorqueLine.Round> rounds() {
    return selection.rounds().stream()
        .map(
            round ->
                new TorqueLine.Round(
                    round.percent(),
                    round.torque(),
                    round.setting().map(set -> set.wrench().name()),
                    round.setting().map(Setting::setting),
                    round.with()))
        .toList();
  }

  /** The first of the shop's two units in which the figure looks different from the book's. */
  private Optional<Quantity> second(Quantity target, Band band) {
    return resolved.shop().units().torque().stream()
        .filter(unit -> Rounding.isOther(target, unit))
        .findFirst()
        .map(unit -> Rounding.converted(target, unit, band));
  }

  private Optional<Statement> trouble(WrenchChoice choice) {
    return switch (choice.outcome()) {
      case NONE_IN_RANGE -> Optional.of(Statement.Plain.NO_WRENCH);
      case ONLY_LAPSED -> Optional.of(uncalibrated(choice.lapsed()));
      case SET ->
          choice
              .setting()
              .filter(setting -> !setting.insideBand())
              .map(setting -> new Statement.WiderThanBand(setting.wrench().name()));
    };
  }

  /** One that was calibrated after the day has not lapsed: nobody wrote down how it was before. */
  private Statement uncalibrated(List<Wrench> wrenches) {
    Map<Boolean, List<Statement.Calibrated>> later =
        wrenches.stream()
            .collect(
                Collectors.partitioningBy(
                    wrench -> wrench.calibrated().isAfter(resolved.date()),
                    Collectors.mapping(
                        wrench ->
                            Statement.Calibrated.of(
                                wrench, resolved.shop().wrenchUse().calibrationMonths()),
                        Collectors.toList())));
    return new Statement.Uncalibrated(later.get(false), later.get(true));
  }

  private static String capital(String text) {
    int end = text.offsetByCodePoints(0, text.isEmpty() ? 0 : 1);
    return text.substring(0, end).toUpperCase(Locale.ROOT) + text.substring(end);
  }

  private List<TorqueLine.Warning> warnings(List<TorqueLine.StageLine> stages) {
    List<TorqueLine.Warning> warnings = new ArrayList<>();
    if (plausibility.isDoubtful()) {
      warnings.add(
          warning(ProblemCode.DOES_NOT_FIT, new Statement.Written(plausibility.sentence())));
    } else if (plausibility.isHigh()) {
      warnings.add(warning(ProblemCode.HIGH_TORQUE, Statement.Plain.HIGH_TORQUE));
    }
    treatments().forEach(text -> warnings.add(warning(ProblemCode.THREAD_TREATMENT, text)));
    for (TorqueLine.StageLine stage : stages) {
      if (stage instanceof TorqueLine.StageLine.Torque torque) {
        torque.trouble().ifPresent(text -> warnings.add(warning(ProblemCode.WRENCH, text)));
      }
    }
    return warnings;
  }

  private static TorqueLine.Warning warning(ProblemCode code, Statement text) {
    return new TorqueLine.Warning(code, text);
  }

  /**
   * What the steps put on this thread that its torque was not published for. A cleaner leaves
   * nothing on it.
   */
  private List<Statement> treatments() {
    return applied.stream()
        .filter(apply -> apply.item().filter(items::contains).isPresent())
        .map(BoundStep.BoundApply::product)
        .flatMap(product -> treated(product).stream())
        .distinct()
        .toList();
  }

  private Optional<Statement> treated(String product) {
    Optional<Treatment> used =
        resolved
            .catalogue()
            .vocabulary()
            .onThread(product)
            .or(() -> Treatment.parse(product).found());
    if (used.isEmpty()) {
      return Optional.of(new Statement.UndeclaredProduct(product));
    }
    return used.filter(it -> it != Treatment.DRY)
        .flatMap(
            it ->
                Friction.warning(
                    fastener.threads(),
                    it,
                    fastener.written().pieces().thread().map(Located::value),
                    fastener.written().pieces().strength().map(Located::value)))
        .map(Statement.Written::new);
  }
}
