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
    return Optional.of(merge(stack));
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
