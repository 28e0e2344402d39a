package baysheet.yaml;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Turns the text of a file into a tree of nodes.
 *
 * <p>The language is YAML 1.1 less what makes a file mean something other than what it shows:
 * anchors, aliases, tags, merge keys, second documents, tabs before text, invisible characters and
 * keys written twice. Nothing is converted: see {@link Scalar}.
 */
public final class YamlFile {
  /** A hundred times the longest file a garage writes; beyond it something else was named. */
  public static final int MAX_BYTES = 1 << 20;

  /** Four times the deepest that any file here is nested; the tree is walked by recursion. */
  public static final int MAX_DEPTH = 40;

  /**
   * Characters in one value: a page of text. Longer ones are never written by hand, and would make
   * messages and sheets of any length.
   */
  public static final int MAX_TEXT = 4_000;

  /** Entries of one map, or items of one list: ten times the longest that a garage writes. */
  public static final int MAX_ENTRIES = 2_000;

  private YamlFile() {}

  /** The file's tree; empty when a problem was added that leaves nothing to read. */
  public static Optional<Node> parse(Source source, Problems problems) {
    if (source.text().length() > MAX_BYTES) {
      problems.add(FileSentences.tooLarge(source));
      return Optional.empty();
    }
    List<String> lines = source.lines();
    CharacterCheck characters = new CharacterCheck(source, lines);
    Optional<Problem> unfit = characters.firstUnfit().or(characters::firstTabIndent);
    unfit.ifPresent(problems::add);
    return unfit.isPresent()
        ? Optional.empty()
        : tree(source.text(), new Places(source, lines), problems);
  }

  private static Optional<Node> tree(String text, Places places, Problems problems) {
    TreeBuilder builder = new TreeBuilder(parser(text), places, problems);
    try {
      return builder.document();
    } catch (MarkedYAMLException e) {
      problems.add(SyntaxFault.of(e, places));
    } catch (YAMLException e) {
      // Text behind a bracket that ends on a later line makes the library fail without a mark.
      problems.add(SyntaxFault.unmarked(builder.reached()));
    } catch (NumberFormatException e) {
      // The library parses the eight digits of \UFFFFFFFF as an int, and lets that fail.
      problems.add(FileSentences.badEscape(builder.reached()));
    }
    return Optional.empty();
  }

  /** The library's own bounds are for its loader; ours are checked here and while building. */
  private static ParserImpl parser(String text) {
    return new ParserImpl(new StreamReader(text), new LoaderOptions());
  }
}
