package baysheet.books;

import baysheet.report.Located;
import baysheet.torque.Treatment;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The words by which rules know vehicles, items, fluids, tools and products: a word that nobody
 * declared would set nothing off.
 *
 * @param traits what a vehicle can have, by name, each with a sentence
 * @param kinds what an item can be, by name, each with a sentence
 * @param fluids what a book can give quantity and grade of, by name, each with a sentence
 * @param measures figures that a step measures and the sheet goes by, each with a sentence
 * @param tools by name
 * @param products what is applied, by name
 */
public record Vocabulary(
    Map<String, Located<String>> traits,
    Map<String, Located<String>> kinds,
    Map<String, Located<String>> fluids,
    Map<String, Located<String>> measures,
    Map<String, Supply> tools,
    Map<String, Supply> products) {
  /**
   * A tool or a product.
   *
   * @param means what it is, one sentence
   * @param like others whose cautions and checks it brings as well
   * @param thread what a thread is with this product on it; dry for one that leaves nothing
   */
  public record Supply(
      Located<String> name,
      Located<String> means,
      List<Located<String>> like,
      Optional<Treatment> thread) {
    public Supply {
      like = List.copyOf(like);
    }

    /** The entry of a garage over this one: it is still like what this one is like. */
    Supply under(Supply own) {
      return new Supply(
          own.name, own.means, Words.both(like, own.like), own.thread.or(() -> thread));
    }
  }

  public Vocabulary {
    traits = copy(traits);
    kinds = copy(kinds);
    fluids = copy(fluids);
    measures = copy(measures);
    tools = copy(tools);
    products = copy(products);
  }

  private static <T> Map<String, T> copy(Map<String, T> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }

  static Vocabulary nothing() {
    return new Vocabulary(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
  }

  /** This one with the entries of another over its own. */
  Vocabulary with(Vocabulary more) {
    return new Vocabulary(
        joined(traits, more.traits),
        joined(kinds, more.kinds),
        joined(fluids, more.fluids),
        joined(measures, more.measures),
        over(tools, more.tools),
        over(products, more.products));
  }

  private static Map<String, Supply> over(Map<String, Supply> lower, Map<String, Supply> upper) {
    Map<String, Supply> all = new LinkedHashMap<>(lower);
    upper.forEach((name, own) -> all.merge(name, own, Supply::under));
    return all;
  }

  private static <T> Map<String, T> joined(Map<String, T> lower, Map<String, T> upper) {
    Map<String, T> all = new LinkedHashMap<>(lower);
    all.putAll(upper);
    return all;
  }

  /** A tool's name, and the names of those that it is like. */
  public Collection<String> tool(String name) {
    return family(name, tools);
  }

  /** A product's name, and the names of those that it is like. */
  public Collection<String> product(String name) {
    return family(name, products);
  }

  /**
   * What a thread is with a product on it: by its own declaration, else by that of the first that
   * it is like; empty where none of them says.
   */
  public Optional<Treatment> onThread(String product) {
    return product(product).stream()
        .flatMap(it -> Optional.ofNullable(products.get(it)).stream())
        .flatMap(it -> it.thread().stream())
        .findFirst();
  }

  private static Set<String> family(String name, Map<String, Supply> supplies) {
    Set<String> family = new LinkedHashSet<>();
    List<String> next = new ArrayList<>(List.of(name));
    while (!next.isEmpty()) {
      String one = next.remove(0);
      if (family.add(one) && supplies.containsKey(one)) {
        supplies.get(one).like().forEach(like -> next.add(like.value()));
      }
    }
    return family;
  }
}
