package baysheet.ledger;

import baysheet.ledger.Event.Attached;
import baysheet.ledger.Event.Carried;
import baysheet.ledger.Event.Closed;
import baysheet.ledger.Event.Decision;
import baysheet.ledger.Event.Forgotten;
import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Returned;
import baysheet.ledger.Event.Superseded;
import baysheet.ledger.Event.Value;
import baysheet.ledger.Event.Values;
import baysheet.ledger.Event.Withdrawn;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What became of one issued sheet, from its events in their order: a later one corrects. */
public final class SheetStory {
  private final Issued issued;
  private final Map<String, Box> boxes = new LinkedHashMap<>();
  private final Map<String, Value> values = new LinkedHashMap<>();
  private final Set<String> excepted = new HashSet<>();
  private final List<Attached> attached = new ArrayList<>();
  private Optional<Returned> returned = Optional.empty();
  private Optional<Closed> closed = Optional.empty();
  private Optional<String> supersededBy = Optional.empty();
  private State state = State.ISSUED;
  private boolean forgotten;

  SheetStory(Issued issued) {
    this.issued = issued;
  }

  /** What is known of a box. */
  public enum Box {
    MARKED,
    EMPTY,
    /** Read, but a person has to decide. */
    DOUBTFUL,
    /** Nobody looked at it yet. */
    UNREAD
  }

  /** How far a sheet has come. */
  public enum State {
    ISSUED("issued, not back yet"),
    /** It came back, and something is still open. */
    RETURNED("back, not closed"),
    CLOSED("closed"),
    SUPERSEDED("superseded"),
    WITHDRAWN("withdrawn"),
    CARRIED("carried over");

    private final String words;

    State(String words) {
      this.words = words;
    }

    /** As tables print it. */
    public String words() {
      return words;
    }
  }

  /** The same with what somebody read over it. */
  SheetStory with(Values read) {
    SheetStory story = new SheetStory(issued);
    story.boxes.putAll(boxes);
    story.values.putAll(values);
    story.excepted.addAll(excepted);
    story.add(read);
    return story;
  }

  /** Whether all that somebody read is known already. */
  public boolean knows(Values read) {
    SheetStory after = with(read);
    return after.boxes.equals(boxes)
        && after.values.equals(values)
        && after.excepted.equals(excepted);
  }

  void add(Event event) {
    if (event instanceof Returned back) {
      back.marked().forEach(box -> boxes.put(box, Box.MARKED));
      back.empty().forEach(box -> boxes.put(box, Box.EMPTY));
      back.doubtful().forEach(box -> boxes.put(box, Box.DOUBTFUL));
      returned = Optional.of(back);
      state = state == State.ISSUED ? State.RETURNED : state;
    } else if (event instanceof Values read) {
      add(read);
    } else if (event instanceof Closed end) {
      closed = Optional.of(end);
      state = State.CLOSED;
    } else if (event instanceof Attached with) {
      attached.add(with);
    } else if (event instanceof Superseded later) {
      supersededBy = Optional.of(later.by());
      // What was done on a sheet that was closed or carried over stays done.
      state = state == State.CLOSED || state == State.CARRIED ? state : State.SUPERSEDED;
    } else if (event instanceof Issued) {
      // The job of a withdrawn sheet came back.
      state = State.ISSUED;
    } else if (event instanceof Carried) {
      state = State.CARRIED;
    } else if (event instanceof Forgotten) {
      forgotten = true;
    } else if (event instanceof Withdrawn) {
      state = State.WITHDRAWN;
    } else {
      throw new IllegalStateException("not known what it changes: " + event);
    }
  }

  private void add(Values read) {
    read.values().forEach(value -> values.put(value.box(), value));
    for (Decision decision : read.decisions()) {
      boxes.put(decision.box(), decision.marked() ? Box.MARKED : Box.EMPTY);
    }
    excepted.addAll(read.excepted());
  }

  public Issued issued() {
    return issued;
  }

  public String id() {
    return issued.sheet();
  }

  public State state() {
    return state;
  }

  public Box box(String name) {
    return boxes.getOrDefault(name, Box.UNREAD);
  }

  /** The figure that was read in a box. */
  public Optional<Value> value(String box) {
    return Optional.ofNullable(values.get(box));
  }

  public boolean isExcepted(String box) {
    return excepted.contains(box);
  }

  public Optional<Returned> returned() {
    return returned;
  }

  public Optional<Closed> closed() {
    return closed;
  }

  public List<Attached> attached() {
    return Collections.unmodifiableList(attached);
  }

  public Optional<String> supersededBy() {
    return supersededBy;
  }

  /** Whether it is the one to work by and to bring back. */
  public boolean isCurrent() {
    return state == State.ISSUED || state == State.RETURNED || state == State.CLOSED;
  }

  /** Whether names, page and notes were deleted. */
  public boolean isForgotten() {
    return forgotten;
  }

  /** Whether its job is no longer on its day. */
  public boolean hasLeft() {
    return state == State.WITHDRAWN || state == State.CARRIED;
  }

  /** Whether somebody may have worked by it: a revision that never came back was replaced. */
  public boolean mayHaveBeenUsed() {
    boolean gone = state == State.SUPERSEDED || state == State.WITHDRAWN;
    return !gone || returned.isPresent() || !values.isEmpty();
  }
}
