package baysheet.cli;

import baysheet.books.Shop;
import baysheet.layout.Fonts;
import baysheet.plan.TorqueLine;
import baysheet.record.BenchTorque;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.torque.Band;
import baysheet.torque.Believability;
import baysheet.torque.Dimension;
import baysheet.torque.Friction;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import baysheet.torque.Reach;
import baysheet.torque.Stage;
import baysheet.torque.StrengthClass;
import baysheet.torque.Target;
import baysheet.torque.Thread;
import baysheet.torque.Tightening;
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

/** The command that works out one torque at the bench, without a job. */
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
          "The torque with its unit: 110 N·m, 81 lbf-ft, 100..120 N·m, 110 N·m +/- 5 %%.");

  private final OptionSpec thread =
      text("--thread", "THREAD", "Such as M12x1.5 or 1/2-20 UNF; gives the clamp load.");

  private final OptionSpec strength =
      text("--class", "CLASS", "Such as 10.9 or \"grade 5\"; gives the share of the proof load.");

  private final OptionSpec treatment =
      text(
          "--treatment",
          "WORD",
          "What the torque is published for: dry, oiled, locking-compound …");

  private final OptionSpec used = text("--used", "WORD", "What is on the thread in truth.");

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

  private final OptionSpec name = text("--wrench", "NAME", "Only this wrench of the crib.");

  private final OptionSpec day =
      Options.one(
          "--on",
          "DATE",
          LocalDate.class,
          "The day on which calibrations must hold (default: today).");

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
                value, thread, strength, treatment, used, reach, angle, band, folder, name, day,
                json));
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
    Problems problems = new Problems();
    Optional<Shop> shop = shop(problems);
    if (problems.hasErrors()) {
      console.problems(problems.all(), "the shop folder was not used", false);
      return Exit.of(problems);
    }
    BenchTorque bench = bench(new Typed(spec.commandLine()), shop);
    console.print(
        Options.isGiven(json)
            ? new String(bench.json(), StandardCharsets.UTF_8)
            : BenchText.print(bench, whoseBand(shop), hasWrench(shop)));
    return Exit.DONE;
  }

  private Optional<Shop> shop(Problems problems) {
    return Options.<Path>given(folder)
        .flatMap(root -> new ShopFolders(Fonts.builtIn()).shop(root, problems));
  }

  private boolean hasWrench(Optional<Shop> shop) {
    return shop.isPresent() || own.given();
  }

  private BenchTorque bench(Typed typed, Optional<Shop> shop) {
    Target target = typed.read(QuantityText.target(String.join(" ", Options.all(value))));
    Band accepted =
        target.bandOr(
            typed
                .quantity(band, Dimension.SHARE)
                .or(() -> shop.map(Shop::band))
                .orElse(USUAL_BAND));
    Optional<Reach> extension = reach(typed);
    LocalDate when = Options.<LocalDate>given(day).orElseGet(today);
    WrenchChoice choice =
        WrenchChoice.choose(
            target.nominal(),
            accepted,
            extension,
            wrenches(typed, shop, when),
            when,
            shop.map(Shop::calibrationMonths).orElse(USUAL_MONTHS));
    Optional<Thread> cut = typed.word(thread, Thread::parse);
    Optional<StrengthClass> strong = typed.word(strength, StrengthClass::parse);
    return new BenchTorque(
        target, accepted, extension, choice, cut, strong, warnings(typed, target, cut, strong));
  }

  private Optional<Reach> reach(Typed typed) {
    Optional<Quantity> angled = typed.quantity(angle, Dimension.ANGLE);
    Optional<Quantity> length = typed.quantity(reach, Dimension.LENGTH);
    if (angled.isPresent() && length.isEmpty()) {
      throw typed.wrong("--angle says how an extension stands: give its --reach as well");
    }
    if (length.isPresent() && own.given() && !own.hasLength()) {
      throw typed.wrong("with --reach the wrench's --length counts: give it as well");
    }
    return length.map(it -> new Reach(it, angled.orElse(STRAIGHT_ON)));
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
    if (names.isEmpty()) {
      return "--wrench takes a wrench of a crib: give its --shop as well";
    }
    String nearest = Nearest.of(wanted, names).map(it -> "; did you mean " + it + "?").orElse("");
    return "the crib has no wrench \"" + wanted + "\", only " + String.join(", ", names) + nearest;
  }

  private List<TorqueLine.Warning> warnings(
      Typed typed, Target target, Optional<Thread> cut, Optional<StrengthClass> strong) {
    List<TorqueLine.Warning> warnings = new ArrayList<>();
    Tightening whole = new Tightening.Stages(List.of(new Stage.Torque(target)));
    Believability.of(whole, cut, strong)
        .ifPresent(
            it -> warnings.add(new TorqueLine.Warning(ProblemCode.DOES_NOT_FIT, it.sentence())));
    Treatment published = typed.word(treatment, Treatment::parse).orElse(Treatment.NOT_STATED);
    typed
        .word(used, Treatment::parse)
        .flatMap(now -> Friction.warning(published, now))
        .ifPresent(it -> warnings.add(new TorqueLine.Warning(ProblemCode.THREAD_TREATMENT, it)));
    return warnings;
  }

  private String whoseBand(Optional<Shop> shop) {
    if (!Options.all(band).isEmpty()) {
      return "as typed";
    }
    return shop.isPresent()
        ? "the shop's, for the value has none (common practice, no source)"
        : "for neither the value nor a shop states one (common practice, no source)";
  }
}
