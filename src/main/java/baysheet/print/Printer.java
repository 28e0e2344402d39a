package baysheet.print;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Where sheets are printed. */
public interface Printer {
  /**
   * A PDF file to print as it is, one-sided and not scaled.
   *
   * @param title what the printer calls it
   * @param media the paper by its self-describing name, {@code iso_a4_210x297mm}
   */
  record Document(String title, String media, Path file) {}

  /**
   * Hands a document over.
   *
   * @return what the printer did otherwise than asked
   * @throws IOException saying why it did not take the document, and what to do
   */
  List<String> print(Document document) throws IOException;

  /**
   * The printer of a name on the command line.
   *
   * @param name an address that begins with {@code ipp://} or {@code ipps://}, or the name of a
   *     queue
   * @throws IllegalArgumentException when an address cannot be read
   */
  static Printer of(String name) {
    return name.startsWith("ipp://") || name.startsWith("ipps://")
        ? new IppPrinter(name)
        : new PrintQueue(name);
  }
}
