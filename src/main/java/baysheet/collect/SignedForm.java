package baysheet.collect;

import baysheet.ledger.Closing;
import baysheet.ledger.Event.Decision;
import baysheet.ledger.Event.Value;
import baysheet.ledger.Event.Values;
import baysheet.ledger.Joint;
import baysheet.ledger.KeptRecord;
import baysheet.ledger.PersonalFiles.Note;
import baysheet.ledger.SheetStory;
import baysheet.ledger.Tables;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.torque.Dimension;
import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import baysheet.torque.Unit;
import baysheet.yaml.MapReader;
import baysheet.yaml.Node;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The file in which a person types what stands on a signed sheet: the figure of each value box, and
 * whether doubtful boxes are marked. {@code open} stands where nothing was typed yet.
 */
public final class SignedForm {
  /** Below the folder of a day's sheets. */
  public static final String FOLDER = "signed";

  private static final String OPEN = "open";

  private static final Pattern TYPED =
      Pattern.compile("(?m)^ *- \\{box: ([\\w.-]+),.* value: *(?!open)[^ ,}]");

  private static final ValueReader<Optional<Quantity>> OPEN_OR_FIGURE =
      ValueReaders.value(
          text ->
              text.equals(OPEN)
                  ? ParseOutcome.ok(Optional.empty())
                  : figure(QuantityText.quantity(text, Dimension.TORQUE)));

  private static final ValueReader<Optional<Boolean>> OPEN_OR_MARK =
      ValueReaders.oneOf(
          Map.of(OPEN, Optional.empty(), "marked", Optional.of(true), "empty", Optional.of(false)));

  private final KeptRecord record;
  private final Map<String, KeptRecord.Box> boxes = new HashMap<>();
  private final Problems problems;
  private final List<Value> values = new ArrayList<>();
  private final List<Decision> decisions = new ArrayList<>();
  private final List<String> excepted = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private final Map<String, Span> places = new HashMap<>();

  private SignedForm(KeptRecord record, Problems problems) {
    this.record = record;
    this.problems = problems;
    record.boxes().forEach(box -> boxes.put(box.name(), box));
  }

  /** Where the form of a job lies. */
  public static Path file(Path out, KeptRecord record) {
    return out.resolve(record.date().toString()).resolve(FOLDER).resolve(record.name() + ".yaml");
  }

  /**
   * What was typed.
   *
   * @param places where the entry of each box stands
   */
  public record Filled(Values values, List<Note> notes, Map<String, Span> places) {}

  /**
   * The form of a sheet with nothing typed in. A crop is the picture of a box in the file to look
   * through, and has the number of the box on its sheet.
   */
  public static String blank(KeptRecord record, SheetStory story) {
    return of(record, story, Map.of());
  }

  /**
   * The same with what was typed in a form on a screen, by the names of the boxes. A bare number is
   * in the unit of the wrench; what is no figure stays open.
   */
  static String of(KeptRecord record, SheetStory story, Map<String, String> typed) {
    Map<String, Joint> joints = new HashMap<>();
    record.joints().forEach(joint -> joints.put(joint.box(), joint));
    StringBuilder values = new StringBuilder();
    StringBuilder marks = new StringBuilder();
    Set<KeptRecord.Box> undecided = new HashSet<>();
    record.choices().stream()
        .filter(choice -> Closing.isOpen(choice, story))
        .forEach(undecided::addAll);
    int number = 0;
    for (KeptRecord.Box box : record.boxes()) {
      number++;
      String crop = hasCrop(box, story) ? ", crop: " + number : "";
      SheetStory.Box state = story.box(box.name());
      if (box.kind().equals("value")) {
        Joint joint = joints.get(box.name());
        values.append(
            "  - {box: %s%s%s, value: %s}\n"
                .formatted(
                    box.name(), expected(joint), crop, figure(typed.get(box.name()), joint)));
      } else if (undecided.contains(box) || box.required() && state != SheetStory.Box.MARKED) {
        String is =
            switch (state) {
              case MARKED -> "marked";
              case EMPTY -> "empty";
              case DOUBTFUL, UNREAD -> OPEN;
            };
        marks.append(
            "  - {box: %s, kind: %s%s, is: %s}\n".formatted(box.name(), box.kind(), crop, is));
      }
    }
    return """
    # The signed sheet %s. Type what stands on the paper in place of "open":
    # a figure with its unit, or marked or empty. If something is right although it is empty or
    # outside its band, add   except: the reason   to its line. Then: baysheet close %s --by T1
    sheet: %s
    values:%s
    boxes:%s
    found: []   # what was written by hand under findings: [text, text]
    """
        .formatted(record.id(), record.name(), record.id(), listed(values), listed(marks));
  }

