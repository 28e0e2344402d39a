package baysheet.ledger;

import baysheet.ledger.Event.Value;
import baysheet.ledger.Tables.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was done on a vehicle or for a job: tightened to what, by whom, with which wrench. */
public final class History {
  private static final List<Tables.Column> COLUMNS =
      Tables.columns(
          "DATE", "date",
          "SHEET", "sheet",
          "STATE", "state",
          "BY", "by",
          "ROW", "row",
          "FASTENER", "fastener",
          "PLACE", "place",
          "TARGET", "target",
          "BAND", "band",
          "READ", "read",
          "WRENCH", "wrench",
          "SETTING", "setting",
          "NOTE", "note");

  private History() {}

  /** One row for each joint, and one for each finding or exception that was typed. */
  public static Table of(List<SheetStory> stories, Index index) {
    List<List<Object>> rows = new ArrayList<>();
    for (SheetStory story : stories) {
      rows.add(whole(story, index));
      story.issued().joints().forEach(joint -> rows.add(joint(story, joint)));
      index.people().notes(story.id()).forEach(note -> rows.add(note(story, note)));
    }
    return new Table(COLUMNS, rows);
  }

  private static List<Object> start(SheetStory story) {
    return new ArrayList<>(
        List.of(
            story.issued().date().toString(),
            story.id(),
            story.state().words(),
            String.join(" ", story.issued().crew())));
  }

  private static List<Object> whole(SheetStory story, Index index) {
    String title =
        story.isForgotten()
            ? "names, page and notes were forgotten"
            : index.record(story.id()).map(KeptRecord::title).orElse("");
    return row(story, List.of("", "", "", "", "", "", "", "", title));
  }

  private static List<Object> joint(SheetStory story, Joint joint) {
    Optional<Value> value = story.value(joint.box());
    Optional<String> wrench = used(story, joint);
    // The setting that was planned says nothing about another wrench.
    boolean planned = wrench.equals(joint.wrench());
    return row(
        story,
        List.of(
            joint.row(),
            joint.fastener(),
            joint.place(),
            Tables.cell(joint.target()),
            Tables.cell(joint.band()),
            Tables.cell(value.map(Value::value)),
            Tables.cell(wrench),
            planned ? Tables.cell(joint.setting()) : "",
            story.isExcepted(joint.box()) ? "excepted" : ""));
  }

  private static List<Object> note(SheetStory story, PersonalFiles.Note note) {
    return row(story, List.of("", "", "", "", "", "", "", "", note.about() + ": " + note.text()));
  }

  private static List<Object> row(SheetStory story, List<Object> rest) {
    List<Object> row = start(story);
    row.addAll(rest);
    return row;
  }

  /** The wrench that was written down, or else the one that was planned. */
  static Optional<String> used(SheetStory story, Joint joint) {
    return story.value(joint.box()).flatMap(Value::wrench).or(joint::wrench);
  }
}
