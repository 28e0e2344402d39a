package baysheet.wording;

import baysheet.sheet.Sheet;
import java.util.List;

/**
 * What a layout gets: every word and figure of a sheet ready to print, in reading order. An empty
 * text means that there is nothing to say; figures keep their units with non-breaking spaces.
 *
 * @param paper {@code A4} or {@code Letter}
 * @param language BCP 47 tag of the words: {@code en-GB} or {@code en-US}
 * @param title the document's title
 * @param stage which sheet of the job this is
 * @param apprentice whether an apprentice takes part: reasons and more signatures are wanted
 * @param cautions those that stand on top
 * @param also minor cautions that share a line; a notice has no more than its command
 * @param qualified who may do the steps that need a certificate, a sentence each
 * @param waived cautions left out, each with who answers for it
 * @param protect protective equipment of the whole job, each piece once
 * @param evening what has to be done the evening before
 * @param steps how many steps the sequence has
 * @param wrenches those that the table names, with the day on which their calibration is due
 * @param checks those that no step of the sequence leads to, by their moments
 * @param openItems what somebody else must do before the sheet is closed
 * @param releasedBy who signs last: the second person, unless a check names somebody
 */
public record SheetText(
    String paper,
    String language,
    String title,
    StageText stage,
    boolean apprentice,
    HeadText head,
    List<CautionText> cautions,
    List<CautionText> also,
    List<String> qualified,
    List<String> waived,
    List<String> protect,
    List<String> evening,
    int steps,
    List<SectionText> sections,
    TorqueTableText torque,
    List<String> wrenches,
    List<DriveText> sockets,
    List<ToolText> tools,
    List<PartText> parts,
    List<String> consumables,
    TallyText tally,
    List<ChecksText> checks,
    List<OpenItemText> openItems,
    String releasedBy,
    List<RecheckText> rechecks,
    String notes,
    SourcesText sources) {
  public SheetText {
    cautions = List.copyOf(cautions);
    also = List.copyOf(also);
    qualified = List.copyOf(qualified);
    waived = List.copyOf(waived);
    protect = List.copyOf(protect);
    evening = List.copyOf(evening);
    sections = List.copyOf(sections);
    wrenches = List.copyOf(wrenches);
    sockets = List.copyOf(sockets);
    tools = List.copyOf(tools);
    parts = List.copyOf(parts);
    consumables = List.copyOf(consumables);
    checks = List.copyOf(checks);
    openItems = List.copyOf(openItems);
    rechecks = List.copyOf(rechecks);
  }

  /**
   * The words of a sheet.
   *
   * @param id as it is printed
   */
  public static SheetText of(Sheet sheet, String id, String code) {
    return SheetWords.of(sheet, id, code);
  }

  /**
   * Which of several sheets of the job this is.
   *
   * @param label {@code stage 1 of 2}; nothing where the job has one sheet
   * @param first whether the work begins with this sheet
   * @param last whether it ends with it
   * @param arrival how the vehicle stands when it begins, a sentence each; none for the first
   * @param figures what is copied from an earlier sheet, since a step of this one refers to it
   * @param takenOver the box of the person who takes over
   * @param leaving how the vehicle stands when it ends, a sentence each; none for the last
   */
  public record StageText(
      String label,
      boolean first,
      boolean last,
      List<String> arrival,
      List<EntryText> figures,
      List<BoxText> takenOver,
      List<String> leaving) {
    public StageText {
      arrival = List.copyOf(arrival);
      figures = List.copyOf(figures);
      takenOver = List.copyOf(takenOver);
      leaving = List.copyOf(leaving);
    }
  }

  /**
   * A caution.
   *
   * @param steps the steps it belongs to, {@code 3, 7}, or nothing
   * @param from where it stands on top but does not hold from the first step: from which on
   * @param oneLine whether it is short enough for one line across the page
   * @param protect what to wear for it, {@code eye protection, gloves}, or nothing
   */
  public record CautionText(
      String letter,
      String signal,
      String command,
      String why,
      String protect,
      String steps,
      String from,
      String source,
      boolean oneLine) {}

  /**
   * Steps under one heading.
   *
   * @param lead the heading as it runs in before a single step
   * @param raises whether they raise the vehicle
   */
  public record SectionText(
      String heading, String lead, boolean raises, String note, List<StepText> steps) {
    public SectionText {
      steps = List.copyOf(steps);
    }
  }

  /**
   * A box for a pen that belongs to a place or a person.
   *
   * @param name the name under which the record lists it
   * @param label what is printed beside it; nothing where there is only one
   * @param says what it is for, in full
   */
  public record BoxText(String name, String label, String says) {}

  /**
   * Who looks at what is held.
   *
   * @param boxes for their initials; none where nothing is held
   * @param by who alone may give them; nothing where any second person may
   */
  public record HoldText(List<BoxText> boxes, String by) {
    public HoldText {
      boxes = List.copyOf(boxes);
    }
  }

  /**
   * A numbered line of the sequence.
   *
   * @param place where, if neither its heading nor its boxes say so
   * @param ticks a box for each place; none where it is a heading of checks
   * @param above the cautions that stand directly above it
   * @param letters letters of further cautions, {@code A, C}
   * @param entries what is written in here, each with a line at each place
   * @param details what belongs to it, already in words
   * @param torque the torque lines it tightens, {@code 3, 4}
   * @param due the checks that it leads to; they stand below it and nowhere else
   * @param hold the box for a second person's initials; none where work goes on
   */
  public record StepText(
      String n,
      String place,
      String text,
      List<BoxText> ticks,
      List<CautionText> above,
      String letters,
      List<DetailText> details,
      String torque,
      List<CheckText> due,
      String minutes,
      String because,
      String good,
      List<String> ifStuck,
      List<EntryText> entries,
      HoldText hold) {
    public StepText {
      ticks = List.copyOf(ticks);
      above = List.copyOf(above);
      details = List.copyOf(details);
      due = List.copyOf(due);
      ifStuck = List.copyOf(ifStuck);
      entries = List.copyOf(entries);
    }
  }

  /**
   * What belongs to a step.
   *
   * @param tools whether it names special tools, which the list of tools has as well
   */
  public record DetailText(String text, boolean tools) {}

  /** What is written in at a step, with a line for each place. */
  public record EntryText(String words, List<BoxText> boxes) {
    public EntryText {
      boxes = List.copyOf(boxes);
    }
  }

  /** The sockets of one square drive. */
  public record DriveText(String drive, List<SocketText> sockets) {
    public DriveText {
      sockets = List.copyOf(sockets);
    }
  }

  /**
   * What to lay out to reach a head.
   *
   * @param kind what the head does not say already; nothing for a common socket
   */
  public record SocketText(String head, String kind, int count, String firstStep, boolean borrow) {}

  /** A tool, or something else a step or check needs; some only ways out ask for. */
  public record ToolText(String name, boolean borrow, boolean ifStuck) {}

  /**
   * A new part.
   *
   * @param label where it and those behind it go; nothing where that was said of the one before
   */
  public record PartText(String count, String part, String label) {}

  /**
   * Everything undone that has no torque line.
   *
   * @param title what heads it
   * @param off how many came off, torque lines not counted
   */
  public record TallyText(String title, String off, List<TallyLineText> lines) {
    public TallyText {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Something off that must be on again.
   *
   * @param places where it belongs, if the lines belong to different places
   */
  public record TallyLineText(
      String words, String places, String count, String off, String on, List<BoxText> boxes) {
    public TallyLineText {
      boxes = List.copyOf(boxes);
    }
  }

  /**
   * Checks of one moment.
   *
   * @param gate whether they stand between the vehicle and its first movement
   * @param early whether they are due before that
   */
  public record ChecksText(String heading, boolean gate, boolean early, List<CheckText> checks) {
    public ChecksText {
      checks = List.copyOf(checks);
    }
  }

  /**
   * A check.
   *
   * @param n its number below the step that leads to it; nothing where none does
   * @param because the steps that brought it: {@code steps 4, 7}, or nothing
   * @param needs a figure that is written in, with where it comes from, or nothing
   */
  public record CheckText(
      String n,
      String text,
      List<BoxText> ticks,
      HoldText hold,
      String because,
      String reason,
      String needs,
      List<BoxText> figure) {
    public CheckText {
      ticks = List.copyOf(ticks);
      figure = List.copyOf(figure);
    }
  }

  /**
   * Whose figures these are.
   *
   * @param others where figures are found that no book of the garage has; nothing where none is
   *     asked for
   */
  public record SourcesText(List<String> values, String others) {
    public SourcesText {
      values = List.copyOf(values);
    }
  }

  /** What somebody else must do before the sheet is closed. */
  public record OpenItemText(String text, BoxText box) {}

  /**
   * Fasteners that are checked again after a distance.
   *
   * @param due where the odometer reading goes at which they are due
   * @param told that the customer knows of it
   */
  public record RecheckText(String words, String distance, BoxText due, BoxText told) {}
}
