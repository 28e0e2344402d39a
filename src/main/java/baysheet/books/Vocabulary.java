package baysheet.books;

import baysheet.report.Located;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
   */
  public record Supply(Located<String> name, Located<String> means, List<Located<String>> like) {
    public Supply {
      like = List.copyOf(like);
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
        joined(tools, more.tools),
        joined(products, more.products));
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
