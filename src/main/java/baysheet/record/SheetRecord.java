package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.layout.Fit;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import baysheet.sheet.Support;
import baysheet.sheet.TimeNeeded;
import baysheet.sheet.TorqueLine;
import baysheet.torque.ThreePoint;
import baysheet.wording.Language;
import baysheet.wording.StageWords;
import baysheet.wording.StepSentences;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * Writes the record of a sheet: the same figures as on paper, so that they can be read back
 * exactly. Keys are camelCase, quantities {@code {"value", "unit"}}, items {@code item@place};
 * boxes are in points from the page's lower left corner.
 */
public final class SheetRecord {
  private static final int FORMAT = 1;

  private final Sheet sheet;
  private final Language language;
  private final StepSentences sentences;

  private SheetRecord(Sheet sheet) {
    this.sheet = sheet;
    this.language = Language.of(sheet.heading());
    this.sentences = new StepSentences(sheet);
  }

  /**
   * The record as UTF-8 bytes.
   *
   * @param fit how it was made to fit
   */
  public static byte[] write(Sheet sheet, SheetId id, String paper, Page page, Fit fit) {
    JsonObject onPage =
        new JsonObject()
            .put("id", id.text())
            .put("hash", id.hash())
            .put("code", id.code())
            .put("paper", paper)
            .put("bodyPt", points(fit.bodySize()))
            .put("dropped", fit.dropped());
    return JsonText.lines(
            new SheetRecord(sheet)
                .all(onPage)
                .list("boxes", page.pens(), pen -> box(page, pen))
                .list("marks", page.modules(), it -> mark(page, it)))
        .getBytes(StandardCharsets.UTF_8);
  }

  /** The same without its id and all that depends on the page. */
  static byte[] canonical(Sheet sheet) {
    return JsonText.canonical(new SheetRecord(sheet).all(new JsonObject()))
        .getBytes(StandardCharsets.UTF_8);
  }

  private JsonObject all(JsonObject onPage) {
    HeadingRecord head = new HeadingRecord(sheet, language);
    TorqueRecord torque = new TorqueRecord(language);
    JsonObject whole =
        new JsonObject()
            .put("format", FORMAT)
            .put("sheet", head.identity().putAll(onPage))
            .put("vehicle", head.vehicle())
            .put("people", head.people())
            .put("bay", sheet.heading().bay().name())
            .put("bayEquipment", sheet.heading().bay().equipment())
            .put("complaint", sheet.heading().request().complaint())
            .put("promised", sheet.heading().request().promised())
            .put("notes", sheet.notes());
    sheet.stage().ifPresent(stage -> whole.putAll(new StageRecord(language, stage).all()));
    return whole
        .put(
            "carried",
            sheet.heading().before().carried().map(it -> StageWords.continues(language, it)))
        .put(
            "replaces",
            sheet
                .heading()
                .before()
                .replaces()
                .map(it -> new JsonObject().put("sheet", it.sheet()).put("changes", it.changes())))
        .put("works", language.statements(sheet.heading().works()))
        .putAll(new InvoiceRecord(sheet, language).all())
        .list("sections", sheet.sections(), this::section)
        .list("steps", sheet.steps(), this::step)
        .list("torque", sheet.torque(), torque::of)
        .list("wrenches", sheet.equipment().wrenches(), SheetRecord::wrench)
        .list("sockets", sheet.equipment().sockets(), this::socket)
        .list("tools", sheet.equipment().tools(), this::tool)
        .list("parts", sheet.equipment().parts(), this::part)
        .put("consumables", language.statements(sheet.equipment().consumables()))
        .list("tally", sheet.tally(), it -> tally(language, it))
        .list("cautions", sheet.safety().cautions(), this::caution)
        .put("protect", sheet.safety().protect())
        .list("checks", sheet.checks(), this::check)
        .put("support", heaviest().map(this::support))
        .list("supports", sheet.safety().support(), this::support)
        .put("time", time(sheet.time()))
        .put("evening", language.statements(sheet.evening()))
        .put("sources", language.sources(sheet.sources()));
  }

