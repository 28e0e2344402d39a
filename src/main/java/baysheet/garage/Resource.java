package baysheet.garage;

/**
 * Something of which a garage has a number, by the id that the scheduler knows it by.
 *
 * @param kind what sort of thing
 * @param name as the shop file has it
 */
public record Resource(Kind kind, String name) {
  /** The sorts of things that jobs wait for. */
  public enum Kind {
    BAY,
    /** Somebody who works on the job all the time. */
    PERSON,
    /** Somebody who comes from other work to look at a hold point. */
    LOOK,
    TOOL,
    /** A pair of axle stands. */
    STANDS
  }

  static final Resource STANDS = new Resource(Kind.STANDS, "axle stands");

  String id() {
    return kind + ":" + name;
  }

  static Resource of(String id) {
    int colon = id.indexOf(':');
    return new Resource(Kind.valueOf(id.substring(0, colon)), id.substring(colon + 1));
  }
}
