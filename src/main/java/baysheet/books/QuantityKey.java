package baysheet.books;

import baysheet.report.ProblemCode;
import baysheet.torque.Dimension;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import baysheet.torque.Unit;
import baysheet.yaml.ParseOutcome;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Every key of every file that takes a quantity, with the bounds outside which a figure is a slip.
 *
 * <p>The bounds are wide enough for anything that comes into a small garage. A figure outside them
 * has lost a decimal point, carries another unit or stands at the wrong key.
 */
enum QuantityKey {
  // --- spec books ---

  // Light quadricycles weigh 425 kg at most (Regulation (EU) 168/2013, L6e); 7.5 t is the heaviest
  // vehicle of licence class C1 (Directive 2006/126/EC).
  KERB_MASS("kerb-mass", "a kerb mass", "250 kg", "7500 kg"),
  // Rear-engined cars have about 37 %, unladen vans up to about 70 %. Common practice, no source.
  FRONT_SHARE("front-share", "the share of the front axle", "25 %", "80 %"),
  // From two-seated city cars to long vans. Common practice, no source.
  WHEELBASE("wheelbase", "a wheelbase", "1200 mm", "6000 mm"),
  MASS_BEHIND_FRONT(
      "mass-behind-front", "the distance of the mass from the front axle", "200 mm", "5000 mm"),
  // From the oil of a compressor to a large fuel tank. Common practice, no source.
  FLUID_CAPACITY("fluids.*.capacity", "the capacity of a vehicle", "0.01 L", "150 L"),
  // From a valve core, about 0.3 N·m, to the hub nut of a heavy van. Common practice, no source.
  FASTENER_TORQUE("fasteners.*.*.torque", "the torque of a fastener", "0.1 N·m", "1500 N·m"),
  // Two whole turns; published stages are 30° to 270°. Common practice, no source.
  STAGE_ANGLE("fasteners.*.*.torque", "the angle of a stage", "1°", "720°"),
  // A pass below a tenth tightens nothing. Common practice, no source.
  PASS_SHARE("fasteners.*.*.passes", "the share of a pass", "5 %", "100 %"),
  // Wheels after 50 km to 100 km, heads after 1500 km. Common practice, no source.
  RECHECK("fasteners.*.*.recheck", "the distance to a re-check", "5 km", "5000 km"),
  // From a short crow-foot to a long extension. Common practice, no source.
  REACH_LENGTH("fasteners.*.*.reach.length", "the length of an extension", "5 mm", "1000 mm"),
  // Beyond half a turn it is the same extension on the other side.
  REACH_ANGLE("fasteners.*.*.reach.angle", "the angle of an extension", "0°", "180°"),

  // --- shop ---

  // Narrower than the accuracy of any wrench, or wider than any published tolerance: no source.
  BAND("band", "a band", "1 %", "25 %"),
  // ISO 6789-1 gives 4 % and 6 %; good electronic wrenches reach 0.5 %.
  WRENCH_ACCURACY("crib.wrenches.*.accuracy", "the accuracy of a torque wrench", "0.5 %", "10 %"),
  // Torque screwdrivers begin at a few hundredths; hand wrenches end at 3000 N·m. No source.
  WRENCH_FROM("crib.wrenches.*.from", "the lowest mark of a torque wrench", "0.01 N·m", "1500 N·m"),
  WRENCH_TO("crib.wrenches.*.to", "the end of the scale of a torque wrench", "0.1 N·m", "3000 N·m"),
  WRENCH_STEP("crib.wrenches.*.step", "the step of a scale", "0.01 N·m", "50 N·m"),
  WRENCH_LENGTH("crib.wrenches.*.length", "the length of a torque wrench", "50 mm", "3000 mm"),
  // From stands for light trailers to those for lorries. Common practice, no source.
  STAND_RATED("crib.stands.rated", "the rating of stands", "300 kg", "20000 kg"),
  BAY_RATED("bays.*.rated", "the rating of a lift or jack", "500 kg", "30000 kg"),
  // Test torques of ISO 1711-1 reach from 68.6 N·m to 2795 N·m (from memory).
  DRIVE_LIMIT("drives.*", "the limit of a square drive", "5 N·m", "3000 N·m"),

