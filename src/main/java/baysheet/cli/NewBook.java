package baysheet.cli;

import java.util.List;

/** The text with which a new spec book begins. */
final class NewBook {
  private NewBook() {}

  static String text(String name, List<String> traits) {
    return """
    # unknown stands for a figure to look up. If the vehicle has none of a fastener, delete its line and
    # write its name under absent in the same place, as in absent: [disc-screw].
    vehicle: NAME
    name: NAME    # what the sheet prints
    source: not stated yet    # where the figures come from; printed on every sheet
    # Add kerb-mass, front-share and supports: stands and lifts are checked with them.
    traits: [TRAITS]    # what the vehicle has; baysheet names traits lists them
    """
        .replace("NAME", name)
        .replace("TRAITS", String.join(", ", traits));
  }
}
