package baysheet.wording;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.books.Remark;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.StepSource;
import baysheet.sheet.Support;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The steps of a sheet in words: the sentence, what belongs to it, the heading above. */
public final class StepSentences {
  private static final String NO_BREAK = "\u00a0";

  /** With this begins a note that is printed where the fastener is undone: its row is far away. */
  private static final String HOLD = "hold ";

  private final Language language;
  private final WrenchSentences wrenches;
  private final Map<Integer, TorqueLine> torque = new HashMap<>();

  public StepSentences(Sheet sheet) {
    this(
        Language.of(sheet.heading()),
        sheet.torque(),
        sheet.stage().map(Stage::sheets).orElse(Map.of()));
    sheet.stage().ifPresent(it -> it.elsewhere().forEach(line -> torque.put(line.n(), line)));
  }

  StepSentences(Language language, List<TorqueLine> lines) {
    this(language, lines, Map.of());
  }

  private StepSentences(Language language, List<TorqueLine> lines, Map<Integer, Integer> sheets) {
    this.language = language;
    this.wrenches = new WrenchSentences(language, sheets);
    lines.forEach(line -> torque.put(line.n(), line));
  }

  /** The sentence of a step, as it was written. */
  public String text(StepSource source) {
    if (source instanceof StepSource.Written written) {
      return language.text(written.text());
    } else if (source instanceof StepSource.Back back) {
      return language.text(back.text());
    } else if (source instanceof StepSource.Check check) {
      return language.text(check.text());
    } else if (source instanceof StepSource.PutBack back) {
      return back.text().map(language::text).orElseGet(() -> putBack(back));
    } else if (source instanceof StepSource.FinalTorque last) {
      return language.own(Phrase.FINAL_TORQUE, language.plural(last.name(), last.count()));
    } else if (source instanceof StepSource.Blocks blocks) {
      return blocks(blocks);
    } else if (source instanceof StepSource.Chocks chocks) {
      return language.own(chocks(chocks), PlaceWords.words(chocks.where()));
    } else if (source instanceof StepSource.HeightChange change) {
      return language.own(height(change));
    }
    StepSource.Checkpoint checkpoint = (StepSource.Checkpoint) source;
    return language.own(checkpoint.lifted() ? Phrase.CHECK_NOW : Phrase.CHECK_NOW_NOT_LIFTED);
  }

  private String putBack(StepSource.PutBack back) {
    return switch (back.what()) {
      case FASTENER -> language.own(Phrase.FIT, language.plural(back.name(), back.count()));
      case SLACKENED -> language.own(Phrase.TIGHTEN, language.plural(back.name(), back.count()));
      case TEMPORARY -> language.own(Phrase.TAKE_AWAY, language.name(back.name()));
      case OTHER -> language.own(Phrase.PUT_BACK, language.name(back.name()));
    };
  }

  /** What brings the vehicle to a height, and the check that belongs to it. */
  private static Phrase height(StepSource.HeightChange change) {
    return switch (change.part()) {
      case LOOK -> Phrase.LOOK_ROUND;
      case PADS -> Phrase.PADS_UNDER;
      case ARM_LOCKS -> Phrase.ARM_LOCKS;
      case BRAKE -> change.from() == Height.GROUND ? Phrase.APPLY_BRAKE : Phrase.HOLD_STILL;
      case FREE_LOCKS -> change.to() == Height.GROUND ? Phrase.FREE_LOCKS_ALONE : Phrase.FREE_LOCKS;
      case FREE_STANDS -> Phrase.FREE_STANDS;
      case TAKE_STANDS -> Phrase.TAKE_STANDS;
      case JACK -> Phrase.JACK_UP;
      case SET_STANDS -> Phrase.SET_STANDS;
      case PUSH -> change.to() == Height.STANDS ? Phrase.PUSH_SIDE : Phrase.PUSH_ENDS;
      case LOCKS -> Phrase.ONTO_LOCKS;
      case MOVE -> moved(change);
    };
  }

  private static Phrase moved(StepSource.HeightChange change) {
    return switch (change.to()) {
      case GROUND -> Phrase.TO_THE_GROUND;
      case WHEELS_CLEAR ->
          change.from() == Height.GROUND ? Phrase.UP_TO_WHEELS_CLEAR : Phrase.DOWN_TO_WHEELS_CLEAR;
      case WORKING -> Phrase.TO_WORKING_HEIGHT;
      case STANDS -> Phrase.ONTO_STANDS;
    };
  }

