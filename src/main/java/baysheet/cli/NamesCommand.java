package baysheet.cli;

import baysheet.books.CatalogueReader;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.ledger.Tables;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.record.NameList;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that lists the words that files may use. */
final class NamesCommand extends Command {
  private static final List<Tables.Column> COLUMNS =
      Tables.columns(
          "SORT", "sort",
          "NAME", "name",
          "MEANING", "meaning",
          "KINDS, PLACE OR LIKE", "belongs",
          "FROM", "from");

  private final PositionalParamSpec sorts =
      add(
          Options.rest(
                  "SORT",
                  "0..*",
                  String.class,
                  "Which names: "
                      + String.join(", ", NameSort.words())
                      + ". Without any: all of them.")
              .toBuilder()
              .completionCandidates(NameSort.words())
              .build());

  private final OptionSpec shop =
      option(
          "--shop",
          "DIR",
          Path.class,
          "The shop folder (default: the one here or jobs/; without one, the built-in names).");

  private final OptionSpec json = flag("--json", "Print the names as JSON.");

  NamesCommand(Console console) {
    super(
        console,
        "names",
        "List the names that files may use: items, kinds, traits, states, tools and others.");
  }

  @Override
  public Integer call() {
    List<NameSort> wanted = wanted();
    Problems problems = new Problems();
    NameSort.Origin origin = origin(problems);
    List<NameList.Name> names = new ArrayList<>();
    wanted.forEach(sort -> names.addAll(sort.in(origin)));
    if (Options.isGiven(json)) {
      console.print(NameList.print(names));
    } else {
      console.print(
          Tables.text(
              new Tables.Table(
                  COLUMNS,
                  names.stream()
                      .map(
                          it ->
                              List.<Object>of(
                                  it.sort(),
                                  it.name(),
                                  it.meaning(),
                                  String.join(" ", it.belongs()),
                                  it.from()))
                      .toList())));
    }
    console.problems(
        problems.all(),
        origin.shop().isEmpty()
            ? "only built-in names are listed"
            : "the names of files with errors are missing",
        false);
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
        .orElseThrow(
            () ->
                wrong("there are no names of the sort \"" + typed + "\"")
                    .near(typed, NameSort.words()));
  }

  /** The shop's names over the built-in ones; these alone without a shop, or with a faulty one. */
  private NameSort.Origin origin(Problems problems) {
    Set<Source> sources = ShopFolders.builtInFiles();
    return root()
        .flatMap(root -> new ShopFolders(Fonts.builtIn()).read(root, problems))
        .map(
            it ->
                new NameSort.Origin(
                    it.catalogue(), List.of(it.shop()), it.procedures().values(), sources))
        .orElseGet(
            () ->
                new NameSort.Origin(
                    CatalogueReader.merge(ShopFolders.builtInCatalogue()),
                    List.of(),
                    List.of(),
                    sources));
  }

  private Optional<Path> root() {
    Optional<Path> named = Options.given(shop);
    return named.isPresent() ? Optional.of(ShopChoice.rootFor(named, line())) : ShopFolders.here();
  }
}