  /** The boxes of which a form has a figure, as this program writes their lines. */
  static Set<String> typed(Path form) {
    if (!Files.exists(form)) {
      return Set.of();
    }
    try {
      return TYPED
          .matcher(Files.readString(form))
          .results()
          .map(line -> line.group(1))
          .collect(Collectors.toSet());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + form, e);
    }
  }

  private static String figure(String typed, Joint joint) {
    boolean bare = typed != null && typed.matches("[0-9]+([.][0-9]+)?");
    String text = bare ? unit(joint).map(it -> typed + " " + it.symbol()).orElse("") : typed;
    boolean known =
        text != null
            && text.matches("[0-9][\\w.·/ -]*")
            && QuantityText.quantity(text, Dimension.TORQUE).found().isPresent();
    return known ? text : OPEN;
  }

  /** Of what the wrench reads. */
  private static Optional<Unit> unit(Joint joint) {
    Optional<Joint> row = Optional.ofNullable(joint);
    Optional<Unit> band = row.flatMap(Joint::band).map(it -> it.low().unit());
    return row.flatMap(Joint::setting)
        .map(Quantity::unit)
        .filter(unit -> band.filter(unit::equals).isPresent());
  }

  /** Whether a person has to look at a box: at a figure or words, and at what is doubtful. */
  static boolean hasCrop(KeptRecord.Box box, SheetStory story) {
    boolean written = box.kind().equals("value") || box.kind().equals("line");
    SheetStory.Box state = story.box(box.name());
    return state == SheetStory.Box.DOUBTFUL || written && state == SheetStory.Box.MARKED;
  }

  private static String listed(StringBuilder lines) {
    return lines.isEmpty() ? " []" : "\n" + lines.toString().stripTrailing();
  }

  private static String expected(Joint joint) {
    if (joint == null) {
      return "";
    }
    StringBuilder text = new StringBuilder();
    printed(joint).forEach((key, words) -> text.append(", %s: %s".formatted(key, words)));
    joint.wrench().ifPresent(wrench -> text.append(", wrench: ").append(wrench));
    return text.toString();
  }

  /** What the form repeats of the sheet. */
  private static Map<String, String> printed(Joint joint) {
    Map<String, String> printed = new LinkedHashMap<>();
    printed.put("fastener", joint.fastener());
    joint.target().ifPresent(target -> printed.put("target", Tables.plain(target)));
    joint
        .setting()
        .filter(setting -> !joint.target().equals(Optional.of(setting)))
        .ifPresent(setting -> printed.put("setting", Tables.plain(setting)));
    joint.band().ifPresent(band -> printed.put("band", Tables.band(band)));
    return printed;
  }

  /** What was typed by somebody; empty when problems with errors were added. */
  public static Optional<Filled> read(
      Node node, KeptRecord record, String by, LocalDate on, Problems problems) {
    SignedForm form = new SignedForm(record, problems);
    return MapReader.of(node, "a signed sheet", problems)
        .flatMap(form::read)
        .filter(all -> !problems.hasErrors())
        .map(
            all ->
                new Filled(
                    new Values(on, record.id(), by, form.values, form.decisions, form.excepted),
                    form.notes,
                    form.places));
  }

  private Optional<Boolean> read(MapReader map) {
    Optional<Located<String>> sheet = map.required("sheet", ValueReaders.text());
    sheet.filter(it -> !it.value().equals(record.id())).ifPresent(this::otherSheet);
    map.list("values", ValueReaders.record("a value", this::value));
    map.list("boxes", ValueReaders.record("a box", this::mark));
    List<Located<String>> found = map.list("found", ValueReaders.text());
    for (int i = 0; i < found.size(); i++) {
      notes.add(new Note(record.id(), "found." + (i + 1), found.get(i).value()));
    }
    return map.build(() -> true);
  }

  private void otherSheet(Located<String> sheet) {
    problems.add(
        Problem.of(
                ProblemCode.OTHER_SHEET,
                sheet.at(),
                "this is the form of the sheet %s, and the last one of the job is %s"
                    .formatted(sheet.value(), record.id()))
            .expecting("a form of " + record.id() + "; without a file, close writes one"));
  }

  private Optional<Boolean> value(MapReader map) {
    Optional<String> name = name(map, true);
    List.of("fastener", "target", "setting", "band").forEach(key -> same(map, key, name));
    Optional<String> wrench = map.optional("wrench", ValueReaders.text()).map(Located::value);
    Optional<Located<Optional<Quantity>>> value = map.required("value", OPEN_OR_FIGURE);
    exception(map, name);
    name.ifPresent(
        box ->
            value
                .flatMap(Located::value)
                .ifPresent(figure -> values.add(new Value(box, figure, wrench))));
    return map.build(() -> true);
  }

  private static ParseOutcome<Optional<Quantity>> figure(ParseResult<Quantity> reading) {
    return reading instanceof ParseFailure<Quantity> misread
        ? ParseOutcome.bad(ProblemCode.BAD_QUANTITY, misread.what(), misread.expected())
        : ParseOutcome.ok(reading.found());
  }

  private Optional<Boolean> mark(MapReader map) {
    Optional<String> name = name(map, false);
    map.optional("kind", ValueReaders.text());
    Optional<Located<Optional<Boolean>>> is = map.required("is", OPEN_OR_MARK);
    exception(map, name);
    name.ifPresent(
        box ->
            is.flatMap(Located::value)
                .ifPresent(marked -> decisions.add(new Decision(box, marked))));
    return map.build(() -> true);
  }

  private Optional<String> name(MapReader map, boolean value) {
    map.optional("crop", ValueReaders.wholeNumber(1, 99_999));
    Optional<Located<String>> box = map.required("box", ValueReaders.text());
    Optional<Located<String>> known =
        box.filter(it -> boxes.containsKey(it.value()))
            .filter(it -> boxes.get(it.value()).kind().equals("value") == value);
    if (box.isPresent() && known.isEmpty()) {
      problems.add(unknown(box.get(), value));
    }
    known.ifPresent(it -> places.put(it.value(), it.at()));
    return known.map(Located::value);
  }

  private Problem unknown(Located<String> box, boolean value) {
    List<String> names =
        boxes.values().stream()
            .filter(it -> it.kind().equals("value") == value)
            .map(KeptRecord.Box::name)
            .sorted()
            .toList();
    return Problem.of(
            ProblemCode.UNKNOWN_BOX,
            box.at(),
            "the sheet has no %s \"%s\"".formatted(value ? "value box" : "box", box.value()))
        .expecting("one of " + String.join(", ", names))
        .near(Nearest.of(box.value(), names));
  }

  /** What the form says of the sheet must stay as it was: the figure is typed beside it. */
  private void same(MapReader map, String key, Optional<String> name) {
    Optional<Located<String>> written = map.optional(key, ValueReaders.text());
    String own =
        record.joints().stream()
            .filter(it -> name.filter(it.box()::equals).isPresent())
            .map(it -> printed(it).getOrDefault(key, ""))
            .findFirst()
            .orElse("");
    written
        .filter(it -> name.isPresent() && !it.value().equals(own))
        .ifPresent(
            it ->
                problems.add(
                    Problem.of(
                            ProblemCode.OTHER_SHEET,
                            it.at(),
                            "the sheet has another %s there".formatted(key))
                        .expecting(own.isEmpty() ? "no " + key : key + ": " + own)));
  }

  private void exception(MapReader map, Optional<String> name) {
    Optional<Located<String>> reason = map.optional("except", ValueReaders.text());
    reason
        .filter(it -> name.isPresent())
        .ifPresent(
            it -> {
              excepted.add(name.get());
              notes.add(new Note(record.id(), name.get(), it.value()));
            });
  }
}
