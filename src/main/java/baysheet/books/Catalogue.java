package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.ThreePoint;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the trade knows of items, cautions, consequences and states, whatever the vehicle.
 *
 * @param items by name
 * @param cautions by name
 * @param rules consequences by name
 * @param states by name
 * @param qualifications by name
 * @param vocabulary the words that books and rules may use
 * @param verbs what a step may begin with, by name
 * @param glossary what is said otherwise in America, verbs among it
 */
public record Catalogue(
    Map<String, Item> items,
    Map<String, Caution> cautions,
    Map<String, Rule> rules,
    Map<String, State> states,
    Map<String, Qualification> qualifications,
    Vocabulary vocabulary,
    Map<String, Verb> verbs,
    Glossary glossary) {
  private static final Pattern CONDITION =
      Pattern.compile("^(?:If|With|On|From|At|After|Before|Where|When)\\b[^,]*, ");

  public Catalogue {
    items = Collections.unmodifiableMap(new LinkedHashMap<>(items));
    cautions = Collections.unmodifiableMap(new LinkedHashMap<>(cautions));
    rules = Collections.unmodifiableMap(new LinkedHashMap<>(rules));
    states = Collections.unmodifiableMap(new LinkedHashMap<>(states));
    qualifications = Collections.unmodifiableMap(new LinkedHashMap<>(qualifications));
    verbs = Collections.unmodifiableMap(new LinkedHashMap<>(verbs));
  }

  /** Whether an instruction begins with one of the verbs, or with a condition before it. */
  public boolean beginsWithVerb(String instruction) {
    String rest = CONDITION.matcher(instruction).replaceFirst("").toLowerCase(Locale.ROOT);
    return verbs.keySet().stream()
        .anyMatch(verb -> rest.startsWith(verb.toLowerCase(Locale.ROOT) + " "));
  }

  /**
   * Anything that can be on or off, connected or not.
   *
   * @param british what it is called in Britain
   * @param american what it is called in America, where that differs
   * @param kinds what rules and cautions know it by
   * @param back wording for putting it back
   * @param fluid what a circuit is filled with, as spec books call it
   * @param left how a step that touches it leaves the vehicle until it is put back
   * @param usual how a fastener is tightened where no book says it
   */
  public record Item(
      Located<String> name,
      Located<String> british,
      Optional<Located<String>> american,
      List<Located<String>> kinds,
      Optional<Located<String>> back,
      Optional<Located<String>> fluid,
      Optional<Located<String>> left,
      Optional<Located<FastenerText>> usual) {
    public Item {
      kinds = List.copyOf(kinds);
    }

    /** The entry of a garage over this one: its words, and the kinds of both. */
    Item under(Item own) {
      return new Item(
          own.name,
          own.british,
          own.american.or(
              () -> own.british.value().equals(british.value()) ? american : own.american),
          Words.both(kinds, own.kinds),
          own.back.or(() -> back),
          own.fluid.or(() -> fluid),
          own.left.or(() -> left),
          own.usual.or(() -> usual));
    }
  }

  /** The four signal words of ANSI Z535.6; the first three also of ISO 3864-2. */
  public enum Signal {
    DANGER,
    WARNING,
    CAUTION,
    NOTICE
  }

  /**
   * A caution.
   *
   * @param when what brings it, beside steps that name it as a hazard; any one is enough
   * @param command what to do or not to do
   * @param hazard what there is
   * @param consequence what it can do to somebody
   * @param protect protective equipment, ISO 7010 numbers
   * @param wholeJob whether it stands on top of the sheet
   * @param raising whether it is about the act of raising, and over once the vehicle is up
   */
  public record Caution(
      Located<String> name,
      Signal signal,
      List<Trigger> when,
      Located<String> command,
      Located<String> hazard,
      Located<String> consequence,
      List<Located<String>> protect,
      Located<String> source,
      boolean wholeJob,
      boolean raising) {
    public Caution {
      when = List.copyOf(when);
      protect = List.copyOf(protect);
    }

    /**
     * The entry of a garage over this one. It comes when this one came, and asks for the equipment
     * that this one asked for, where it does not say.
     */
    Caution under(Caution own) {
      return new Caution(
          own.name,
          own.signal,
          own.when.isEmpty() ? when : own.when,
          own.command,
          own.hazard,
          own.consequence,
          own.protect.isEmpty() ? protect : own.protect,
          own.source,
          own.wholeJob,
          own.raising || raising);
    }
  }

  /**
   * A check that follows from what was done.
   *
   * @param when what brings it; any one is enough
   * @param check what to check
   * @param moment when it is due
   * @param rows whether the sheet names the torque rows of the fasteners that bring it
   * @param needs a figure that only the vehicle's data can give: printed as an empty box
   * @param uses tools it needs, where it is no step
   * @param left how it leaves the vehicle until that is about to move
   * @param step how it stands in the sequence, where it is a step of its own
   */
  public record Rule(
      Located<String> name,
      List<Trigger> when,
      Located<String> check,
      Located<Moment> moment,
      boolean rows,
      Optional<Located<String>> needs,
      Others others,
      List<Located<Procedure.Use>> uses,
      Grounds grounds,
      Optional<Located<String>> left,
      Optional<CheckStep> step,
      Span at) {
    public Rule {
      when = List.copyOf(when);
      uses = List.copyOf(uses);
    }
  }

  /** Why a check is due, and who says so. */
  public record Grounds(Optional<Located<String>> because, Located<String> source) {}

  /**
   * What others have to do with a check.
   *
   * @param hold whether a second person must look
   * @param keepOpen what somebody else must do before the sheet is closed: alignment …
   * @param release who releases the vehicle where any second person will not do
   */
  public record Others(
      boolean hold, Optional<Located<String>> keepOpen, Optional<Located<String>> release) {}

  /**
   * Where a check that is a numbered step stands in the sequence: once everything is back on that
   * the work which brings it took off, but before what must still be off goes on.
   *
   * @param whileOff names or kinds of items that must still be off
   * @param once whether it is done once for all places that bring it, and not at each
   * @param allBack whether everything else of the job must be back on first, as before an engine
   *     runs
   * @param beforeCovered whether it comes as soon as what brings it is on, before anything that
   *     came off earlier covers it
   * @param heights at which heights of the vehicle it can be made; none where the work that brings
   *     it says so
   * @param fills circuits that are filled in it, each with what the book says of its fluid
   */
  public record CheckStep(
      List<Located<String>> whileOff,
      boolean once,
      boolean allBack,
      boolean beforeCovered,
      List<Located<Height>> heights,
      Optional<Located<ThreePoint>> takes,
      List<Located<Procedure.Use>> uses,
      List<Located<String>> fills,
      List<Located<String>> ends) {
    public CheckStep {
      whileOff = List.copyOf(whileOff);
      heights = List.copyOf(heights);
      uses = List.copyOf(uses);
      fills = List.copyOf(fills);
      ends = List.copyOf(ends);
    }
  }

  /**
   * What somebody must be certified for before they may do some work.
   *
   * @param words what the sheet calls it
   * @param when what work needs it, beside that of procedures which ask for it themselves
   */
  public record Qualification(
      Located<String> name, Located<String> words, List<Trigger> when, Located<String> source) {
    public Qualification {
      when = List.copyOf(when);
    }

    /** The entry of a garage over this one, for the same work where it does not say. */
    Qualification under(Qualification own) {
      return own.when.isEmpty() ? new Qualification(own.name, own.words, when, own.source) : own;
    }
  }

  /** A state of a vehicle and what it does to the minutes of steps that seize. */
  public record State(
      Located<String> name,
      BigDecimal likelyFactor,
      BigDecimal possibleFactor,
      Located<String> source) {}

  /**
   * A verb with which a step may begin: one for each action.
   *
   * @param american the verb in America, where it differs
   */
  public record Verb(Located<String> name, Optional<Located<String>> american) {}
}
