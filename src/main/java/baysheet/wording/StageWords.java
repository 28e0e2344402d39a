package baysheet.wording;

import baysheet.books.Place;
import baysheet.sheet.Heading;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
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

  StageWords(Language language) {
    this.language = language;
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
        stage.arrival().map(this::state).orElse(List.of()),
        stage.arrival().map(this::figures).orElse(List.of()),
        stage.isFirst() ? List.of() : List.of(new BoxText("arrival", "", says)),
        stage.leaving().map(this::left).orElse(List.of()));
  }

  private List<String> left(VehicleState state) {
    List<String> sentences = new ArrayList<>(state(state));
    sentences.add(Phrases.sentence(language.own(Phrase.NOT_FINISHED)));
    return sentences;
  }

  private List<String> state(VehicleState state) {
    List<String> sentences = new ArrayList<>();
    sentences.add(height(state));
    add(sentences, Phrase.HELD_NOW, state.held().stream().map(this::held).toList(), "; ");
    if (state.off().isEmpty() && state.fasteners().isEmpty()) {
      sentences.add(language.own(Phrase.NOTHING_OFF));
    }
    add(sentences, Phrase.OFF_NOW, state.off().stream().map(this::off).toList(), "; ");
    add(sentences, Phrase.LINES_OFF, rows(state.fasteners()), ", ");
    add(sentences, Phrase.LINES_LOOSE, rows(state.loose()), ", ");
    List<String> open = state.open().stream().map(Phrases::spaced).toList();
    add(sentences, Phrase.OPEN_NOW, language.texts(open), ", ");
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

  private String height(VehicleState state) {
    String height = language.own(Phrase.valueOf("AT_" + state.height().name()));
    List<Place> ends = state.raised().stream().filter(place -> place.axle().isPresent()).toList();
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

  /** Runs of whole lines are closed up; a line of which only some places are meant says which. */
  private static List<String> rows(List<Stage.Row> rows) {
    List<String> words = new ArrayList<>();
    List<Integer> whole =
        rows.stream().filter(row -> row.places().isEmpty()).map(Stage.Row::n).toList();
    if (!whole.isEmpty()) {
      words.add(Phrases.ranges(whole));
    }
    rows.stream()
        .filter(row -> !row.places().isEmpty())
        .forEach(row -> words.add(row.n() + " " + PlaceWords.words(row.places())));
    return words;
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
