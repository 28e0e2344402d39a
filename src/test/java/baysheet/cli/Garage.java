package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Console;
import baysheet.output.SheetIssuer;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A copy of the shop for tests in a folder of its own, and runs of the program on it. */
final class Garage {
  static final String DAY = "2026-04-07";
  static final Supplier<LocalDate> TODAY = () -> LocalDate.parse(DAY);
  private static final Path SHOP = Path.of("src/test/resources/shop");

  final Path root;
  final Path out;

  private Garage(Path root, Path out) {
    this.root = root;
    this.out = out;
  }

  /** A fresh copy, with a folder for the sheets beside it. */
  static Garage in(Path folder) {
    Garage garage = new Garage(folder.resolve("shop"), folder.resolve("out"));
    for (Path file : files(SHOP)) {
      garage.write(SHOP.relativize(file).toString().replace('\\', '/'), read(file));
    }
    return garage;
  }

  /** What a run gave; paths of the garage are shown as seen from it. */
  record Run(int exit, String out, String err) {
    void says(String part) {
      assertTrue((out + err).contains(part), () -> "not said: " + part + "\n" + out + err);
    }

    /** An error was printed whose first line has this place and whose last line names this code. */
    void reports(String where, String code) {
      boolean reported =
          Stream.of(err.replace("\r\n", "\n").split("\n\n"))
              .anyMatch(
                  block ->
                      block.contains(where + ": error: ")
                          && block.endsWith("\n    More: baysheet help " + code));
      assertTrue(reported, () -> where + " " + code + " is not reported in\n" + err);
    }
  }

  /** Makes the sheets of the day. */
  Run sheets(String... options) {
    List<String> arguments =
        new ArrayList<>(List.of("sheets", root.resolve(DAY).toString(), "-o", out.toString()));
    arguments.addAll(List.of(options));
    return run(arguments.toArray(String[]::new));
  }

  Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
    int exit = Main.run(arguments, console, TODAY);
    return new Run(exit, shown(out), shown(err));
  }

  String shown(StringWriter text) {
    return text.toString()
        .replace(root + File.separator, "")
        .replace(root.toString(), "SHOP")
        .replace(out.toString(), "OUT")
        .replace(File.separatorChar, '/');
  }

  /** The path of a job of the day. */
  Path job(String number) {
    return root.resolve(DAY).resolve(number + ".yaml");
  }

  /** A sheet or another file that was written for the day. */
  Path made(String file) {
    return out.resolve(DAY).resolve(file);
  }

  void write(String file, String text) {
    try {
      Path path = root.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, text);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }

  /** Changes a file; what is to be replaced must be there. */
  void change(String file, String what, String with) {
    String text = read(root.resolve(file));
    assertTrue(text.contains(what), () -> file + " has no " + what);
    write(file, text.replace(what, with));
  }

  /** Everything that was written for people, by name; the ledger has tests of its own. */
  /** The same garage with another folder for its sheets, beside this one's. */
  Garage into(String other) {
    return new Garage(root, out.resolveSibling(other));
  }

  Map<String, byte[]> written() {
    Map<String, byte[]> written = new TreeMap<>();
    for (Path file : Files.isDirectory(out) ? files(out) : List.<Path>of()) {
      written.put(out.relativize(file).toString().replace('\\', '/'), bytes(file));
    }
    written.keySet().removeIf(name -> name.startsWith(SheetIssuer.LEDGER + "/"));
    return written;
  }

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  private static List<Path> files(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list " + folder, e);
    }
  }
}