  private static Phrase chocks(StepSource.Chocks chocks) {
    boolean all = chocks.where() == Place.VEHICLE;
    if (!chocks.set()) {
      return all ? Phrase.TAKE_CHOCKS : Phrase.TAKE_CHOCKS_OF_AXLE;
    } else if (chocks.onBlocks()) {
      return all ? Phrase.CHOCK_ON_BLOCKS : Phrase.CHOCK_AXLE_ON_BLOCKS;
    }
    return all ? Phrase.CHOCK : Phrase.CHOCK_AXLE;
  }

  private String blocks(StepSource.Blocks blocks) {
    String where = PlaceWords.words(blocks.where());
    String at = blocks.jacking().map(point -> " (" + language.text(point) + ")").orElse("");
    return language.own(
        switch (blocks.part()) {
          case APPLY_BRAKE, HOLD_STILL -> Phrase.HOLD_STILL;
          case SET_LIFT_PADS, SET_LIFT_PADS_TO_LEAVE -> Phrase.SET_LIFT_PADS;
          case ARM_LOCKS, ARM_LOCKS_TO_LEAVE -> Phrase.ARM_LOCKS;
          case LOCKS -> Phrase.ONTO_LOCKS;
          case FREE_LOCKS, FREE_LOCKS_TO_LEAVE -> Phrase.FREE_LOCKS_ALONE;
          case RAISE_CLEAR -> Phrase.UP_TO_WHEELS_CLEAR;
          case PUSH, PUSH_OFF -> Phrase.PUSH_ENDS;
          case RAISE -> Phrase.RAISE_FOR_BLOCKS;
          default -> Phrase.valueOf(blocks.part().name());
        },
        where,
        at);
  }

  /** What belongs to a step beside its sentence. */
  public List<String> details(SheetStep step) {
    return detailTexts(step).stream().map(SheetText.DetailText::text).toList();
  }

  List<SheetText.DetailText> detailTexts(SheetStep step) {
    return detailTexts(step, Optional.empty());
  }

  /**
   * The same with what is looked at before the wrench is set to a fastener, in its place.
   *
   * @param good absent where nothing is, or where it is printed elsewhere
   */
  List<SheetText.DetailText> detailTexts(SheetStep step, Optional<String> good) {
    List<SheetText.DetailText> texts = new ArrayList<>();
    boolean named = step.details().stream().filter(Detail.Removed.class::isInstance).count() > 1;
    Optional<String> first = good;
    for (Detail detail : step.details()) {
      boolean tools = detail instanceof Detail.Tools;
      List<String> words =
          new ArrayList<>(
              detail instanceof Detail.Tools its ? with(step, its.names()) : words(detail, named));
      if (isTorque(detail) && first.isPresent()) {
        words.add(words.size() - 1, language.own(Phrase.OK_IF, first.get()));
        first = Optional.empty();
      }
      words.stream()
          .filter(text -> !text.isEmpty())
          .forEach(text -> texts.add(new SheetText.DetailText(text, tools)));
    }
    return List.copyOf(texts);
  }

  static boolean isTorque(Detail detail) {
    return detail instanceof Detail.Installed || detail instanceof Detail.Tightened;
  }

  private List<String> words(Detail detail, boolean named) {
    if (detail instanceof Detail.Removed removed) {
      TorqueLine line = torque.get(removed.line());
      return List.of(removed(line, named), held(line));
    } else if (detail instanceof Detail.Slackened slackened) {
      TorqueLine line = torque.get(slackened.line());
      return List.of(
          line.hardware().head().map(head -> times(line) + head.print()).orElse(""), held(line));
    } else if (detail instanceof Detail.Installed installed) {
      TorqueLine line = torque.get(installed.line());
      return List.of(installed(line), line.visits().two() ? snugOnly(line) : tightened(line, true));
    } else if (detail instanceof Detail.Tightened tightened) {
      return List.of(tightened(torque.get(tightened.line()), false));
    } else if (detail instanceof Detail.AtHeightOf height) {
      return List.of(language.own(Phrase.HEIGHT_OF, height.step()));
    } else if (detail instanceof Detail.Fluid fluid) {
      return List.of(language.text(fluid(fluid)));
    } else if (detail instanceof Detail.Carried carried) {
      return carried(carried.by());
    } else if (detail instanceof Detail.Absent absent) {
      return List.of(language.own(Phrase.ABSENT, language.text(absent.item())));
    } else if (detail instanceof Detail.HandledElsewhere elsewhere) {
      return List.of(elsewhere(elsewhere));
    }
    return List.of(language.own(Phrase.BOTH_ENDS_UP));
  }

