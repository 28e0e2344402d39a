package baysheet.collect;

import baysheet.files.NaturalOrder;
import baysheet.ledger.Closing;
import baysheet.ledger.Index;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.SheetStory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How far the jobs of a day have come once their signed sheets were collected. */
public final class CollectedJobs {
  private CollectedJobs() {}

  /** Of a job. */
  public enum State {
    COMPLETE,
    OPEN,
    MISSING
  }

  /**
   * A job.
   *
   * @param open names of boxes that keep it open, {@code stage.2} for a sheet that is not back
   * @param doubtful those of them that may be marked
   * @param isClosed whether a person closed all its sheets
   * @param figures how many figures are to be typed in
   * @param typed how many others stand in the forms already, and are to be looked through
   */
  public record Job(
      String job,
      LocalDate day,
      State state,
      List<String> open,
      List<String> doubtful,
      boolean isClosed,
      long figures,
      long typed) {
    /** What keeps it open, as people say it. */
    public String words() {
      return open.stream()
          .map(box -> BoxWords.of(box) + (doubtful.contains(box) ? " (doubtful)" : ""))
          .collect(Collectors.joining(", "));
    }
  }

  /**
   * The jobs of a day, in their order.
   *
   * @param out the folder of the sheets, with the forms to type in
   */
  public static List<Job> of(Index index, LocalDate day, Path out) {
    Map<String, List<SheetStory>> jobs = new TreeMap<>(NaturalOrder.NATURAL);
    index.sheets().stream()
        .filter(it -> it.issued().date().equals(day) && it.isCurrent() && !it.isForgotten())
        .forEach(it -> jobs.computeIfAbsent(it.issued().job(), j -> new ArrayList<>()).add(it));
    return jobs.entrySet().stream()
        .map(it -> job(it.getKey(), day, it.getValue(), index, out))
        .toList();
  }

  private static Job job(
      String job, LocalDate day, List<SheetStory> sheets, Index index, Path out) {
    List<String> open = new ArrayList<>();
    List<String> doubtful = new ArrayList<>();
    Set<Integer> lacking = new TreeSet<>();
    long figures = 0;
    long typed = 0;
    for (SheetStory story : sheets) {
      KeptRecord record = index.record(story.id()).orElseThrow();
      IntStream.rangeClosed(1, record.stages()).forEach(lacking::add);
      if (story.state() == SheetStory.State.RETURNED) {
        String before = record.stages() > 1 ? "stage." + record.stage() + "." : "";
        for (String box : openBoxes(record, story)) {
          open.add(before + box);
          if (story.box(box) == SheetStory.Box.DOUBTFUL) {
            doubtful.add(before + box);
          }
        }
        Set<String> there = SignedForm.typed(SignedForm.file(out, record));
        List<String> missing =
            record.boxes().stream()
                .filter(box -> isToType(box, story))
                .map(KeptRecord.Box::name)
                .toList();
        long known = missing.stream().filter(there::contains).count();
        typed += known;
        figures += missing.size() - known;
      }
    }
    sheets.stream()
        .filter(it -> it.state() != SheetStory.State.ISSUED)
        .forEach(it -> lacking.remove(index.record(it.id()).orElseThrow().stage()));
    lacking.forEach(stage -> open.add("stage." + stage));
    boolean none = sheets.stream().allMatch(it -> it.state() == SheetStory.State.ISSUED);
    State state = none ? State.MISSING : open.isEmpty() ? State.COMPLETE : State.OPEN;
    boolean closed = sheets.stream().allMatch(it -> it.state() == SheetStory.State.CLOSED);
    return new Job(job, day, state, none ? List.of() : open, doubtful, closed, figures, typed);
  }

  private static List<String> openBoxes(KeptRecord record, SheetStory story) {
    Stream<String> required =
        record.boxes().stream()
            .filter(KeptRecord.Box::required)
            .map(KeptRecord.Box::name)
            .filter(box -> !story.isExcepted(box))
            .filter(
                box -> story.box(box) != SheetStory.Box.MARKED || isOutside(record, story, box));
    Stream<String> choices =
        record.choices().stream()
            .filter(choice -> Closing.isOpen(choice, story))
            .map(choice -> choice.get(0).name());
    return Stream.concat(required, choices).toList();
  }

  /** A figure that somebody typed in before, and that its band does not hold. */
  private static boolean isOutside(KeptRecord record, SheetStory story, String box) {
    return story.value(box).filter(value -> Closing.isOutside(record, value)).isPresent();
  }

  private static boolean isToType(KeptRecord.Box box, SheetStory story) {
    return box.kind().equals("value")
        && story.value(box.name()).isEmpty()
        && !story.isExcepted(box.name());
  }
}