  // --- procedures and catalogue ---

  // A step that takes longer than a night, as glue that cures, is no step. Common practice.
  TAKES("open.*.takes", "the time of one step", "0.1 min", "900 min"),

  // --- jobs ---

  // No vehicle is known to have run further than a few million kilometres.
  ODOMETER("vehicle.odometer", "the reading of an odometer", "0 km", "3000000 km"),
  LOAD("load.*", "the load over an axle", "0 kg", "3500 kg");

  /** A point before three digits, and something other than zero before the point. */
  private static final Pattern THOUSANDS_OR_DECIMALS =
      Pattern.compile("[1-9][0-9]{0,2}\\.[0-9]{3}");

  /** Units that are mistaken for one another: they differ by a prefix or stand for thousands. */
  private static final List<Unit> PREFIXED =
      List.of(
          Unit.KILOGRAM,
          Unit.TONNE,
          Unit.MILLIMETRE,
          Unit.CENTIMETRE,
          Unit.METRE,
          Unit.LITRE,
          Unit.MILLILITRE);

  private final String path;
  private final String phrase;
  private final Quantity least;
  private final Quantity most;

  QuantityKey(String path, String phrase, String least, String most) {
    this.path = path;
    this.phrase = phrase;
    this.least = bound(least);
    this.most = bound(most);
  }

  /** Bounds are written as people write them, and are never outside their dimension. */
  private static Quantity bound(String text) {
    return Stream.of(Dimension.values())
        .flatMap(dimension -> QuantityText.quantity(text, dimension).found().stream())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no quantity: " + text));
  }

  /** Where the key stands in its file; a star for a name or a place in a list. */
  String path() {
    return path;
  }

  Dimension dimension() {
    return least.unit().dimension();
  }

  /** What a text says at this key. */
  ParseOutcome<Quantity> read(String text) {
    return FigureReaders.then(
        FigureReaders.outcome(ProblemCode.BAD_QUANTITY, QuantityText.ofAnySize(text, dimension())),
        this::check);
  }

  /** The quantity itself, or what makes it a slip at this key. */
  ParseOutcome<Quantity> check(Quantity written) {
    if (!holds(written)) {
      return beyond(written);
    }
    return inThousands(written)
        .filter(this::holds)
        .<ParseOutcome<Quantity>>map(
            thousands -> BookSentences.pointOrThousands(written, thousands))
        .orElseGet(() -> ParseOutcome.ok(written));
  }

  private boolean holds(Quantity quantity) {
    return !quantity.isBelow(least) && !quantity.isAbove(most);
  }

  private ParseOutcome<Quantity> beyond(Quantity written) {
    String how = written.isBelow(least) ? "less" : "more";
    return BookSentences.beyondBounds(written, how, phrase, least, most).near(meant(written));
  }

  /** The point for a thousands sign, or another unit behind the figure, where that is plausible. */
  private Optional<String> meant(Quantity written) {
    Stream<Quantity> otherUnits =
        PREFIXED.contains(written.unit())
            ? PREFIXED.stream()
                .filter(unit -> unit.dimension() == dimension())
                .map(unit -> new Quantity(written.value(), unit))
            : Stream.empty();
    return Stream.concat(inThousands(written).stream(), otherUnits)
        .filter(this::holds)
        .map(quantity -> quantity.print().replace('\u00A0', ' '))
        .findFirst();
  }

  /** What {@code 2.050 kg} is where the point stands between thousands. */
  private static Optional<Quantity> inThousands(Quantity written) {
    return THOUSANDS_OR_DECIMALS.matcher(written.figure()).matches()
        ? Optional.of(new Quantity(written.value().movePointRight(3).setScale(0), written.unit()))
        : Optional.empty();
  }
}
