package baysheet.box;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Walks trees of boxes. */
public final class Boxes {
  private Boxes() {}

  /** A box and all boxes in it, in reading order, those that may give way included. */
  public static List<Box> walk(Box box) {
    List<Box> all = new ArrayList<>();
    walk(box, all);
    return all;
  }

  private static void walk(Box box, List<Box> all) {
    all.add(box);
    box.children().forEach(child -> walk(child, all));
  }

  /** The names under which a box, boxes in it and runs of their texts give way. */
  public static Set<String> groups(Box box) {
    Set<String> groups = new LinkedHashSet<>();
    groups(box, groups);
    return groups;
  }

  private static void groups(Box box, Set<String> groups) {
    groups.addAll(box.groups());
    box.children().forEach(child -> groups(child, groups));
  }
}
