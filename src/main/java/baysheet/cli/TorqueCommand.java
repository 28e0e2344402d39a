package baysheet.cli;

import baysheet.books.Fastener;
import baysheet.books.FastenerText;
import baysheet.books.Shop;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.plan.content.SocketRack;
import baysheet.record.BenchTorque;
import baysheet.record.BenchTorque.BandSource;
import baysheet.record.BenchTorque.BenchStage;
import baysheet.record.BenchTorque.Joint;
import baysheet.record.BenchTorque.Worked;
import baysheet.report.Located;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.torque.AcrossFlats;
import baysheet.torque.Band;
import baysheet.torque.Friction;
import baysheet.torque.Head;
import baysheet.torque.Plausibility;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.ScrewThread;
import baysheet.torque.SocketFit;
import baysheet.torque.StrengthClass;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningStage;
import baysheet.torque.TorquePlausibility;
import baysheet.torque.Treatment;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The command that works out one tightening at the bench, without a job. */
final class TorqueCommand extends Command {
  private static final Quantity USUAL_BAND = Quantity.of("5", Unit.PERCENT);
  private static final int USUAL_MONTHS = 12;
  private static final String SOCKETS =
      "the wrench is chosen with the shop's sockets for this head, as for a fastener that no impact"
          + " wrench undoes";
  private static final String NO_SOCKETS =
      "the shop's sockets were not looked at: a sheet may name another wrench, whose drive takes"
          + " the socket; give --head, such as \"hex 19 mm\"";

  private final Supplier<LocalDate> today;

  private final BenchOptions options = new BenchOptions();

  TorqueCommand(Console console, Supplier<LocalDate> today) {
    super(
        console,
        "torque",
        "Work out one torque at the bench: units, band, wrench setting, clamp load.");
    this.today = today;
    options.all().forEach(this::add);
  }

  @Override
  public Integer call() {
    OptionParser typed = new OptionParser(line());
    Tightening.Stages stages = options.stages(typed);
    Problems problems = new Problems();
    Optional<Shop> shop = shop(problems);
    if (problems.hasErrors()) {
      console.problems(problems.all(), "the shop folder was not used", false);
      return Exit.of(problems);
    }
    BenchTorque bench = bench(typed, stages, shop);
    console.print(
        options.json()
            ? bench.json()
            : BenchText.print(bench, shop.isPresent() || options.own().given(), notes(typed)));
    return Exit.DONE;
  }

  private Optional<Shop> shop(Problems problems) {
    return options.shop().flatMap(root -> new ShopFolders(Fonts.builtIn()).shop(root, problems));
  }

  private BenchTorque bench(OptionParser typed, Tightening.Stages stages, Optional<Shop> shop) {
    Joining joining = joining(typed, stages);
    Optional<Reach> extension = options.reach(typed);
    LocalDate when = options.day(typed).orElseGet(today);
    List<Wrench> wrenches = wrenches(typed, shop, when);
    int months = shop.map(it -> it.wrenchUse().calibrationMonths()).orElse(USUAL_MONTHS);
    Optional<SocketRack> rack = rack(typed, stages, shop);
    // A figure in doubt is asked about: nothing lies ready to be set.
    Optional<Chooser> chooser =
        joining.plausibility().isDoubtful()
            ? Optional.empty()
            : Optional.of(
                (target, accepted) ->
                    WrenchChoice.choose(
                        target,
                        accepted,
                        extension,
                        wrenches,
                        it -> rack.map(all -> all.fit(it, target)).orElse(SocketFit.NONE_NEEDED),
                        when,
                        months));
    List<BenchStage> worked =
        stages.stages().stream().map(it -> stage(typed, it, shop, chooser)).toList();
    return new BenchTorque(
        stages.print(),
        worked,
        extension,
        options.own().given() ? Optional.of(options.own().accuracy(typed)) : Optional.empty(),
        joining.joint(),
        rack.isPresent(),
        warnings(typed, joining));
  }

  /** The shop's sockets for the head; none where no head was given, or a wrench is described. */
  private Optional<SocketRack> rack(
      OptionParser typed, Tightening.Stages stages, Optional<Shop> shop) {
    Optional<Head> turned = options.own().given() ? Optional.empty() : options.head(typed);
    return shop.flatMap(
        it -> turned.map(head -> new SocketRack(it, fastener(typed, stages, head))));
  }

  /** What was typed, as a set of one. */
  private Fastener fastener(OptionParser typed, Tightening.Stages stages, Head head) {
    Span here = new Source("the command line", "").whole();
    return new FastenerText(
            new FastenerText.Pieces(
                Optional.of(new Located<>(1, here)),
                options.thread(typed).map(it -> new Located<>(it, here)),
                options.strength(typed).map(it -> new Located<>(it, here)),
                Optional.of(new Located<>(head, here)),
                Optional.of(new Located<>(options.treatment(typed), here)),
                Optional.empty(),
                List.of()),
            Optional.of(new Located<>(stages, here)),
            FastenerText.Method.of(
                Optional.empty(),
                Optional.empty(),
                options.reach(typed).map(it -> new Located<>(it, here))),
            List.of(),
            Optional.empty())
        .complete(new Located<>("fastener", here))
        .orElseThrow();
  }

