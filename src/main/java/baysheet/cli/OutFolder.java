package baysheet.cli;

import baysheet.books.Shop;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.report.Located;
import baysheet.report.Problems;
import java.nio.file.Path;
import java.util.Optional;

/** Where the sheets and the ledger of a shop are. */
final class OutFolder {
  private static final String USUAL = "out";

  private OutFolder() {}

  /** The place that a shop file names, or {@code out} beside the shop folder. */
  static Path of(Path root, Optional<Shop> shop) {
    Path whole = DayFolders.whole(root);
    return shop.flatMap(Shop::out)
        .map(Located::value)
        .map(whole::resolve)
        .orElseGet(() -> whole.resolveSibling(USUAL))
        .normalize();
  }

  /** The same; what is wrong with the shop file is said where it is read for the work itself. */
  static Path of(Path root) {
    return of(root, new ShopFolders(Fonts.builtIn()).shop(root, new Problems()));
  }

  /** That of the shop here, or of the one that the environment names. */
  static Path here() {
    return ShopFolders.here()
        .or(ShopChoice::ofEnvironment)
        .map(OutFolder::of)
        .orElse(Path.of(USUAL));
  }
}
