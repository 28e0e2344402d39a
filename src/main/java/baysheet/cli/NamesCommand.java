package baysheet.cli;

import baysheet.books.Catalogue;
import baysheet.books.CatalogueReader;
import baysheet.books.ShopFolder;
import baysheet.layout.Fonts;
import baysheet.record.NameList;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that lists the words that files may use. */
final class NamesCommand implements Callable<Integer> {
  private final Console console;

  private final PositionalParamSpec sorts =
      Options.rest(
          "SORT",
          "0..*",
          String.class,
          "Which names: " + String.join(", ", NameSort.words()) + ". Without any: all of them.");

  private final OptionSpec shop =
      Options.one(
          "--shop",
          "DIR",
          Path.class,
          "The shop folder (default: the one here or jobs/; without one, the built-in names).");

  private final OptionSpec json = Options.flag("--json", "Print the names as JSON.");

  private final CommandSpec spec =
      Options.command(
          "names",
          "List the names that files may use: items, kinds, traits, states, tools and others.",
          this,
          List.of(sorts, shop, json));

  NamesCommand(Console console) {
    this.console = console;
  }

  CommandSpec spec() {
    return spec;
  }

  @Override
  public Integer call() {
    List<NameSort> wanted = wanted();
    Problems problems = new Problems();
    Optional<NameSort.Origin> origin = origin(problems);
    List<NameList.Name> names = new ArrayList<>();
    origin.ifPresent(from -> wanted.forEach(sort -> names.addAll(sort.in(from))));
    if (Options.isGiven(json)) {
      console.print(NameList.print(names));
    } else {
      console.print(table(names));
    }
    console.problems(problems.all(), "the names of files with errors are missing", false);
    return problems.hasErrors() ? Exit.PROBLEMS : Exit.DONE;
  }

  private List<NameSort> wanted() {
    List<String> typed = Options.all(sorts);
    return typed.isEmpty()
        ? List.of(NameSort.values())
        : typed.stream().map(this::sort).distinct().toList();
  }

  private NameSort sort(String typed) {
    return Stream.of(NameSort.values())
        .filter(sort -> sort.word().equals(typed.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(() -> wrong(typed));
  }

  private WrongCommandLine wrong(String typed) {
    return new WrongCommandLine(
            spec.commandLine(), "there are no names of the sort \"" + typed + "\"")
        .near(typed, NameSort.words());
  }

  /** The shop's names over the built-in ones, or these alone. */
  private Optional<NameSort.Origin> origin(Problems problems) {
    List<Catalogue> builtIn = ShopFolders.builtInCatalogue();
    Set<Source> sources = ShopFolders.builtInFiles();
    Optional<Path> root = root();
    if (root.isEmpty()) {
      Catalogue merged = CatalogueReader.merge(builtIn);
      return Optional.of(new NameSort.Origin(merged, List.of(), List.of(), sources));
    }
    Optional<ShopFolder> folder = new ShopFolders(Fonts.builtIn()).read(root.get(), problems);
    return folder.map(
        it ->
            new NameSort.Origin(
                it.catalogue(), List.of(it.shop()), it.procedures().values(), sources));
  }

  private Optional<Path> root() {
    Optional<Path> named = Options.given(shop);
    if (named.isPresent()) {
      return Optional.of(
          ShopFolders.rootOf(named.get())
              .orElseThrow(
                  () ->
                      new WrongCommandLine(
                          spec.commandLine(),
                          named.get() + " is no shop folder: it has no " + ShopFolders.SHOP_FILE)));
    }
    return ShopFolders.rootOf(Path.of("")).or(() -> ShopFolders.rootOf(Path.of("jobs")));
  }

  /** Columns as wide as their widest word; the last one is left as it is. */
  private static String table(List<NameList.Name> names) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("SORT", "NAME", "MEANING", "KINDS, PLACE OR LIKE", "FROM"));
    for (NameList.Name name : names) {
      String belongs = String.join(" ", name.belongs());
      rows.add(List.of(name.sort(), name.name(), name.meaning(), belongs, name.from()));
    }
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < row.size(); column++) {
        line.append(padded(row.get(column), width(rows, column)));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  private static int width(List<List<String>> rows, int column) {
    return rows.stream().mapToInt(row -> length(row.get(column))).max().orElse(0) + 2;
  }

  private static String padded(String word, int width) {
    return word + " ".repeat(width - length(word));
  }

  private static int length(String word) {
    return word.codePointCount(0, word.length());
  }
}
