package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SourceFileTest {
  @TempDir Path folder;

  private final Problems problems = new Problems();

  @Test
  void theTextIsReadUnderTheNameToShow() throws IOException {
    assertEquals(
        Optional.of(new Source("jobs/shown.yaml", "a: 90°\r\n")),
        read("a: 90°\r\n".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheText() throws IOException {
    assertEquals(
        "a: 1\n", read("\uFEFFa: 1\n".getBytes(StandardCharsets.UTF_8)).orElseThrow().text());
    assertEquals(List.of(), problems.all());
  }

  @Test
  void aByteThatIsNotUtf8IsReportedByLineColumnAndMeaning() throws IOException {
    byte[] bytes = "a: 1\nü: 110 N·m\n".getBytes(StandardCharsets.UTF_8);
    bytes = concat(bytes, "b: 90°\n".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(Optional.empty(), read(bytes));
    assertEquals(List.of("3:6 not-utf8"), Texts.told(problems));
    assertEquals(
        "the byte B0 is not valid UTF-8; in an older encoding it means \"°\"",
        problems.all().get(0).what());
    assertEquals("b: 90\uFFFD", problems.all().get(0).at().source().lines().get(2));
  }

  @Test
  void theColumnOfAStrayByteCountsCodePointsAndNoByteOrderMark() throws IOException {
    byte[] start = "\uFEFF🔧é ".getBytes(StandardCharsets.UTF_8);
    read(concat(start, new byte[] {(byte) 0xFF}));
    assertEquals(List.of("1:4 not-utf8"), Texts.told(problems));
  }

  @Test
  void aSequenceCutOffAtTheEndIsNotUtf8() throws IOException {
    read(new byte[] {'a', ':', ' ', (byte) 0xC2});
    assertEquals(List.of("1:4 not-utf8"), Texts.told(problems));
  }

  /** RFC 3629 section 3: no octet sequence for a surrogate, and none longer than needed. */
  @Test
  void sequencesThatTheStandardForbidsAreNotUtf8() throws IOException {
    read(new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80});
    read(new byte[] {'a', (byte) 0xC0, (byte) 0x80});
    assertEquals(List.of("1:1 not-utf8", "1:2 not-utf8"), Texts.told(problems));
  }

  @Test
  void utf16IsCalledByItsName() throws IOException {
    for (String name : List.of("UTF-16BE", "UTF-16LE")) {
      Problems own = new Problems();
      Path file = write("\uFEFFa: 1\n".getBytes(Charset.forName(name)));
      SourceFile.read(file, "jobs/shown.yaml", own);
      assertEquals("the file is saved as UTF-16, not as UTF-8", own.all().get(0).what());
    }
  }

  @Test
  void aHundredMegabytesAreRefusedWithoutBeingRead() throws IOException {
    Path file = folder.resolve("large.yaml");
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(100_000_000);
    }
    long before = allocated();
    assertEquals(Optional.empty(), SourceFile.read(file, "jobs/shown.yaml", problems));
    assertEquals(List.of("1:1 too-large"), Texts.told(problems));
    assertTrue(allocated() - before < 20_000_000, "allocated " + (allocated() - before));
  }

  @Test
  void aFileOfJustTheLargestSizeIsRead() throws IOException {
    byte[] bytes = "#".repeat(YamlFile.MAX_BYTES).getBytes(StandardCharsets.UTF_8);
    assertEquals(YamlFile.MAX_BYTES, read(bytes).orElseThrow().text().length());
    assertEquals(Optional.empty(), read(concat(bytes, new byte[] {'#'})));
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    Path missing = folder.resolve("missing.yaml");
    assertEquals("cannot read " + missing, thrownFor(missing).getMessage());
  }

  @Test
  void aFolderIsNotAFile() {
    assertEquals(Optional.empty(), SourceFile.read(folder, "jobs/shown.yaml", problems));
    assertEquals(ProblemCode.NOT_A_FILE, problems.all().get(0).code());
  }

  /** A pipe that nobody writes to would keep the reader waiting for ever. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsNotRead() throws IOException, InterruptedException {
    Path pipe = folder.resolve("2401.yaml");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    assertTimeoutPreemptively(
        Duration.ofSeconds(5),
        () -> assertEquals(Optional.empty(), SourceFile.read(pipe, "2401.yaml", problems)));
    assertEquals(ProblemCode.NOT_A_FILE, problems.all().get(0).code());
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aDeviceIsNotRead() {
    assertEquals(Optional.empty(), SourceFile.read(Path.of("/dev/zero"), "zero.yaml", problems));
    assertEquals(ProblemCode.NOT_A_FILE, problems.all().get(0).code());
  }

  private UncheckedIOException thrownFor(Path path) {
    return assertThrows(
        UncheckedIOException.class, () -> SourceFile.read(path, "jobs/shown.yaml", problems));
  }

  private Optional<Source> read(byte[] bytes) throws IOException {
    return SourceFile.read(write(bytes), "jobs/shown.yaml", problems);
  }

  private Path write(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("written.yaml"), bytes);
  }

  private static byte[] concat(byte[] first, byte[] second) {
    byte[] both = java.util.Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }

  private static long allocated() {
    var threads =
        (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
    return threads.getCurrentThreadAllocatedBytes();
  }
}
