package baysheet.files;

import baysheet.books.Bay;
import baysheet.books.BookText;
import baysheet.books.FastenerTable;
import baysheet.books.Job;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.books.SpecBookReader;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.Needs;
import baysheet.yaml.Node;
import baysheet.yaml.YamlFile;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A spec book with what it lacks.
 *
 * @param text the whole text of the book
 * @param book what stands in it
 * @param added the names of new fasteners by group
 */
public record BookDraft(Source text, SpecBook book, Map<String, List<String>> added) {
  /** A comment keeps to the line. */
  private static final int LONGEST_COMMENT = 100;

  /** Above the first line that is added: what can be typed over unknown. */
  private static final List<String> EXAMPLES =
      List.of(
          "# As in: 2 x M12x1.5 class 10.9, hex 17 mm, 95 ± 5 N·m, dry, renew. At wheels, count those of one wheel.",
          "# Heads: six-lobe T30, hexagon key 6 mm. Torques: 90..100 N·m, 30 N·m + 60°, snug, torque unknown.",
          "# Threads: dry, oiled, locking-compound, anti-seize, grease, sealant, as-delivered. If not renewed: re-use.");

  /** A fastener that is filled in so that the book can be planned. */
  private static final String ASSUMED = ": 1 x hex 13 mm, torque unknown";

  private static final Pattern NEEDED = Pattern.compile("(?m)\\b(count|head): unknown\\b");

  /** What YAML reads as it stands, between the commas of a map in braces. */
  private static final Pattern PLAIN = Pattern.compile("[\\p{L}0-9+°][\\p{L}0-9 .+±°·/-]*(?<! )");

  /** The book as it is; empty, with problems, where it cannot be read. */
  public static Optional<BookDraft> of(Source text, Problems problems) {
    Problems own = new Problems();
    Optional<SpecBook> book =
        YamlFile.parse(text, own).flatMap(node -> SpecBookReader.read(node, own));
    problems.addAll(own);
    return book.filter(it -> !own.hasErrors()).map(it -> new BookDraft(text, it, Map.of()));
  }

  /** With the rows of a table that it does not have. */
  public Optional<BookDraft> with(List<FastenerTable.Row> rows, Problems problems) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (FastenerTable.Row row : rows) {
      if (!has(row)) {
        String group = row.group().value().word();
        String entry =
            row.values().entrySet().stream()
                .map(it -> it.getKey() + ": " + written(it.getKey(), it.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
        add(lines, group, row.fastener().value() + ": " + entry);
        add(names, group, row.fastener().value());
      }
    }
    return with(lines, names, problems);
  }

  /** Whether the book has an entry for the very group of a row. */
  boolean has(FastenerTable.Row row) {
    return book.fasteners().stream()
        .filter(group -> group.places().value().equals(row.group().value()))
        .anyMatch(group -> group.fasteners().containsKey(row.fastener().value()));
  }

  /** A book of the folder that says already what can be typed over unknown. */
  public static Optional<SpecBook> explaining(ShopFolder folder) {
    return folder.books().values().stream()
        .filter(book -> book.vehicle().at().source().text().contains(EXAMPLES.get(0)))
        .findFirst();
  }

  /**
   * With each fastener that the works need in any of the bays, unknown in all its figures.
   *
   * @param explained whether a book of the folder says already what can be typed over unknown
   */
  public Optional<BookDraft> with(
      List<Needs> needs, Function<Needs.Gap, String> step, boolean explained, Problems problems) {
    Map<String, List<String>> lines = new LinkedHashMap<>();
    Map<String, List<String>> names = new LinkedHashMap<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Needs.Gap gap : needs.stream().flatMap(it -> it.gaps().stream()).toList()) {
      String name = gap.fastener().value();
      if (seen.add(gap.group() + " " + name.replaceAll(" at .*", ""))) {
        if (seen.size() == 1 && !explained) {
          EXAMPLES.forEach(line -> add(lines, gap.group(), line));
        }
        add(lines, gap.group(), comment(gap.procedure() + ": " + step.apply(gap)));
        gap.whole()
            .map("# without it, delete this line and write: absent: [%s]"::formatted)
            .ifPresent(line -> add(lines, gap.group(), line));
        add(lines, gap.group(), name + ": unknown");
        add(names, gap.group(), name);
      }
    }
    return with(lines, names, problems);
  }

