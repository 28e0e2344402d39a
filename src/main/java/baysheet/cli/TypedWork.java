package baysheet.cli;

import baysheet.books.Job;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.files.BookDraft;
import baysheet.files.WorkAt;
import baysheet.report.Located;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.resolve.Needs;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Work as it is typed on a command line: {@code discs-and-pads@front}.
 *
 * @param wrong begins a message on what cannot be meant
 */
record TypedWork(String typed, Function<String, WrongCommandLine> wrong) {
  /** The work at its place; without one, wherever the vehicle allows it. */
  Stream<Located<Job.Work>> at(BookDraft draft, ShopFolder folder) {
    String name = typed.replaceFirst("@.*", "");
    Procedure procedure =
        Optional.ofNullable(folder.procedures().get(name))
            .orElseThrow(
                () ->
                    wrong
                        .apply("there is no procedure \"" + name + '"')
                        .near(
                            name,
                            folder.procedures().keySet(),
                            "a name that baysheet procedures lists"));
    Span here = new Source("--for " + typed, "").whole();
    if (typed.contains("@")) {
      String place = typed.substring(typed.indexOf('@') + 1);
      return Stream.of(new Located<>(new Job.Work(name, place(place)), here));
    }
    List<Located<Job.Work>> all =
        WorkAt.places(procedure).stream()
            .map(place -> new Located<>(new Job.Work(name, place), here))
            .toList();
    List<Located<Job.Work>> suitable =
        all.stream()
            .filter(
                it ->
                    draft.needs(folder.shop().bays().values(), List.of(it), folder).stream()
                        .anyMatch(Needs::possible))
            .toList();
    return (suitable.isEmpty() ? all : suitable).stream();
  }

  private Place place(String word) {
    return Place.of(word)
        .orElseThrow(
            () ->
                wrong
                    .apply('"' + word + "\" is not a place on a vehicle")
                    .near(word, Stream.of(Place.values()).map(Place::word).toList()));
  }
}
