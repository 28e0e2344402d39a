package baysheet.resolve;

import baysheet.books.FastenerText;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
      if (below == null) {
        problems.add(unknown(like, folder));
        return Optional.empty();
      }
      if (stack.contains(below)) {
        problems.add(loop(stack, below, like));
        return Optional.empty();
      }
      stack.add(below);
      top = below;
    }
    return Optional.of(new EffectiveBook(stack, merge(stack)));
  }

  private static Problem unknown(Located<String> like, ShopFolder folder) {
    return Problem.of(
            ProblemCode.UNKNOWN_BOOK, like.at(), "there is no spec book \"" + like.value() + "\"")
        .near(Nearest.of(like.value(), folder.books().keySet()));
  }

  private static Problem loop(List<SpecBook> stack, SpecBook again, Located<String> like) {
    String circle =
        stack.subList(stack.indexOf(again), stack.size()).stream()
            .map(book -> book.vehicle().value())
            .collect(Collectors.joining(" → "));
    return Problem.of(
        ProblemCode.LIKE_LOOP,
        like.at(),
        "books are like one another in a circle: " + circle + " → " + again.vehicle().value());
  }

  private static Map<EffectiveBook.Key, EffectiveBook.Merged> merge(List<SpecBook> stack) {
    Map<EffectiveBook.Key, EffectiveBook.Merged> merged = new LinkedHashMap<>();
    for (int level = stack.size() - 1; level >= 0; level--) {
      SpecBook book = stack.get(level);
      for (SpecBook.Group group : book.fasteners()) {
        group
            .fasteners()
            .values()
            .forEach(
                entry ->
                    merged.merge(
                        new EffectiveBook.Key(group.places().value(), entry.name().value()),
                        alone(book, group, entry),
                        LikeRule::over));
      }
    }
    return merged;
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
