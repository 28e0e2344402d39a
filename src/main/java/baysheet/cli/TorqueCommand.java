package baysheet.cli;

import baysheet.books.Shop;
import baysheet.layout.Fonts;
import baysheet.plan.TorqueLine;
import baysheet.record.BenchTorque;
import baysheet.record.BenchTorque.BandSource;
import baysheet.record.BenchTorque.BenchStage;
import baysheet.record.BenchTorque.Joint;
import baysheet.record.BenchTorque.Worked;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.torque.AcrossFlats;
import baysheet.torque.Band;
import baysheet.torque.Dimension;
import baysheet.torque.Friction;
import baysheet.torque.Head;
import baysheet.torque.Plausibility;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Stage;
import baysheet.torque.StrengthClass;
import baysheet.torque.Target;
import baysheet.torque.Thread;
import baysheet.torque.Tightening;
import baysheet.torque.TorquePlausibility;
import baysheet.torque.Treatment;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that works out one tightening at the bench, without a job. */
final class TorqueCommand implements Callable<Integer> {
  private static final Quantity USUAL_BAND = Quantity.of("5", Unit.PERCENT);
  private static final Quantity STRAIGHT_ON = Quantity.of("0", Unit.DEGREE);
  private static final int USUAL_MONTHS = 12;

  private final Console console;
  private final Supplier<LocalDate> today;

  private final PositionalParamSpec value =
      Options.rest(
          "VALUE",
          "1..*",
          String.class,
          "The torque with its unit: 110 N·m, 81 lbf-ft, 100..120 N·m, 110 N·m +/- 5 %%; or stages:"
              + " 25 N·m, 50 N·m, +90°.");

  private final OptionSpec thread =
      text("--thread", "THREAD", "Such as M12x1.5 or 1/2-20 UNF; gives the clamp load.");

  private final OptionSpec strength =
      text(
          "--class",
          "CLASS",
          "Such as 10.9, \"grade 5\" or A2-70; gives the share of the proof load.");

  private final OptionSpec head =
      text("--head", "HEAD", "Such as \"hex 18 mm\"; is compared with the thread.");

  private final OptionSpec friction =
      text(
          "--friction",
          "COEFFICIENT",
          "In thread and under the head, where it is known, such as 0.14.");

  private final OptionSpec treatment =
      text(
          "--treatment",
          "WORD",
          "What the torque is published for: dry, oiled, locking-compound …");

  private final OptionSpec used = text("--used", "WORD", "What the thread has on it instead.");

  private final OptionSpec reach =
      Options.quantity(
          "--reach", "LENGTH", "An extension on the wrench's square, from there to the fastener.");

  private final OptionSpec angle =
      Options.quantity(
          "--angle", "ANGLE", "Between extension and wrench; 0° is straight on (the default).");

  private final OptionSpec band =
      Options.quantity(
          "--band", "SHARE", "Accepted either way where the value has no tolerance of its own.");

  private final OptionSpec folder =
      Options.one("--shop", "DIR", Path.class, "Take wrenches and band from this shop folder.");

  private final OptionSpec name = text("--wrench", "NAME", "Only this wrench of the shop.");

  private final OptionSpec day =
      text("--on", "DATE", "The day on which calibrations must hold (default: today).");

  private final OptionSpec json = Options.flag("--json", "Print the figures as JSON.");
  private final BenchWrench own = new BenchWrench();
  private final CommandSpec spec = described();

  TorqueCommand(Console console, Supplier<LocalDate> today) {
    this.console = console;
    this.today = today;
  }

  private static OptionSpec text(String name, String label, String description) {
    return Options.one(name, label, String.class, description);
  }

  private CommandSpec described() {
    List<ArgSpec> takes =
        new ArrayList<>(
            List.of(
                value, thread, strength, head, friction, treatment, used, reach, angle, band,
                folder, name, day, json));
    takes.addAll(own.options());
    return Options.command(
        "torque",
        "Work out one torque at the bench: units, band, wrench setting, clamp load.",
        this,
        takes);
  }

  CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    Typed typed = new Typed(spec.commandLine());
    Tightening.Stages stages = typed.read(StagesText.parse(String.join(" ", Options.all(value))));
    new IgnoredOptions(typed).refuse(stages);
    Problems problems = new Problems();
    Optional<Shop> shop = shop(problems);
    if (problems.hasErrors()) {
      console.problems(problems.all(), "the shop folder was not used", false);
      return Exit.of(problems);
    }
    BenchTorque bench = bench(typed, stages, shop);
    console.print(
        Options.isGiven(json)
            ? new String(bench.json(), StandardCharsets.UTF_8)
            : BenchText.print(bench, shop.isPresent() || own.given(), notes(typed)));
    return Exit.DONE;
  }

  private Optional<Shop> shop(Problems problems) {
    return Options.<Path>given(folder)
        .flatMap(root -> new ShopFolders(Fonts.builtIn()).shop(root, problems));
  }

  private static boolean isGiven(OptionSpec option) {
    return Options.given(option).isPresent();
  }

  private BenchTorque bench(Typed typed, Tightening.Stages stages, Optional<Shop> shop) {
    Joining joining = joining(typed, stages);
    Optional<Reach> extension = reach(typed);
    LocalDate when = typed.word(day, IsoDate::parse).orElseGet(today);
    List<Wrench> wrenches = wrenches(typed, shop, when);
    int months = shop.map(Shop::calibrationMonths).orElse(USUAL_MONTHS);
    // A figure in doubt is asked about: nothing lies ready to be set.
    Optional<Chooser> chooser =
        joining.plausibility().isDoubtful()
            ? Optional.empty()
            : Optional.of(
                (target, accepted) ->
                    WrenchChoice.choose(target, accepted, extension, wrenches, when, months));
    List<BenchStage> worked =
        stages.stages().stream().map(it -> stage(typed, it, shop, chooser)).toList();
    return new BenchTorque(
        stages.print(),
        worked,
        extension,
        own.given() ? Optional.of(own.accuracy(typed)) : Optional.empty(),
        joining.joint(),
        warnings(typed, joining));
  }

  /** How a wrench is chosen for a torque and its band. */
  private interface Chooser {
    WrenchChoice choose(Quantity target, Band accepted);
  }

  /** A band and whose it is. */
  private record Accepted(Band band, BandSource source) {}

  private BenchStage stage(
      Typed typed, Stage stage, Optional<Shop> shop, Optional<Chooser> chooser) {
    return new BenchStage(
        stage,
        stage instanceof Stage.Torque torque
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

  private Accepted accepted(Typed typed, Target target, Optional<Shop> shop) {
    if (target.band().isPresent()) {
      return new Accepted(target.band().get(), BandSource.BOOK);
    }
    Optional<Quantity> given = typed.quantity(band, Dimension.SHARE);
    if (given.isPresent()) {
      return new Accepted(target.bandOr(given.get()), BandSource.OPTION);
    }
    return shop.map(it -> new Accepted(target.bandOr(it.band()), BandSource.SHOP))
        .orElseGet(() -> new Accepted(target.bandOr(USUAL_BAND), BandSource.DEFAULT));
  }

  /** What is known of the fastener, and how the torque compares with it. */
  private record Joining(
      Optional<Joint> joint, Optional<StrengthClass> strength, Plausibility plausibility) {
    Optional<Thread> thread() {
      return joint.map(Joint::thread);
    }
  }

  private Joining joining(Typed typed, Tightening.Stages stages) {
    Optional<Thread> cut = typed.word(thread, Thread::parse);
    Optional<StrengthClass> strong = typed.word(strength, StrengthClass::parse);
    Optional<Double> known = typed.word(friction, FrictionText::parse);
    Treatment published = typed.word(treatment, Treatment::parse).orElse(Treatment.NOT_STATED);
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

  private Optional<Reach> reach(Typed typed) {
    Optional<Quantity> angled = typed.quantity(angle, Dimension.ANGLE);
    return typed
        .quantity(reach, Dimension.LENGTH)
        .map(it -> new Reach(it, angled.orElse(STRAIGHT_ON)));
  }

  private List<Wrench> wrenches(Typed typed, Optional<Shop> shop, LocalDate when) {
    if (own.given()) {
      return List.of(own.wrench(typed, when));
    }
    List<Wrench> crib =
        shop.map(it -> it.crib().wrenches().stream().map(Located::value).toList())
            .orElse(List.of());
    return Options.<String>given(name)
        .map(wanted -> List.of(named(typed, wanted, crib)))
        .orElse(crib);
  }

  private static Wrench named(Typed typed, String wanted, List<Wrench> crib) {
    List<String> names = crib.stream().map(Wrench::name).toList();
    return crib.stream()
        .filter(wrench -> wrench.name().equals(wanted))
        .findFirst()
        .orElseThrow(() -> typed.wrong(unknown(wanted, names)));
  }

  private static String unknown(String wanted, List<String> names) {
    String nearest = Nearest.of(wanted, names).map(it -> "; did you mean " + it + "?").orElse("");
    return "the shop has no wrench \"" + wanted + "\", only " + String.join(", ", names) + nearest;
  }

  private List<TorqueLine.Warning> warnings(Typed typed, Joining joining) {
    List<TorqueLine.Warning> warnings = new ArrayList<>();
    Plausibility plausibility = joining.plausibility();
    if (plausibility.isDoubtful()) {
      warnings.add(new TorqueLine.Warning(ProblemCode.DOES_NOT_FIT, plausibility.sentence()));
    } else if (plausibility.isHigh()) {
      warnings.add(new TorqueLine.Warning(ProblemCode.HIGH_TORQUE, plausibility.sentence()));
    }
    Treatment published = typed.word(treatment, Treatment::parse).orElse(Treatment.NOT_STATED);
    typed
        .word(used, Treatment::parse)
        .flatMap(now -> Friction.warning(published, now, joining.thread(), joining.strength()))
        .ifPresent(it -> warnings.add(new TorqueLine.Warning(ProblemCode.THREAD_TREATMENT, it)));
    return warnings;
  }

  private List<String> notes(Typed typed) {
    Optional<Thread> cut = typed.word(thread, Thread::parse);
    return typed
        .word(head, Head::parse)
        .flatMap(turned -> cut.flatMap(it -> AcrossFlats.note(it, turned)))
        .map(List::of)
        .orElseGet(List::of);
  }

  /** Options that would not be looked at: whoever typed one relies on it. */
  private final class IgnoredOptions {
    private final Typed typed;

    IgnoredOptions(Typed typed) {
      this.typed = typed;
    }

    void refuse(Tightening.Stages stages) {
      // What the options say is read first: a slip in one is told before it is called useless.
      joining(typed, stages);
      reach(typed);
      typed.word(day, IsoDate::parse);
      boolean toleranced = stages.torques().stream().allMatch(it -> it.band().isPresent());
      refuse(band, toleranced, "the value has a tolerance of its own");
      needs(strength, isGiven(thread), "--thread");
      needs(friction, isGiven(thread), "--thread");
      needs(head, isGiven(thread), "--thread");
      boolean compared = isGiven(thread) && isGiven(strength) && !isGiven(friction);
      needs(treatment, compared || isGiven(used), "--used, or --thread and --class");
      needs(angle, isGiven(reach), "the --reach of the extension");
      needs(name, isGiven(folder), "--shop");
      refuse(name, own.given(), "another wrench is described with --from, --to and --step");
      needs(day, isGiven(folder), "--shop, whose calibrations it is about");
      refuse(day, own.given(), "nothing is known of the calibration of the wrench described");
      needs(reach, isGiven(folder) || own.given(), "a wrench: --shop, or --from, --to, --step");
      if (own.given()) {
        own.refuse(typed, isGiven(reach));
      }
    }

    private void needs(OptionSpec option, boolean present, String what) {
      refuse(option, !present, "it needs " + what);
    }

    private void refuse(OptionSpec option, boolean ignored, String why) {
      if (isGiven(option) && ignored) {
        throw typed.wrong(option.longestName() + " would be ignored: " + why);
      }
    }
  }
}
