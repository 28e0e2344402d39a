package baysheet.cli;

import static baysheet.cli.OwnBooks.list;
import static baysheet.cli.OwnBooks.map;
import static baysheet.cli.OwnBooks.text;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Which wrenches of a crib take its sockets for a head, read from the shop's file once more. */
final class OwnSquares {
  private final Map<String, Object> crib;

  OwnSquares(Map<String, Object> shop) {
    this.crib = map(shop.get("crib"));
  }

  /** By its own square or by an adapter of the crib; any where the crib has no socket at all. */
  boolean goOn(Map<String, Object> wrench, Map<String, Object> fastener) {
    if (!fastener.containsKey("head") || fastener.containsKey("reach")) {
      return true;
    }
    String drive = text(wrench.get("drive"));
    List<String> squares = squares(fastener);
    return squares.isEmpty()
        || squares.stream().anyMatch(square -> square.equals(drive) || adapted(drive, square));
  }

  private boolean adapted(String drive, String square) {
    return list(crib.get("special")).stream()
        .anyMatch(it -> map(it).get("name").equals("adapter " + drive + " to " + square));
  }

  private List<String> squares(Map<String, Object> fastener) {
    String head = text(fastener.get("head"));
    boolean deep = Boolean.TRUE.equals(fastener.get("deep"));
    return list(crib.get("sockets")).stream()
        .map(OwnBooks::map)
        .filter(socket -> fits(socket, head) && (!deep || socket.get("deep") != null))
        .map(socket -> text(socket.get("drive")))
        .toList();
  }

  private static boolean fits(Map<String, Object> socket, String head) {
    boolean unit = head.endsWith(" mm") || head.endsWith(" in");
    int gap = head.lastIndexOf(' ', head.length() - (unit ? 4 : 1));
    String form = head.substring(0, gap).replace(' ', '-');
    String size = head.substring(gap + 1);
    boolean twelve = form.equals("12-point");
    Object sizes = socket.get(twelve ? "hex" : form);
    return sizes != null
        && (!twelve || text(socket.get("points")).equals("12"))
        && list(sizes).stream().flatMap(it -> spelledOut(text(it))).anyMatch(size::equals);
  }

  /** Every whole size of {@code 6..13 mm}, or the one that is written. */
  private static Stream<String> spelledOut(String sizes) {
    String[] ends = sizes.replace(" mm", "").split("\\.\\.");
    return ends.length == 1
        ? Stream.of(sizes)
        : Stream.iterate(
            Integer.parseInt(ends[0]) + " mm",
            size -> number(size) <= Integer.parseInt(ends[1]),
            size -> number(size) + 1 + " mm");
  }

  private static int number(String size) {
    return Integer.parseInt(size.replace(" mm", ""));
  }
}
