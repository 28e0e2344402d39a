package baysheet.output;

import baysheet.ledger.Event.Closed;
import baysheet.ledger.Index;
import baysheet.ledger.PersonalFiles.Note;
import baysheet.ledger.SheetStory;
import baysheet.sheet.Heading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What people found on vehicles, as they recorded it when they closed their sheets. */
final class Findings {
  private static final String FOUND = "found.";

  private final Map<String, List<Finding>> byPlate = new HashMap<>();

  /**
   * Something that was found.
   *
   * @param day of the sheet on which it stood
   * @param closed when it was recorded
   */
  private record Finding(String job, LocalDate day, LocalDate closed, String text) {}

  /** Those that the ledger has now; it is not read again. */
  Findings(Index index) {
    for (SheetStory story : index.sheets()) {
      List<String> texts =
          index.people().notes(story.id()).stream()
              .filter(note -> note.about().startsWith(FOUND))
              .map(Note::text)
              .toList();
      if (!texts.isEmpty() && story.closed().isPresent()) {
        index
            .plate(story.id())
            .ifPresent(
                plate ->
                    texts.forEach(text -> add(plate, finding(story, story.closed().get(), text))));
      }
    }
  }

  private static Finding finding(SheetStory story, Closed closed, String text) {
    return new Finding(story.issued().job(), story.issued().date(), closed.on(), text);
  }

  private void add(String plate, Finding finding) {
    byPlate.computeIfAbsent(Index.bare(plate), key -> new ArrayList<>()).add(finding);
  }

  /**
   * Findings on the vehicle of a job, the latest first. What is recorded on the day of the job or
   * later is left out, so that its sheet stays the same from its day on.
   */
  List<Heading.Seen> before(Heading job) {
    return job
        .vehicle()
        .plate()
        .map(plate -> byPlate.getOrDefault(Index.bare(plate), List.of()))
        .orElse(List.of())
        .stream()
        .filter(it -> it.day().isBefore(job.date()) && it.closed().isBefore(job.date()))
        .filter(it -> !it.job().equals(job.job()))
        .map(it -> new Heading.Seen(it.day(), it.text(), true))
        .sorted(Comparator.comparing(Heading.Seen::on).reversed())
        .toList();
  }
}
