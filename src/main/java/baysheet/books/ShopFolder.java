package baysheet.books;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Everything a job can draw on: the shop, its books and procedures by name, and the catalogue (the
 * built-in one with the shop's additions).
 */
public record ShopFolder(
    Shop shop,
    Map<String, SpecBook> books,
    Map<String, Procedure> procedures,
    Catalogue catalogue) {
  public ShopFolder {
    books = Collections.unmodifiableMap(new LinkedHashMap<>(books));
    procedures = Collections.unmodifiableMap(new LinkedHashMap<>(procedures));
  }
}
