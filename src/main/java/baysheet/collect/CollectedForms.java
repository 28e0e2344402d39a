package baysheet.collect;

import baysheet.files.NaturalOrder;
import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Index;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.SheetStory;
import baysheet.output.OutFiles;
import baysheet.record.PlacedBoxes;
import baysheet.scan.Grey;
import baysheet.scan.ScanFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Writes what a person needs to settle a day: the forms to type in, and the pages of crops. */
public final class CollectedForms {
  private static final Pattern SHEET = Pattern.compile("(?m)^sheet: *(\\S+)");

  private final Path out;
  private final Index index;
  private final OutFiles files = new OutFiles(Disk.REAL);
  private final SignedPages writer = new SignedPages();
  private final Map<SheetStory, String> before = new LinkedHashMap<>();

  /**
   * @param stories sheets that come back, before that is written down
   */
  public CollectedForms(Path out, Index index, List<SheetStory> stories) {
    this.out = out;
    this.index = index;
    stories.forEach(it -> before.put(it, SignedForm.blank(record(it), it)));
  }

  private KeptRecord record(SheetStory story) {
    return index.record(story.id()).orElseThrow();
  }

  /**
   * Writes the form of each sheet, but for those that somebody has typed in.
   *
   * @param figures what was typed in forms on a screen, by the sheets and the names of their boxes
   * @return these
   */
  public List<Path> write(Map<String, Map<String, String>> figures) {
    List<Path> typed = new ArrayList<>();
    before.forEach(
        (story, was) -> {
          Path form = SignedForm.file(out, record(story));
          Optional<String> there = Files.exists(form) ? Optional.of(text(form)) : Optional.empty();
          Optional<String> other =
              there.flatMap(CollectedForms::sheet).filter(id -> !id.equals(story.id()));
          other.ifPresent(id -> files.move(form, form.resolveSibling(id + YamlFiles.ENDING)));
          String now =
              SignedForm.of(record(story), story, figures.getOrDefault(story.id(), Map.of()));
          if (there.isEmpty() || other.isPresent() || there.get().equals(was)) {
            files.write(form, now.getBytes(StandardCharsets.UTF_8));
          } else if (!there.get().equals(now)) {
            typed.add(form);
          }
        });
    return typed;
  }

  /** The sheet that a form is of, if it is a plain id: it becomes the name of a file. */
  private static Optional<String> sheet(String form) {
    Matcher line = SHEET.matcher(form);
    return line.find() && line.group(1).matches("[\\w-]+")
        ? Optional.of(line.group(1))
        : Optional.empty();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** Writes the crops of all sheets of a day that are back and not closed; empty where none is. */
  public Optional<Path> review(LocalDate day) {
    ReviewPages pages = new ReviewPages();
    List<SheetStory> back =
        index.sheets().stream()
            .filter(it -> it.issued().date().equals(day))
            .filter(it -> it.state() == SheetStory.State.RETURNED && !it.isForgotten())
            .sorted((a, b) -> NaturalOrder.NATURAL.compare(record(a).name(), record(b).name()))
            .toList();
    for (SheetStory story : back) {
      KeptRecord record = record(story);
      String plate = index.plate(story.id()).map(it -> ", " + it).orElse("");
      pages.add(record, story, plate, boxes(story), picture(Collecting.file(out, record, story)));
    }
    Path review = out.resolve(day.toString()).resolve(SignedForm.FOLDER).resolve("review.pdf");
    if (back.isEmpty()) {
      return Optional.empty();
    }
    files.write(review, writer.review(pages.pages(), day));
    return Optional.of(review);
  }

  private PlacedBoxes boxes(SheetStory story) {
    Path file = index.recordFile(story.id());
    try {
      return PlacedBoxes.of(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** The scan in a signed page; empty where somebody took the file away. */
  public static Optional<Grey> picture(Path signed) {
    List<Grey> pictures = new ArrayList<>();
    ScanFile.read(
        signed,
        new ScanFile.Pages() {
          @Override
          public void page(int number, Grey picture) {
            pictures.add(picture);
          }

          @Override
          public void unread(int number, String reason) {
            // Its form names each box; the paper shows what the crop would.
          }
        });
    return pictures.stream().findFirst();
  }
}
