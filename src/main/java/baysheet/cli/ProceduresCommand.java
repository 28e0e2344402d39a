package baysheet.cli;

import baysheet.books.Applicability;
import baysheet.books.Job;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ReferenceSort;
import baysheet.books.ShopFolder;
import baysheet.books.SpecBook;
import baysheet.files.ShopFolders;
import baysheet.files.WorkAt;
import baysheet.layout.Fonts;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.record.ProcedureList;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.resolve.Needs;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that lists the procedures, and for which of them a spec book is ready. */
final class ProceduresCommand extends Command {
  private final PositionalParamSpec words =
      rest(
          "WORD",
          "0..*",
          String.class,
          "Only procedures whose name or title has all these words, such as brake.");

  private final OptionSpec vehicle =
      option(
          "--vehicle",
          "BOOK",
          String.class,
          "A spec book: say at which places it is ready for each procedure, and what is missing.");

  private final OptionSpec shop = shop();

  private final OptionSpec json = flag("--json", "Print the list as JSON.");

  ProceduresCommand(Console console) {
    super(
        console,
        "procedures",
        "List the procedures with their places and fasteners, and what a spec book lacks for"
            + " them.");
  }

  @Override
  public Integer call() {
    Problems problems = new Problems();
    Path root = ShopChoice.rootFor(Options.given(shop), line());
    Optional<ShopFolder> folder = new ShopFolders(Fonts.builtIn()).read(root, problems);
    folder.ifPresent(this::list);
    console.problems(problems.all(), "what is in files with errors is missing", false);
    return Exit.of(problems);
  }

  private void list(ShopFolder folder) {
    Optional<SpecBook> book = Options.<String>given(vehicle).map(name -> book(name, folder));
    List<ProcedureList.Line> lines =
        folder.procedures().values().stream()
            .filter(this::isWanted)
            .sorted(Comparator.comparing(it -> it.name().value()))
            .map(it -> line(it, book, folder))
            .toList();
    if (lines.isEmpty() && !folder.procedures().isEmpty()) {
      throw wrong("no procedure has " + String.join(" and ", Options.all(words)) + " in its title")
          .expecting("other words; without any, all procedures are listed");
    }
    console.print(
        Options.isGiven(json)
            ? ProcedureList.print(lines)
            : ProcedureTable.of(lines, book.isPresent()));
  }

  private boolean isWanted(Procedure procedure) {
    String text =
        (procedure.name().value() + " " + procedure.title().value()).toLowerCase(Locale.ROOT);
    return Options.<String>all(words).stream()
        .allMatch(word -> text.contains(word.toLowerCase(Locale.ROOT)));
  }

  private SpecBook book(String name, ShopFolder folder) {
    if (folder.faulty().books().contains(name)) {
      throw wrong("the spec book \"" + name + "\" has errors")
          .expecting("a book without errors; baysheet check names them");
    }
    return Optional.ofNullable(folder.books().get(name))
        .orElseThrow(
            () ->
                wrong("there is no spec book \"" + name + '"').near(name, folder.books().keySet()));
  }

  private static ProcedureList.Line line(
      Procedure procedure, Optional<SpecBook> book, ShopFolder folder) {
    List<Place> places = WorkAt.places(procedure);
    return new ProcedureList.Line(
        procedure.name().value(),
        procedure.title().value(),
        procedure.at().value(),
        places.stream().map(Place::word).toList(),
        procedure.serves().map(Located::value),
        procedure.applicability().onlyWith().stream().map(it -> words(it.value())).toList(),
        fasteners(procedure, folder),
        book.stream()
            .flatMap(it -> places.stream().map(place -> readiness(procedure, place, it, folder)))
            .toList());
  }

  private static String words(Applicability.Need need) {
    return String.join(" or ", need.anyOf())
        + need.at().map(at -> " (where the work is at the " + at + ")").orElse("");
  }

