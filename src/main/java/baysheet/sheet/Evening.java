package baysheet.sheet;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What has to be done the evening before, by what it asks for.
 *
 * @param rules what the catalogue asks for: washing, cooling …
 * @param soak what gets penetrating fluid
 * @param borrow names of tools and sockets that the crib lacks
 * @param figures torques to find or to ask about
 * @param wrenches names of what to borrow for torques for which no wrench will do
 * @param fluids figures of fluids and other data to find
 * @param own what procedures ask for
 */
public record Evening(
    List<String> rules,
    List<String> soak,
    List<String> borrow,
    List<String> figures,
    List<String> wrenches,
    List<String> fluids,
    List<String> own) {
  public Evening {
    rules = List.copyOf(rules);
    soak = List.copyOf(soak);
    borrow = List.copyOf(borrow);
    figures = List.copyOf(figures);
    wrenches = List.copyOf(wrenches);
    fluids = List.copyOf(fluids);
    own = List.copyOf(own);
  }

  /**
   * All of it, in the order in which a sheet prints it.
   *
   * @param toBorrow the sentence about something that the crib lacks
   */
  public List<String> all(UnaryOperator<String> toBorrow) {
    return Stream.of(
            rules.stream(),
            soak.stream(),
            borrow.stream().map(toBorrow),
            figures.stream(),
            wrenches.stream().map(toBorrow),
            fluids.stream(),
            own.stream())
        .flatMap(lines -> lines)
        .toList();
  }
}
