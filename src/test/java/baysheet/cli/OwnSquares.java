package baysheet.cli;

import static baysheet.cli.OwnBooks.list;
import static baysheet.cli.OwnBooks.map;
import static baysheet.cli.OwnBooks.text;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** How a crib's sockets for a head go on its wrenches, read from the shop's file once more. */
final class OwnSquares {
  private final Map<String, Object> crib;
  private final Map<String, Object> drives;

  OwnSquares(Map<String, Object> shop) {
    this.crib = map(shop.get("crib"));
    this.drives = map(shop.getOrDefault("drives", Map.of()));
  }

  /**
   * How a socket goes on a wrench: 0 in its own square, or where the crib has none at all and one
   * is borrowed in any case; 1 by an adapter of the crib; 2 when something has to be borrowed only
   * for this wrench.
   */
  int trouble(Map<String, Object> wrench, Map<String, Object> fastener, BigDecimal newtonMetres) {
    String drive = text(wrench.get("drive"));
    List<String> fitting = fastener.containsKey("head") ? squares(fastener) : List.of();
    if (fitting.isEmpty()) {
      return 0;
    }
    List<String> carrying =
        fastener.containsKey("reach")
            ? fitting
            : fitting.stream().filter(it -> limit(it).compareTo(newtonMetres) >= 0).toList();
    if (carrying.contains(drive)) {
      return 0;
    }
    return carrying.stream().anyMatch(square -> adapted(drive, square)) ? 1 : 2;
  }

  /** Working limits: common practice, no source, but where the shop has its own. */
  private BigDecimal limit(String drive) {
    Map<String, String> usual =
        Map.of("1/4 in", "40", "3/8 in", "135", "1/2 in", "340", "3/4 in", "940", "1 in", "1670");
    Object own = drives.get(drive);
    return new BigDecimal(own == null ? usual.get(drive) : text(own).replace(" N·m", ""));
  }

  private boolean adapted(String drive, String square) {
    return list(crib.get("special")).stream()
        .anyMatch(it -> map(it).get("name").equals("adapter " + drive + " to " + square));
  }

  private List<String> squares(Map<String, Object> fastener) {
    String head = text(fastener.get("head"));
    if (fastener.containsKey("reach")) {
      return inserts(head, map(fastener.get("reach")));
    }
    boolean deep = Boolean.TRUE.equals(fastener.get("deep"));
    return list(crib.get("sockets")).stream()
        .map(OwnBooks::map)
        .filter(socket -> fits(socket, head) && (!deep || socket.get("deep") != null))
        .map(socket -> text(socket.get("drive")))
        .toList();
  }

  /** The square of the crow-foot or insert that the crib has in a socket's place. */
  private List<String> inserts(String head, Map<String, Object> reach) {
    String tool = text(reach.getOrDefault("tool", "crow-foot")).replace("nut-crow", "nut crow");
    String name = tool + " " + head + ", reach " + reach.get("length");
    return list(crib.get("special")).stream()
        .map(OwnBooks::map)
        .filter(it -> it.get("name").equals(name) && it.containsKey("drive"))
        .map(it -> text(it.get("drive")))
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
