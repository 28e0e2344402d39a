package baysheet.box;

/** How wide a cell is: a fixed length, what its content asks for, or a share of what is left. */
public sealed interface Width {
  /** Just this wide. */
  record Fixed(Length length) implements Width {}

  /** As wide as the content on one line, but no wider than the room there is. */
  record Natural() implements Width {}

  /** This many parts of what the others leave. */
  record Share(int parts) implements Width {
    public Share {
      if (parts < 1) {
        throw new IllegalArgumentException("share " + parts);
      }
    }
  }
}
