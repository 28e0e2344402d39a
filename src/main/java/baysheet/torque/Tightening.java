package baysheet.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** How a fastener is tightened. */
public sealed interface Tightening permits Tightening.Stages, Tightening.Snug, Tightening.Unknown {
  /** The whole tightening as printed, stages parted by commas. */
  String print();

  /**
   * One stage or several, in order.
   *
   * @param stages at least one; the first is a torque, and a torque comes before every angle
   */
  record Stages(List<TighteningStage> stages) implements Tightening {
    public Stages {
      stages = List.copyOf(stages);
      Optional<String> fault = Tightening.fault(stages);
      if (fault.isPresent()) {
        throw new IllegalArgumentException(fault.get());
      }
    }

    @Override
    public String print() {
      return stages.stream().map(TighteningStage::print).collect(Collectors.joining(", "));
    }

    /** The target, when the whole tightening is one torque and nothing else. */
    public Optional<Target> plainTorque() {
      return stages.size() == 1 && stages.get(0) instanceof TighteningStage.Torque only
          ? Optional.of(only.target())
          : Optional.empty();
    }

    /** The targets of the stages that are torques, in order. */
    public List<Target> torques() {
      return stages.stream()
          .filter(TighteningStage.Torque.class::isInstance)
          .map(stage -> ((TighteningStage.Torque) stage).target())
          .toList();
    }
  }

  /** A fastener for which no figure is published: tightened by hand until it sits. */
  record Snug() implements Tightening {
    @Override
    public String print() {
      return "snug";
    }
  }

  /** The figure is not known to the book: an empty box to fill in, never a guess. */
  record Unknown() implements Tightening {
    @Override
    public String print() {
      return "unknown";
    }
  }

  /** Reads the stages of a spec book, or the one word {@code snug} or {@code unknown}. */
  static ParseResult<Tightening> parse(List<String> texts) {
    if (texts.size() == 1) {
      String word = texts.get(0).strip().toLowerCase(Locale.ROOT);
      if (word.equals("snug")) {
        return new Parsed<>(new Snug());
      }
      if (word.equals("unknown")) {
        return new Parsed<>(new Unknown());
      }
    }
    return stages(texts);
  }

  private static ParseResult<Tightening> stages(List<String> texts) {
    List<TighteningStage> stages = new ArrayList<>();
    for (String text : texts) {
      ParseResult<List<TighteningStage>> each = TighteningStage.parseAll(text);
      if (each instanceof ParseFailure<List<TighteningStage>> misread) {
        return misread.as();
      }
      each.found().ifPresent(stages::addAll);
    }
    return fault(stages)
        .<ParseResult<Tightening>>map(
            what -> new ParseFailure<>(what, "stages such as [25 N·m, 50 N·m, +90°]"))
        .orElseGet(() -> new Parsed<>(new Stages(stages)));
  }

  /** An angle counts from a known torque; a fastener left loose is not tightened. */
  private static Optional<String> fault(List<TighteningStage> stages) {
    if (stages.isEmpty()) {
      return Optional.of("there is no stage");
    }
    if (stages.get(stages.size() - 1) instanceof TighteningStage.Loosen) {
      return Optional.of("the last stage leaves the fastener loose");
    }
    boolean loose = true;
    for (TighteningStage stage : stages) {
      if (loose && stage instanceof TighteningStage.Angle angle) {
        return Optional.of(angle.print() + " has no torque before it to count from");
      }
      loose = stage instanceof TighteningStage.Loosen;
    }
    return Optional.empty();
  }
}
