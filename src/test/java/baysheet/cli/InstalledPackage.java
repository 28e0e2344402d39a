package baysheet.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The package of the build, unpacked and run as a garage does: by its launcher, in an environment
 * that holds nothing but what a test gives.
 *
 * @param around a folder that holds the unpacked package, and whatever a test writes
 */
record InstalledPackage(Path around) {
  static final Path ARCHIVE = Path.of("target/baysheet-0.1.0.tar.gz");

  /** A space, a quote and accents, given as bytes: Java may run in a locale without them. */
  static final String ACCENTED = "$(printf 'tools d\\047\\303\\251t\\303\\251')";

  /** What a shell script did. */
  record Ran(int exit, String out, String err) {}

  /**
   * Unpacks it.
   *
   * @param name of the folder for it, as a shell reads it between double quotes
   */
  static InstalledPackage in(Path around, String name) {
    InstalledPackage installed = new InstalledPackage(around);
    String unpack =
        "mkdir bin \"NAME\" && tar xzf \"$ARCHIVE\" -C \"NAME\""
            + " && ln -s ../\"NAME\"/baysheet-0.1.0/bin/baysheet bin/baysheet"
            + " && ln -s \"NAME\"/baysheet-0.1.0 here";
    Map<String, String> archive = Map.of("ARCHIVE", ARCHIVE.toAbsolutePath().toString());
    Ran ran = installed.shell(archive, unpack.replace("NAME", name));
    if (ran.exit() != 0) {
      throw new IllegalStateException(ran.toString());
    }
    return installed;
  }

  /** The folder of the package. */
  Path home() {
    return around.resolve("here");
  }

  /** Runs the launcher through a link to it. */
  Ran baysheet(Map<String, String> environment, String arguments) {
    return shell(environment, "bin/baysheet " + arguments);
  }

  /** The environment of most tests: the Java of this test, and a home. */
  Map<String, String> environment(Path home) {
    return new TreeMap<>(
        Map.of("JAVA_HOME", System.getProperty("java.home"), "HOME", home.toString()));
  }

  /** Runs a script in the folder around, with no locale set unless it is given. */
  Ran shell(Map<String, String> environment, String script) {
    return shell("sh", environment, script);
  }

  Ran shell(String shell, Map<String, String> environment, String script) {
    try {
      Path out = Files.createTempFile(around, "out", ".txt");
      Path err = Files.createTempFile(around, "err", ".txt");
      ProcessBuilder builder =
          new ProcessBuilder(new ArrayList<>(List.of(shell, "-c", script)))
              .directory(around.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile());
      builder.environment().keySet().removeIf(name -> !name.equals("PATH"));
      builder.environment().putAll(environment);
      int exit = builder.start().waitFor();
      Ran ran = new Ran(exit, text(out), text(err));
      Files.delete(out);
      Files.delete(err);
      return ran;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot run " + script, e);
    } catch (InterruptedException e) {
      throw new IllegalStateException("interrupted while running " + script, e);
    }
  }

  private static String text(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
  }
}
