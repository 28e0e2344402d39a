package baysheet.ledger;

import baysheet.ledger.Event.Value;
import baysheet.ledger.Event.Values;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What keeps a signed sheet from being closed. */
public final class Closing {
  private final KeptRecord record;
  private final SheetStory story;
  private final Wrenches wrenches;
  private final List<Open> open = new ArrayList<>();

  private Closing(KeptRecord record, SheetStory story, Wrenches wrenches) {
    this.record = record;
    this.story = story;
    this.wrenches = wrenches;
  }

  /** What the garage knows of its wrenches. */
  public interface Wrenches {
    /**
     * Why a wrench cannot be relied on for a day's work; empty where it can.
     *
     * @param planned whether the sheet was printed with it, which no lapsed wrench is
     */
    Optional<String> trouble(String wrench, boolean planned, LocalDate day);
  }

  /** Something that is open. */
  public record Open(String box, Why why, String what) {}

  /** Why something is open. */
  public enum Why {
    /** A box is empty, nobody decided on it, or its figure was not typed. */
    NOT_FILLED,
    OUTSIDE_BAND,
    WRENCH
  }

  /**
   * What is open on a sheet once somebody has read it.
   *
   * @param typed what that person settled, over what the ledger knows
   */
  public static List<Open> check(
      KeptRecord record, SheetStory story, Values typed, Wrenches wrenches) {
    Closing closing = new Closing(record, story.with(typed), wrenches);
    record.boxes().stream().filter(KeptRecord.Box::required).forEach(closing::check);
    record.choices().forEach(closing::choice);
    return List.copyOf(closing.open);
  }

  private void check(KeptRecord.Box box) {
    if (story.isExcepted(box.name())) {
      return;
    }
    Optional<Value> value = story.value(box.name());
    if (!box.kind().equals("value")) {
      mark(box.name());
    } else if (value.isEmpty()) {
      notFilled(box.name(), "its figure is not typed in");
    } else if (story.box(box.name()) == SheetStory.Box.EMPTY) {
      notFilled(box.name(), "a figure is typed in, but the box on the paper is empty");
    } else {
      figure(value.get());
    }
  }

  private void mark(String box) {
    switch (story.box(box)) {
      case MARKED -> {}
      case EMPTY -> notFilled(box, "it is empty on the paper");
      case DOUBTFUL, UNREAD -> notFilled(box, "nobody has decided whether it is marked");
    }
  }

  private void choice(List<KeptRecord.Box> boxes) {
    if (isOpen(boxes, story)) {
      long marked = marked(boxes, story);
      String names = boxes.stream().map(KeptRecord.Box::name).collect(Collectors.joining(" and "));
      notFilled(
          boxes.get(0).name(),
          "exactly one of %s is to be marked, and %s"
              .formatted(names, marked == 0 ? "none is" : marked + " are"));
    }
  }

  /** Whether not exactly one of some boxes is marked, and nobody gave a reason. */
  public static boolean isOpen(List<KeptRecord.Box> choice, SheetStory story) {
    boolean excepted = choice.stream().anyMatch(box -> story.isExcepted(box.name()));
    return !excepted && marked(choice, story) != 1;
  }

  private static long marked(List<KeptRecord.Box> boxes, SheetStory story) {
    return boxes.stream().filter(box -> story.box(box.name()) == SheetStory.Box.MARKED).count();
  }

  private void notFilled(String box, String what) {
    open.add(new Open(box, Why.NOT_FILLED, what));
  }

  private void figure(Value value) {
    Optional<Joint> joint = joint(record, value);
    joint
        .flatMap(Joint::band)
        .filter(band -> !band.contains(value.value()))
        .ifPresent(
            band ->
                open.add(
                    new Open(
                        value.box(),
                        Why.OUTSIDE_BAND,
                        Tables.plain(value.value()) + " is outside " + Tables.band(band))));
    Optional<String> planned = joint.flatMap(Joint::wrench);
    value
        .wrench()
        .or(() -> planned)
        .flatMap(it -> wrenches.trouble(it, planned.filter(it::equals).isPresent(), record.date()))
        .ifPresent(trouble -> open.add(new Open(value.box(), Why.WRENCH, trouble)));
  }

  private static Optional<Joint> joint(KeptRecord record, Value value) {
    return record.joints().stream().filter(it -> it.box().equals(value.box())).findFirst();
  }

  /** Whether a figure is outside the band of its joint. */
  public static boolean isOutside(KeptRecord record, Value value) {
    return joint(record, value)
        .flatMap(Joint::band)
        .filter(band -> !band.contains(value.value()))
        .isPresent();
  }
}
