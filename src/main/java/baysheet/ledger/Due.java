package baysheet.ledger;

import baysheet.ledger.Tables.Table;
import baysheet.torque.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is still to be done: fasteners to look at again, what others must do, and sheets that are
 * not closed.
 *
 * @param by jobs up to this day are looked at
 * @param odometers readings of today, by plate; a re-check of another vehicle is always listed
 */
public record Due(LocalDate by, Map<String, Quantity> odometers) {
  private static final List<Tables.Column> COLUMNS =
      Tables.columns(
          "WHAT", "what",
          "DATE", "date",
          "SHEET", "sheet",
          "CUSTOMER", "customer",
          "PLATE", "plate",
          "DETAIL", "detail",
          "DUE AT", "dueAt");

  public Due {
    Map<String, Quantity> bare = new HashMap<>();
    odometers.forEach((plate, reading) -> bare.put(Index.bare(plate), reading));
    odometers = Map.copyOf(bare);
  }

  /**
   * Something that is due.
   *
   * @param what re-check, open item or sheet
   * @param at the odometer reading at which it is due
   */
  public record Item(SheetStory story, String what, String detail, Optional<Quantity> at) {}

  /** In the order in which the sheets were issued. */
  public List<Item> items(Index index) {
    Set<String> done = new HashSet<>();
    List<Item> items = new ArrayList<>();
    List<SheetStory> stories = new ArrayList<>(index.sheets());
    // From the last sheet back: what a later closed sheet tightened anew needs no re-check.
    for (int i = stories.size() - 1; i >= 0; i--) {
      SheetStory story = stories.get(i);
      Optional<String> plate = index.plate(story.id()).map(Index::bare);
      if (!story.issued().date().isAfter(by) && story.mayHaveBeenUsed()) {
        items.addAll(0, of(story, plate, done, index));
      }
      if (story.state() == SheetStory.State.CLOSED) {
        plate.ifPresent(it -> story.issued().joints().forEach(joint -> done.add(key(it, joint))));
      }
    }
    return items;
  }

  private static String key(String plate, Joint joint) {
    return plate + " " + joint.fastener() + " " + joint.place();
  }

  private List<Item> of(SheetStory story, Optional<String> plate, Set<String> done, Index index) {
    List<Item> items = new ArrayList<>();
    boolean back = story.state() != SheetStory.State.ISSUED;
    if (story.state() == SheetStory.State.ISSUED || story.state() == SheetStory.State.RETURNED) {
      items.add(new Item(story, "sheet", story.state().words(), Optional.empty()));
    }
    if (back) {
      openItems(story, index, items);
      for (Joint joint : story.issued().joints()) {
        if (plate.filter(it -> done.contains(key(it, joint))).isEmpty()) {
          recheck(story, plate, joint).ifPresent(items::add);
        }
      }
    }
    return items;
  }

  private static void openItems(SheetStory story, Index index, List<Item> items) {
    List<String> rules = story.issued().open();
    for (int i = 0; i < rules.size(); i++) {
      if (story.box("open." + (i + 1)) != SheetStory.Box.MARKED) {
        String rule = rules.get(i);
        String words =
            index.record(story.id()).map(it -> it.open().getOrDefault(rule, rule)).orElse(rule);
        items.add(new Item(story, "open item", words, Optional.empty()));
      }
    }
  }

  private Optional<Item> recheck(SheetStory story, Optional<String> plate, Joint joint) {
    Optional<Quantity> odometer = story.issued().odometer();
    Optional<Quantity> at =
        joint.recheck().flatMap(after -> odometer.map(reading -> reading.plus(after)));
    Optional<Quantity> now = plate.map(odometers::get);
    boolean early = at.isPresent() && now.isPresent() && now.get().isBelow(at.get());
    if (joint.recheck().isEmpty() || early) {
      return Optional.empty();
    }
    String detail =
        "row %s, %s at %s, after %s"
            .formatted(
                joint.row(), joint.fastener(), joint.place(), Tables.plain(joint.recheck().get()));
    return Optional.of(new Item(story, "re-check", detail, at));
  }

  /** The items as a table, with the customers' names. */
  public static Table table(List<Item> items, Index index) {
    List<List<Object>> rows = new ArrayList<>();
    for (Item it : items) {
      String sheet = it.story().id();
      rows.add(
          List.of(
              it.what(),
              it.story().issued().date().toString(),
              sheet,
              Tables.cell(index.people().customer(sheet).flatMap(PersonalFiles.Customer::name)),
              Tables.cell(index.plate(sheet)),
              it.detail(),
              Tables.cell(it.at())));
    }
    return new Table(COLUMNS, rows);
  }
}
