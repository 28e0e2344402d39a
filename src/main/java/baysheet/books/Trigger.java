package baysheet.books;

import baysheet.report.Located;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What sets a caution or a rule off: every condition must hold, each by any one of its names.
 *
 * @param asked the names of each condition; a condition that is not asked for is not in it
 * @param impact whether an impact wrench is used
 */
public record Trigger(Map<Condition, Asked> asked, Optional<Boolean> impact) {
  /** Names that a condition asks for, with where they are written and without. */
  public record Asked(List<Located<String>> located, List<String> names) {
    Asked(List<Located<String>> located) {
      this(List.copyOf(located), located.stream().map(Located::value).toList());
    }
  }

  /** What a trigger can ask for; each is a key of its file. */
  public enum Condition {
    /** Items taken off. */
    UNDO("undo"),
    /** Items put on. */
    DO_UP("do-up"),
    /** Items moved or relieved. */
    DISTURB("disturb"),
    /** Kinds of items taken off or disturbed. */
    KIND("kind"),
    /** Kinds of items put on. */
    DO_UP_KIND("do-up-kind"),
    /** Kinds of items in whose place a new part is put on. */
    RENEW_KIND("renew-kind"),
    /** Circuits opened. */
    CIRCUIT("circuit"),
    /** Products applied. */
    APPLY("apply"),
    /** Tools used. */
    USES("uses"),
    /** Tools used by no step at the same place. */
    WHERE_UNUSED("where-unused"),
    /** Figures that a step measures. */
    MEASURE("measure"),
    /** Procedures of the job. */
    PROCEDURE("procedure"),
    /** Roles that a procedure of the job serves. */
    SERVES("serves"),
    /** Where it is done: an end, a side or a wheel. */
    AT("at"),
    /** What raises the vehicle in the job's bay. */
    BAY("bay"),
    /** Traits the vehicle has. */
    TRAIT("trait"),
    /** Traits the vehicle lacks. */
    WITHOUT("without"),
    /** States the vehicle is in. */
    STATE("state");

    private final String key;

    Condition(String key) {
      this.key = key;
    }

    /** As written in files. */
    public String key() {
      return key;
    }

    /** Whether it asks for the vehicle and its bay, not for anything that is done. */
    public boolean isOfVehicle() {
      return compareTo(BAY) >= 0;
    }

    /** Whether its names are those of items, or of kinds of items. */
    public boolean isOfItems() {
      return compareTo(CIRCUIT) < 0;
    }

    /** Whether it asks for a procedure as a whole, not for one of its steps. */
    public boolean isOfProcedure() {
      return this == PROCEDURE || this == SERVES;
    }
  }

  public Trigger {
    Map<Condition, Asked> copy = new EnumMap<>(Condition.class);
    copy.putAll(asked);
    copy.values().removeIf(names -> names.names().isEmpty());
    asked = Collections.unmodifiableMap(copy);
  }

  /** The names of a condition; none when it is not asked for. */
  public List<String> names(Condition condition) {
    Asked names = asked.get(condition);
    return names == null ? List.of() : names.names();
  }

  /** Names and kinds of the items it asks for, whatever is to be done to them. */
  public List<String> items() {
    return asked.entrySet().stream()
        .filter(condition -> condition.getKey().isOfItems())
        .flatMap(condition -> condition.getValue().names().stream())
        .toList();
  }

  /** Whether it asks for something that is done in a single step. */
  public boolean asksForStep() {
    if (impact.isPresent()) {
      return true;
    }
    for (Condition condition : asked.keySet()) {
      if (!condition.isOfVehicle()
          && !condition.isOfProcedure()
          && condition != Condition.WHERE_UNUSED) {
        return true;
      }
    }
    return false;
  }

  /** Whether it asks for a procedure, whatever else it asks for. */
  public boolean asksForProcedure() {
    return asked.keySet().stream().anyMatch(Condition::isOfProcedure);
  }

  /** Whether nothing is asked, so that it would always hold. */
  boolean isEmpty() {
    return impact.isEmpty() && Set.of(Condition.WHERE_UNUSED).containsAll(asked.keySet());
  }
}
