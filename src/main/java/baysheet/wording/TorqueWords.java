package baysheet.wording;

import baysheet.books.Moment;
import baysheet.report.ProblemCode;
import baysheet.sheet.TorqueLine;
import baysheet.sheet.TorqueLine.StageLine;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import baysheet.wording.SheetText.BoxText;
import baysheet.wording.TorqueTableText.RemarkText;
import baysheet.wording.TorqueTableText.StageText;
import baysheet.wording.TorqueTableText.TorqueBlock;
import baysheet.wording.TorqueTableText.TorqueLineText;
import baysheet.wording.TorqueTableText.TurnText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The torque table in words and figures. */
final class TorqueWords {
  private static final String DOT = " · ";

  private final List<TorqueLine> lines;
  private final Unit unit;
  private final Language language;

  /**
   * @param unit in which values are written down where no wrench says otherwise
   */
  TorqueWords(List<TorqueLine> lines, Unit unit, Language language) {
    this.language = language;
    this.lines = lines;
    this.unit = unit;
  }

  TorqueTableText table() {
    List<TorqueBlock> blocks = new ArrayList<>();
    block(Phrase.RAISED, TorqueWords::isRaised).ifPresent(blocks::add);
    block(onTheGround(), line -> !isRaised(line)).ifPresent(blocks::add);
    return new TorqueTableText(
        blocks, SequenceDrawing.all(lines), String.valueOf(marks()), commonUnit(), shopBand());
  }

  private Phrase onTheGround() {
    return lines.stream().anyMatch(line -> line.visits().rideHeight())
        ? Phrase.ROWS_ON_THE_GROUND
        : Phrase.ON_THE_GROUND;
  }

  private static boolean isRaised(TorqueLine line) {
    return !line.visits().rideHeight()
        && line.visits().moment().compareTo(Moment.ON_THE_GROUND) < 0;
  }

  private Optional<TorqueBlock> block(Phrase heading, Predicate<TorqueLine> belongs) {
    List<TorqueLineText> block = lines.stream().filter(belongs).map(this::line).toList();
    return block.isEmpty()
        ? Optional.empty()
        : Optional.of(new TorqueBlock(language.own(heading), block));
  }

  /** One mark for a set at a place: the value box beside it stands for the same fasteners. */
  private int marks() {
    return lines.stream().mapToInt(line -> line.places().size()).sum();
  }

  private String commonUnit() {
    List<String> units = lines.stream().map(line -> unit(line).symbol()).distinct().toList();
    return units.size() == 1 ? units.get(0) : "";
  }

  private String shopBand() {
    boolean any =
        lines.stream()
            .flatMap(line -> line.method().stages().stream())
            .anyMatch(BandWords::isShops);
    return any ? language.own(Phrase.SHOP_BAND) : "";
  }

  private TorqueLineText line(TorqueLine line) {
    String n = "torque." + line.n();
    String words = language.text(line.words());
    String what = "torque row " + line.n() + ", " + words;
    return new TorqueLineText(
        String.valueOf(line.n()),
        Phrases.capital(words),
        PlaceWords.words(line.places()),
        set(line),
        line.kind().name().toLowerCase(Locale.ROOT),
        stages(line),
        RoundWords.of(line, language),
        threads(line),
        reuse(line),
        line.refitting().lock().map(language::lock).orElse(""),
        line.method().drawing().map(TorqueLine.OrderDrawing::letter).orElse(""),
        line.refitting().remarks().stream()
            .map(it -> new RemarkText(it.key().word(), language.remark(it)))
            .toList(),
        unit(line).symbol(),
        PlaceWords.boxes(n, "value reached, " + what, line.places()),
        turns(line, what),
        snug(line, n, what),
        PlaceWords.boxes("mark." + line.n(), "witness mark, " + what, line.places()),
        warnings(line),
        notes(line),
        borrow(line),
        line.inDoubt(),
        line.visits().rideHeight(),
        override(line));
  }

  /** Where the job's own value comes from, and what the book says, for whoever has to decide. */
  private String override(TorqueLine line) {
    if (!line.origin().overridden()) {
      return "";
    }
    if (line.inDoubt()) {
      String given = language.own(Phrase.NOT_TO_USE, line.origin().source());
      return line.origin()
          .replaced()
          .map(torque -> given + "; " + language.own(Phrase.NOR_OF_BOOK, torque))
          .orElse(given);
    }
    String own = language.own(Phrase.OF_THIS_JOB, line.origin().source());
    return line.origin()
        .replaced()
        .map(torque -> own + "; " + language.own(Phrase.BOOK_SAYS, torque))
        .orElse(own);
  }

  /** A torque is written down; a turn is only seen to be done, so each has a box of its own. */
  private static List<TurnText> turns(TorqueLine line, String what) {
    List<TurnText> turns = new ArrayList<>();
    for (StageLine stage : line.method().stages()) {
      if (stage instanceof StageLine.Angle angle) {
        String name = "turn." + line.n() + "." + (turns.size() + 1);
        String text = "+" + angle.angle().print();
        String says = "turned by " + text + ", " + what;
        turns.add(new TurnText(text, PlaceWords.boxes(name, says, line.places())));
      }
    }
    return turns;
  }

  private static List<BoxText> snug(TorqueLine line, String n, String what) {
    if (!line.visits().two()) {
      return List.of();
    }
    return PlaceWords.boxes(n, "snug while raised, " + what, line.places()).stream()
        .map(box -> new BoxText(box.name() + ".snug", box.label(), box.says()))
        .toList();
  }

