package baysheet.collect;

import java.util.Map;

/** What a box is called in a sentence, by its name on the sheet. */
final class BoxWords {
  private static final Map<String, String> WHOLE =
      Map.ofEntries(
          Map.entry("sign.technician", "signature of the technician"),
          Map.entry("sign.apprentice", "signature of the apprentice"),
          Map.entry("sign.second", "signature of the second person"),
          Map.entry("release.yes", "released or not released"),
          Map.entry("cured.yes", "complaint cured, yes or no"),
          Map.entry("odometer.out", "odometer reading"),
          Map.entry("roadtest.by", "who made the road test"),
          Map.entry("tally.on", "number of items back on"),
          Map.entry("marked", "number of joints marked"));

  private BoxWords() {}

  /** {@code torque.3.front-left} is {@code row 3 front left value}; others are words already. */
  static String of(String name) {
    String[] parts = name.split("\\.");
    if (parts[0].equals("stage") && parts.length > 1) {
      int rest = parts[0].length() + parts[1].length() + 2;
      return "sheet "
          + parts[1]
          + (parts.length > 2 ? ": " + of(name.substring(rest)) : " missing");
    }
    if (WHOLE.containsKey(name) || parts.length < 2) {
      return WHOLE.getOrDefault(name, name);
    }
    String last = parts[parts.length - 1];
    String place = parts.length > 2 ? " " + parts[2].replace('-', ' ') : "";
    return switch (parts[0]) {
      case "tick" -> "step " + parts[1] + place;
      case "hold" -> "second person at step " + parts[1];
      case "entry" -> "figure at step " + parts[1] + place;
      case "check" -> ofCheck(last) + parts[1];
      case "torque" ->
          last.equals("set")
              ? "figure found for row " + parts[1]
              : "row " + parts[1] + place + (parts.length == 3 ? " value" : " " + last);
      case "mark" -> "row " + parts[1] + place + " witness mark";
      case "turn" -> "row " + parts[1] + " turn " + rest(parts);
      case "tally" -> "removed item " + parts[1] + place;
      case "recheck" ->
          "re-check of row " + parts[1] + (last.equals("told") ? ", customer told" : "");
      case "open" -> "what others must still do, line " + parts[1];
      default -> name;
    };
  }

  private static String ofCheck(String last) {
    return switch (last) {
      case "hold" -> "second person at check ";
      case "figure" -> "figure at check ";
      default -> "check ";
    };
  }

  private static String rest(String[] parts) {
    StringBuilder rest = new StringBuilder(parts.length > 2 ? parts[2] : "");
    for (int i = 3; i < parts.length; i++) {
      rest.append(' ').append(parts[i].replace('-', ' '));
    }
    return rest.toString();
  }
}
