package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Takes dropped groups out of a tree of boxes. What comes out holds no {@link Box.Droppable}. A box
 * in which nothing gives way comes out as the very same one, so that what is known of it is still
 * known.
 *
 * @param dropped the groups that have given way
 */
record Thinning(Set<String> dropped) {
  static Thinning of(List<String> dropped) {
    return new Thinning(Set.copyOf(dropped));
  }

  /** The box without what gives way; nothing if all of it does. */
  Optional<Box> thin(Box box) {
    if (box instanceof Box.Droppable droppable) {
      boolean gone = dropped.contains(droppable.group());
      return gone ? droppable.smaller().flatMap(this::thin) : thin(droppable.child());
    } else if (box instanceof Box.Text text) {
      return Optional.of(text(text));
    } else if (box instanceof Box.Held held) {
      return thin(held.child())
          .map(child -> child == held.child() ? held : new Box.Held(child, held.at()));
    } else if (box instanceof Box.Frame frame) {
      return thin(frame.child()).map(child -> frame(frame, child));
    }
    return many(box);
  }

  private Box text(Box.Text text) {
    List<Box.Run> runs = kept(text.runs(), this::run);
    return runs == text.runs() ? text : new Box.Text(runs, text.style(), text.role(), text.at());
  }

  private Optional<Box.Run> run(Box.Run run) {
    boolean gone = run.group().isPresent() && dropped.contains(run.group().get());
    return gone ? Optional.empty() : Optional.of(run);
  }

  private static Box frame(Box.Frame frame, Box child) {
    return child == frame.child()
        ? frame
        : new Box.Frame(child, frame.border(), frame.padding(), frame.at());
  }

  private Optional<Box> many(Box box) {
    if (box instanceof Box.Column c) {
      return container(
          c, c.children(), this::thin, k -> new Box.Column(k, c.gap(), c.keepTogether(), c.at()));
    } else if (box instanceof Box.Columns c) {
      return container(
          c,
          c.children(),
          this::thin,
          k -> new Box.Columns(c.count(), k, c.gap(), c.between(), c.at()));
    } else if (box instanceof Box.Row r) {
      return container(r, r.cells(), this::cell, k -> new Box.Row(k, r.gap(), r.at()));
    } else if (box instanceof Box.Items i) {
      return container(
          i,
          i.entries(),
          this::entry,
          k -> new Box.Items(k, i.label(), i.gap(), i.between(), i.at()));
    } else if (box instanceof Box.Table table) {
      return Optional.of(new TableThinning(this, table).thin());
    }
    return Optional.of(box);
  }

  /** A container all of whose boxes are gone goes with them; one that was empty stays. */
  private static <T> Optional<Box> container(
      Box whole, List<T> all, Function<T, Optional<T>> thin, Function<List<T>, Box> of) {
    List<T> kept = kept(all, thin);
    if (kept == all) {
      return Optional.of(whole);
    }
    return kept.isEmpty() ? Optional.empty() : Optional.of(of.apply(kept));
  }

  /** What is left of each; the very same list if all of them stay as they are. */
  private static <T> List<T> kept(List<T> all, Function<T, Optional<T>> thin) {
    List<T> kept = new ArrayList<>(all.size());
    boolean same = true;
    for (T one : all) {
      Optional<T> left = thin.apply(one);
      if (left.isPresent()) {
        kept.add(left.get());
      }
      same &= left.isPresent() && left.get() == one;
    }
    return same ? all : kept;
  }

  private Optional<Box.Cell> cell(Box.Cell cell) {
    return thin(cell.child())
        .map(
            child ->
                child == cell.child() ? cell : new Box.Cell(cell.width(), child, cell.vertical()));
  }

  /** An entry whose body is gone is gone; one whose label is gone keeps its place. */
  private Optional<Box.Entry> entry(Box.Entry entry) {
    Box label = thin(entry.label()).orElse(new Box.Space(Length.ZERO, entry.label().at()));
    return thin(entry.body())
        .map(
            body ->
                label == entry.label() && body == entry.body()
                    ? entry
                    : new Box.Entry(label, body));
  }
}
