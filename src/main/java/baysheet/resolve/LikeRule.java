package baysheet.resolve;

import baysheet.books.FastenerText;
import baysheet.books.Place;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A book takes everything from the book it is {@code like}, then lays its own keys over it. */
final class LikeRule {
  private LikeRule() {}

  /** The book with those below it; empty when one is missing or they run in a circle. */
  static Optional<EffectiveBook> apply(SpecBook book, ShopFolder folder, Problems problems) {
    List<SpecBook> stack = new ArrayList<>(List.of(book));
    SpecBook top = book;
    while (top.like().isPresent()) {
      Located<String> like = top.like().get();
      SpecBook below = folder.books().get(like.value());
      if (folder.faulty().books().contains(like.value())) {
        problems.stop();
        return Optional.empty();
      }
      if (below == null) {
        problems.add(unknown(like, folder));
        return Optional.empty();
      }
      if (stack.contains(below)) {
        problems.add(loop(stack.subList(stack.indexOf(below), stack.size())));
        return Optional.empty();
      }
      stack.add(below);
      top = below;
    }
    for (int level = 0; level + 1 < stack.size(); level++) {
      passedOver(stack, level, problems);
    }
    for (int level = 0; level < stack.size(); level++) {
      takenAway(stack, level, problems);
    }
    return Optional.of(merge(stack));
  }

  /** A trait that no book below has would be taken away for nothing: it may be misspelt. */
  private static void takenAway(List<SpecBook> stack, int level, Problems problems) {
    Set<String> below = EffectiveBook.traits(stack.subList(level + 1, stack.size()));
    for (Located<String> trait : stack.get(level).traits().without()) {
      if (!below.contains(trait.value())) {
        problems.add(
            Problem.of(
                    ProblemCode.UNKNOWN_TRAIT,
                    trait.at(),
                    "no book that %s is like has the trait \"%s\""
                        .formatted(name(stack.get(level)), trait.value()))
                .expecting(
                    below.isEmpty()
                        ? "no without-traits in a book without like"
                        : "one of " + String.join(", ", below))
                .near(Nearest.of(trait.value(), below)));
      }
    }
  }

  /**
   * The entry for the fewest places wins, whichever book it stands in. So a lower book's would win
   * over what an upper book says of more places, and nobody can tell which of the two is meant.
   */
  private static void passedOver(List<SpecBook> stack, int level, Problems problems) {
    SpecBook book = stack.get(level);
    for (SpecBook.Group group : book.fasteners()) {
      for (Located<String> name : said(group).toList()) {
        stack.subList(level + 1, stack.size()).stream()
            .flatMap(lower -> lower.fasteners().stream())
            .filter(lower -> lower.fasteners().containsKey(name.value()))
            .filter(lower -> isWithin(lower, group) && !isDropped(lower, group, name.value()))
            .filter(lower -> !isSaid(stack.subList(0, level + 1), name.value(), lower, group))
            .forEach(lower -> problems.add(passedOver(book, group, name, lower)));
      }
    }
  }

  /** What a group says that the vehicle has, and what it has not. */
  private static Stream<Located<String>> said(SpecBook.Group group) {
    return Stream.concat(
        group.fasteners().values().stream().map(SpecBook.Entry::name), group.absent().stream());
  }

  /** Whether a name is looked up in one group before it is looked up in another. */
  private static boolean isWithin(SpecBook.Group inner, SpecBook.Group outer) {
    return !inner.places().value().equals(outer.places().value())
        && inner.places().value().places().stream()
            .noneMatch(
                place -> Collections.disjoint(place.outward(), outer.places().value().places()));
  }

  /** Whether the upper book says of the very places that there is none. */
  private static boolean isDropped(SpecBook.Group lower, SpecBook.Group upper, String name) {
    return !upper.fasteners().containsKey(name)
        && upper.places().value().places().containsAll(lower.places().value().places());
  }

  /** Whether one of the upper books speaks of the lower book's places itself. */
  private static boolean isSaid(
      List<SpecBook> upper, String name, SpecBook.Group lower, SpecBook.Group wide) {
    return upper.stream()
        .flatMap(book -> book.fasteners().stream())
        .filter(group -> said(group).anyMatch(it -> it.value().equals(name)))
        .filter(group -> isWithin(group, wide))
        .anyMatch(
            group ->
                group.places().value().equals(lower.places().value()) || isWithin(lower, group));
  }

