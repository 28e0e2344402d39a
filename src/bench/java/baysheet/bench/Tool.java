package baysheet.bench;

import baysheet.cli.Rounds;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Runs the packaged tool as a process of its own, as people do. */
final class Tool {
  private static final Path JAR = Path.of("target", "baysheet.jar");
  private static final String PEAK = "VmHWM:";

  private Tool() {}

  /**
   * What one run took.
   *
   * @param seconds from its start to its end
   * @param peakKilobytes the most memory it held, 0 where the system does not tell
   * @param said what it printed, line by line
   */
  record Run(double seconds, long peakKilobytes, List<String> said) {}

  /**
   * Runs it.
   *
   * @param machine options of the virtual machine
   * @throws IllegalStateException when it does not end well
   */
  static Run run(List<String> machine, List<String> arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(machine);
    command.addAll(List.of("-jar", JAR.toString()));
    command.addAll(arguments);
    return java(command);
  }

  /** Runs a command line so many times in one process; each run's seconds are printed. */
  static Run rounds(int rounds, List<String> arguments) throws IOException, InterruptedException {
    String path = JAR + File.pathSeparator + Path.of("target", "test-classes");
    List<String> command =
        new ArrayList<>(List.of("-cp", path, Rounds.class.getName(), String.valueOf(rounds)));
    command.addAll(arguments);
    return java(command);
  }

  /** Makes a class-data archive of what a run of these arguments loads. */
  static void archive(Path archive, List<String> arguments)
      throws IOException, InterruptedException {
    Path list = archive.resolveSibling("classes.lst");
    run(List.of("-Xshare:off", "-XX:DumpLoadedClassList=" + list), arguments);
    java(
        List.of(
            "-Xshare:dump",
            "-XX:SharedClassListFile=" + list,
            "-XX:SharedArchiveFile=" + archive,
            "-Xlog:disable",
            "-cp",
            JAR.toString()));
  }

  /** Runs Java itself. */
  static Run java(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(arguments);
    return process(command, Map.of());
  }

  /** Runs any program, with these variables in its environment. */
  static Run process(List<String> command, Map<String, String> environment)
      throws IOException, InterruptedException {
    Path said = Files.createTempFile("baysheet-run", ".txt");
    long start = System.nanoTime();
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile());
    builder.environment().putAll(environment);
    Process process = builder.start();
    long peak = 0;
    while (process.isAlive()) {
      peak = Math.max(peak, peak(process.pid()));
      process.waitFor(5, java.util.concurrent.TimeUnit.MILLISECONDS);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    if (process.exitValue() != 0) {
      throw new IllegalStateException(command + " ended with " + process.exitValue() + ": " + said);
    }
    List<String> lines = Files.readAllLines(said);
    Files.delete(said);
    return new Run(seconds, peak, lines);
  }

  /** The high-water mark of a process, as Linux tells it. */
  private static long peak(long process) {
    Path status = Path.of("/proc", Long.toString(process), "status");
    try (Stream<String> lines = Files.lines(status)) {
      return lines
          .filter(line -> line.startsWith(PEAK))
          .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException | java.io.UncheckedIOException e) {
      // Gone by now, or another system: what was seen before stands.
      return 0;
    }
  }
}
