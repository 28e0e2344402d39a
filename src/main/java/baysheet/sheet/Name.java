package baysheet.sheet;

import baysheet.resolve.Bound;

/** What a thing is called in British and in American terms. */
public record Name(String british, String american) {
  public static Name of(Bound thing) {
    return new Name(thing.british(), thing.american());
  }
}
