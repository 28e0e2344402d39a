package baysheet.record;

import baysheet.layout.Fit;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Heading;
import baysheet.sheet.PartLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Support;
import baysheet.sheet.TimeNeeded;
import baysheet.torque.ThreePoint;
import baysheet.wording.Language;
import baysheet.wording.StageWords;
import baysheet.wording.StepSentences;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * Writes the record of a sheet: the same figures as on paper, so that they can be read back
 * exactly. Keys are camelCase, quantities {@code {"value", "unit"}}, items {@code item@place};
 * boxes are in points from the page's lower left corner.
 */
public final class SheetRecord {
  private static final int FORMAT = 1;

  private final Json json;
  private final Sheet sheet;
  private final Language language;
  private final StepSentences sentences;
  private final HeadingRecord heading;
  private final InvoiceRecord invoice;

  private SheetRecord(Json json, Sheet sheet) {
    this.json = json;
    this.sheet = sheet;
    this.language = Language.of(sheet.heading());
    this.sentences = new StepSentences(sheet);
    this.heading = new HeadingRecord(json, sheet, language);
    this.invoice = new InvoiceRecord(json, sheet, language);
  }

  /**
   * The record as UTF-8 bytes.
   *
   * @param fit how it was made to fit
   */
  public static byte[] write(Sheet sheet, SheetId id, String paper, Page page, Fit fit) {
    return Json.lines(
        json -> {
          SheetRecord record = new SheetRecord(json, sheet);
          record.all(
              () -> {
                json.text("id", id.text());
                json.text("hash", id.hash());
                json.text("code", id.code());
                json.text("paper", paper);
                json.number("bodyPt", Json.points(fit.bodySize()));
                json.texts("dropped", fit.dropped());
              },
              () -> {
                json.list("boxes", page.pens(), pen -> record.box(page, pen));
                json.list("marks", page.modules(), it -> record.mark(page, it));
              });
        });
  }

  /** The same without its id and all that depends on the page, its keys sorted, without spaces. */
  static byte[] canonical(Sheet sheet) {
    return Canonical.of(Json.lines(json -> new SheetRecord(json, sheet).all(() -> {}, () -> {})));
  }

  private void all(Json.Piece ofPage, Json.Piece boxes) throws IOException {
    json.object(
        () -> {
          json.number("format", FORMAT);
          json.object("sheet", () -> heading.sheet(ofPage));
          json.object("vehicle", heading::vehicle);
          json.object("people", heading::people);
          json.text("bay", sheet.heading().bay());
          json.text("bayEquipment", sheet.heading().bayEquipment());
          json.text("complaint", sheet.heading().complaint());
          json.text("promised", sheet.heading().promised());
          json.text("notes", sheet.notes());
          if (sheet.stage().isPresent()) {
            new StageRecord(json, language).write(sheet.stage().get());
          }
          json.text(
              "carried", sheet.heading().carried().map(it -> StageWords.continues(language, it)));
          if (sheet.heading().replaces().isPresent()) {
            Heading.Replaced before = sheet.heading().replaces().get();
            json.object(
                "replaces",
                () -> {
                  json.text("sheet", before.sheet());
                  json.texts("changes", before.changes());
                });
          }
          json.texts("works", language.statements(sheet.heading().works()));
          invoice.write();
          json.list("sections", sheet.sections(), this::section);
          json.list("steps", sheet.steps(), this::step);
          json.list("torque", sheet.torque(), line -> new TorqueRecord(json, language).write(line));
          json.list("wrenches", sheet.wrenches(), this::wrench);
          json.list("sockets", sheet.sockets(), this::socket);
          json.list("tools", sheet.tools(), this::tool);
          json.list("parts", sheet.parts(), this::part);
          json.texts("consumables", language.statements(sheet.consumables()));
          json.list("tally", sheet.tally(), it -> tally(json, language, it));
          json.list("cautions", sheet.cautions(), this::caution);
          json.list("checks", sheet.checks(), this::check);
          heaviest();
          json.list("supports", sheet.support(), one -> json.object(() -> support(one)));
          json.object("time", this::time);
          json.texts("evening", language.statements(sheet.evening()));
          json.texts("sources", language.sources(sheet.sources()));
          boxes.write();
        });
  }

  private void section(Sheet.Section section) throws IOException {
    json.object(
        () -> {
          json.text("heading", sentences.heading(section));
          json.numbers("steps", section.steps().stream().map(Sheet.SheetStep::n).toList());
          if (section.oneSideFirst().isPresent()) {
            Sheet.Stretch sides = section.oneSideFirst().get();
            json.numbers("oneSideFirst", List.of(sides.first(), sides.last()));
          }
        });
  }

  private void step(Sheet.SheetStep step) throws IOException {
    json.object(
        () -> {
          json.number("n", step.n());
          json.text("id", step.source().id());
          json.text("phase", step.phase().word());
          json.text("moment", step.moment().word());
          json.text("height", step.height().word());
          json.text("place", step.places().get(0));
          json.texts("places", step.places());
          json.text("procedure", step.procedure());
          json.text("text", sentences.text(step.source()));
          json.texts("details", sentences.details(step));
          json.texts("undo", step.undo());
          json.texts("slacken", step.slacken());
          json.texts("doUp", step.doUp());
          json.texts("disturb", step.disturb());
          json.texts("openCircuit", step.actions().circuits());
          json.numbers("torque", step.torque());
          json.texts("cautions", step.letters().all());
          json.numbers("minutes", minutes(step.minutes()));
          json.truth("hold", step.hold());
          json.texts("entries", language.statements(step.entries()));
          json.texts("cautionsAbove", step.letters().above());
          json.text("because", language.text(step.teaching().because()));
          json.text("good", step.teaching().good().map(language::text));
          json.texts("ifStuck", language.texts(step.teaching().ifStuck()));
        });
  }

