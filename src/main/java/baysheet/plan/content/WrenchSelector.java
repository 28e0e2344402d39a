package baysheet.plan.content;

import baysheet.books.Fastener;
import baysheet.books.Step;
import baysheet.books.ToolNames;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.torque.Band;
import baysheet.torque.Drive;
import baysheet.torque.Quantity;
import baysheet.torque.Setting;
import baysheet.torque.SocketChoice;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningPasses;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Selects for every fastener the wrenches of its stages and rounds and the sockets for them. */
public final class WrenchSelector {
  private final Resolved resolved;
  private final List<Wrench> crib;
  private final Map<ItemAt, List<PlannedStep>> undoing = new HashMap<>();
  private final Map<ItemAt, WrenchSelection> selected = new HashMap<>();

  public WrenchSelector(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.crib = resolved.shop().crib().wrenches().stream().map(Located::value).toList();
    lines.forEach(line -> line.all().forEach(this::add));
  }

  private void add(PlannedStep step) {
    step.undo().forEach(item -> undoing.computeIfAbsent(item, key -> new ArrayList<>()).add(step));
  }

  /** What a fastener is tightened with: selected once, for each set is asked about many times. */
  WrenchSelection of(ItemAt item) {
    return selected.computeIfAbsent(item, this::select);
  }

  private WrenchSelection select(ItemAt item) {
    Fastener fastener = ((Bound.OfBook) resolved.thing(item)).values();
    boolean seized = false;
    boolean impact = false;
    for (PlannedStep step : undoing.getOrDefault(item, List.of())) {
      seized |= step.seizes() != Step.Seizes.NEVER;
      impact |= step.impact();
    }
    return new OneSet(fastener, new SocketRack(resolved.shop(), fastener, seized, impact)).select();
  }

  /** The rounds in which a set is tightened: the book's own, or the usual ones. */
  static TighteningPasses passes(Fastener fastener) {
    boolean ordered = fastener.written().method().order().isPresent();
    return fastener
        .written()
        .method()
        .passes()
        .map(Located::value)
        .orElseGet(
            () ->
                TighteningPasses.usual(
                    fastener.count().value(), ordered, fastener.tightening().value()));
  }

  /** One set of fasteners. */
  private final class OneSet {
    // An early round only has to be even, so any mark near its share will do. No source.
    private static final Quantity EARLY_BAND = Quantity.of("10", Unit.PERCENT);

    private final Fastener fastener;
    private final SocketRack rack;
    private final List<Target> torques;
    private final boolean doubtful;
    private final Set<SocketChoice> others = new LinkedHashSet<>();
    private final Set<String> adapters = new LinkedHashSet<>();

    OneSet(Fastener fastener, SocketRack rack) {
      this.fastener = fastener;
      this.rack = rack;
      this.doubtful = fastener.plausibility().isDoubtful();
      this.torques =
          fastener.tightening().value() instanceof Tightening.Stages stages
              ? stages.torques()
              : List.of();
    }

    /** The last torque first: what tightens it decides on the socket, and the rest goes by that. */
    WrenchSelection select() {
      List<WrenchChoice> stages = doubtful ? List.of() : torques.stream().map(this::stage).toList();
      Optional<Setting> last = last(stages);
      Optional<SocketChoice> socket =
          fastener.written().pieces().head().map(head -> rack.socket(last.map(Setting::wrench)));
      for (int i = 0; i < stages.size(); i++) {
        Quantity torque = torques.get(i).nominal();
        stages.get(i).setting().ifPresent(set -> joined(set.wrench(), torque, socket));
      }
      List<WrenchSelection.RoundChoice> rounds = rounds(last, stages, socket);
      return new WrenchSelection(
          stages,
          rounds,
          socket,
          rack.impactBeside(socket),
          List.copyOf(others),
          List.copyOf(adapters),
          fastener.reach());
    }

    private static Optional<Setting> last(List<WrenchChoice> stages) {
      return stages.isEmpty() ? Optional.empty() : stages.get(stages.size() - 1).setting();
    }

    private WrenchChoice stage(Target target) {
      Band band = target.bandOr(resolved.shop().wrenchUse().band());
      return choose(target.nominal(), band, crib);
    }

    private WrenchChoice choose(Quantity torque, Band band, List<Wrench> wrenches) {
      return WrenchChoice.choose(
          torque,
          band,
          fastener.reach(),
          wrenches,
          wrench -> rack.fit(wrench, torque),
          resolved.date(),
          resolved.shop().wrenchUse().calibrationMonths());
    }

    /** Rounds of a set; none where it is tightened in one go, in stages, or without a figure. */
    private List<WrenchSelection.RoundChoice> rounds(
        Optional<Setting> full, List<WrenchChoice> stages, Optional<SocketChoice> socket) {
      TighteningPasses passes = passes(fastener);
      boolean plain =
          fastener.tightening().value() instanceof Tightening.Stages all
              && all.plainTorque().isPresent();
      if (passes.percents().size() == 1 || !plain) {
        return List.of();
      }
      List<Quantity> shares = passes.of(torques.get(0).nominal());
      return IntStream.range(0, shares.size())
          .mapToObj(
              i -> {
                boolean last = i + 1 == shares.size();
                Optional<WrenchChoice> choice =
                    doubtful
                        ? Optional.empty()
                        : Optional.of(last ? stages.get(0) : early(shares.get(i), full));
                Optional<String> with =
                    choice
                        .flatMap(WrenchChoice::setting)
                        .flatMap(set -> joined(set.wrench(), shares.get(i), socket));
                return new WrenchSelection.RoundChoice(
                    passes.percents().get(i), shares.get(i), choice, with);
              })
          .toList();
    }

    /** On the wrench of the last round where that can be, else on another of the crib. */
    private WrenchChoice early(Quantity share, Optional<Setting> full) {
      Band even = Target.plain(share).bandOr(EARLY_BAND);
      List<Wrench> same = full.map(Setting::wrench).stream().toList();
      WrenchChoice kept = choose(share, even, same);
      return kept.setting().isPresent() ? kept : choose(share, even, crib);
    }

    /** What a wrench needs besides the set's socket; laid out from here on. */
    private Optional<String> joined(Wrench wrench, Quantity torque, Optional<SocketChoice> set) {
      if (set.isEmpty() || set.get().drive() == wrench.drive()) {
        return Optional.empty();
      }
      Drive square = set.get().drive();
      if (rack.isInsert()
          || rack.hasAdapter(wrench.drive(), square)
          || !rack.isMadeFor(wrench.drive())) {
        return Optional.of(adapter(wrench.drive(), square));
      }
      Optional<SocketChoice> other =
          rack.inSquare(wrench.drive(), torque).or(() -> rack.adapted(wrench));
      SocketChoice socket = other.orElseGet(() -> rack.toBorrow(wrench.drive()));
      others.add(socket);
      return Optional.of(
          socket.drive() == wrench.drive()
              ? ToolNames.socket(socket.drive())
              : adapter(wrench.drive(), socket.drive()));
    }

    private String adapter(Drive from, Drive to) {
      String name = SocketRack.adapter(from, to);
      adapters.add(name);
      return name;
    }
  }
}