  private static Problem passedOver(
      SpecBook book, SpecBook.Group group, Located<String> name, SpecBook.Group lower) {
    String its = lower.places().value().word();
    return Problem.of(
            ProblemCode.AMBIGUOUS_PLACE,
            name.at(),
            "the spec book %s lists %s under %s, and the book that it is like lists it under %s, where it would still be looked up first"
                .formatted(book.vehicle().value(), name.value(), group.places().value(), its))
        .expecting("%s under %s in this book as well".formatted(name.value(), its))
        .seeAlso("the other book", lower.fasteners().get(name.value()).name().at());
  }

  private static Problem unknown(Located<String> like, ShopFolder folder) {
    return Problem.of(
            ProblemCode.UNKNOWN_BOOK, like.at(), "there is no spec book \"" + like.value() + "\"")
        .near(Nearest.of(like.value(), folder.books().keySet()));
  }

  /** The same for each book of the loop, so that it is reported once. */
  private static Problem loop(List<SpecBook> loop) {
    SpecBook first = Collections.min(loop, Comparator.comparing(LikeRule::name));
    List<SpecBook> ordered = new ArrayList<>(loop);
    Collections.rotate(ordered, -loop.indexOf(first));
    ordered.add(first);
    return Problem.of(
        ProblemCode.LIKE_LOOP,
        first.like().orElseThrow().at(),
        "these spec books are like each other in a loop: "
            + ordered.stream().map(LikeRule::name).collect(Collectors.joining(", ")));
  }

  private static String name(SpecBook book) {
    return book.vehicle().value();
  }

  private static EffectiveBook merge(List<SpecBook> stack) {
    Map<EffectiveBook.Key, EffectiveBook.Merged> merged = new LinkedHashMap<>();
    Map<EffectiveBook.Key, Located<String>> absent = new LinkedHashMap<>();
    for (int level = stack.size() - 1; level >= 0; level--) {
      SpecBook book = stack.get(level);
      for (SpecBook.Group group : book.fasteners()) {
        group.absent().forEach(name -> drop(merged.keySet(), group, name.value()));
        group.fasteners().keySet().forEach(name -> drop(absent.keySet(), group, name));
      }
      for (SpecBook.Group group : book.fasteners()) {
        group.absent().forEach(name -> absent.put(key(group, name.value()), name));
        group
            .fasteners()
            .values()
            .forEach(
                entry ->
                    merged.merge(
                        key(group, entry.name().value()),
                        alone(book, group, entry),
                        LikeRule::over));
      }
    }
    return new EffectiveBook(stack, merged, absent);
  }

  /** What a book says of some places stands against what the books below say of any of them. */
  private static void drop(Set<EffectiveBook.Key> below, SpecBook.Group group, String name) {
    List<Place> places = group.places().value().places();
    below.removeIf(key -> key.name().equals(name) && places.containsAll(key.group().places()));
  }

  private static EffectiveBook.Key key(SpecBook.Group group, String name) {
    return new EffectiveBook.Key(group.places().value(), name);
  }

  private static EffectiveBook.Merged alone(
      SpecBook book, SpecBook.Group group, SpecBook.Entry entry) {
    String where = "spec book " + book.vehicle().value() + ", " + group.places().value();
    return new EffectiveBook.Merged(
        entry.name(), entry.text(), book, List.of(new Located<>(where, entry.name().at())));
  }

  /**
   * The upper entry's keys over the lower's; the value's source is the book that gives the torque.
   */
  private static EffectiveBook.Merged over(EffectiveBook.Merged lower, EffectiveBook.Merged upper) {
    FastenerText text = upper.text().over(lower.text());
    SpecBook source = upper.text().tightening().isPresent() ? upper.source() : lower.source();
    List<Located<String>> chain = new ArrayList<>(upper.chain());
    chain.addAll(lower.chain());
    return new EffectiveBook.Merged(upper.name(), text, source, chain);
  }
}