  private static List<Long> minutes(ThreePoint minutes) {
    return List.of(
        Math.round(minutes.low()), Math.round(minutes.likely()), Math.round(minutes.high()));
  }

  private void wrench(Sheet.WrenchLine wrench) throws IOException {
    json.object(
        () -> {
          json.text("name", wrench.name());
          json.text("calibrated", wrench.calibrated());
        });
  }

  private void socket(Sheet.SocketLine socket) throws IOException {
    json.object(
        () -> {
          json.text("drive", socket.drive().print());
          json.text("head", socket.head().print());
          json.number("points", socket.points());
          json.truth("impact", socket.impact());
          json.truth("deep", socket.deep());
          json.number("count", socket.count());
          json.number("firstStep", socket.firstStep());
          json.truth("owned", socket.owned());
          json.text("insert", socket.insert().map(Language::insertAndReach));
        });
  }

  private void tool(Sheet.ToolLine tool) throws IOException {
    json.object(
        () -> {
          json.text("name", language.text(tool.name()));
          json.truth("special", tool.special());
          json.truth("owned", tool.owned());
          json.truth("ifStuck", tool.ifStuck());
        });
  }

  private void part(PartLine part) throws IOException {
    json.object(
        () -> {
          json.text("part", language.text(part.part()));
          json.number("count", part.count());
          json.texts("places", part.places());
          json.truth("fastener", part.fastener());
          json.text("number", part.number());
          json.texts("procedures", List.copyOf(part.byProcedure().keySet()));
        });
  }

  static void tally(Json json, Language language, Sheet.TallyLine line) throws IOException {
    json.object(
        () -> {
          json.text("item", line.item());
          json.text("words", language.text(line.words()));
          json.number("count", line.count());
          json.text("place", line.places().get(0));
          json.texts("places", line.places());
          json.number("off", line.off());
          json.number("on", line.on());
        });
  }

  private void caution(CautionLine caution) throws IOException {
    json.object(
        () -> {
          json.text("letter", caution.letter());
          json.text("signal", caution.signal());
          json.text("hazard", caution.name());
          json.text("text", language.text(caution.command()));
          json.text("danger", language.text(caution.hazard()));
          json.text("consequence", language.text(caution.consequence()));
          json.texts("protect", caution.protect());
          json.truth("onTop", caution.onTop());
          json.truth("collapsed", caution.collapsed());
          json.numbers("steps", caution.steps());
          json.truth("wholeJob", caution.wholeJob());
          json.text("source", caution.source());
          json.text("waivedBy", caution.waivedBy());
        });
  }

  private void check(CheckLine check) throws IOException {
    json.object(
        () -> {
          json.text("moment", check.moment().word());
          json.text("rule", check.name());
          json.text("text", language.text(check.text()));
          json.text("reason", check.reason().map(language::text));
          json.texts("places", check.places());
          json.numbers("because", check.because());
          json.numbers("steps", check.steps());
          json.truth("hold", check.hold());
          json.text("needs", language.text(check.needs()));
          json.text("keepsOpen", language.text(check.keepsOpen()));
          json.text("releasedBy", language.text(check.releasedBy()));
          json.text("source", language.source(check.source()));
        });
  }

  /** The support that carries most for its rating stands alone, where one figure is wanted. */
  private void heaviest() throws IOException {
    Optional<Support> most =
        sheet.support().stream()
            .reduce((one, other) -> other.load().isAbove(one.load()) ? other : one);
    if (most.isPresent()) {
      json.object("support", () -> support(most.get()));
    }
  }

  private void support(Support support) throws IOException {
    json.text("raised", support.raised());
    json.text("on", language.text(support.on()));
    json.quantity("axleLoad", support.load());
    json.quantity("perStand", support.each());
    json.quantity("rated", support.rated());
    json.texts("points", language.statements(support.points()));
  }

  private void time() throws IOException {
    TimeNeeded time = sheet.time();
    json.numbers("minutes", List.of(time.low(), time.mean(), time.high()));
    json.number("saved", time.saved());
    json.number("untimed", time.untimed());
  }

  private void box(Page page, Item.Pen pen) throws IOException {
    json.object(
        () -> {
          json.text("name", pen.name());
          json.text("kind", pen.kind());
          json.truth("required", pen.required());
          json.text("choice", Optional.of(pen.choice()).filter(it -> !it.isEmpty()));
          place(page, pen.edge());
        });
  }

  private void place(Page page, Item.Area edge) throws IOException {
    json.number("x", Json.points(edge.x()));
    json.number("y", Json.points(page.height() - edge.bottom()));
    json.number("w", Json.points(edge.width()));
    json.number("h", Json.points(edge.height()));
  }

  private void mark(Page page, Item.Modules modules) throws IOException {
    json.object(
        () -> {
          json.text("kind", modules.kind());
          place(page, modules.edge());
        });
  }
}
