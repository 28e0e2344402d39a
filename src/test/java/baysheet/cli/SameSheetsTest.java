package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same files give the same bytes, wherever and whenever the program runs. */
class SameSheetsTest {
  @TempDir private Path folder;
  private Garage garage;
  private Garage.Run first;
  private Map<String, byte[]> sheets;

  @BeforeEach
  void makeOnce() {
    garage = Garage.in(folder);
    // A comma, an i and a plural in one: what locales turn into something else.
    garage.change("2026-04-07/501.yaml", "D. Nettlefold", "Iris IJssel, Willis & Co.");
    first = garage.sheets("--record", "--jobs", "1");
    sheets = garage.written();
    assertEquals(7, sheets.size(), first.err());
  }

  private void assertSame(Garage.Run run) {
    String out = run.out().replace("  unchanged, written again", "");
    assertEquals(first, new Garage.Run(run.exit(), out, run.err()));
    assertSameFiles();
  }

  private void assertSameFiles() {
    Map<String, byte[]> again = garage.written();
    assertEquals(sheets.keySet(), again.keySet());
    sheets.forEach((name, bytes) -> assertArrayEquals(bytes, again.get(name), name));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "2", "4"})
  void howManyAreMadeAtOneTimeDoesNotShow(String jobs) {
    assertSame(garage.sheets("--record", "--again", "--jobs", jobs));
  }

  @ParameterizedTest
  @CsvSource({"de-DE, Pacific/Kiritimati", "tr-TR, Pacific/Pago_Pago", "en-US, Asia/Kolkata"})
  void localeAndZoneDoNotShow(String locale, String zone) {
    Locale usual = Locale.getDefault();
    TimeZone usualZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(locale));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertSame(garage.sheets("--record", "--again"));
    } finally {
      Locale.setDefault(usual);
      TimeZone.setDefault(usualZone);
    }
  }

  /** Hash order differs from one Java machine to the next, and letters with the encoding. */
  @Test
  void anotherMachineMakesTheSameBytes() throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dfile.encoding=ISO-8859-1",
                "-Duser.language=tr",
                "-Duser.timezone=Asia/Tokyo",
                "-cp",
                System.getProperty("java.class.path"),
                "baysheet.cli.Main",
                "sheets",
                garage.root.resolve(Garage.DAY).toString(),
                "--record",
                "-o",
                garage.out.toString()));
    for (byte[] old : sheets.values()) {
      assertTrue(old.length > 0);
    }
    deleteAll();
    File said = folder.resolve("said").toFile();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said).start();
    assertTrue(process.waitFor(2, TimeUnit.MINUTES));
    assertEquals(Exit.DONE, process.exitValue());
    assertSameFiles();
  }

  private void deleteAll() {
    sheets.keySet().forEach(name -> assertTrue(garage.out.resolve(name).toFile().delete()));
  }
}
