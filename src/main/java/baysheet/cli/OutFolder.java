package baysheet.cli;

import baysheet.books.Shop;
import baysheet.report.Located;
import java.nio.file.Path;
import java.util.Optional;

/** Where the sheets and the ledger of a shop are. */
final class OutFolder {
  private static final String USUAL = "out";

  private OutFolder() {}

  /** The place that the shop file names, or {@code out} beside the shop folder. */
  static Path of(Path root, Optional<Shop> shop) {
    Path whole = DayFolders.whole(root);
    return shop.flatMap(Shop::out)
        .map(Located::value)
        .map(whole::resolve)
        .orElseGet(() -> whole.resolveSibling(USUAL))
        .normalize();
  }
}
