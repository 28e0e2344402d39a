package baysheet.ledger;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.report.ProblemCode;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the ledger needs of a sheet's record. */
public final class KeptRecord {
  private final JsonObject whole;

  private KeptRecord(JsonObject whole) {
    this.whole = whole;
  }

  /**
   * @throws IllegalArgumentException when these are not the bytes of a record
   */
  public static KeptRecord of(byte[] json) {
    try {
      KeptRecord record = new KeptRecord(JsonText.read(json));
      record.date();
      record.id();
      record.job();
      record.joints();
      record.boxes();
      return record;
    } catch (IOException | DateTimeException e) {
      throw new IllegalArgumentException("this is no record of a sheet: " + e.getMessage(), e);
    }
  }

  /**
   * A place to write on.
   *
   * @param kind tick, value, initials, signature or line
   * @param required whether the sheet is incomplete without it
   * @param choice names the boxes of which exactly one is to be marked
   */
  public record Box(String name, String kind, boolean required, Optional<String> choice) {}

  private JsonObject part(String key) {
    return whole.object(key).orElseThrow(() -> new IllegalArgumentException("there is no " + key));
  }

  public String id() {
    return part("sheet").text("id");
  }

  public String job() {
    return part("sheet").text("job");
  }

  /** Which of several sheets of its job it is; nothing where there is one only. */
  Optional<Event.Part> stageOfSeveral() {
    return Event.Part.of(part("sheet"));
  }

  /** Names the sheet among all of the garage, whatever its revision, as its files are named. */
  public String name() {
    return Event.Part.name(job(), stageOfSeveral());
  }

  public LocalDate date() {
    return part("sheet").date("date");
  }

  /** Which sheet of its job it is, from 1. */
  public int stage() {
    return stageOfSeveral().map(Event.Part::n).orElse(1);
  }

  /** How many sheets its job has. */
  public int stages() {
    return stageOfSeveral().map(Event.Part::of).orElse(1);
  }

  public String shop() {
    return part("sheet").maybeText("shop").orElse("");
  }

  String revision() {
    return part("sheet").text("revision");
  }

  Optional<String> code() {
    return part("sheet").maybeText("code");
  }

  /** The revision before, as the sheet names it. */
  public Optional<Event.Replaced> replaces() {
    return whole
        .object("replaces")
        .map(it -> new Event.Replaced(it.text("sheet"), it.texts("changes")));
  }

  /** The numbers of its steps; those of a later stage go on from the one before it. */
  public List<Integer> steps() {
    return whole.objects("steps").stream().map(step -> step.number("n")).toList();
  }

  public String title() {
    return part("sheet").maybeText("title").orElse("");
  }

  Optional<Quantity> odometer() {
    return part("vehicle").quantity("odometer");
  }

  PersonalFiles.Customer customer() {
    return new PersonalFiles.Customer(
        id(),
        part("people").maybeText("customer"),
        part("vehicle").maybeText("plate"),
        part("vehicle").maybeText("vin"));
  }

  /** Ids of everybody named, the one who does the work first. */
  List<String> crew() {
    JsonObject people = part("people");
    Set<String> crew = new LinkedHashSet<>();
    for (String role : List.of("by", "with", "second")) {
      people.maybeText(role).ifPresent(crew::add);
    }
    for (JsonObject work : people.objects("qualified")) {
      work.object("by").ifPresent(it -> crew.add(it.text("person")));
      work.objects("second").forEach(it -> crew.add(it.text("person")));
    }
    return List.copyOf(crew);
  }

  /** All boxes; a line for findings, a stop or another wrench may stay empty. */
  public List<Box> boxes() {
    return whole.objects("boxes").stream().map(KeptRecord::box).toList();
  }

  /** The boxes of each choice, of which exactly one is to be marked. */
  public List<List<Box>> choices() {
    Map<String, List<Box>> choices = new LinkedHashMap<>();
    for (Box box : boxes()) {
      box.choice().ifPresent(it -> choices.computeIfAbsent(it, key -> new ArrayList<>()).add(box));
    }
    return List.copyOf(choices.values());
  }

  private static Box box(JsonObject box) {
    String kind = box.text("kind");
    boolean required = box.has("required") ? box.truth("required") : !kind.equals("line");
    return new Box(box.text("name"), kind, required, box.maybeText("choice"));
  }

  /** What somebody else must still do, by the rule that asks for it, as the sheet words it. */
  Map<String, String> open() {
    Map<String, String> open = new LinkedHashMap<>();
    for (JsonObject check : whole.objects("checks")) {
      check
          .maybeText("keepsOpen")
          .filter(words -> !open.containsValue(words))
          .ifPresent(words -> open.put(check.text("rule"), words));
    }
    return open;
  }

  /** One for each row and place. */
  public List<Joint> joints() {
    List<Joint> joints = new ArrayList<>();
    for (JsonObject row : whole.objects("torque")) {
      row.texts("places").forEach(place -> joints.add(joint(row, place)));
    }
    return joints;
  }

  private static Joint joint(JsonObject row, String place) {
    List<JsonObject> stages = row.objects("stages");
    int last = stages.size() - 1;
    while (last >= 0 && !stages.get(last).has("torque")) {
      last--;
    }
    Optional<JsonObject> torque = last < 0 ? Optional.empty() : Optional.of(stages.get(last));
    Optional<String> wrench = torque.flatMap(it -> it.maybeText("wrench"));
    return new Joint(
        row.number("n"),
        row.text("fastener"),
        place,
        row.number("count"),
        torque.filter(it -> !isDoubted(row)).flatMap(it -> it.quantity("torque")),
        torque.flatMap(it -> it.object("reading").or(() -> it.object("band"))).map(Joint::band),
        angle(stages.subList(last + 1, stages.size())),
        wrench,
        torque.flatMap(it -> it.quantity("setting")),
        earlier(row, wrench),
        row.quantity("recheck"));
  }

  /** A figure that was in doubt is no target: somebody found the right one. */
  private static boolean isDoubted(JsonObject row) {
    return row.objects("warnings").stream()
        .anyMatch(warning -> warning.text("code").equals(ProblemCode.DOES_NOT_FIT.word()));
  }

  private static Optional<Quantity> angle(List<JsonObject> stages) {
    return stages.stream()
        .filter(it -> it.has("angle"))
        .map(it -> new Quantity(it.decimal("angle"), Unit.DEGREE))
        .reduce(Quantity::plus);
  }

  private static List<String> earlier(JsonObject row, Optional<String> last) {
    Set<String> wrenches = new LinkedHashSet<>();
    row.objects("rounds").forEach(it -> it.maybeText("wrench").ifPresent(wrenches::add));
    row.objects("stages").forEach(it -> it.maybeText("wrench").ifPresent(wrenches::add));
    last.ifPresent(wrenches::remove);
    return List.copyOf(wrenches);
  }

  JsonObject whole() {
    return whole;
  }
}
