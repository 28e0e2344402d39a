package baysheet.torque;

/** What a unit measures. */
public enum Dimension {
  TORQUE("a torque", "110 N·m"),
  ANGLE("an angle", "90°"),
  LENGTH("a length", "12 mm"),
  DISTANCE("a distance", "80 km"),
  MASS("a mass", "1640 kg"),
  VOLUME("a volume", "4.2 L"),
  TIME("a time", "6 min"),
  SHARE("a share", "57 %"),
  TEMPERATURE("a temperature", "40 °C"),
  PRESSURE("a pressure", "2.3 bar");

  private final String phrase;
  private final String example;

  Dimension(String phrase, String example) {
    this.phrase = phrase;
    this.example = example;
  }

  /** The dimension with its article, for sentences. */
  public String phrase() {
    return phrase;
  }

  /** A well-written value of this dimension. */
  public String example() {
    return example;
  }
}
