package baysheet.sheet;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.resolve.ItemAt;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Reach;
import baysheet.torque.ThreePoint;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one page says, in reading order. Everything on the paper and in the record comes from here.
 *
 * @param heading what identifies the job
 * @param evening what has to be done the evening before
 * @param sections the sequence
 * @param torque the torque table in tightening order
 * @param tally everything undone that has no torque line
 * @param checks by moment
 * @param notes the job's own notes
 * @param sources where the printed values come from, each once
 * @param stage which sheet of the job this is, where the job is divided among several
 */
public record Sheet(
    Heading heading,
    Safety safety,
    List<Statement> evening,
    List<Section> sections,
    List<TorqueLine> torque,
    Equipment equipment,
    List<TallyLine> tally,
    List<CheckLine> checks,
    TimeNeeded time,
    Optional<String> notes,
    List<Statement> sources,
    Optional<Stage> stage) {
  public Sheet {
    evening = List.copyOf(evening);
    sections = List.copyOf(sections);
    torque = List.copyOf(torque);
    tally = List.copyOf(tally);
    checks = List.copyOf(checks);
    sources = List.copyOf(sources);
  }

  /** The same sheet for another size of paper; what it says, and so its id, stays. */
  public Sheet on(Shop.Paper paper) {
    return with(heading.on(paper));
  }

  /** The same sheet in place of another revision, which it names. */
  public Sheet replacing(Optional<Heading.Replaced> before) {
    return with(heading.replacing(before));
  }

  /** The same sheet with what was found on the vehicle on earlier days. */
  public Sheet seeing(List<Heading.Seen> onVehicle) {
    return onVehicle.isEmpty() ? this : with(heading.seeing(onVehicle));
  }

  private Sheet with(Heading other) {
    return new Sheet(
        other, safety, evening, sections, torque, equipment, tally, checks, time, notes, sources,
        stage);
  }

  /** Names the sheet among all of the shop, and its files: {@code 2417}, or {@code 2417-2}. */
  public String name() {
    return heading.job() + stage.map(it -> "-" + it.n()).orElse("");
  }

  /**
   * What keeps people from harm.
   *
   * @param qualified steps that need a certificate, with who has it
   * @param cautions every caution, lettered in the order in which they are first met
   * @param protect what to wear for the job, on whichever sheet of it: ISO 7010 numbers
   * @param support what carries the vehicle, one for each raising; none where it stays on its
   *     wheels
   */
  public record Safety(
      List<QualifiedWork> qualified,
      List<CautionLine> cautions,
      List<String> protect,
      List<Support> support) {
    public Safety {
      protect = List.copyOf(protect);
      qualified = List.copyOf(qualified);
      cautions = List.copyOf(cautions);
      support = List.copyOf(support);
    }
  }

  /**
   * What to lay out.
   *
   * @param wrenches the torque wrenches that the table names
   * @param tools special tools first
   * @param parts new parts, single-use fasteners among them
   * @param consumables what is used up
   */
  public record Equipment(
      List<WrenchLine> wrenches,
      List<SocketLine> sockets,
      List<ToolLine> tools,
      List<PartLine> parts,
      List<Statement> consumables) {
    public Equipment {
      wrenches = List.copyOf(wrenches);
      sockets = List.copyOf(sockets);
      tools = List.copyOf(tools);
      parts = List.copyOf(parts);
      consumables = List.copyOf(consumables);
    }
  }

  /** All steps, in order. */
  public List<SheetStep> steps() {
    return sections.stream().flatMap(section -> section.steps().stream()).toList();
  }

  /**
   * Steps under one heading.
   *
   * @param places where, if the heading names it
   * @param oneSideFirst the first and last step of a stretch that begins here and is gone through
   *     on one side before the other
   */
  public record Section(
      Title title, List<Place> places, Optional<Stretch> oneSideFirst, List<SheetStep> steps) {
    public Section {
      places = List.copyOf(places);
      steps = List.copyOf(steps);
    }
  }

  /** What the steps under a heading have in common. */
  public enum Title {
    RAISE,
    LOWER,
    WHEELS_CLEAR,
    ONTO_BLOCKS,
    ON_BLOCKS,
    OFF_BLOCKS,
    BEFORE_LIFTING,
    REMOVAL,
    WORK,
    REFITTING,
    BEFORE_LOWERING,
    ON_THE_GROUND,
    BEFORE_MOVING,
    ROAD_TEST,
    HAND_OVER,
    RE_CHECK
  }

  /** Numbers of the first and the last of some steps. */
  public record Stretch(int first, int last) {}

  /** What a step is for. */
  public enum Phase {
    OPEN("open"),
    WORK("work"),
    CLOSE("close"),
    CHECK("check"),
    FINAL("final"),
    /** The vehicle is brought to another height. */
    HEIGHT("height");

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
      return this != CHECK && this != FINAL && this != HEIGHT;
    }
  }

  /**
   * A numbered line of the sequence.
   *
   * @param procedure whose step it is; the rule's name for a check
   * @param details what belongs to it: counts, treatment, torque line, support points
   * @param minutes for all its places together
   * @param hold whether work stops until a second person has looked and initialled
   * @param entries what is written in here by hand, a line for each, once for each place
   */
  public record SheetStep(
      int n,
      StepSource source,
      String procedure,
      Where where,
      Actions actions,
      List<Detail> details,
      Letters letters,
      ThreePoint minutes,
      boolean hold,
      List<Statement> entries,
      Teaching teaching) {
    public SheetStep {
      details = List.copyOf(details);
      entries = List.copyOf(entries);
    }

    /** The same step with other letters above it. */
    public SheetStep with(Letters other) {
      return new SheetStep(
          n, source, procedure, where, actions, details, other, minutes, hold, entries, teaching);
    }

    public Phase phase() {
      return source.phase();
    }

    public Moment moment() {
      return where.moment();
    }

    public Height height() {
      return where.height();
    }

    /** Where it is done; a tick box for each. */
    public List<Place> places() {
      return where.places();
    }

    public List<ItemAt> undo() {
      return actions.undo();
    }

    /** What is slackened and stays in place. */
    public List<ItemAt> slacken() {
      return actions.slacken();
    }

    public List<ItemAt> doUp() {
      return actions.doUp();
    }

    public List<ItemAt> disturb() {
      return actions.disturb();
    }

    /** Numbers of the torque lines it tightens, to the final figure or to snug. */
    public List<Integer> torque() {
      return actions.torque();
    }
  }

  /** State and height of the vehicle at a step, behind it if it moves the vehicle; its places. */
  public record Where(Moment moment, Height height, List<Place> places) {
    public Where {
      places = List.copyOf(places);
    }
  }

  /**
   * What a step does to the vehicle.
   *
   * @param slacken what it turns back and leaves in place; it is undone as well, unless a later
   *     step takes it off
   * @param circuits what it opens
   * @param torque numbers of the torque lines it tightens
   */
  public record Actions(
      List<ItemAt> undo,
      List<ItemAt> slacken,
      List<ItemAt> doUp,
      List<ItemAt> disturb,
      List<String> circuits,
      List<Integer> torque) {
    public Actions {
      undo = List.copyOf(undo);
      slacken = List.copyOf(slacken);
      doUp = List.copyOf(doUp);
      disturb = List.copyOf(disturb);
      circuits = List.copyOf(circuits);
      torque = List.copyOf(torque);
    }
  }

  /**
   * The letters of a step's cautions.
   *
   * @param above those whose text stands directly above the step
   */
  public record Letters(List<String> all, List<String> above) {
    public Letters {
      all = List.copyOf(all);
      above = List.copyOf(above);
    }
  }

  /** A torque wrench that the table names, with the days of its last calibration and the next. */
  public record WrenchLine(String name, LocalDate calibrated, LocalDate due) {}

  /**
   * What to lay out to reach a head.
   *
   * @param orAdapter what could be borrowed instead, for the shop's own socket in another square
   * @param insert what takes the place of a socket
   */
  public record SocketLine(
      Drive drive,
      Head head,
      int points,
      boolean impact,
      boolean deep,
      int count,
      int firstStep,
      boolean owned,
      Optional<String> orAdapter,
      Optional<Reach> insert) {}

  /**
   * A tool, or something else a step or check needs.
   *
   * @param owned whether the crib has it; else it must be borrowed
   * @param ifStuck whether only ways out ask for it
   */
  public record ToolLine(String name, boolean special, boolean owned, boolean ifStuck) {}

  /** Something off that must be on again, with the steps that do it. */
  public record TallyLine(
      String item, String words, List<Place> places, int count, int off, int on) {
    public TallyLine {
      places = List.copyOf(places);
    }
  }
}
