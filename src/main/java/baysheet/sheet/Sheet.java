package baysheet.sheet;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.resolve.ItemAt;
import baysheet.torque.Quantity;
import baysheet.torque.ThreePoint;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one page says, in reading order. Everything on the paper and in the record comes from here.
 *
 * @param heading what identifies the job
 * @param qualified steps that need a certificate, with who has it
 * @param cautions every caution, lettered in the order in which they are first met
 * @param evening what has to be done the evening before
 * @param sections the sequence
 * @param torque the torque table in tightening order
 * @param sockets what to lay out
 * @param tools special tools first
 * @param parts new parts, single-use fasteners among them
 * @param consumables what is used up
 * @param tally everything undone that has no torque line
 * @param checks by moment
 * @param support what carries the vehicle, one for each raising; none where it stays on its wheels
 * @param notes the job's own notes
 * @param sources where the printed values come from, each once
 */
public record Sheet(
    Heading heading,
    List<QualifiedWork> qualified,
    List<CautionLine> cautions,
    List<String> evening,
    List<Section> sections,
    List<TorqueLine> torque,
    List<SocketLine> sockets,
    List<ToolLine> tools,
    List<PartLine> parts,
    List<String> consumables,
    List<TallyLine> tally,
    List<CheckLine> checks,
    List<Support> support,
    TimeNeeded time,
    Optional<String> notes,
    List<String> sources) {
  /** At each step that raises a vehicle of which no wheel stays on the floor. */
  public static final String BOTH_ENDS_UP =
      "no wheel stays on the floor, so none can be chocked: use a level floor, and let nobody go under"
          + " the vehicle before all stands are tested";

  public Sheet {
    Objects.requireNonNull(heading);
    qualified = List.copyOf(qualified);
    cautions = List.copyOf(cautions);
    evening = List.copyOf(evening);
    sections = List.copyOf(sections);
    torque = List.copyOf(torque);
    sockets = List.copyOf(sockets);
    tools = List.copyOf(tools);
    parts = List.copyOf(parts);
    consumables = List.copyOf(consumables);
    tally = List.copyOf(tally);
    checks = List.copyOf(checks);
    support = List.copyOf(support);
    sources = List.copyOf(sources);
  }

  /**
   * The same sheet with its id: job, revision, and six hexadecimal digits of the SHA-256 of all
   * that it says, so that two papers with one id say the same.
   */
  public Sheet identified() {
    String hash = Fingerprint.of(RecordText.of(this)).substring(0, 6);
    return with(
        heading.with(
            heading.job() + "-" + heading.revision() + "-" + hash,
            heading.paper(),
            heading.title(),
            heading.works()));
  }

  /** The sixteen characters that its page carries for a machine. */
  public String code() {
    return SheetCode.of(Fingerprint.digest(RecordText.of(this)));
  }

  /** The same sheet for another size of paper; what it says, and so its id, stays. */
  public Sheet on(Shop.Paper paper) {
    return with(heading.with(heading.id(), paper, heading.title(), heading.works()));
  }

  private Sheet with(Heading changed) {
    return new Sheet(
        changed,
        qualified,
        cautions,
        evening,
        sections,
        torque,
        sockets,
        tools,
        parts,
        consumables,
        tally,
        checks,
        support,
        time,
        notes,
        sources);
  }

  /** All steps, in order. */
  public List<SheetStep> steps() {
    return sections.stream().flatMap(section -> section.steps().stream()).toList();
  }

  /**
   * Steps under one heading.
   *
   * @param heading what is printed above them
   * @param note how steps on both sides are gone through, where they begin
   * @param named whether the heading names the place
   * @param places where; two for work that is the same on both sides
   */
  public record Section(
      String heading,
      boolean named,
      Optional<String> note,
      Phase phase,
      Moment moment,
      List<Place> places,
      List<SheetStep> steps) {
    public Section {
      places = List.copyOf(places);
      steps = List.copyOf(steps);
    }
  }

  /** What a step is for. */
  public enum Phase {
    OPEN("open"),
    WORK("work"),
    CLOSE("close"),
    CHECK("check"),
    FINAL("final");

    private final String word;

    Phase(String word) {
      this.word = word;
    }

    /** As written in the record. */
    public String word() {
      return word;
    }

    /** Whether it is a procedure's own work, and not what the planner adds to it. */
    public boolean isWork() {
      return this != CHECK && this != FINAL;
    }
  }

  /**
   * A numbered line of the sequence.
   *
   * @param places where; a tick box for each
   * @param text the sentence
   * @param details what belongs to it: counts, treatment, torque line, support points
   * @param torque numbers of the torque lines it tightens, to the final figure or to snug
   * @param cautions letters
   * @param cautionsAbove those of {@code cautions} whose text stands directly above this step
   * @param minutes for all its places together
   * @param hold whether work stops until a second person has looked and initialled
   * @param entries what is written in here by hand, a line for each, once for each place
   * @param ifStuck ways out, in order
   */
  public record SheetStep(
      int n,
      Phase phase,
      Moment moment,
      List<Place> places,
      String procedure,
      String text,
      List<String> details,
      List<ItemAt> undo,
      List<ItemAt> doUp,
      List<ItemAt> disturb,
      List<String> circuits,
      List<Integer> torque,
      List<String> cautions,
      List<String> cautionsAbove,
      ThreePoint minutes,
      boolean hold,
      List<String> entries,
      Optional<String> because,
      Optional<String> good,
      List<String> ifStuck) {
    public SheetStep {
      places = List.copyOf(places);
      details = List.copyOf(details);
      undo = List.copyOf(undo);
      doUp = List.copyOf(doUp);
      disturb = List.copyOf(disturb);
      circuits = List.copyOf(circuits);
      torque = List.copyOf(torque);
      cautions = List.copyOf(cautions);
      cautionsAbove = List.copyOf(cautionsAbove);
      entries = List.copyOf(entries);
      ifStuck = List.copyOf(ifStuck);
    }
  }

  /**
   * What to lay out to reach a head.
   *
   * @param insert what takes the place of a socket
   */
  public record SocketLine(
      String drive,
      String head,
      int points,
      boolean impact,
      boolean deep,
      int count,
      int firstStep,
      boolean owned,
      Optional<String> insert) {}

  /**
   * A tool, or something else a step or check needs.
   *
   * @param owned whether the crib has it; else it must be borrowed
   * @param ifStuck whether only ways out ask for it
   */
  public record ToolLine(String name, boolean special, boolean owned, boolean ifStuck) {}

  /**
   * A new part.
   *
   * @param places where they go, for left and right may differ; empty for those of the vehicle
   * @param fastener whether it is a single-use fastener
   */
  public record PartLine(String part, int count, List<Place> places, boolean fastener) {
    public PartLine {
      places = List.copyOf(places);
    }
  }

  /** Something off that must be on again, with the steps that do it. */
  public record TallyLine(
      String item, String words, List<Place> places, int count, int off, int on) {
    public TallyLine {
      places = List.copyOf(places);
    }
  }

  /**
   * What carries the raised vehicle.
   *
   * @param raised front, rear or whole
   * @param on what it rests on
   * @param load on the raised axle, or of the whole vehicle on a lift
   * @param each the share of one stand; absent on a lift
   * @param rated what one stand, or the lift, may carry
   * @param points where it is supported
   */
  public record Support(
      String raised,
      String on,
      Quantity load,
      Optional<Quantity> each,
      Quantity rated,
      List<String> points) {
    public Support {
      points = List.copyOf(points);
    }
  }

  /**
   * The time the job needs, in minutes.
   *
   * @param low mean less two standard deviations, not under the sum of the shortest times
   * @param mean PERT mean
   * @param high mean and two standard deviations
   * @param saved what sharing saves
   * @param untimed how many steps carry no minutes and are not in the sum
   */
  public record TimeNeeded(int low, int mean, int high, int saved, int untimed) {}
}
