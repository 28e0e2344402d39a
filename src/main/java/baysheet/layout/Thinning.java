package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Takes dropped groups out of a tree of boxes. What comes out holds no {@link Box.Droppable}.
 *
 * @param dropped the groups that have given way
 * @param met the groups that were met on the way, dropped or not
 */
record Thinning(Set<String> dropped, Set<String> met) {
  static Thinning of(List<String> dropped) {
    return new Thinning(Set.copyOf(dropped), new TreeSet<>());
  }

  /** The box without what gives way; nothing if all of it does. */
  Optional<Box> thin(Box box) {
    if (box instanceof Box.Droppable droppable) {
      met.add(droppable.group());
      boolean gone = dropped.contains(droppable.group());
      return gone ? droppable.smaller().flatMap(this::thin) : thin(droppable.child());
    } else if (box instanceof Box.Text text) {
      List<Box.Run> runs = text.runs().stream().filter(this::stays).toList();
      return Optional.of(new Box.Text(runs, text.style(), text.role(), text.at()));
    } else if (box instanceof Box.Held held) {
      return thin(held.child()).map(child -> new Box.Held(child, held.at()));
    } else if (box instanceof Box.Frame frame) {
      return thin(frame.child())
          .map(child -> new Box.Frame(child, frame.border(), frame.padding(), frame.at()));
    }
    return many(box);
  }

  private Optional<Box> many(Box box) {
    if (box instanceof Box.Column c) {
      return filled(thinAll(c.children()), c.children())
          .map(kept -> new Box.Column(kept, c.gap(), c.keepTogether(), c.at()));
    } else if (box instanceof Box.Columns c) {
      return filled(thinAll(c.children()), c.children())
          .map(kept -> new Box.Columns(c.count(), kept, c.gap(), c.between(), c.at()));
    } else if (box instanceof Box.Row r) {
      return filled(r.cells().stream().flatMap(cell -> cell(cell).stream()).toList(), r.cells())
          .map(kept -> new Box.Row(kept, r.gap(), r.at()));
    } else if (box instanceof Box.Items i) {
      return filled(
              i.entries().stream().flatMap(entry -> entry(entry).stream()).toList(), i.entries())
          .map(kept -> new Box.Items(kept, i.label(), i.gap(), i.between(), i.at()));
    } else if (box instanceof Box.Table table) {
      return Optional.of(new TableThinning(this, table).thin());
    }
    return Optional.of(box);
  }

  /** A container all of whose boxes are gone goes with them; one that was empty stays. */
  private static <T> Optional<List<T>> filled(List<T> kept, List<?> all) {
    return kept.isEmpty() && !all.isEmpty() ? Optional.empty() : Optional.of(kept);
  }

  private List<Box> thinAll(List<Box> boxes) {
    List<Box> kept = new ArrayList<>();
    boxes.forEach(box -> thin(box).ifPresent(kept::add));
    return kept;
  }

  private Optional<Box.Cell> cell(Box.Cell cell) {
    return thin(cell.child()).map(child -> new Box.Cell(cell.width(), child, cell.vertical()));
  }

  /** An entry whose body is gone is gone; one whose label is gone keeps its place. */
  private Optional<Box.Entry> entry(Box.Entry entry) {
    Box label = thin(entry.label()).orElse(new Box.Space(Length.ZERO, entry.label().at()));
    return thin(entry.body()).map(body -> new Box.Entry(label, body));
  }

  private boolean stays(Box.Run run) {
    run.group().ifPresent(met::add);
    return run.group().isEmpty() || !dropped.contains(run.group().get());
  }
}
