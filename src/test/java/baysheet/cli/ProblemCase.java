package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A file that says how a shop folder is changed, what is run on it and what that prints. Lines that
 * begin with {@code ==} divide it into parts:
 *
 * <pre>{@code
 * == change FILE       a text of the file, once in it
 * == to                what stands in its place
 * == write FILE        a whole file; "write-latin1" in another encoding
 * == append N FILE     the same lines N times at its end
 * == delete FILE
 * == run WORDS         a command line; without this part, check SHOP
 * == prints            all that stands on the error stream; "[...]" stands for any text
 * }</pre>
 *
 * @param parts each with its heading, without the equals signs, and its lines
 */
record ProblemCase(List<Part> parts) {
  private static final String PRINTS = "prints";
  private static final String ANYTHING = "[...]";

  record Part(String heading, String text) {
    String word() {
      return heading.split(" ")[0];
    }

    String rest() {
      return heading.contains(" ") ? heading.substring(heading.indexOf(' ') + 1) : "";
    }
  }

  static ProblemCase read(Path file) throws IOException {
    List<Part> parts = new ArrayList<>();
    for (String part : Files.readString(file).split("(?m)^== ")) {
      if (!part.isEmpty()) {
        int end = part.indexOf('\n');
        parts.add(new Part(part.substring(0, end), part.substring(end + 1)));
      }
    }
    return new ProblemCase(parts);
  }

  String prints() {
    Part last = parts.get(parts.size() - 1);
    return last.word().equals(PRINTS) ? last.text() : "";
  }

  /** Whether this is printed. */
  boolean fits(String printed) {
    String[] literals = prints().split(Pattern.quote(ANYTHING), -1);
    String pattern = Stream.of(literals).map(Pattern::quote).collect(Collectors.joining(".*?"));
    return Pattern.compile(pattern, Pattern.DOTALL).matcher(printed).matches();
  }

  /** Whether a part of what is printed is left open: such a case is not rewritten. */
  boolean isOpen() {
    return prints().contains(ANYTHING);
  }

  /** The file's text with something else printed. */
  String printing(String printed) {
    StringBuilder text = new StringBuilder();
    for (Part part : parts) {
      if (!part.word().equals(PRINTS)) {
        text.append("== ").append(part.heading()).append('\n').append(part.text());
      }
    }
    return text.append("== ").append(PRINTS).append('\n').append(printed).toString();
  }

  /** Changes the garage, in which one job is left, and runs the command. */
  Garage.Run run(Garage garage) {
    Stream.of("2026-04-07/502.yaml", "2026-04-07/503.yaml").forEach(file -> delete(garage, file));
    String command = "check SHOP";
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      switch (part.word()) {
        case "change" -> garage.change(part.rest(), line(part), line(parts.get(i + 1)));
        case "write" -> garage.write(part.rest(), part.text());
        case "append" -> append(garage, part);
        case "write-latin1" -> writeLatin(garage, part);
        case "delete" -> delete(garage, part.rest());
        case "run" -> command = part.rest();
        case "to", PRINTS -> {}
        default -> throw new IllegalArgumentException("a case has no part " + part.heading());
      }
    }
    return garage.run(
        command
            .replace("SHOP", garage.root.toString())
            .replace("OUT", garage.out.toString())
            .split(" "));
  }

  /** The text without its last line end. */
  private static String line(Part part) {
    return part.text().substring(0, part.text().length() - 1);
  }

  private static void append(Garage garage, Part part) {
    String[] words = part.rest().split(" ");
    try {
      Files.writeString(
          garage.root.resolve(words[1]),
          part.text().repeat(Integer.parseInt(words[0])),
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot append to " + words[1], e);
    }
  }

  private static void writeLatin(Garage garage, Part part) {
    try {
      Files.write(
          garage.root.resolve(part.rest()), part.text().getBytes(StandardCharsets.ISO_8859_1));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + part.rest(), e);
    }
  }

  private static void delete(Garage garage, String file) {
    try {
      Files.delete(garage.root.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete " + file, e);
    }
  }
}
