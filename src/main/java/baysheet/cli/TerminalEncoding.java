package baysheet.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The encoding in which the system hands over names and arguments. Where it lacks a letter, the
 * letter is lost before the program starts, and no file with it in its path can be found.
 *
 * @param name as the machine calls it
 */
record TerminalEncoding(String name) {
  /** Stands for what could not be decoded (U+FFFD of the Unicode Standard). */
  private static final char LOST = '\uFFFD';

  static TerminalEncoding ofThisMachine() {
    return new TerminalEncoding(System.getProperty("sun.jnu.encoding", "unknown"));
  }

  /**
   * What to set, if a letter was lost.
   *
   * @param folder the one in which the program runs
   */
  Optional<String> complaint(List<String> arguments, String folder) {
    return Stream.concat(arguments.stream(), Stream.of(folder))
        .filter(text -> text.indexOf(LOST) >= 0)
        .findFirst()
        .map(
            text ->
                "some letters of \"%s\" cannot be read, because the encoding of this terminal is %s; set"
                        .formatted(text, name)
                    + " the environment variable LC_ALL to C.UTF-8, or to another locale with"
                    + " UTF-8, and run this again");
  }
}