  /** Tools that the sentence of the step does not name itself. */
  private List<String> with(SheetStep step, List<String> tools) {
    String sentence = text(step.source());
    List<String> others =
        step.source() instanceof StepSource.Blocks
            ? List.of()
            : language.texts(tools).stream().filter(it -> !sentence.contains(it)).toList();
    return others.isEmpty()
        ? List.of()
        : List.of(language.own(Phrase.WITH, String.join(", ", others)));
  }

  /** With what to hold it, where the note of the book begins with that. */
  private String held(TorqueLine line) {
    return line.refitting().remarks().stream()
        .filter(it -> it.key().equals(Remark.NOTE) && it.text().startsWith(HOLD))
        .map(language::remark)
        .collect(Collectors.joining());
  }

  /** Count and head; the name as well where the step removes several kinds. */
  private String removed(TorqueLine line, boolean named) {
    List<String> words = new ArrayList<>();
    String name = named ? Phrases.capital(language.text(line.words())) + NO_BREAK : "";
    line.hardware().head().ifPresent(head -> words.add(name + times(line) + head.print()));
    if (line.refitting().reuse() == TorqueLine.Reuse.NEW) {
      words.add(language.own(Phrase.DISCARD));
    }
    return String.join(", ", words);
  }

  /** Whether new, and what to put on the thread. */
  private String installed(TorqueLine line) {
    List<String> words = new ArrayList<>();
    if (line.refitting().reuse() == TorqueLine.Reuse.NEW) {
      words.add(times(line) + language.own(Phrase.NEW));
    }
    if (line.isTreated()) {
      words.add(language.text(line.refitting().threads().phrase()));
    }
    return String.join(", ", words);
  }

  private String snugOnly(TorqueLine line) {
    return language.own(Phrase.SNUG_ONLY, wrenches.number(line));
  }

  /** How many, where it is more than one. */
  private static String times(TorqueLine line) {
    return line.count() == 1 ? "" : line.count() + NO_BREAK + "×" + NO_BREAK;
  }

  /**
   * The figure and what keeps it.
   *
   * @param torque whether to say what is done, because the step's sentence does not
   */
  private String tightened(TorqueLine line, boolean torque) {
    return wrenches.figure(line, torque)
        + line.refitting().lock().map(lock -> ", " + language.lock(lock)).orElse("");
  }

  private static String fluid(Detail.Fluid fluid) {
    return Phrases.spaced(fluid.name())
        + fluid.grade().map(grade -> " " + grade).orElse("")
        + fluid.capacity().map(capacity -> ", " + capacity.print()).orElse("");
  }

  private List<String> carried(Support support) {
    List<String> words = new ArrayList<>(language.statements(support.points()));
    Quantity load = support.each().orElse(support.load());
    Phrase carries = support.each().isPresent() ? Phrase.STAND_CARRIES : Phrase.LIFT_CARRIES;
    String by =
        support
            .cargo()
            .map(cargo -> language.own(Phrase.LOADED, cargo.print()))
            .orElseGet(() -> language.own(Phrase.UNLOADED));
    words.add(language.own(carries, load.print(), support.rated().print(), by));
    return words;
  }

  private String elsewhere(Detail.HandledElsewhere it) {
    Phrase phrase =
        it.temporary()
            ? it.off() ? Phrase.IN_PLACE : Phrase.TAKEN_AWAY_ELSEWHERE
            : it.off() ? Phrase.OFF_ALREADY : Phrase.ON_ELSEWHERE;
    return language.own(phrase, language.name(it.name()));
  }

  /** What a heading says of its steps before it says what is done; nothing for most. */
  String where(Sheet.Section section) {
    return section.places().isEmpty() ? title(section) : Phrases.capital(both(section.places()));
  }

  public String heading(Sheet.Section section) {
    return section.places().isEmpty() ? title(section) : where(section) + ": " + title(section);
  }

  private String title(Sheet.Section section) {
    return language.own(Phrase.valueOf(section.title().name()));
  }

  /** Both of a pair by what they have in common, with the sides named. */
  static String both(List<Place> places) {
    return places.size() == 2 && places.get(0).axle().isPresent()
        ? PlaceWords.words(places)
        : places.stream().map(PlaceWords::words).collect(Collectors.joining(" and "));
  }

  String sideBySide(Sheet.Stretch steps) {
    return language.own(Phrase.SIDE_BY_SIDE, steps.first(), steps.last());
  }
}
