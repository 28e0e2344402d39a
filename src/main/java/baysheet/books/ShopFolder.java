package baysheet.books;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Everything a job can draw on: the shop, its books and procedures by name, and the catalogue (the
 * built-in one with the shop's additions).
 */
public final class ShopFolder {
  private final Shop shop;
  private final Map<String, SpecBook> books;
  private final Map<String, Procedure> procedures;
  private final Catalogue catalogue;
  private final Faulty faulty;
  private final KnownNames names;

  /**
   * Names of files that are there and cannot be used.
   *
   * @param books of spec books
   * @param procedures of procedures
   * @param procedureTexts what stands in those procedures; empty for one that cannot be read
   */
  public record Faulty(Set<String> books, Set<String> procedures, List<String> procedureTexts) {
    /** Every file can be used. */
    public static final Faulty NONE = new Faulty(Set.of(), Set.of(), List.of());

    public Faulty {
      books = Set.copyOf(books);
      procedures = Set.copyOf(procedures);
      procedureTexts = List.copyOf(procedureTexts);
    }

    /** Whether a procedure with errors has this name, or may serve it as a role. */
    public boolean mayServe(String name) {
      Pattern word = Pattern.compile("(?<![\\w-])" + Pattern.quote(name) + "(?![\\w-])");
      return procedures.contains(name)
          || procedureTexts.stream().anyMatch(it -> it.isEmpty() || word.matcher(it).find());
    }
  }

  /**
   * A folder.
   *
   * @param faulty what is left out of books and procedures
   */
  public ShopFolder(
      Shop shop,
      Map<String, SpecBook> books,
      Map<String, Procedure> procedures,
      Catalogue catalogue,
      Faulty faulty) {
    this.shop = shop;
    this.books = Collections.unmodifiableMap(new LinkedHashMap<>(books));
    this.procedures = Collections.unmodifiableMap(new LinkedHashMap<>(procedures));
    this.catalogue = catalogue;
    this.faulty = faulty;
    this.names = KnownNames.of(this);
  }

  public Shop shop() {
    return shop;
  }

  public Map<String, SpecBook> books() {
    return books;
  }

  public Map<String, Procedure> procedures() {
    return procedures;
  }

  public Catalogue catalogue() {
    return catalogue;
  }

  public Faulty faulty() {
    return faulty;
  }

  /** Every name that a file of the folder may refer to. */
  public KnownNames names() {
    return names;
  }
}
