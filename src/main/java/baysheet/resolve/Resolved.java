package baysheet.resolve;

import baysheet.books.Bay;
import baysheet.books.Catalogue;
import baysheet.books.Job;
import baysheet.books.Shop;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job with every name bound to what it means.
 *
 * @param second who looks at the hold points, where the job says so
 * @param qualified who does the work that needs a qualification, where that is not {@code by}
 * @param tasks what the job asks for and the access to it, in the order of the job; access ranks
 *     behind what it gives access to
 * @param things every item that a step names
 */
public record Resolved(
    Job job,
    LocalDate date,
    Shop shop,
    EffectiveBook book,
    Bay bay,
    Shop.Person by,
    Optional<Shop.Person> with,
    Optional<Shop.Person> second,
    Map<String, Shop.Person> qualified,
    Map<TaskId, Task> tasks,
    Map<ItemAt, Bound> things,
    Catalogue catalogue) {
  public Resolved {
    qualified = Collections.unmodifiableMap(new LinkedHashMap<>(qualified));
    tasks = Collections.unmodifiableMap(new LinkedHashMap<>(tasks));
    things = Collections.unmodifiableMap(new LinkedHashMap<>(things));
  }

  /** What an item is; it was bound, so it is there. */
  public Bound thing(ItemAt item) {
    Bound bound = things.get(item);
    if (bound == null) {
      throw new IllegalStateException("unbound item " + item);
    }
    return bound;
  }

  /** Those of some items that are of a kind. */
  public List<ItemAt> ofKind(String kind, Collection<ItemAt> items) {
    List<ItemAt> found = List.of();
    for (ItemAt item : items) {
      if (thing(item).isOf(kind)) {
        found = found.isEmpty() ? new ArrayList<>() : found;
        found.add(item);
      }
    }
    return found;
  }

  /** The tasks in order of rank. */
  public List<Task> ranked() {
    return List.copyOf(tasks.values());
  }
}
