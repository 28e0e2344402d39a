package baysheet.layout;

import baysheet.report.Span;
import java.util.List;

/**
 * A page, and where in the layout each of its items was written.
 *
 * @param origins one for each item
 */
record PlacedPage(Page page, List<Span> origins) {
  PlacedPage {
    origins = List.copyOf(origins);
    if (origins.size() != page.items().size()) {
      throw new IllegalArgumentException(
          origins.size() + " origins of " + page.items().size() + " items");
    }
  }
}
