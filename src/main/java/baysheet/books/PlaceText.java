package baysheet.books;

import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReaders;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads places, and names with a place behind the word {@code at}. */
final class PlaceText {
  private static final Pattern AT =
      Pattern.compile("(?<name>.*?)[\\s\\p{Zs}]++at[\\s\\p{Zs}]++(?<place>.*)");

  private PlaceText() {}

  /** {@code front-left}. */
  static ParseOutcome<Place> place(String text) {
    return known(text, places());
  }

  /** {@code front} or {@code rear}. */
  static ParseOutcome<Place> axle(String text) {
    return known(text, places().filter(place -> place.kind() == Place.Kind.AXLE));
  }

  private static Stream<Place> places() {
    return Stream.of(Place.values());
  }

  /** {@code front-wheels}. */
  static ParseOutcome<PlaceGroup> group(String text) {
    return known(text, PlaceGroup.all().stream());
  }

  /** {@code lower-arm at front-left}. */
  static ParseOutcome<Job.Work> work(String text) {
    Matcher at = AT.matcher(text);
    return at.matches()
        ? joined(at, PlaceText::place, Job.Work::new)
        : BookSentences.missingPlace(text);
  }

  /** {@code raise}, or {@code raise at front}. */
  static ParseOutcome<Procedure.Access> access(String text) {
    Matcher at = AT.matcher(text);
    return at.matches()
        ? joined(at, PlaceText::place, (name, p) -> new Procedure.Access(name, Optional.of(p)))
        : ValueReaders.nameOf(text).map(name -> new Procedure.Access(name, Optional.empty()));
  }

  /**
   * {@code anti-roll-bar}, {@code anti-roll-bar at front}, {@code anti-roll-bar at axle}: a place,
   * or a kind of place seen from the procedure's; with one space on either side of {@code at}.
   */
  static ParseOutcome<String> item(String text) {
    Matcher at = AT.matcher(text);
    return at.matches()
        ? joined(at, PlaceText::where, (name, where) -> name + " at " + where)
        : ValueReaders.nameOf(text);
  }

  private static ParseOutcome<String> where(String text) {
    Stream<String> kinds = Stream.of(Place.Kind.values()).map(Place.Kind::word);
    return known(text, Stream.concat(places().map(Place::word), kinds).distinct());
  }

  private static <P, T> ParseOutcome<T> joined(
      Matcher at, Function<String, ParseOutcome<P>> place, BiFunction<String, P, T> join) {
    return FigureReaders.then(
        ValueReaders.nameOf(at.group("name")),
        name -> place.apply(at.group("place")).map(where -> join.apply(name, where)));
  }

  /** The one of {@code all} that prints as {@code text}. */
  private static <T> ParseOutcome<T> known(String text, Stream<T> all) {
    List<T> known = all.toList();
    return known.stream()
        .filter(place -> place.toString().equals(text))
        .findFirst()
        .map(ParseOutcome::ok)
        .orElseGet(
            () -> BookSentences.unknownPlace(text, known.stream().map(T::toString).toList()));
  }
}
