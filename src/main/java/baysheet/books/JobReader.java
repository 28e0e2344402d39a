package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.torque.Quantity;
import baysheet.yaml.Entry;
import baysheet.yaml.MapReader;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.Sequence;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads a job file. */
public final class JobReader {
  private static final Pattern REVISION = Pattern.compile("[A-Z]");

  /** ISO 3779: 17 figures and capital letters; I, O and Q are not used. */
  private static final Pattern VIN = Pattern.compile("[A-HJ-NPR-Z0-9]{17}");

  private static final String FIRST_REVISION = "A";

  private static final String WORK = "work";

  private static final ValueReader<Job> JOB = ValueReaders.record("a job", JobReader::job);
  private static final ValueReader<Function<Located<Job.Work>, Job.Replacement>> REPLACEMENT =
      ValueReaders.record("an override", JobReader::replacement);

  private static final ValueReader<Job.Carried> CARRIED =
      ValueReaders.record("where a job comes from", JobReader::carried);

  /** No sheet has more. */
  private static final int MOST_STEPS = 1000;

  private JobReader() {}

  /** The job; empty when a problem was added that leaves none. */
  public static Optional<Job> read(Node node, Problems problems) {
    Optional<Job> job = JOB.read(workOf(node), problems).map(Located::value);
    job.ifPresent(it -> twoPeople(it.crew(), problems));
    job.ifPresent(it -> promise(it.request(), problems));
    return job;
  }

  /** The same, and reports when the job is not named as its file is, without {@code .yaml}. */
  public static Optional<Job> read(Node node, String fileName, Problems problems) {
    Optional<Job> job = read(node, problems);
    job.ifPresent(it -> Words.sameAsFile(it.number(), fileName, problems));
    return job;
  }

  /**
   * The same. Work that can be done at one place only needs no place; what each work that is not
   * written right could mean is reported.
   *
   * @param procedures those of the shop
   */
  public static Optional<Job> read(
      Node node, String fileName, Collection<Procedure> procedures, Problems problems) {
    Problems found = new Problems();
    Optional<Job> job = read(WorkPlaces.placed(node, procedures), fileName, found);
    Map<String, Place.Kind> kinds = new LinkedHashMap<>();
    procedures.forEach(it -> kinds.put(it.name().value(), it.at().value()));
    WorkPlaces.advise(found, node, kinds, problems);
    return job;
  }

  /**
   * A key {@code work} with nothing behind it asks for as little as an empty list, and reads so.
   */
  private static Node workOf(Node node) {
    return node instanceof Mapping mapping
        ? new Mapping(mapping.entries().stream().map(JobReader::workOf).toList(), mapping.at())
        : node;
  }

  private static Entry workOf(Entry entry) {
    return entry.key().text().equals(WORK) && entry.value().isEmpty()
        ? new Entry(entry.key(), new Sequence(List.of(), entry.key().at()))
        : entry;
  }

  /** An apprentice is looked after, and the work looked at, by somebody else. */
  private static void twoPeople(Job.Crew crew, Problems problems) {
    Stream.of(crew.with(), crew.second())
        .flatMap(Optional::stream)
        .filter(other -> other.value().equals(crew.by().value()))
        .forEach(other -> problems.add(BookSentences.alone(other, crew.by())));
  }

  private static void promise(Job.Request asked, Problems problems) {
    asked
        .readyBy()
        .filter(
            ready -> asked.arrives().filter(it -> !it.value().isBefore(ready.value())).isPresent())
        .ifPresent(ready -> problems.add(BookSentences.readyBeforeArrival(ready.at())));
  }

  private static Optional<Job.Carried> carried(MapReader map) {
    Optional<Located<LocalDate>> from = map.required("from", ValueReaders.date());
    Optional<Located<String>> sheet = map.required("sheet", Words.id());
    Optional<Located<Integer>> step = map.optional("step", ValueReaders.wholeNumber(1, MOST_STEPS));
    List<Located<String>> found = map.listOrOne("found", ValueReaders.text());
    return map.build(() -> new Job.Carried(from.get(), sheet.get(), step, found));
  }

