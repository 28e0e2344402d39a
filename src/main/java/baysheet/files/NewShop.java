package baysheet.files;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/** What stands in a new shop folder. */
public final class NewShop {
  /** The folder of the schemas, as seen from the shop's root. */
  public static final String SCHEMAS = "schemas";

  /**
   * The day in the shipped files; the first day of the shop takes its place, so that no example of
   * a wrench is due.
   */
  private static final String SHIPPED_DAY = "2000-01-01";

  private static final String SHIPPED = "/baysheet/start/";
  private static final String JOB = "1001.yaml";

  /** Of what the program writes, not of what people write. */
  private static final String RECORD_SCHEMA = "record.json";

  private NewShop() {}

  /** Texts by file, each file as seen from the shop's root and with slashes. */
  public static Map<String, String> files(LocalDate day) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(ShopFolders.SHOP_FILE, file("shop.yaml", SCHEMAS + "/shop.json", day));
    files.putAll(folder("vehicles", "spec-book.json", day));
    files.putAll(folder("procedures", "procedure.json", day));
    files.put(day + "/" + JOB, file("job.yaml", "../" + SCHEMAS + "/job.json", day));
    files.putAll(schemas());
    return files;
  }

  private static Map<String, String> folder(String folder, String schema, LocalDate day) {
    Map<String, String> files = new LinkedHashMap<>();
    for (String name : ProgramFiles.names(SHIPPED + folder)) {
      String file = folder + "/" + name;
      files.put(file, file(file, "../" + SCHEMAS + "/" + schema, day));
    }
    return files;
  }

  /** What editors complete and check from. */
  public static Map<String, String> schemas() {
    Map<String, String> files = new LinkedHashMap<>();
    ProgramFiles.names("/baysheet/schema").stream()
        .filter(name -> !name.equals(RECORD_SCHEMA))
        .forEach(
            name -> files.put(SCHEMAS + "/" + name, ProgramFiles.text("/baysheet/schema/" + name)));
    return files;
  }

  /**
   * Editors know the first line by its form, and look for the schema from where the file stands.
   */
  private static String file(String shipped, String schema, LocalDate day) {
    return "# yaml-language-server: $schema="
        + schema
        + "\n"
        + ProgramFiles.text(SHIPPED + shipped).replace(SHIPPED_DAY, day.toString());
  }
}
