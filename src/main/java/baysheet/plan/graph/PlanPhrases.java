package baysheet.plan.graph;

import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.resolve.Bound;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Setting;
import baysheet.torque.Wrench;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Every sentence that the planner itself puts on a sheet. */
public final class PlanPhrases {
  public static final String ANGLE_GAUGE = "angle gauge";

  /** At ride height, where the fastener is reached from below. */
  public static final List<String> UNDER_WHEELS = List.of("solid wheel blocks", "wheel chocks");

  public static final String DISTANCE = "distance";
  public static final String NO_GUESS =
      "a figure must not be guessed once the vehicle is in pieces";

  /** What a step measures that bushes are tightened at again. */
  public static final String HEIGHT = "height";

  /** What is written down when it is measured a second time. */
  static final List<String> HEIGHT_AGAIN =
      List.of("height now, mm", "largest difference from data, mm");

  static final String HEIGHT_IS_THE_SAME =
      "both heights differ by no more than the largest difference";

  /** At the end of a figure that is read off the vehicle, not looked up. */
  private static final String AS_FOUND = ", as found";

  private PlanPhrases() {}

  public static String of(Bound thing, Shop.Terms terms) {
    return terms == Shop.Terms.AMERICAN ? thing.american() : thing.british();
  }

  /** The word for one or for several. */
  public static String plural(String word, int count) {
    if (count == 1 || word.endsWith("s")) {
      return word;
    }
    return word + "s";
  }

  /**
   * Which wrenches could be set to it if their calibration held on the job's day, with its date.
   * One that was calibrated later has not lapsed: what it was before nobody has written down.
   */
  public static String uncalibrated(List<Wrench> wrenches, LocalDate day) {
    List<String> parts = new ArrayList<>();
    dated(wrenches, wrench -> !wrench.calibrated().isAfter(day), " last calibrated ")
        .ifPresent(lapsed -> parts.add(lapsed + ": lapsed"));
    dated(wrenches, wrench -> wrench.calibrated().isAfter(day), " on ")
        .ifPresent(later -> parts.add("calibrated after this job's date: " + later));
    return String.join("; ", parts) + ", borrow";
  }

  private static Optional<String> dated(
      List<Wrench> wrenches, Predicate<Wrench> which, String between) {
    return wrenches.stream()
        .filter(which)
        .map(wrench -> wrench.name() + between + wrench.calibrated())
        .reduce((one, other) -> one + ", " + other);
  }

  public static String widerThanBand(Setting setting) {
    return "the accuracy of wrench %s is wider than the band".formatted(setting.wrench().name());
  }

  /**
   * Threads are soaked brushed clean, parts in their seats. What is left on a thread would change
   * what its torque does, and on a lining the brake.
   */
  public static List<String> soak(List<String> fasteners, List<String> parts) {
    List<String> what = new ArrayList<>();
    if (!fasteners.isEmpty()) {
      what.add("Apply penetrating oil to these threads, cleaned: " + String.join(", ", fasteners));
    }
    if (!parts.isEmpty()) {
      what.add("Apply penetrating oil to the seats of: " + String.join(", ", parts));
    }
    what.add("Apply no penetrating oil to brake discs, drums and linings");
    if (!fasteners.isEmpty()) {
      what.add("Before refitting, clean the oil off the threads");
    }
    return what;
  }

  public static String findTorque(TorqueLine line) {
    return "Ask for torque and source of the %s (row\u00a0%s): the book gives none"
        .formatted(plural(lower(line.words()), line.count()), line.n());
  }

  public static String torqueWrittenIn(Bound.OfBook thing, Shop.Terms terms) {
    return "Check that torque and source of the %s are recorded before anything is opened"
        .formatted(plural(of(thing, terms), thing.values().count().value()));
  }

  public static String askTorque(TorqueLine line) {
    return "Ask for the correct torque of the %s (row\u00a0%s): the one given is wrong for its thread"
        .formatted(plural(lower(line.words()), line.count()), line.n());
  }

  public static String at(String words, List<Place> places) {
    return words + " (" + places(places) + ")";
  }

  /** The reading at which it is due is written in: the distance counts from the odometer out. */
  public static String recheck(TorqueLine line, Quantity distance) {
    return "Check the torque of the %s (row\u00a0%s) after %s"
        .formatted(plural(lower(line.words()), line.count()), line.n(), distance.print());
  }

  public static String recheckUnknown(TorqueLine line) {
    return "Check the torque of the %s (row\u00a0%s) after the distance in the data"
        .formatted(plural(lower(line.words()), line.count()), line.n());
  }

  public static String lower(String words) {
    int end = words.offsetByCodePoints(0, words.isEmpty() ? 0 : 1);
    return words.substring(0, end).toLowerCase(Locale.ROOT) + words.substring(end);
  }

  public static String socket(Sheet.SocketLine socket) {
    String points = socket.points() > 0 ? ", " + socket.points() + "-point" : "";
    return socket.head().print()
        + " socket, "
        + socket.drive().print()
        + points
        + (socket.impact() ? ", impact" : "")
        + (socket.deep() ? ", deep" : "");
  }

  /** The wrench that a line needs and the crib lacks. */
  public static String wrenchFor(TorqueLine line) {
    return "torque wrench for %s (row\u00a0%s)"
        .formatted(
            line.stages().stream()
                .map(TorqueLine.StageLine::print)
                .collect(Collectors.joining(", ")),
            line.n());
  }

  public static String adapter(String from, String to) {
    // The crib's names are typed, so without the space that does not break.
    return ("adapter " + from + " to " + to).replace('\u00a0', ' ');
  }

  /** With its size and length, for another length needs another setting. */
  public static String crowFoot(Head head, Reach reach) {
    return "%s %s, reach %s"
        .formatted(reach.tool().print(), head.print(), reach.length().print())
        .replace('\u00a0', ' ');
  }

  public static String borrow(String tool) {
    return "Borrow: " + tool;
  }

  /** What is written in for a check: it is looked up, or read off the vehicle as it is found. */
  public static String writtenIn(String figure) {
    return figure.endsWith(AS_FOUND) ? figure : fromData(figure);
  }

  public static String fromData(String figure) {
    return figure + ", from data";
  }

  /** Both of a pair by what they have in common, with the sides named. */
  public static String places(List<Place> places) {
    Optional<Place> axle = places.size() == 2 ? places.get(0).axle() : Optional.empty();
    if (axle.isPresent() && places.get(0).mirror().equals(Optional.of(places.get(1)))) {
      return place(axle.get()) + " left and right";
    }
    return places.stream().map(PlanPhrases::place).collect(Collectors.joining(" and "));
  }

  public static String place(Place place) {
    return place.word().replace('-', ' ');
  }

  /** Whether a figure is the height that bushes are tightened at, with its unit or without. */
  public static boolean isHeight(String figure) {
    return figure.split(",")[0].strip().equals(HEIGHT);
  }

  /** What a message calls a step. */
  public static String words(PlannedStep step) {
    if (step.source() instanceof StepSource.Written written) {
      return written.text();
    } else if (step.source() instanceof StepSource.Back back) {
      return back.text();
    } else if (step.source() instanceof StepSource.Check check) {
      return check.text();
    } else if (step.source() instanceof StepSource.PutBack back) {
      return back.text().orElse("Refit the " + back.name().british());
    }
    return step.source().id();
  }

  public static String capital(String text) {
    int end = text.offsetByCodePoints(0, text.isEmpty() ? 0 : 1);
    return text.substring(0, end).toUpperCase(Locale.ROOT) + text.substring(end);
  }
}
