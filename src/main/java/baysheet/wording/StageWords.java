package baysheet.wording;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.sheet.Heading;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import baysheet.sheet.Statement;
import baysheet.sheet.Support;
import baysheet.wording.SheetText.BoxText;
import baysheet.wording.SheetText.EntryText;
import baysheet.wording.SheetText.StageText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A stage of a job in words: how the vehicle is found and how it is left. */
public final class StageWords {
  private final Language language;

  /** Where a jack takes the vehicle off its stands. */
  private final List<Statement> jacking;

  StageWords(Language language, List<Support> supports) {
    this.language = language;
    this.jacking =
        supports.stream()
            .flatMap(support -> support.points().stream())
            .filter(Statement.JackUnder.class::isInstance)
            .toList();
  }

  StageText text(Optional<Stage> stage) {
    return stage
        .map(this::text)
        .orElseGet(() -> new StageText("", true, true, List.of(), List.of(), List.of(), List.of()));
  }

  private StageText text(Stage stage) {
    String says = language.own(Phrase.TAKEN_OVER);
    return new StageText(
        language.own(Phrase.STAGE, stage.n(), stage.of()),
        stage.isFirst(),
        stage.isLast(),
        stage.arrival().map(it -> state(it, stage, true)).orElse(List.of()),
        stage.arrival().map(this::figures).orElse(List.of()),
        stage.isFirst() ? List.of() : List.of(new BoxText("arrival", "", says)),
        stage.leaving().map(it -> left(it, stage)).orElse(List.of()));
  }

  private List<String> left(VehicleState state, Stage stage) {
    List<String> sentences = new ArrayList<>(state(state, stage, false));
    sentences.add(Phrases.sentence(language.own(Phrase.NOT_FINISHED, stage.of())));
    return sentences;
  }

  private List<String> state(VehicleState state, Stage stage, boolean found) {
    List<String> sentences = new ArrayList<>();
    Height height = state.standing().height();
    boolean low = found && height == Height.WHEELS_CLEAR;
    sentences.add(low ? language.own(Phrase.FOUND_AT_WHEELS_CLEAR) : standing(state.standing()));
    if (found && height == Height.STANDS) {
      sentences.addAll(language.statements(jacking));
    }
    add(sentences, Phrase.HELD_NOW, state.held().stream().map(this::held).toList(), "; ");
    if (state.off().isEmpty() && state.fasteners().isEmpty()) {
      sentences.add(language.own(Phrase.NOTHING_OFF));
    }
    add(sentences, Phrase.OFF_NOW, state.off().stream().map(this::off).toList(), "; ");
    add(sentences, Phrase.SLACKENED_NOW, state.slackened().stream().map(this::off).toList(), "; ");
    add(sentences, Phrase.LINES_OFF, rows(state.fasteners(), stage), "; ");
    add(sentences, Phrase.LINES_LOOSE, rows(state.loose(), stage), "; ");
    List<String> open = state.open().stream().map(Phrases::spaced).toList();
    add(sentences, Phrase.OPEN_NOW, language.texts(open), ", ");
    add(sentences, Phrase.LEFT_NOW, language.texts(state.left()), "; ");
    if (!state.written().isEmpty()) {
      sentences.add(language.own(Phrase.WRITTEN_ON, Phrases.counted("step", state.written())));
    }
    return sentences.stream().map(Phrases::sentence).toList();
  }

  private void add(List<String> sentences, Phrase phrase, List<String> things, String between) {
    if (!things.isEmpty()) {
      sentences.add(language.own(phrase, String.join(between, things)));
    }
  }

  private String standing(Stage.Standing standing) {
    if (standing.onBlocks()) {
      return language.own(Phrase.AT_BLOCKS);
    }
    String height = language.own(Phrase.valueOf("AT_" + standing.height().name()));
    List<Place> ends =
        standing.raised().stream().filter(place -> place.axle().isPresent()).toList();
    String where = ends.stream().map(PlaceWords::words).collect(Collectors.joining(" and "));
    return ends.isEmpty() ? height : language.own(Phrase.RAISED_AT, height, where);
  }

  private String held(Stage.Held held) {
    List<Place> at = List.of(held.item().place());
    String place = SheetWords.sided(at) ? PlaceWords.words(at) : "";
    return language.name(held.name()) + (place.isEmpty() ? "" : ", " + place);
  }

  private String off(Sheet.TallyLine line) {
    String places = SheetWords.sided(line.places()) ? PlaceWords.words(line.places()) : "";
    String words = language.text(line.words()) + (places.isEmpty() ? "" : ", " + places);
    return language.own(Phrase.OFF_SINCE, words, line.off());
  }

  /** Each by its name, for the row may stand on another sheet. */
  private List<String> rows(List<Stage.Row> rows, Stage stage) {
    return rows.stream().map(row -> row(row, stage)).toList();
  }

  private String row(Stage.Row row, Stage stage) {
    String name = language.plural(row.name(), row.fasteners());
    String what = row.places().isEmpty() ? name : name + " " + PlaceWords.words(row.places());
    Integer sheet = stage.sheets().get(row.n());
    return sheet == null
        ? language.own(Phrase.STATE_ROW, what, row.n())
        : language.own(Phrase.STATE_ROW_OF_SHEET, what, row.n(), sheet);
  }

  private List<EntryText> figures(VehicleState state) {
    List<EntryText> figures = new ArrayList<>();
    for (Stage.Figure figure : state.needed()) {
      for (int i = 0; i < figure.words().size(); i++) {
        String words =
            language.own(Phrase.COPY_FIGURE, language.text(figure.words().get(i)), figure.step());
        String name = "arrival." + figure.step() + (i == 0 ? "" : "-" + (i + 1));
        figures.add(new EntryText(words, PlaceWords.boxes(name, words, figure.places())));
      }
    }
    return figures;
  }

  /** Where the work goes on that began on another day, and what is done of it. */
  public static String continues(Language language, Heading.Carried from) {
    String ticked =
        from.step()
            .map(step -> language.own(Phrase.TICKED_TO, step))
            .orElseGet(() -> language.own(Phrase.TICKED));
    String text =
        Phrases.sentence(language.own(Phrase.CONTINUES, from.sheet(), from.from(), ticked));
    return from.found().isEmpty()
        ? text
        : text
            + " "
            + Phrases.sentence(
                language.own(Phrase.FOUND, String.join("; ", language.texts(from.found()))));
  }
}
