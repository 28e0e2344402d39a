package baysheet.wording;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The steps of a sheet in words: the sentence, what belongs to it, the heading above. */
public final class StepSentences {
  private static final String NO_BREAK = "\u00a0";

  private final Language language;
  private final Map<Integer, TorqueLine> torque = new HashMap<>();

  public StepSentences(Sheet sheet) {
    this(Language.of(sheet.heading()), sheet.torque());
    sheet.stage().ifPresent(it -> it.elsewhere().forEach(line -> torque.put(line.n(), line)));
  }

  StepSentences(Language language, List<TorqueLine> lines) {
    this.language = language;
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
    } else if (source instanceof StepSource.HeightChange change) {
      return language.own(height(change));
    }
    StepSource.Checkpoint checkpoint = (StepSource.Checkpoint) source;
    return language.own(checkpoint.lifted() ? Phrase.TICK_NOW : Phrase.NOT_LIFTED);
  }

  private String putBack(StepSource.PutBack back) {
    return switch (back.what()) {
      case FASTENER ->
          language.own(
              back.count() == 1 ? Phrase.START_ONE : Phrase.START_SEVERAL,
              language.plural(back.name(), back.count()));
      case TEMPORARY -> language.own(Phrase.TAKE_AWAY, language.name(back.name()));
      case OTHER -> language.own(Phrase.PUT_BACK, language.name(back.name()));
    };
  }

  /** What brings the vehicle to a height, and the check that belongs to it. */
  private static Phrase height(StepSource.HeightChange change) {
    return switch (change.to()) {
      case GROUND -> change.from() == Height.STANDS ? Phrase.OFF_THE_STANDS : Phrase.TO_THE_GROUND;
      case WHEELS_CLEAR ->
          change.from() == Height.GROUND ? Phrase.UP_TO_WHEELS_CLEAR : Phrase.DOWN_TO_WHEELS_CLEAR;
      case WORKING -> Phrase.TO_WORKING_HEIGHT;
      case STANDS -> Phrase.ON_TO_STANDS;
    };
  }

  private String blocks(StepSource.Blocks blocks) {
    boolean lift = blocks.equipment() == Bay.Equipment.LIFT;
    if (!blocks.on()) {
      return language.own(lift ? Phrase.LIFT_OFF_BLOCKS : Phrase.JACK_OFF_BLOCKS);
    }
    String points =
        blocks.jacking().stream()
            .map(point -> PlaceWords.words(point.axle()) + ": " + language.text(point.text()))
            .collect(Collectors.joining(", "));
    return lift
        ? language.own(Phrase.LIFT_ON_TO_BLOCKS)
        : language.own(Phrase.JACK_ON_TO_BLOCKS, points.isEmpty() ? "" : " (" + points + ")");
  }

  /** What belongs to a step beside its sentence. */
  public List<String> details(SheetStep step) {
    return detailTexts(step).stream().map(SheetText.DetailText::text).toList();
  }

  List<SheetText.DetailText> detailTexts(SheetStep step) {
    List<SheetText.DetailText> texts = new ArrayList<>();
    boolean named = step.details().stream().filter(Detail.Removed.class::isInstance).count() > 1;
    for (Detail detail : step.details()) {
      boolean tools = detail instanceof Detail.Tools;
      words(detail, named).stream()
          .filter(text -> !text.isEmpty())
          .forEach(text -> texts.add(new SheetText.DetailText(text, tools)));
    }
    return List.copyOf(texts);
  }

  private List<String> words(Detail detail, boolean named) {
    if (detail instanceof Detail.Removed removed) {
      return List.of(removed(torque.get(removed.line()), named));
    } else if (detail instanceof Detail.Installed installed) {
      return List.of(installed(torque.get(installed.line())));
    } else if (detail instanceof Detail.Tightened tightened) {
      return List.of(tightened(torque.get(tightened.line())));
    } else if (detail instanceof Detail.AtHeightOf height) {
      return List.of(language.own(Phrase.HEIGHT_OF, height.step()));
    } else if (detail instanceof Detail.Fluid fluid) {
      return List.of(language.text(fluid(fluid)));
    } else if (detail instanceof Detail.Tools tools) {
      return List.of(language.own(Phrase.WITH, String.join(", ", language.texts(tools.names()))));
    } else if (detail instanceof Detail.Carried carried) {
      return carried(carried.by());
    } else if (detail instanceof Detail.Absent absent) {
      return List.of(language.own(Phrase.ABSENT, language.text(absent.item())));
    } else if (detail instanceof Detail.HandledElsewhere elsewhere) {
      return List.of(elsewhere(elsewhere));
    }
    return List.of(language.own(Phrase.BOTH_ENDS_UP));
  }

  /** Count and head; the name as well where the step removes several kinds. */
  private String removed(TorqueLine line, boolean named) {
    List<String> words = new ArrayList<>();
    String name = named ? Phrases.capital(language.text(line.words())) + NO_BREAK : "";
    line.head().ifPresent(head -> words.add(name + times(line) + head.print()));
    if (line.reuse() == TorqueLine.Reuse.NEW) {
      words.add(language.own(Phrase.DISCARD));
    }
    return String.join(", ", words);
  }

  /** Whether new, what to put on the thread, and where the figure stands. */
  private String installed(TorqueLine line) {
    List<String> words = new ArrayList<>();
    if (line.reuse() == TorqueLine.Reuse.NEW) {
      words.add(times(line) + language.own(Phrase.NEW));
    }
    if (line.isTreated()) {
      words.add(line.threads().print());
    }
    words.add(line.twoVisits() ? language.own(Phrase.SNUG_ONLY, line.n()) : tightened(line));
    return String.join(", ", words);
  }

  /** How many, where it is more than one. */
  private static String times(TorqueLine line) {
    return line.count() == 1 ? "" : line.count() + NO_BREAK + "×" + NO_BREAK;
  }

  /** The figure and what keeps it. */
  private String tightened(TorqueLine line) {
    return figure(line) + line.lock().map(lock -> ", " + language.lock(lock)).orElse("");
  }

  /** The line's number and its figure, as the table has it; none that somebody has yet to clear. */
  private String figure(TorqueLine line) {
    if (line.inDoubt() || line.kind() == TorqueLine.Kind.UNKNOWN) {
      return language.own(Phrase.AS_WRITTEN_IN, line.n());
    }
    return line.kind() == TorqueLine.Kind.SNUG
        ? language.own(Phrase.SNUG, line.n())
        : language.own(
            Phrase.TO,
            line.n(),
            line.stages().stream()
                .map(TorqueLine.StageLine::print)
                .collect(Collectors.joining(", ")));
  }

  private static String fluid(Detail.Fluid fluid) {
    return Phrases.spaced(fluid.name())
        + fluid.grade().map(grade -> " " + grade).orElse("")
        + fluid.capacity().map(capacity -> ", " + capacity.print()).orElse("");
  }

  private List<String> carried(Sheet.Support support) {
    List<String> words = new ArrayList<>(language.texts(support.points()));
    Quantity load = support.each().orElse(support.load());
    Phrase carries = support.each().isPresent() ? Phrase.STAND_CARRIES : Phrase.LIFT_CARRIES;
    words.add(language.own(carries, load.print(), support.rated().print()));
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
