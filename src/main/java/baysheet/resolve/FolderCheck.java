package baysheet.resolve;

import baysheet.books.FastenerCheck;
import baysheet.books.ShopFolder;
import baysheet.report.Problems;

/** Whether a shop folder holds together, whatever jobs come: names between its files. */
public final class FolderCheck {
  private FolderCheck() {}

  /** Adds what does not hold. */
  public static void check(ShopFolder folder, Problems problems) {
    NameRule names = new NameRule(folder.names(), problems);
    folder
        .books()
        .values()
        .forEach(
            book ->
                LikeRule.apply(book, folder, problems).ifPresent(it -> book(it, names, problems)));
    names.check(folder.shop());
    folder.procedures().values().forEach(names::check);
  }

  /**
   * Adds what does not hold in a book and in those it is like. Every fastener has to be whole, in
   * the book itself or through what it is like: one that is misspelt would leave the other book's
   * figure standing.
   */
  static void book(EffectiveBook book, NameRule names, Problems problems) {
    book.books().forEach(names::check);
    book.entries().forEach((key, merged) -> whole(key, merged, problems));
  }

  private static void whole(EffectiveBook.Key key, EffectiveBook.Merged merged, Problems problems) {
    if (merged.text().complete(merged.name()).isEmpty() && !merged.text().pieces().isUncounted()) {
      problems.add(FastenerRule.incomplete(key.name() + " under " + key.group(), merged));
    }
    FastenerCheck.check(merged.text(), problems);
  }
}
