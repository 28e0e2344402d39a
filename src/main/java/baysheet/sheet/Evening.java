package baysheet.sheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * What has to be done the evening before, by what it asks for.
 *
 * @param rules what the catalogue asks for: washing, cooling …
 * @param soak what gets penetrating fluid
 * @param borrow tools and sockets that the crib lacks
 * @param figures torques to find or to ask about
 * @param wrenches what to borrow for torques for which no wrench will do
 * @param fluids figures of fluids and other data to find
 * @param own what procedures ask for
 */
public record Evening(
    List<Statement> rules,
    List<Statement> soak,
    List<Statement> borrow,
    List<Statement> figures,
    List<Statement> wrenches,
    List<Statement> fluids,
    List<Statement> own) {
  public Evening {
    rules = List.copyOf(rules);
    soak = List.copyOf(soak);
    borrow = List.copyOf(borrow);
    figures = List.copyOf(figures);
    wrenches = List.copyOf(wrenches);
    fluids = List.copyOf(fluids);
    own = List.copyOf(own);
  }

  /** All of it, in the order in which a sheet prints it. */
  public List<Statement> all() {
    return Stream.of(
            rules.stream(),
            soak.stream(),
            borrow.stream().<Statement>map(Statement.Borrow::new),
            figures.stream(),
            wrenches.stream().<Statement>map(Statement.Borrow::new),
            fluids.stream(),
            own.stream())
        .flatMap(lines -> lines)
        .toList();
  }
}
