package baysheet.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The form on which the office types what a scan leaves open. */
final class FilledForm {
  private FilledForm() {}

  /** Types the figure that each row asks for, and marks each open box but those that say no. */
  static void fill(Path form) throws IOException {
    StringBuilder filled = new StringBuilder();
    for (String line : Files.readAllLines(form)) {
      String target = line.replaceAll(".*target: ([^,}]*).*", "$1");
      String setting = line.replaceAll(".*setting: ([^,}]*).*", "$1");
      String figure = setting.equals(line) ? target : setting;
      filled
          .append(
              line.replace("value: open", "value: " + figure)
                  .replace("is: open", isNo(line) ? "is: empty" : "is: marked"))
          .append('\n');
    }
    Files.writeString(form, filled);
  }

  private static boolean isNo(String line) {
    return line.contains(".no, kind: tick");
  }
}