  /** How a wrench is chosen for a torque and its band. */
  private interface Chooser {
    WrenchChoice choose(Quantity target, Band accepted);
  }

  /** A band and whose it is. */
  private record Accepted(Band band, BandSource source) {}

  private BenchStage stage(
      OptionParser typed, TighteningStage stage, Optional<Shop> shop, Optional<Chooser> chooser) {
    return new BenchStage(
        stage,
        stage instanceof TighteningStage.Torque torque
            ? Optional.of(worked(torque.target(), accepted(typed, torque.target(), shop), chooser))
            : Optional.empty());
  }

  private static Worked worked(Target target, Accepted accepted, Optional<Chooser> chooser) {
    return new Worked(
        target,
        accepted.band(),
        accepted.source(),
        chooser.map(it -> it.choose(target.nominal(), accepted.band())));
  }

  private Accepted accepted(OptionParser typed, Target target, Optional<Shop> shop) {
    if (target.band().isPresent()) {
      return new Accepted(target.band().get(), BandSource.BOOK);
    }
    Optional<Quantity> given = options.band(typed);
    if (given.isPresent()) {
      return new Accepted(target.bandOr(given.get()), BandSource.OPTION);
    }
    return shop.map(it -> new Accepted(target.bandOr(it.wrenchUse().band()), BandSource.SHOP))
        .orElseGet(() -> new Accepted(target.bandOr(USUAL_BAND), BandSource.DEFAULT));
  }

  /** What is known of the fastener, and how the torque compares with it. */
  private record Joining(
      Optional<Joint> joint, Optional<StrengthClass> strength, Plausibility plausibility) {
    Optional<ScrewThread> thread() {
      return joint.map(Joint::thread);
    }
  }

  private Joining joining(OptionParser typed, Tightening.Stages stages) {
    Optional<ScrewThread> cut = options.thread(typed);
    Optional<StrengthClass> strong = options.strength(typed);
    Optional<Double> known = options.friction(typed);
    Treatment published = options.treatment(typed);
    Optional<Joint> joint =
        cut.map(
            it ->
                new Joint(
                    it,
                    it.isPitchAssumed(),
                    strong,
                    known.orElseGet(() -> Friction.usual(strong)),
                    stages.plainTorque().map(Target::nominal)));
    Plausibility plausibility =
        known
            .map(it -> TorquePlausibility.of(stages, cut, strong, it))
            .orElseGet(() -> TorquePlausibility.of(stages, cut, strong, published));
    return new Joining(joint, strong, plausibility);
  }

  private List<Wrench> wrenches(OptionParser typed, Optional<Shop> shop, LocalDate when) {
    if (options.own().given()) {
      return List.of(options.own().wrench(typed, when));
    }
    List<Wrench> crib =
        shop.map(it -> it.crib().wrenches().stream().map(Located::value).toList())
            .orElse(List.of());
    return options.wrench().map(wanted -> List.of(named(typed, wanted, crib))).orElse(crib);
  }

  private static Wrench named(OptionParser typed, String wanted, List<Wrench> crib) {
    List<String> names = crib.stream().map(Wrench::name).toList();
    return crib.stream()
        .filter(wrench -> wrench.name().equals(wanted))
        .findFirst()
        .orElseThrow(
            () -> typed.wrong("the shop has no wrench \"" + wanted + '"').near(wanted, names));
  }

  private List<TorqueLine.Warning> warnings(OptionParser typed, Joining joining) {
    List<TorqueLine.Warning> warnings = new ArrayList<>();
    Plausibility plausibility = joining.plausibility();
    if (plausibility.isDoubtful()) {
      warnings.add(warning(ProblemCode.DOES_NOT_FIT, plausibility.sentence()));
    } else if (plausibility.isHigh()) {
      warnings.add(warning(ProblemCode.HIGH_TORQUE, plausibility.sentence()));
    }
    Treatment published = options.treatment(typed);
    options
        .used(typed)
        .flatMap(now -> Friction.warning(published, now, joining.thread(), joining.strength()))
        .ifPresent(it -> warnings.add(warning(ProblemCode.THREAD_TREATMENT, it)));
    return warnings;
  }

  private static TorqueLine.Warning warning(ProblemCode code, String text) {
    return new TorqueLine.Warning(code, new Statement.Written(text));
  }

  private List<String> notes(OptionParser typed) {
    List<String> notes = new ArrayList<>();
    Optional<ScrewThread> cut = options.thread(typed);
    options
        .head(typed)
        .flatMap(turned -> cut.flatMap(it -> AcrossFlats.note(it, turned)))
        .ifPresent(notes::add);
    if (options.shop().isPresent() && !options.own().given()) {
      notes.add(options.head(typed).isPresent() ? SOCKETS : NO_SOCKETS);
    }
    return notes;
  }
}