  private Optional<BookDraft> with(
      Map<String, List<String>> lines, Map<String, List<String>> names, Problems problems) {
    if (lines.isEmpty()) {
      return Optional.of(this);
    }
    Node tree = YamlFile.parse(text, new Problems()).orElseThrow();
    Optional<String> longer = BookText.with(text, tree, lines, problems);
    Map<String, List<String>> all = new LinkedHashMap<>();
    added.forEach((group, some) -> all.put(group, new ArrayList<>(some)));
    names.forEach((group, some) -> some.forEach(name -> add(all, group, name)));
    return longer.map(it -> reread(new Source(text.name(), it), all));
  }

  /** What was added can be read, or we wrote it wrongly. */
  private static BookDraft reread(Source text, Map<String, List<String>> added) {
    Problems problems = new Problems();
    BookDraft draft =
        of(text, problems)
            .orElseThrow(() -> new IllegalStateException(problems.all() + " in\n" + text.text()));
    return new BookDraft(text, draft.book(), added);
  }

  /** Whether a trait stands somewhere in the text, be it in a comment: then it was asked for. */
  public boolean names(String trait) {
    return Pattern.compile("(?<![\\w-])" + Pattern.quote(trait) + "(?![\\w-])")
        .matcher(text.text())
        .find();
  }

  /**
   * The book with any count, head and masses where it does not say them, so that it can be planned.
   */
  public SpecBook assumed() {
    String whole =
        NEEDED
            .matcher(withLines())
            .replaceAll(
                key -> key.group(1) + (key.group(1).equals("count") ? ": 1" : ": hex 13 mm"));
    SpecBook.Mass mass = book.mass();
    String masses =
        (mass.kerb().isPresent() ? "" : "kerb-mass: 1000 kg\n")
            + (mass.frontShare().or(mass::behindFront).isPresent() ? "" : "front-share: 50 %\n");
    return of(new Source(text.name(), masses + whole), new Problems())
        .map(BookDraft::book)
        .orElse(book);
  }

  /** The text with something for each fastener that is written unknown as a whole. */
  private String withLines() {
    Set<Integer> unknown = new HashSet<>();
    book.fasteners().stream()
        .flatMap(group -> group.fasteners().values().stream())
        .map(entry -> entry.text().pieces().missing().toList())
        .filter(keys -> keys.size() > 1 && keys.get(0).at().equals(keys.get(1).at()))
        .forEach(keys -> unknown.add(keys.get(0).at().line()));
    List<String> lines = new ArrayList<>();
    for (String line : text.lines()) {
      boolean whole = unknown.contains(lines.size() + 1);
      lines.add(whole ? line.replaceFirst(": +[\"']?unknown[\"']?", ASSUMED) : line);
    }
    return String.join("\n", lines) + "\n";
  }

  /** What works need of it, in each of these bays. */
  public List<Needs> needs(Collection<Bay> bays, List<Located<Job.Work>> works, ShopFolder folder) {
    return bays.stream().map(bay -> Needs.in(bay, book, works, folder)).toList();
  }

  private static void add(Map<String, List<String>> map, String group, String line) {
    map.computeIfAbsent(group, key -> new ArrayList<>()).add(line);
  }

  private static String comment(String words) {
    String line = words.replaceAll("\\s+", " ");
    boolean fits = line.codePointCount(0, line.length()) <= LONGEST_COMMENT;
    return "# "
        + (fits ? line : line.substring(0, line.offsetByCodePoints(0, LONGEST_COMMENT - 1)) + "…");
  }

  /** A class such as 10.9 is quoted, or an editor takes it for a number. */
  private static String written(String key, String value) {
    List<String> stages = FastenerTable.STAGES.splitAsStream(value).toList();
    if (key.equals("torque") && stages.size() > 1) {
      return stages.stream()
          .map(it -> written(key, it))
          .collect(Collectors.joining(", ", "[", "]"));
    }
    boolean plain = PLAIN.matcher(value).matches() && !key.equals("class");
    return plain ? value : '"' + value.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
