package baysheet.ledger;

import baysheet.json.JsonObject;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * One fastener group at one place, as its sheet asked for it.
 *
 * @param row of the torque table
 * @param fastener its name in the spec book
 * @param target of the last torque stage; empty where the figure was unknown
 * @param band what the value reached is held against, as the wrench reads: with an insert, or on a
 *     scale of another unit, that is not the book's band
 * @param angle degrees after the last torque stage, where there are any
 * @param wrench what the last torque stage was planned with
 * @param setting of that wrench
 * @param earlier other wrenches, of rounds and stages before the last
 * @param recheck after which distance it is looked at again
 */
public record Joint(
    int row,
    String fastener,
    String place,
    int count,
    Optional<Quantity> target,
    Optional<Band> band,
    Optional<Quantity> angle,
    Optional<String> wrench,
    Optional<Quantity> setting,
    List<String> earlier,
    Optional<Quantity> recheck) {
  public Joint {
    earlier = List.copyOf(earlier);
  }

  /** The name of the box for the value reached. */
  public String box() {
    return "torque." + row + "." + place;
  }

  JsonObject json() {
    return new JsonObject()
        .put("row", row)
        .put("fastener", fastener)
        .put("place", place)
        .put("count", count)
        .put("target", target)
        .put("band", band.map(Joint::json))
        .put("angle", angle)
        .put("wrench", wrench)
        .put("setting", setting)
        .listIfAny("earlier", earlier)
        .put("recheck", recheck);
  }

  static Joint of(JsonObject json) {
    return new Joint(
        json.number("row"),
        json.text("fastener"),
        json.text("place"),
        json.number("count"),
        json.quantity("target"),
        json.object("band").map(Joint::band),
        json.quantity("angle"),
        json.maybeText("wrench"),
        json.quantity("setting"),
        json.texts("earlier"),
        json.quantity("recheck"));
  }

  static JsonObject json(Band band) {
    return new JsonObject()
        .put("from", band.low().value())
        .put("to", band.high().value())
        .put("unit", band.low().unit().symbol())
        .put("of", band.origin() == Band.Origin.BOOK ? "book" : "shop");
  }

  static Band band(JsonObject json) {
    Band.Origin origin = json.text("of").equals("book") ? Band.Origin.BOOK : Band.Origin.SHOP;
    return new Band(json.figureIn("from"), json.figureIn("to"), origin);
  }
}
