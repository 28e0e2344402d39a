package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import java.util.List;

/** The words of a shop folder as data, for other programs. */
public final class NameList {
  /** Counts up when a key changes its meaning or goes. */
  private static final int FORMAT = 1;

  private NameList() {}

  /**
   * A word that files may use.
   *
   * @param sort what it is a name of: {@code kind}, {@code trait} …
   * @param meaning what it stands for
   * @param belongs the kinds that an item has, or the tools that a tool is like
   * @param from the file that declares it, or {@code built-in}
   */
  public record Name(String sort, String name, String meaning, List<String> belongs, String from) {
    public Name {
      belongs = List.copyOf(belongs);
    }
  }

  /** A line for each name. */
  public static String print(List<Name> names) {
    return JsonText.lines(
        new JsonObject()
            .put("format", FORMAT)
            .list(
                "names",
                names,
                name ->
                    new JsonObject()
                        .put("sort", name.sort())
                        .put("name", name.name())
                        .put("meaning", name.meaning())
                        .put("belongs", name.belongs())
                        .put("from", name.from())));
  }
}
