package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The launcher for Unix. */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {
  private static final String SHEETS = "sheets here/jobs/2026-03-02/2407.yaml -o out";

  private static final InstalledPackage.Ran VERSION =
      new InstalledPackage.Ran(0, "baysheet 0.1.0\n", "");

  /** Unpacked once; each test has a home of its own. */
  @TempDir private static Path folder;

  private static InstalledPackage installed;

  /** Where a run has left its archive. */
  private static Path usedHome;

  private Map<String, String> environment;
  private Path home;

  @BeforeAll
  static void unpack() {
    installed = InstalledPackage.in(folder, "tools");
    usedHome = folder.resolve("used");
    Map<String, String> environment = installed.environment(usedHome);
    InstalledPackage.Ran ran = installed.baysheet(environment, SHEETS);
    assertEquals(0, ran.exit(), ran.err());
    assertEquals("", ran.err());
  }

  @BeforeEach
  void move() throws IOException {
    home = Files.createTempDirectory(folder, "home");
    environment = installed.environment(home);
  }

  @Test
  void itSaysItsVersion() {
    InstalledPackage.Ran ran = installed.baysheet(environment, "--version");
    assertEquals(VERSION, ran);
    assertEquals(List.of(), archives(home), "a short command takes no time for an archive");
  }

  /** Without a locale, Java knows ASCII only, and the accents in the path would be lost. */
  @ParameterizedTest
  @CsvSource({"LANG,C", "LC_ALL,POSIX", "LC_CTYPE,''"})
  void itFindsFilesWithAccentsInAnyLocale(String variable, String locale) throws IOException {
    environment.put(variable, locale);
    InstalledPackage accented = accented();
    String shop = "\"$(printf 'g\\303\\251 " + variable + "')\"";
    InstalledPackage.Ran ran =
        accented.shell(environment, "bin/baysheet start " + shop + " --date 2026-01-02");
    assertEquals(0, ran.exit(), ran.err());
    assertTrue(ran.out().startsWith("made gé " + variable + ": a shop folder"), ran.out());
    assertEquals(0, accented.shell(environment, "test -f " + shop + "/shop.yaml").exit());
  }

  private static InstalledPackage accented() throws IOException {
    Path around = Files.createTempDirectory(folder, "around");
    return InstalledPackage.in(around, InstalledPackage.ACCENTED);
  }

  @Test
  void itsSheetsAreThoseOfTheJarWhateverTheFolder() throws IOException {
    InstalledPackage accented = accented();
    environment.put("XDG_CACHE_HOME", "/dev/null/x");
    InstalledPackage.Ran ran = accented.baysheet(environment, SHEETS);
    assertEquals(0, ran.exit(), ran.err());
    assertEquals("", ran.err());
    Path other = folder.resolve("other");
    Garage garage = Garage.in(folder.resolve("garage"));
    assertEquals(
        Exit.DONE,
        garage.run("sheets", "jobs/2026-03-02/2407.yaml", "-o", other.toString()).exit());
    assertArrayEquals(
        Files.readAllBytes(other.resolve("2026-03-02/2407.pdf")),
        Files.readAllBytes(accented.around().resolve("out/2026-03-02/2407.pdf")));
  }

  @Test
  void theFirstSheetsMakeAnArchiveWhichLaterRunsUse() throws IOException {
    assertEquals(1, archives(usedHome).size(), archives(usedHome).toString());
    String archive = Files.readString(archives(usedHome).get(0), StandardCharsets.ISO_8859_1);
    assertTrue(archive.length() > 1_000_000);
    // Of both commands that a garage waits for.
    assertTrue(archive.contains("baysheet/cli/SheetsCommand"));
    assertTrue(archive.contains("baysheet/cli/DayCommand"));
    assertTrue(archives(usedHome).get(0).toString().endsWith(".jsa"));
    environment.put("HOME", usedHome.toString());
    environment.put("JAVA_HOME", watched("17.0.1").toString());
    // Another Java by its place and version: the archive is not for it.
    assertEquals(VERSION, installed.baysheet(environment, "--version"));
    assertFalse(called().contains("SharedArchiveFile"), called());
    // Two versions that are used side by side keep their archives; one that is 61 days old goes.
    Path cache = archives(usedHome).get(0).getParent();
    Path beside = Files.writeString(cache.resolve("0123-45.jsa"), "of another version");
    age(beside, 59);
    Path old = Files.writeString(cache.resolve("0123-46.jsa"), "old");
    age(old, 61);
    Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("r--r--r--"));
    Path killed = Files.createDirectories(cache.resolve("new.7/out"));
    age(killed.getParent(), 61);
    Path other = Files.writeString(cache.resolve("notes.txt"), "not ours");
    age(other, 61);
    InstalledPackage.Ran ran = installed.baysheet(environment, SHEETS);
    assertEquals(0, ran.exit());
    assertEquals("", ran.err(), "progress is shown on a terminal only");
    assertFalse(Files.exists(old));
    assertFalse(Files.exists(killed.getParent()));
    Files.delete(other);
    Files.delete(beside);
    assertEquals(2, archives(usedHome).size(), archives(usedHome).toString());
    assertEquals(VERSION, installed.baysheet(environment, "--version"));
    assertTrue(called().contains("SharedArchiveFile"), called());
  }

  /**
   * Every file of a package has the same time, so another build of equal size is another jar only
   * by its content.
   */
  @Test
  void anotherJarOfTheSameSizeAndTimeIsRun() throws IOException {
    environment.put("HOME", usedHome.toString());
    Path jar = installed.home().resolve("lib/baysheet.jar");
    Path build = installed.home().resolve("lib/baysheet.jar.sha256");
    byte[] old = Files.readAllBytes(jar);
    String oldBuild = Files.readString(build);
    FileTime time = Files.getLastModifiedTime(jar);
    String text = new String(old, StandardCharsets.ISO_8859_1);
    Files.write(
        jar,
        text.replace("baysheet 0.1.0", "baysheet 0.1.9").getBytes(StandardCharsets.ISO_8859_1));
    Files.writeString(build, "another\n");
    Files.setLastModifiedTime(jar, time);
    assertEquals("baysheet 0.1.9\n", installed.baysheet(environment, "--version").out());
    Files.write(jar, old);
    Files.writeString(build, oldBuild);
    Files.setLastModifiedTime(jar, time);
  }

  @Test
  void aBrokenArchiveChangesNothing() throws IOException {
    Path cache = Files.createDirectories(home.resolve(".cache/baysheet"));
    Files.writeString(cache.resolve(archives(usedHome).get(0).getFileName()), "no archive");
    assertEquals(VERSION, installed.baysheet(environment, "--version"));
  }

  @ParameterizedTest
  @CsvSource({"HOME,/dev/null", "HOME,''", "XDG_CACHE_HOME,/dev/null/x"})
  void withoutAPlaceToWriteItGoesWithoutAnArchive(String variable, String value) {
    environment.put(variable, value);
    InstalledPackage.Ran ran = installed.baysheet(environment, "sheets --help");
    assertEquals(0, ran.exit(), ran.err());
    assertEquals("", ran.err());
    assertEquals(List.of(), archives(home));
  }

  @Test
  void withoutJavaItSaysSoInOneSentence() {
    environment.remove("JAVA_HOME");
    InstalledPackage.Ran ran =
        installed.shell(
            environment,
            "mkdir few; for tool in sh readlink env cksum mkdir; do ln -s \"$(command -v $tool)\""
                + " few/$tool; done; PATH=$PWD/few bin/baysheet --version");
    assertEquals(3, ran.exit());
    assertEquals(
        "baysheet: there is no Java on this machine; install Java 17 or later, or set JAVA_HOME to"
            + " the folder of one\n",
        ran.err());
  }

  @Test
  void aJavaHomeWithoutJavaIsNamed() {
    environment.put("JAVA_HOME", "/nowhere");
    InstalledPackage.Ran ran = installed.baysheet(environment, "--version");
    assertEquals(3, ran.exit());
    assertTrue(
        ran.err().startsWith("baysheet: JAVA_HOME is /nowhere, but there is no bin/java in it; "),
        ran.err());
  }

  /** The file release is as a JDK 11 has it; Java 8 gives its version only when it is asked. */
  @ParameterizedTest
  @CsvSource({"11.0.24,11", "'',8"})
  void aJavaThatIsTooOldIsNamed(String release, String major) throws IOException {
    environment.put("JAVA_HOME", watched(release).toString());
    InstalledPackage.Ran ran = installed.baysheet(environment, "--version");
    assertEquals(3, ran.exit());
    assertTrue(
        ran.err().contains("/bin/java is Java " + major + ", which is too old; "), ran.err());
    assertEquals(1, ran.err().lines().count());
  }

  @Test
  void argumentsReachTheProgramAsTheyAreTyped() {
    InstalledPackage.Ran ran =
        installed.baysheet(
            environment, "torque \"$(printf '110 N\\302\\267m')\" --class '10.9 *\" x'");
    assertEquals(2, ran.exit());
    assertTrue(ran.err().contains("10.9 *\" x"), ran.err());
  }

  /**
   * A Java that writes down how it is called. With a release it names that in the file that each
   * Java has; without one, it answers as Java 8 does.
   */
  private Path watched(String release) throws IOException {
    Path home = Files.createDirectories(folder.resolve("java " + release));
    Path java = Files.createDirectories(home.resolve("bin")).resolve("java");
    String answer =
        release.isEmpty()
            ? "echo 'java version \"1.8.0_392\"' >&2"
            : "echo \"$*\" >\""
                + folder.resolve("called")
                + "\"; exec '"
                + System.getProperty("java.home")
                + "/bin/java' \"$@\"";
    Files.writeString(java, "#!/bin/sh\n" + answer + "\n");
    Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
    if (!release.isEmpty()) {
      Files.writeString(
          home.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"" + release + "\"\n");
    }
    return home;
  }

  /** The class-data archives below a home. */
  private static List<Path> archives(Path home) {
    Path cache = home.resolve(".cache/baysheet");
    if (!Files.isDirectory(cache)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(cache)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + cache, e);
    }
  }

  private static void age(Path file, int days) throws IOException {
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(days, ChronoUnit.DAYS)));
  }

  private String called() throws IOException {
    return Files.readString(folder.resolve("called"));
  }
}
