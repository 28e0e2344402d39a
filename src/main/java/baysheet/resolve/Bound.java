package baysheet.resolve;

import baysheet.books.Catalogue;
import baysheet.books.Fastener;
import baysheet.books.Shop;
import baysheet.report.Located;
import baysheet.torque.Tightening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What an item of the job turned out to be. */
public sealed interface Bound {
  /** Which item, and where. */
  ItemAt item();

  /** The catalogue's entry, where there is one. */
  Optional<Catalogue.Item> entry();

  /** What the item is called in British terms. */
  default String british() {
    return entry()
        .map(entry -> entry.british().value())
        .orElseGet(() -> item().item().replace('-', ' '));
  }

  /** What the item is called in American terms. */
  default String american() {
    return entry().flatMap(entry -> entry.american().map(Located::value)).orElseGet(this::british);
  }

  /** What the item is called in a shop's terms. */
  default String in(Shop.Terms terms) {
    return terms == Shop.Terms.AMERICAN ? american() : british();
  }

  /** The kinds by which rules and cautions know it. */
  default List<String> kinds() {
    List<String> kinds = new ArrayList<>();
    entry().ifPresent(entry -> entry.kinds().forEach(kind -> kinds.add(kind.value())));
    return kinds;
  }

  /** Whether it is of a kind; asked for every item of every step, so without a list of them all. */
  default boolean isOf(String kind) {
    for (Located<String> own : entry().map(Catalogue.Item::kinds).orElse(List.of())) {
      if (own.value().equals(kind)) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is set up for the work alone, as a prop or a strap. */
  default boolean isTemporary() {
    return isOf("temporary");
  }

  /**
   * A fastener of the spec book.
   *
   * @param values with the job's override laid over them
   * @param overridden whether the job replaced anything
   * @param replaced the torque of the book itself, where the job gives another
   * @param source where the values come from, as printed
   * @param chain where they were found, the first place first
   */
  record OfBook(
      ItemAt item,
      Optional<Catalogue.Item> entry,
      Fastener values,
      boolean overridden,
      Optional<Tightening> replaced,
      String source,
      List<Located<String>> chain)
      implements Bound {
    /** The catalogue's kind for a nut that is turned on to a slot and pinned. */
    private static final String SPLIT_PINNED = "castellated-nut";

    public OfBook {
      chain = List.copyOf(chain);
    }

    /** Beside those of its name, the kind that its locking makes of it. */
    @Override
    public List<String> kinds() {
      List<String> kinds = Bound.super.kinds();
      if (isPinned() && !kinds.contains(SPLIT_PINNED)) {
        kinds.add(SPLIT_PINNED);
      }
      return kinds;
    }

    @Override
    public boolean isOf(String kind) {
      return Bound.super.isOf(kind) || (kind.equals(SPLIT_PINNED) && isPinned());
    }

    private boolean isPinned() {
      return values
          .written()
          .method()
          .lock()
          .filter(it -> it.value() == Fastener.Lock.SPLIT_PIN)
          .isPresent();
    }
  }

  /** An item that only the catalogue knows. */
  record OfCatalogue(ItemAt item, Catalogue.Item known) implements Bound {
    @Override
    public Optional<Catalogue.Item> entry() {
      return Optional.of(known);
    }
  }
}