  /** {@code 2 × M12×1.75 · 10.9}, as much of it as the book states; the head stands after it. */
  private static String set(TorqueLine line) {
    String thread = line.hardware().thread().map(TorqueWords::thread).orElse("");
    String strength = line.hardware().strength().map(text -> DOT + text).orElse("");
    String size =
        thread + strength + line.hardware().head().map(head -> DOT + head.print()).orElse("");
    String first = size.startsWith(DOT) ? size.substring(DOT.length()) : size;
    return line.count() + Phrases.NBSP + "×" + Phrases.NBSP + first + socket(line);
  }

  /** With a multiplication sign: {@code M12×1.75}. */
  private static String thread(String designation) {
    return designation.replaceAll("(?<=[0-9])x(?=[0-9])", "×");
  }

  private static String socket(TorqueLine line) {
    return line.hardware()
        .socket()
        .map(
            socket ->
                ", "
                    + socket.insert().map(Language::insert).orElse(socket.drive().print())
                    + (socket.owned() ? "" : ", borrow"))
        .orElse("");
  }

  /** Further turns stand beside the torque they follow; a torque begins a line of its own. */
  private List<StageText> stages(TorqueLine line) {
    List<StageText> texts = new ArrayList<>();
    for (StageLine stage : line.method().stages()) {
      if (stage instanceof StageLine.Angle angle && !texts.isEmpty()) {
        texts.add(turned(texts.remove(texts.size() - 1), angle));
      } else {
        texts.add(stage(stage));
      }
    }
    return texts;
  }

  private StageText turned(StageText before, StageLine.Angle angle) {
    String turn = " +" + angle.angle().print();
    return new StageText(
        before.target() + turn,
        before.band(),
        before.shopBand(),
        before.reading(),
        before.second(),
        before.wrench(),
        before.setting(),
        language.own(Phrase.MARK_HEAD),
        before.set() + turn,
        before.once());
  }

  private StageText stage(StageLine stage) {
    if (stage instanceof StageLine.Torque torque) {
      String target = torque.target().print();
      String setting = torque.setting().map(Quantity::print).orElse("");
      boolean once = setting.isEmpty() || setting.equals(target);
      // A second unit of another figure than the wrench is set to would be set by mistake.
      String second = torque.second().filter(any -> once).map(Quantity::print).orElse("");
      return new StageText(
          target,
          BandWords.of(torque),
          BandWords.isShops(torque),
          torque.reading().map(BandWords::reading).orElse(""),
          second,
          setting.isEmpty() ? "" : torque.wrench().orElse(""),
          setting,
          "",
          setting.isEmpty() ? target : setting,
          once);
    } else if (stage instanceof StageLine.Angle angle) {
      return done("+" + angle.angle().print(), language.own(Phrase.MARK_HEAD));
    }
    return done(language.own(Phrase.LOOSEN), "");
  }

  /** A stage for which no wrench is set. */
  private static StageText done(String what, String remark) {
    return new StageText(what, "", false, "", "", "", "", remark, what, true);
  }

  /** What is wrong with a wrench, or why there is none, beside what the planner warns of. */
  private List<String> warnings(TorqueLine line) {
    Stream<String> planned = said(line, false);
    Stream<String> wrenches = torques(line).flatMap(torque -> trouble(torque).stream());
    return Stream.concat(planned, wrenches).distinct().map(Phrases::sentence).toList();
  }

  /** What is to be compared once, and stands in ordinary type. */
  private List<String> notes(TorqueLine line) {
    Stream<String> said = said(line, true).map(text -> "note: " + text);
    return Stream.concat(said, readings(line)).map(Phrases::sentence).toList();
  }

  /** With a crow-foot between, the wrench reads another figure than the fastener has. */
  private Stream<String> readings(TorqueLine line) {
    return line.hardware().socket().flatMap(TorqueLine.SocketNeed::insert).isEmpty()
            || line.inDoubt()
        ? Stream.of()
        : torques(line)
            .filter(torque -> torque.setting().isPresent())
            .filter(torque -> !torque.setting().get().equals(torque.target()))
            .map(
                torque ->
                    language.own(
                        Phrase.READ_ON_WRENCH,
                        torque.setting().get().print(),
                        torque.target().print()));
  }

  private Stream<String> said(TorqueLine line, boolean notes) {
    return line.origin().warnings().stream()
        .filter(it -> (it.code().severity() == ProblemCode.Severity.NOTE) == notes)
        .map(TorqueLine.Warning::text)
        .map(language::source);
  }

  private Optional<String> trouble(StageLine.Torque torque) {
    boolean wide = torque.setting().isPresent() && !torque.insideBand();
    return torque
        .trouble()
        .map(language::source)
        .or(() -> wide ? Optional.of(language.own(Phrase.TOO_WIDE)) : Optional.empty());
  }

  private static boolean borrow(TorqueLine line) {
    return !line.inDoubt() && torques(line).anyMatch(torque -> torque.setting().isEmpty());
  }

  private static Stream<StageLine.Torque> torques(TorqueLine line) {
    return line.method().stages().stream()
        .filter(StageLine.Torque.class::isInstance)
        .map(StageLine.Torque.class::cast);
  }

  private String threads(TorqueLine line) {
    return language.text(line.refitting().threads().print());
  }

  private String reuse(TorqueLine line) {
    return switch (line.refitting().reuse()) {
      case NEW -> language.own(Phrase.RENEW);
      case AGAIN -> language.own(Phrase.RE_USE);
      case NOT_STATED -> language.own(Phrase.RE_USE_NOT_STATED);
    };
  }

  /** The unit of the wrench's scale, for the value is read there; of the shop where none is set. */
  private Unit unit(TorqueLine line) {
    return torques(line)
        .reduce((first, last) -> last)
        .filter(torque -> !line.inDoubt())
        .map(torque -> torque.setting().orElse(torque.target()).unit())
        .orElse(unit);
  }
}
