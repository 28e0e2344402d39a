package baysheet.books;

import baysheet.yaml.Outcome;
import baysheet.yaml.Read;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads places, and names with a place behind the word {@code at}. */
final class PlaceText {
  private static final Pattern AT = Pattern.compile("(?<name>.*?)\\s+at\\s+(?<place>.*)");

  private PlaceText() {}

  /** {@code front-left}. */
  static Outcome<Place> place(String text) {
    return known(text, Place::of, places());
  }

  /** {@code front} or {@code rear}. */
  static Outcome<Place> axle(String text) {
    return known(text, Place::of, places().filter(place -> place.kind() == Place.Kind.AXLE));
  }

  private static Stream<Place> places() {
    return Stream.of(Place.values());
  }

  /** {@code front-wheels}. */
  static Outcome<PlaceGroup> group(String text) {
    return known(text, PlaceGroup::of, PlaceGroup.all().stream());
  }

  /** {@code lower-arm at front-left}. */
  static Outcome<Job.Work> work(String text) {
    Matcher at = AT.matcher(text);
    return at.matches()
        ? joined(at, PlaceText::place, Job.Work::new)
        : Sentences.missingPlace(text);
  }

  /** {@code raise}, or {@code raise at front}. */
  static Outcome<Procedure.Access> access(String text) {
    Matcher at = AT.matcher(text);
    return at.matches()
        ? joined(at, PlaceText::place, (name, p) -> new Procedure.Access(name, Optional.of(p)))
        : Read.nameOf(text).map(name -> new Procedure.Access(name, Optional.empty()));
  }

  /** {@code anti-roll-bar}, {@code anti-roll-bar at axle}, {@code anti-roll-bar at front}. */
  static Outcome<ItemAt> item(String text) {
    Matcher at = AT.matcher(text);
    return at.matches()
        ? joined(at, PlaceText::where, (name, where) -> new ItemAt(name, Optional.of(where)))
        : Read.nameOf(text).map(name -> new ItemAt(name, Optional.empty()));
  }

  private static Outcome<ItemAt.Where> where(String text) {
    return known(
        text,
        ItemAt.Where::of,
        Stream.concat(
            places().map(ItemAt.At::new), Stream.of(Place.Kind.values()).map(ItemAt.Around::new)));
  }

  private static <P, T> Outcome<T> joined(
      Matcher at, Function<String, Outcome<P>> place, BiFunction<String, P, T> join) {
    return Figures.then(
        Read.nameOf(at.group("name")),
        name -> place.apply(at.group("place")).map(where -> join.apply(name, where)));
  }

  /** A word among those that {@code all} print as. */
  private static <T> Outcome<T> known(
      String text, Function<String, Optional<T>> of, Stream<? extends T> all) {
    List<T> known = List.copyOf(all.toList());
    return of.apply(text)
        .filter(known::contains)
        .map(Outcome::ok)
        .orElseGet(
            () ->
                Sentences.unknownPlace(text, known.stream().map(T::toString).distinct().toList()));
  }
}
