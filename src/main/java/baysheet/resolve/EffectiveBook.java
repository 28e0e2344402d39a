package baysheet.resolve;

import baysheet.books.FastenerText;
import baysheet.books.Place;
import baysheet.books.PlaceGroup;
import baysheet.books.SpecBook;
import baysheet.report.Located;
import baysheet.torque.Quantity;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A spec book with the books it is {@code like} laid under it.
 *
 * @param books the book itself, then what it is like, and so on
 * @param entries fasteners by group and name, the derived book's keys over those of the one below
 * @param absent fasteners and items that the vehicle does not have, where the book says so
 */
public record EffectiveBook(
    List<SpecBook> books, Map<Key, Merged> entries, Map<Key, Located<String>> absent) {
  /** A fastener under its group. */
  public record Key(PlaceGroup group, String name) {}

  /**
   * A fastener's keys, merged.
   *
   * @param source the book whose source stands for the torque value
   * @param chain where its keys were found
   */
  public record Merged(
      Located<String> name, FastenerText text, SpecBook source, List<Located<String>> chain) {
    public Merged {
      chain = List.copyOf(chain);
    }
  }

  public EffectiveBook {
    books = List.copyOf(books);
    entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    absent = Collections.unmodifiableMap(new LinkedHashMap<>(absent));
    if (books.isEmpty()) {
      throw new IllegalArgumentException("no book");
    }
  }

  /** The book that the job names. */
  public SpecBook own() {
    return books.get(0);
  }

  /** What a sheet prints. */
  public String title() {
    return first(book -> book.model().title().map(Located::value)).orElse(own().vehicle().value());
  }

  /** What a part or a fastener is ordered by. */
  public Optional<String> partNumber(String name) {
    return first(
        book -> Optional.ofNullable(book.partNumbers().get(name)).map(it -> it.number().value()));
  }

  public Optional<String> years() {
    return first(book -> book.model().years().map(Located::value));
  }

  public Optional<Located<Quantity>> kerbMass() {
    return first(book -> book.mass().kerb());
  }

  /** The share of the front axle, unless a book above says instead where the mass is. */
  public Optional<Located<Quantity>> frontShare() {
    return books.stream()
        .map(SpecBook::mass)
        .filter(mass -> mass.frontShare().isPresent() || mass.behindFront().isPresent())
        .findFirst()
        .flatMap(SpecBook.Mass::frontShare);
  }

  public Optional<Located<Quantity>> wheelbase() {
    return first(book -> book.mass().wheelbase());
  }

  public Optional<Located<Quantity>> massBehindFront() {
    return first(book -> book.mass().behindFront());
  }

  /** The support point of an axle. */
  public Optional<Located<String>> support(Place axle) {
    return first(book -> Optional.ofNullable(book.points().supports().get(axle)));
  }

  /** Where a jack lifts an axle. */
  public Optional<Located<String>> jacking(Place axle) {
    return first(book -> Optional.ofNullable(book.points().jacking().get(axle)));
  }

  /** How much of a fluid goes in, and of what kind; a book may change one of the two. */
  public Optional<SpecBook.Fluid> fluid(String name) {
    return books.stream()
        .flatMap(book -> Optional.ofNullable(book.fluids().get(name)).stream())
        .reduce(SpecBook.Fluid::over);
  }

  /** The traits of all the books, without those that a book takes away from the ones below it. */
  public Set<String> traits() {
    return traits(books);
  }

  static Set<String> traits(List<SpecBook> books) {
    Set<String> traits = new LinkedHashSet<>();
    for (int level = books.size() - 1; level >= 0; level--) {
      books.get(level).traits().without().forEach(trait -> traits.remove(trait.value()));
      books.get(level).traits().own().forEach(trait -> traits.add(trait.value()));
    }
    return traits;
  }

  /** Every fastener name, in alphabetical order. */
  public Set<String> names() {
    Set<String> names = new TreeSet<>();
    entries.keySet().forEach(key -> names.add(key.name()));
    return names;
  }

  /** The entries of a name, whatever their places. */
  Stream<Map.Entry<Key, Merged>> named(String name) {
    return entries.entrySet().stream().filter(entry -> entry.getKey().name().equals(name));
  }

  /**
   * Where the book says that the vehicle has no such item at a place, if it does; an entry that
   * holds for fewer places stands against it.
   */
  Optional<Located<String>> absent(String name, Place from) {
    for (Place place : from.outward()) {
      Optional<Key> none = nearest(absent.keySet(), name, place);
      Optional<Key> entry = nearest(entries.keySet(), name, place);
      if (none.isPresent() || entry.isPresent()) {
        return none.filter(key -> entry.isEmpty() || size(key) < size(entry.get()))
            .map(absent::get);
      }
    }
    return Optional.empty();
  }

  private static Optional<Key> nearest(Set<Key> keys, String name, Place place) {
    return keys.stream()
        .filter(key -> key.name().equals(name) && key.group().contains(place))
        .min(Comparator.comparingInt(EffectiveBook::size));
  }

  private static int size(Key key) {
    return key.group().places().size();
  }

  private <T> Optional<T> first(Function<SpecBook, Optional<T>> of) {
    for (SpecBook book : books) {
      Optional<T> found = of.apply(book);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }
}
