package baysheet.cli;

import baysheet.torque.Dimension;
import baysheet.torque.Head;
import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Parsed;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.ScrewThread;
import baysheet.torque.StrengthClass;
import baysheet.torque.Tightening;
import baysheet.torque.Treatment;
import baysheet.torque.Unit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** What the torque command takes, read and checked; what would be ignored is refused. */
final class BenchOptions {
  private static final Quantity STRAIGHT_ON = Quantity.of("0", Unit.DEGREE);

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
      text(
          "--head",
          "HEAD",
          "Such as \"hex 18 mm\"; is compared with the thread, and with the sockets of --shop.");

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

  private final OptionSpec json = Options.flag("Print the figures as JSON.", "--json").build();
  private final BenchWrench own = new BenchWrench();

  private static OptionSpec text(String name, String label, String description) {
    return Options.one(name, label, String.class, description);
  }

  List<ArgSpec> all() {
    List<ArgSpec> all =
        new ArrayList<>(
            List.of(
                value, thread, strength, head, friction, treatment, used, reach, angle, band,
                folder, name, day, json));
    all.addAll(own.options());
    return all;
  }

  /** The torque or the stages; options beside them that would be ignored are refused. */
  Tightening.Stages stages(OptionParser typed) {
    Tightening.Stages stages = typed.read(StagesText.parse(String.join(" ", Options.all(value))));
    refuse(typed, stages);
    return stages;
  }

  Optional<ScrewThread> thread(OptionParser typed) {
    return typed.word(thread, ScrewThread::parse);
  }

  Optional<StrengthClass> strength(OptionParser typed) {
    return typed.word(strength, StrengthClass::parse);
  }

  Optional<Head> head(OptionParser typed) {
    return typed.word(head, Head::parse);
  }

  Optional<Double> friction(OptionParser typed) {
    return typed.word(friction, FrictionText::parse);
  }

  Treatment treatment(OptionParser typed) {
    return typed.word(treatment, Treatment::parse).orElse(Treatment.NOT_STATED);
  }

  Optional<Treatment> used(OptionParser typed) {
    return typed.word(used, Treatment::parse);
  }

  Optional<Reach> reach(OptionParser typed) {
    Optional<Quantity> angled = typed.quantity(angle, Dimension.ANGLE);
    return typed
        .quantity(reach, Dimension.LENGTH)
        .map(it -> new Reach(it, angled.orElse(STRAIGHT_ON)));
  }

  Optional<Quantity> band(OptionParser typed) {
    return typed.quantity(band, Dimension.SHARE);
  }

  Optional<Path> shop() {
    return Options.given(folder);
  }

  Optional<String> wrench() {
    return Options.given(name);
  }

  Optional<LocalDate> day(OptionParser typed) {
    return typed.word(day, IsoDate::parse);
  }

  boolean json() {
    return Options.isGiven(json);
  }

  /** A wrench that is described rather than named. */
  BenchWrench own() {
    return own;
  }

  private static boolean isGiven(OptionSpec option) {
    return Options.given(option).isPresent();
  }

  private void refuse(OptionParser typed, Tightening.Stages stages) {
    // What the options say is read first: a slip in one is reported before it is called useless.
    readAll(typed);
    boolean toleranced = stages.torques().stream().allMatch(it -> it.band().isPresent());
    refuse(typed, band, toleranced, "the value has a tolerance of its own");
    needs(typed, strength, isGiven(thread), "--thread");
    needs(typed, friction, isGiven(thread), "--thread");
    needs(typed, head, isGiven(thread) || isGiven(folder), "--thread or --shop");
    boolean compared = isGiven(thread) && isGiven(strength) && !isGiven(friction);
    needs(typed, treatment, compared || isGiven(used), "--used, or --thread and --class");
    needs(typed, angle, isGiven(reach), "the --reach of the extension");
    needs(typed, name, isGiven(folder), "--shop");
    refuse(typed, name, own.given(), "another wrench is described with --from, --to and --step");
    needs(typed, day, isGiven(folder), "--shop, whose calibrations it is about");
    refuse(typed, day, own.given(), "nothing is known of the calibration of the wrench described");
    needs(
        typed, reach, isGiven(folder) || own.given(), "a wrench: --shop, or --from, --to, --step");
    if (own.given()) {
      own.refuse(typed, isGiven(reach));
    }
  }

  private void readAll(OptionParser typed) {
    thread(typed);
    strength(typed);
    head(typed);
    friction(typed);
    treatment(typed);
    used(typed);
    reach(typed);
    band(typed);
    day(typed);
  }

  private static void needs(OptionParser typed, OptionSpec option, boolean present, String what) {
    refuse(typed, option, !present, "it needs " + what);
  }

  private static void refuse(OptionParser typed, OptionSpec option, boolean ignored, String why) {
    if (isGiven(option) && ignored) {
      throw typed.wrong(option.longestName() + " would be ignored: " + why);
    }
  }

  /** Reads a coefficient of friction: {@code 0.14}. */
  private static final class FrictionText {
    // Below stands nothing in VDI 2230, table A5; 0.5 is dry stainless steel, a lost point is ten.
    private static final double LEAST = 0.03;
    private static final double MOST = 0.6;
    private static final Pattern FIGURE = Pattern.compile("[01](?:\\.[0-9]{1,4})?");

    private FrictionText() {}

    static ParseResult<Double> parse(String text) {
      String word = text.strip();
      if (FIGURE.matcher(word).matches()) {
        double figure = Double.parseDouble(word);
        if (figure >= LEAST && figure <= MOST) {
          return new Parsed<>(figure);
        }
      }
      return new ParseFailure<>(
          '"' + word + "\" is no coefficient of friction",
          "a figure from 0.03 to 0.6, such as 0.14");
    }
  }

  /** Reads a torque or several stages from a command line: {@code 25 N·m, 50 N·m, +90°}. */
  private static final class StagesText {
    private static final Pattern BRACKETS = Pattern.compile("^\\[(.*)]$");

    // A comma between digits would be a decimal one, which is no stage's end but a slip.
    private static final Pattern BETWEEN =
        Pattern.compile("(?<![0-9]),\\s*|,\\s+|\\s+(?=\\+\\s*[0-9]+(?:\\.[0-9]+)?\\s*(?:°|º|deg))");

    private StagesText() {}

    static ParseResult<Tightening.Stages> parse(String text) {
      String bare = BRACKETS.matcher(text.strip()).replaceFirst("$1");
      return Tightening.parse(List.of(BETWEEN.split(bare)))
          .then(
              read ->
                  read instanceof Tightening.Stages stages
                      ? new Parsed<>(stages)
                      : new ParseFailure<>(
                          '"' + text.strip() + "\" is no torque", "a torque such as 110 N·m"));
    }
  }
}
