package baysheet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What can be seen of a file without compiling it. */
class SourceHabitsTest {
  private static final int LONGEST = 350;

  private static final Pattern EMPTY_NAME =
      Pattern.compile(".*(Manager|Helper|Util|Utils|Impl|Data)\\.java");

  /** In two halves, so that this file does not find itself. */
  private static final String POSTPONED = "TO" + "DO";

  @Test
  void noFileIsLong() {
    List<String> longer = new ArrayList<>();
    for (Path file : Sources.java(Sources.MAIN)) {
      long lines = Sources.read(file).lines().count();
      if (lines > LONGEST) {
        longer.add(file + " has " + lines + " lines");
      }
    }
    assertEquals(List.of(), longer);
  }

  @Test
  void noClassHasANameThatSaysNothing() {
    List<Path> found =
        all().filter(file -> EMPTY_NAME.matcher(file.getFileName().toString()).matches()).toList();
    assertEquals(List.of(), found);
    assertTrue(EMPTY_NAME.matcher("TorqueHelper.java").matches());
  }

  /** Whoever searches for a name finds one class. */
  @Test
  void noTwoClassesHaveOneName() {
    assertEquals(List.of(), repeated(Sources.java(Sources.MAIN)));
    assertEquals(
        List.of("Stage.java"), repeated(List.of(Path.of("one/Stage.java"), Path.of("Stage.java"))));
  }

  private static List<String> repeated(List<Path> files) {
    Map<String, Long> counts =
        files.stream()
            .map(file -> file.getFileName().toString())
            .filter(name -> !name.equals("package-info.java"))
            .collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()));
    return counts.keySet().stream().filter(name -> counts.get(name) > 1).toList();
  }

  @Test
  void nothingIsPutOff() {
    List<Path> found =
        Stream.concat(
                all(),
                Stream.of("templates", "jobs", "src/main/resources/baysheet")
                    .map(Path::of)
                    .flatMap(folder -> Sources.files(folder).stream())
                    .filter(file -> !file.toString().endsWith(".ttf")))
            .filter(file -> Sources.read(file).contains(POSTPONED))
            .toList();
    assertEquals(List.of(), found);
  }

  private static Stream<Path> all() {
    return Stream.of(Sources.MAIN, Sources.TESTS).flatMap(folder -> Sources.java(folder).stream());
  }
}
