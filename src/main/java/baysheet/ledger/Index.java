package baysheet.ledger;

import baysheet.ledger.Event.Issued;
import baysheet.ledger.Event.Part;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All that the ledger holds, found by sheet, by job and by plate. */
public final class Index {
  /** Below the ledger's folder: the page and the record of each issued sheet. */
  static final String SHEETS = "sheets";

  private final Path folder;
  private final PersonalFiles people;
  private final Map<String, SheetStory> stories = new LinkedHashMap<>();
  private final Map<String, List<SheetStory>> byJob = new LinkedHashMap<>();
  private final Map<String, SheetStory> byName = new LinkedHashMap<>();

  /** Equal joints are kept once: every vehicle of a kind has the same figures. */
  private final Map<Joint, Joint> joints = new HashMap<>();

  Index(Path folder, PersonalFiles people, List<Event> events) {
    this.folder = folder;
    this.people = people;
    events.forEach(this::add);
  }

  /**
   * Reads the ledger in a folder without changing anything; empty, with a problem, where it does
   * not chain.
   *
   * @throws UncheckedIOException naming the path, when something cannot be read
   */
  public static Optional<Index> read(Path folder, Problems problems) {
    Optional<EventChain> chain = EventChain.read(folder, problems);
    chain
        .flatMap(EventChain::torn)
        .ifPresent(
            it ->
                problems.add(
                    LedgerSentences.torn(it.file(), it.whole().size() + 1, Optional.empty())));
    return chain.flatMap(
        it -> PersonalFiles.read(folder, problems).map(p -> new Index(folder, p, it.takeEvents())));
  }

  void add(Event event) {
    if (event instanceof Issued issued && !stories.containsKey(issued.sheet())) {
      SheetStory story =
          new SheetStory(
              issued.with(
                  issued.joints().stream()
                      .map(it -> joints.computeIfAbsent(it, same -> same))
                      .toList()));
      stories.put(issued.sheet(), story);
      byJob.computeIfAbsent(issued.job(), job -> new ArrayList<>()).add(story);
      byName.put(issued.name(), story);
    } else {
      // An event about a sheet that this ledger never issued says nothing about any other.
      event.sheets().stream().flatMap(it -> sheet(it).stream()).forEach(it -> it.add(event));
    }
  }

  public Optional<SheetStory> sheet(String id) {
    return Optional.ofNullable(stories.get(id));
  }

  /**
   * What a sheet's record says otherwise than the one that was issued.
   *
   * @throws UncheckedIOException naming the file, when it cannot be read
   */
  public List<String> changes(String issued, byte[] record) {
    return record(issued)
        .map(old -> Changes.between(old, KeptRecord.of(record)))
        .orElse(List.of("what it said was forgotten"));
  }

  /** Why a job cannot go on from a sheet of another day; empty where it can. */
  public Optional<String> denies(String job, LocalDate from, String sheet, Optional<Integer> step) {
    Optional<SheetStory> story = sheet(sheet);
    if (story.isEmpty()) {
      return Optional.of("no sheet " + sheet + " was issued");
    }
    Issued issued = story.get().issued();
    boolean hasStep =
        step.isEmpty() || record(sheet).filter(it -> !it.steps().contains(step.get())).isEmpty();
    return !issued.job().equals(job)
        ? Optional.of("the sheet " + sheet + " is of job " + issued.job())
        : !issued.date().equals(from)
            ? Optional.of("the sheet " + sheet + " is of " + issued.date())
            : hasStep
                ? Optional.empty()
                : Optional.of("the sheet " + sheet + " has no step " + step.get());
  }

  /** All sheets in the order in which they were issued. */
  public Collection<SheetStory> sheets() {
    return stories.values();
  }

  public List<SheetStory> ofJob(String job) {
    return List.copyOf(byJob.getOrDefault(job, List.of()));
  }

  /** All revisions of a sheet, by its name. */
  public List<SheetStory> ofName(String name) {
    return stories.values().stream().filter(it -> it.issued().name().equals(name)).toList();
  }

  /**
   * The revision of a sheet that was issued last.
   *
   * @param name the number of its job, with that of the stage where the job has several sheets
   */
  public Optional<SheetStory> latest(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /**
   * The sheets by which a job is to be done: of its last revision, in the order of its stages.
   * Where that was not issued in full some are missing.
   */
  public List<SheetStory> current(String job) {
    List<SheetStory> all = byJob.getOrDefault(job, List.of());
    if (all.isEmpty()) {
      return List.of();
    }
    Issued last = all.get(all.size() - 1).issued();
    return all.stream()
        .filter(it -> it.issued().revision().equals(last.revision()))
        .filter(it -> it.issued().stage().map(Part::of).equals(last.stage().map(Part::of)))
        .filter(it -> latest(it.issued().name()).equals(Optional.of(it)))
        .sorted(Comparator.comparing(it -> it.issued().name()))
        .toList();
  }

  /** The sheet whose printed code this is. */
  public Optional<SheetStory> ofCode(String code) {
    return stories.values().stream()
        .filter(it -> it.issued().prints().code().filter(code::equals).isPresent())
        .findFirst();
  }

  /** All sheets of a vehicle; spaces, hyphens and capitals of its plate do not matter. */
  public List<SheetStory> ofPlate(String plate) {
    String asked = bare(plate);
    return stories.values().stream()
        .filter(it -> plate(it.id()).filter(p -> bare(p).equals(asked)).isPresent())
        .toList();
  }

  /** A plate without spaces, hyphens and small letters, which do not matter. */
  public static String bare(String plate) {
    return plate.replaceAll("[\\s\\p{Pd}.]", "").toUpperCase(Locale.ROOT);
  }

  public Optional<String> plate(String sheet) {
    return people.customer(sheet).flatMap(PersonalFiles.Customer::plate);
  }

  /** Whether a text holds the plate of a sheet, however it is spaced. */
  public boolean isPlateIn(String sheet, String text) {
    return plate(sheet).map(Index::bare).filter(it -> bare(text).contains(it)).isPresent();
  }

  public PersonalFiles people() {
    return people;
  }

  /** The PDF of a sheet as it was issued. */
  public Path page(String sheet) {
    return folder.resolve(SHEETS).resolve(sheet + ".pdf");
  }

  /** The record of a sheet as it was issued. */
  public Path recordFile(String sheet) {
    return folder.resolve(SHEETS).resolve(sheet + ".json");
  }

  /**
   * The record of a sheet; empty where it was forgotten.
   *
   * @throws UncheckedIOException naming the file, when it cannot be read
   * @throws IllegalArgumentException when what lies there is no record
   */
  public Optional<KeptRecord> record(String sheet) {
    Path file = recordFile(sheet);
    try {
      return Files.exists(file)
          ? Optional.of(KeptRecord.of(Files.readAllBytes(file)))
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }
}
