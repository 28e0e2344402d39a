package baysheet.record;

import java.io.IOException;
import java.util.List;
import java.util.Objects;

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
      Objects.requireNonNull(sort);
      Objects.requireNonNull(name);
      Objects.requireNonNull(meaning);
      belongs = List.copyOf(belongs);
      Objects.requireNonNull(from);
    }
  }

  /** UTF-8, a line for each name. */
  public static byte[] write(List<Name> names) {
    return Json.lines(
        json ->
            json.object(
                () -> {
                  json.number("format", FORMAT);
                  json.list("names", names, name -> json.object(() -> name(json, name)));
                }));
  }

  private static void name(Json json, Name name) throws IOException {
    json.text("sort", name.sort());
    json.text("name", name.name());
    json.text("meaning", name.meaning());
    json.texts("belongs", name.belongs());
    json.text("from", name.from());
  }
}