  private static Optional<Job> job(MapReader map) {
    Job job =
        new Job(
            Words.needed(map, "job", Words.id(), ""),
            map.optional("date", ValueReaders.date()),
            new Job.Request(
                map.optional("customer", ValueReaders.text()),
                map.optional("complaint", ValueReaders.text()),
                map.optional("arrives", ClockReader.time()),
                map.optional("ready-by", ClockReader.time())),
            vehicle(map),
            new Job.Condition(
                Words.once(map.listOrOne("state", ValueReaders.name()), map.problems()),
                Words.located(
                    map.entries(
                        "load", PlaceText::axle, FigureReaders.quantity(QuantityKey.LOAD)))),
            Words.needed(map, "bay", Words.id(), ""),
            new Job.Crew(
                Words.needed(map, "by", Words.id(), ""),
                map.optional("with", Words.id()),
                map.optional("second", Words.id()),
                qualified(map)),
            Words.once(Words.needed(map, WORK, JobReader::work, List.of()).value(), map.problems()),
            new Job.Exceptions(
                overrides(map),
                Words.located(map.entries("waive", ValueReaders::nameOf, Words.id()))),
            map.optional("notes", ValueReaders.text()),
            new Job.Sheets(
                revision(map),
                map.optional("stages", ValueReaders.wholeNumber(1, Job.MOST_WANTED)),
                map.optional("carried", CARRIED).map(Located::value)),
            map.at());
    return map.build(() -> job);
  }

  private static Map<String, Job.Qualified> qualified(MapReader map) {
    Map<String, Job.Qualified> qualified = new LinkedHashMap<>();
    map.entries("qualified", ValueReaders::nameOf, Words.id())
        .forEach(
            entry ->
                qualified.put(entry.key().value(), new Job.Qualified(entry.key(), entry.value())));
    return qualified;
  }

  private static Located<String> revision(MapReader map) {
    return map.optional("revision", ValueReaders.value(JobReader::revisionOf))
        .orElseGet(() -> new Located<>(FIRST_REVISION, map.start()));
  }

  private static ParseOutcome<String> revisionOf(String text) {
    return REVISION.matcher(text).matches()
        ? ParseOutcome.ok(text)
        : BookSentences.notARevision(text);
  }

  private static Job.Vehicle vehicle(MapReader map) {
    return map.required(
            "vehicle", ValueReaders.record("the vehicle of a job", JobReader::vehicleOf))
        .map(Located::value)
        .orElseGet(
            () ->
                new Job.Vehicle(
                    Words.unread(map, ""), Optional.empty(), Optional.empty(), Optional.empty()));
  }

  private static Optional<Job.Vehicle> vehicleOf(MapReader map) {
    Optional<Located<String>> book = map.required("book", ValueReaders.name());
    Optional<Located<String>> plate = map.optional("plate", ValueReaders.text());
    Optional<Located<String>> vin = map.optional("vin", ValueReaders.value(JobReader::vinOf));
    Optional<Located<Quantity>> odometer =
        map.optional("odometer", FigureReaders.quantity(QuantityKey.ODOMETER));
    return map.build(() -> new Job.Vehicle(book.get(), plate, vin, odometer));
  }

  private static ParseOutcome<String> vinOf(String text) {
    return VIN.matcher(text).matches() ? ParseOutcome.ok(text) : BookSentences.notAVin(text);
  }

  private static Optional<Located<List<Located<Job.Work>>>> work(Node node, Problems problems) {
    boolean nothing = node instanceof Sequence list && list.items().isEmpty();
    if (nothing) {
      problems.add(BookSentences.noWork(node.at()));
    }
    return ValueReaders.listOrOne(ValueReaders.value(PlaceText::work)).read(node, problems);
  }

  /** An override that wants its key, for the fastener and the place. */
  private static Optional<Function<Located<Job.Work>, Job.Replacement>> replacement(MapReader map) {
    Optional<Located<String>> source = map.required("source", ValueReaders.text());
    FastenerText values = FastenerReader.text(map, false);
    FastenerCheck.check(values, map.problems());
    return map.build(
        () ->
            key ->
                new Job.Replacement(
                    key.map(Job.Work::procedure), key.value().place(), values, source.get()));
  }

  private static List<Job.Replacement> overrides(MapReader map) {
    return map.entries("override", PlaceText::work, REPLACEMENT).stream()
        .map(entry -> entry.value().value().apply(entry.key()))
        .toList();
  }
}