  private JsonObject section(Sheet.Section section) {
    return new JsonObject()
        .put("heading", sentences.heading(section))
        .put("steps", section.steps().stream().map(Sheet.SheetStep::n).toList())
        .put("oneSideFirst", section.oneSideFirst().map(it -> List.of(it.first(), it.last())));
  }

  private JsonObject step(Sheet.SheetStep step) {
    return new JsonObject()
        .put("n", step.n())
        .put("id", step.source().id())
        .put("phase", step.phase().word())
        .put("moment", step.moment().word())
        .put("height", step.height().word())
        .put("place", step.places().get(0))
        .put("places", step.places())
        .put("procedure", step.procedure())
        .put("text", sentences.text(step.source()))
        .put("details", sentences.details(step))
        .put("undo", step.undo())
        .put("slacken", step.slacken())
        .put("doUp", step.doUp())
        .put("disturb", step.disturb())
        .put("openCircuit", step.actions().circuits())
        .put("torque", step.torque())
        .put("cautions", step.letters().all())
        .put("minutes", minutes(step.minutes()))
        .put("printedMinutes", printed(step.minutes()))
        .put("hold", step.hold())
        .put("entries", language.statements(step.entries()))
        .put("cautionsAbove", step.letters().above())
        .put("because", language.text(step.teaching().because()))
        .put("good", step.teaching().good().map(language::text))
        .put("ifStuck", language.texts(step.teaching().ifStuck()));
  }

  private static List<Long> minutes(ThreePoint minutes) {
    return List.of(
        Math.round(minutes.low()), Math.round(minutes.likely()), Math.round(minutes.high()));
  }

  /** In halves, as the sheet prints them. */
  private static BigDecimal printed(ThreePoint minutes) {
    return new BigDecimal(TimeNeeded.printed(minutes.mean()));
  }

  private static JsonObject wrench(Sheet.WrenchLine wrench) {
    return new JsonObject()
        .put("name", wrench.name())
        .put("calibrated", wrench.calibrated())
        .put("due", wrench.due());
  }

  private JsonObject socket(Sheet.SocketLine socket) {
    return new JsonObject()
        .put("drive", socket.drive().print())
        .put("head", socket.head().print())
        .put("points", socket.points())
        .put("impact", socket.impact())
        .put("deep", socket.deep())
        .put("count", socket.count())
        .put("firstStep", socket.firstStep())
        .put("owned", socket.owned())
        .put("orAdapter", socket.orAdapter().map(language::text))
        .put("insert", socket.insert().map(Language::insertAndReach));
  }

  private JsonObject tool(Sheet.ToolLine tool) {
    return new JsonObject()
        .put("name", language.text(tool.name()))
        .put("special", tool.special())
        .put("owned", tool.owned())
        .put("ifStuck", tool.ifStuck());
  }

  private JsonObject part(PartLine part) {
    return new JsonObject()
        .put("part", language.text(part.part()))
        .put("count", part.count())
        .put("places", part.places())
        .put("fastener", part.fastener())
        .put("number", part.number())
        .put("procedures", List.copyOf(part.byProcedure().keySet()));
  }

  static JsonObject tally(Language language, Sheet.TallyLine line) {
    return new JsonObject()
        .put("item", line.item())
        .put("words", language.text(line.words()))
        .put("count", line.count())
        .put("place", line.places().get(0))
        .put("places", line.places())
        .put("off", line.off())
        .put("on", line.on());
  }

  private JsonObject caution(CautionLine caution) {
    return new JsonObject()
        .put("letter", caution.letter())
        .put("signal", caution.signal())
        .put("hazard", caution.name())
        .put("text", language.text(caution.command()))
        .put("danger", language.text(caution.hazard()))
        .put("consequence", language.text(caution.consequence()))
        .put("protect", caution.protect())
        .put("onTop", caution.onTop())
        .put("collapsed", caution.collapsed())
        .put("steps", caution.steps())
        .put("wholeJob", caution.wholeJob())
        .put("source", caution.source())
        .put("waivedBy", caution.waivedBy());
  }

