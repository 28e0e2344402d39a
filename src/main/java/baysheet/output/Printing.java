package baysheet.output;

import baysheet.books.Shop;
import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.print.Printer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Prints the sheets of a run, in bay order. A file in the day's folder lists the sheets that a
 * printer took, so that a second run prints what is new or changed and nothing else.
 */
public final class Printing {
  /** In the folder of a day's sheets: the ids of those that were printed, a line each. */
  private static final String LIST = "printed.txt";

  private final String name;
  private final Printer printer;
  private final boolean again;
  private final List<Sheet> sheets = new ArrayList<>();

  /**
   * @param again whether what was printed before is printed once more
   */
  public Printing(String name, Printer printer, boolean again) {
    this.name = name;
    this.printer = printer;
    this.again = again;
  }

  /** A sheet that lies in its place. */
  private record Sheet(MadeSheet made, Path file) {}

  void add(MadeSheet made, Path file) {
    sheets.add(new Sheet(made, file));
  }

  /**
   * Prints what was added.
   *
   * @throws UncheckedIOException naming the printer, when it did not take a sheet; the others of
   *     the run are not tried
   */
  void send(RunReport report) {
    sheets.sort(Comparator.comparing(Sheet::made, SheetPdfs.bayOrder()));
    int sent = 0;
    Set<String> remarks = new LinkedHashSet<>();
    for (Sheet sheet : sheets) {
      Path list = sheet.file().resolveSibling(LIST);
      List<String> before = lines(list);
      String id = sheet.made().id().text();
      if (again || !before.contains(id)) {
        remarks.addAll(print(sheet));
        sent++;
        remember(list, before, id);
      }
    }
    remarks.forEach(report::say);
    int known = sheets.size() - sent;
    report.say(
        "printed "
            + sent
            + (sent == 1 ? " sheet on " : " sheets on ")
            + name
            + (known == 0 ? "" : "; " + known + " printed before (--again prints them once more)"));
  }

  private List<String> print(Sheet sheet) {
    Shop.Paper paper = sheet.made().sheet().heading().style().paper();
    String media = paper == Shop.Paper.A4 ? "iso_a4_210x297mm" : "na_letter_8.5x11in";
    try {
      return printer.print(new Printer.Document(sheet.made().id().text(), media, sheet.file()));
    } catch (IOException e) {
      throw new UncheckedIOException(
          "cannot print "
              + sheet.made().id().text()
              + " on "
              + name
              + ", but its file is "
              + YamlFiles.shown(sheet.file()),
          e);
    }
  }

  private static List<String> lines(Path list) {
    try {
      return Files.exists(list) ? Files.readAllLines(list) : List.of();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + list, e);
    }
  }

  private static void remember(Path list, List<String> before, String id) {
    Set<String> ids = new LinkedHashSet<>(before);
    ids.add(id);
    String text = String.join("\n", ids) + "\n";
    new OutFiles(Disk.REAL).write(list, text.getBytes(StandardCharsets.UTF_8));
  }
}