  private static List<String> fasteners(Procedure procedure, ShopFolder folder) {
    Stream<String> renewed =
        procedure.needs().parts().stream().flatMap(it -> it.renews().stream()).map(Located::value);
    return Stream.concat(
            procedure.blocks().steps().flatMap(it -> it.touched().items()).map(Located::value),
            renewed)
        .distinct()
        .filter(it -> isFastener(it, folder))
        .toList();
  }

  private static boolean isFastener(String item, ShopFolder folder) {
    return folder.names().knows(ReferenceSort.FASTENER, item)
        && Optional.ofNullable(folder.catalogue().items().get(item))
            .map(it -> it.kinds().stream().anyMatch(kind -> kind.value().equals("fastener")))
            .orElse(true);
  }

  /** As in the bay that asks for the least, for the work can be done there. */
  private static ProcedureList.Readiness readiness(
      Procedure procedure, Place place, SpecBook book, ShopFolder folder) {
    Source here = new Source("the command line", "");
    Located<Job.Work> work =
        new Located<>(new Job.Work(procedure.name().value(), place), here.whole());
    List<Needs> bays = Needs.inEachBay(book, List.of(work), folder);
    Optional<Needs> best =
        bays.stream()
            .filter(Needs::possible)
            .min(Comparator.comparingInt(it -> it.gaps().size() + it.unknown().size()));
    if (best.isEmpty()) {
      String because =
          bays.stream()
              .flatMap(it -> it.problems().stream())
              .map(Problem::what)
              .findFirst()
              .orElse("its files have errors");
      return new ProcedureList.Readiness(
          place.word(), ProcedureList.State.UNSUITABLE, List.of(), List.of(), because);
    }
    List<String> missing =
        best.get().gaps().stream().map(it -> it.fastener().value()).distinct().toList();
    List<String> unknown = List.copyOf(best.get().unknown());
    boolean ready = missing.isEmpty() && unknown.isEmpty();
    return new ProcedureList.Readiness(
        place.word(),
        ready ? ProcedureList.State.READY : ProcedureList.State.INCOMPLETE,
        missing,
        unknown,
        "");
  }

  /** The list of procedures for reading: one block each, for their fasteners need room. */
  private static final class ProcedureTable {
    private ProcedureTable() {}

    static String of(List<ProcedureList.Line> lines, boolean forVehicle) {
      StringBuilder text = new StringBuilder();
      for (ProcedureList.Line line : lines) {
        text.append(line.name()).append("  ").append(line.title()).append('\n');
        if (forVehicle) {
          line.ready().forEach(it -> text.append("    ").append(words(it)).append('\n'));
        } else {
          add(text, at(line), line.places());
          line.serves().ifPresent(it -> add(text, "gives access as", List.of(it)));
          add(text, "for vehicles with", line.needs());
          add(text, "fasteners", line.fasteners());
        }
      }
      return text.toString();
    }

    /**
     * Work at a wheel can be asked for at one, or at both of an axle; the fasteners are each one's.
     */
    private static String at(ProcedureList.Line line) {
      return line.kind() == Place.Kind.WHEEL ? "at each wheel" : "at";
    }

    private static void add(StringBuilder text, String what, List<String> words) {
      if (!words.isEmpty()) {
        text.append("    ").append(what).append(": ").append(String.join(", ", words)).append('\n');
      }
    }

    private static String words(ProcedureList.Readiness it) {
      String state =
          switch (it.state()) {
            case READY -> "ready";
            case UNSUITABLE -> "not possible: " + it.because();
            case INCOMPLETE -> lacks(it);
          };
      return "at " + it.place() + ": " + state;
    }

    private static String lacks(ProcedureList.Readiness it) {
      String missing = it.missing().isEmpty() ? "" : "missing " + String.join(", ", it.missing());
      String unknown = it.unknown().isEmpty() ? "" : "unknown " + String.join(", ", it.unknown());
      return missing + (missing.isEmpty() || unknown.isEmpty() ? "" : "; ") + unknown;
    }
  }
}