  private JsonObject check(CheckLine check) {
    return new JsonObject()
        .put("moment", check.moment().word())
        .put("rule", check.name())
        .put("text", language.text(check.text()))
        .put("reason", check.reason().map(language::text))
        .put("places", check.places())
        .put("because", check.because())
        .put("steps", check.steps())
        .put("hold", check.hold())
        .put("needs", language.text(check.needs()))
        .put("keepsOpen", language.text(check.keepsOpen()))
        .put("releasedBy", language.text(check.releasedBy()))
        .put("source", language.source(check.source()));
  }

  /** The support that carries most for its rating stands alone, where one figure is wanted. */
  private Optional<Support> heaviest() {
    return sheet.safety().support().stream()
        .reduce((one, other) -> other.load().isAbove(one.load()) ? other : one);
  }

  private JsonObject support(Support support) {
    return new JsonObject()
        .put("raised", support.raised())
        .put("on", language.text(support.on()))
        .put("axleLoad", support.load())
        .put("perStand", support.each())
        .put("cargo", support.cargo())
        .put("rated", support.rated())
        .put("points", language.statements(support.points()));
  }

  private static JsonObject time(TimeNeeded time) {
    return new JsonObject()
        .put("minutes", List.of(time.low(), time.mean(), time.high()))
        .put("saved", time.saved())
        .put("untimed", time.untimed());
  }

  private static JsonObject box(Page page, Item.Pen pen) {
    return new JsonObject()
        .put("name", pen.name())
        .put("kind", pen.kind())
        .put("required", pen.required())
        .put("choice", Optional.of(pen.choice()).filter(it -> !it.isEmpty()))
        .putAll(place(page, pen.edge()));
  }

  private static JsonObject mark(Page page, Item.Modules modules) {
    return new JsonObject().put("kind", modules.kind()).putAll(place(page, modules.edge()));
  }

  private static JsonObject place(Page page, Item.Area edge) {
    return new JsonObject()
        .put("x", points(edge.x()))
        .put("y", points(page.height() - edge.bottom()))
        .put("w", points(edge.width()))
        .put("h", points(edge.height()));
  }

  /** Thousandths of a point as points. */
  private static BigDecimal points(long thousandths) {
    BigDecimal points = BigDecimal.valueOf(thousandths, 3).stripTrailingZeros();
    return points.scale() < 0 ? points.setScale(0) : points;
  }

  /** Writes how a stage finds the vehicle and how it leaves it. */
  private record StageRecord(Language language, Stage stage) {
    JsonObject all() {
      return new JsonObject()
          .put("arrival", stage.arrival().map(this::state))
          .put("leaving", stage.leaving().map(this::state))
          .put("linesElsewhere", stage.elsewhere().stream().map(TorqueLine::n).toList())
          .put("released", language.texts(stage.releasedBy()));
    }

    private JsonObject state(VehicleState state) {
      return new JsonObject()
          .put("after", state.after())
          .put("height", state.standing().height().word())
          .put("raised", state.standing().raised())
          .put("onBlocks", state.standing().onBlocks())
          .put("held", state.held().stream().map(Stage.Held::item).toList())
          .put("heldWords", state.held().stream().map(it -> language.name(it.name())).toList())
          .list("off", state.off(), it -> SheetRecord.tally(language, it))
          .list("slackened", state.slackened(), it -> SheetRecord.tally(language, it))
          .list("fastenersOff", state.fasteners(), this::row)
          .list("notTight", state.loose(), this::row)
          .put("open", state.open())
          .put("left", language.texts(state.left()))
          .put("written", state.written())
          .list("needed", state.needed(), this::figure);
    }

    private JsonObject row(Stage.Row row) {
      return new JsonObject()
          .put("line", row.n())
          .put("words", language.name(row.name()))
          .put("places", row.places())
          .put("sheet", Optional.ofNullable(stage.sheets().get(row.n())));
    }

    private JsonObject figure(Stage.Figure figure) {
      return new JsonObject()
          .put("step", figure.step())
          .put("words", language.statements(figure.words()))
          .put("places", figure.places());
    }
  }
}
