package baysheet.wording;

import baysheet.books.Fastener;
import baysheet.books.Job;
import baysheet.books.Procedure;
import baysheet.books.Shop;
import baysheet.books.ToolNames;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CheckLine;
import baysheet.sheet.MissingFigure;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Head;
import baysheet.torque.Plausibility;
import baysheet.torque.Wrench;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything that a sheet will warn of, as problems, while there is time to do something about it.
 */
public final class SheetWarnings {
  /** Values of a new shop folder that must be replaced begin with this. */
  private static final String EXAMPLE = "EXAMPLE";

  private final Resolved resolved;
  private final Sheet sheet;
  private final Language language;
  private final List<Problem> warnings = new ArrayList<>();

  private SheetWarnings(Resolved resolved, Sheet sheet) {
    this.resolved = resolved;
    this.sheet = sheet;
    this.language = Language.of(sheet.heading());
  }

  /** The warnings of a sheet, those of its torque lines first. */
  public static List<Problem> of(Resolved resolved, Sheet sheet) {
    SheetWarnings all = new SheetWarnings(resolved, sheet);
    sheet.torque().forEach(all::line);
    sheet.evening().forEach(all::missing);
    all.borrowed();
    all.nobodyLooks();
    all.examplesLeft();
    return List.copyOf(all.warnings);
  }

  /** At the torque itself, in whichever file it stands, so that many jobs report it once. */
  private void line(TorqueLine line) {
    Fastener fastener = fastener(line);
    Span at = fastener.tightening().at();
    if (line.kind() == TorqueLine.Kind.UNKNOWN) {
      warnings.add(
          Problem.of(
                  ProblemCode.UNKNOWN_TORQUE,
                  at,
                  plain(subject(line) + ": no book gives the torque"))
              .expecting("a torque with its source; else it is asked for before work begins"));
    }
    for (TorqueLine.Warning warning : line.origin().warnings()) {
      warnings.add(
          switch (warning.code()) {
            case WRENCH -> ofTheDay(line, warning, at);
            case DOES_NOT_FIT ->
                doubtful(line, (Plausibility.Compared) fastener.plausibility(), at);
            default -> Problem.of(warning.code(), at, about(line, language.source(warning.text())));
          });
    }
  }

  /** At the book's name: that is where it would be written. */
  private void missing(Statement evening) {
    if (evening instanceof Statement.FindFigure find) {
      String figure = plain(new Statements(language).figure(find.figure()));
      warnings.add(
          Problem.of(
                  ProblemCode.FIGURE_MISSING,
                  resolved.book().own().vehicle().at(),
                  "the book does not give the " + figure)
              .expecting(
                  (find.figure() instanceof MissingFigure.Point point
                          ? point.jacking() ? "the key jacking" : "the key supports"
                          : "the key fluids")
                      + "; else it is asked for before work begins"));
    }
  }

  /** At the one technician in the shop file, so that many jobs report it once. */
  private void nobodyLooks() {
    Shop.Person by = resolved.by();
    boolean holds =
        sheet.steps().stream().anyMatch(Sheet.SheetStep::hold)
            || sheet.checks().stream().anyMatch(CheckLine::hold);
    boolean others =
        resolved.shop().people().values().stream()
            .anyMatch(it -> it != by && it.grade() == Shop.Grade.TECHNICIAN);
    if (holds && !others) {
      warnings.add(
          Problem.of(
                  ProblemCode.NOBODY_LOOKS,
                  by.id().at(),
                  "nobody can sign the hold points of what "
                      + by.id().value()
                      + " does: the shop has no other technician")
              .expecting(
                  "a second technician among the people, also one who only comes to look; sheets"
                      + " are made all the same"));
    }
  }

  /** Warns of examples from a new shop folder that the sheet would print as the garage's own. */
  private void examplesLeft() {
    Shop shop = resolved.shop();
    Job.Crew crew = resolved.job().crew();
    Stream<Located<String>> people =
        Stream.of(Optional.of(crew.by()), crew.with(), crew.second())
            .flatMap(Optional::stream)
            .map(id -> shop.people().get(id.value()).name());
    Set<String> used =
        sheet.equipment().wrenches().stream()
            .map(Sheet.WrenchLine::name)
            .collect(Collectors.toSet());
    Stream<Located<String>> wrenches =
        shop.crib().wrenches().stream()
            .map(it -> it.map(Wrench::name))
            .filter(it -> used.contains(it.value()));
    Stream.of(Stream.of(shop.name()), people, wrenches, resolved.job().vehicle().plate().stream())
        .flatMap(printed -> printed)
        .filter(it -> it.value().startsWith(EXAMPLE))
        .forEach(
            it ->
                warnings.add(
                    Problem.of(
                            ProblemCode.EXAMPLE_LEFT,
                            it.at(),
                            "\"%s\" is still an example, not your own".formatted(it.value()))
                        .expecting("your own name and figures; the sheet prints the example")));
  }

  private String subject(TorqueLine line) {
    return Statements.plural(Statements.lower(line.words()), line.count());
  }

  private String about(TorqueLine line, String text) {
    return plain(subject(line) + ": " + text);
  }

  /** Which wrench will do depends on the day, so that stands at the job, which has one. */
  private Problem ofTheDay(TorqueLine line, TorqueLine.Warning warning, Span at) {
    String what =
        plain(Statements.at(subject(line), line.places()) + ": " + language.source(warning.text()));
    return Problem.of(warning.code(), resolved.job().number().at(), what).seeAlso("torque", at);
  }

  private Problem doubtful(TorqueLine line, Plausibility.Compared compared, Span at) {
    return Problem.of(ProblemCode.DOES_NOT_FIT, at, about(line, compared.misfit()))
        .expecting(plain("another value or unit; " + compared.inOtherUnits()));
  }

  /** What is printed here can be copied into a file, and has a common blank. */
  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  private void borrowed() {
    for (Sheet.ToolLine tool : sheet.equipment().tools()) {
      if (!tool.owned()) {
        borrow("the shop has no " + tool.name() + ": borrow it", asking(tool.name()));
      }
    }
    for (Sheet.SocketLine socket : sheet.equipment().sockets()) {
      // Inserts are special tools, reported above.
      if (!socket.owned() && socket.insert().isEmpty()) {
        String text = language.text(new Statement.Socket(socket));
        borrow(
            socket.orAdapter().isPresent()
                ? "borrow a " + text
                : "the shop has no " + text + ": borrow it",
            heads(socket.head()).findFirst());
      }
    }
  }

  /** Whether it has to be borrowed is a matter of the day, so the job is named as well. */
  private void borrow(String what, Optional<Span> asking) {
    Problem problem = Problem.of(ProblemCode.TO_BORROW, resolved.job().number().at(), plain(what));
    warnings.add(asking.map(at -> problem.seeAlso("asked for by", at)).orElse(problem));
  }

  /** The procedure that uses a tool, or the head that a crow-foot of the book is for. */
  private Optional<Span> asking(String tool) {
    Stream<Located<Procedure.Use>> uses =
        resolved.tasks().values().stream()
            .map(Task::procedure)
            .flatMap(
                it ->
                    Stream.concat(
                        it.needs().uses().stream(),
                        it.blocks().steps().flatMap(s -> s.demands().uses().stream())));
    return Stream.concat(
            uses.filter(use -> use.value().name().equals(tool)).map(Located::at),
            fasteners()
                .filter(it -> it.reach().isPresent() && it.written().pieces().head().isPresent())
                .filter(it -> ToolNames.crowFoot(head(it).value(), it.reach().get()).equals(tool))
                .map(it -> head(it).at()))
        .findFirst();
  }

  private Stream<Span> heads(Head head) {
    return fasteners()
        .flatMap(it -> it.written().pieces().head().stream())
        .filter(it -> it.value().equals(head))
        .map(Located::at);
  }

  private static Located<Head> head(Fastener fastener) {
    return fastener.written().pieces().head().orElseThrow();
  }

  private Stream<Fastener> fasteners() {
    return sheet.torque().stream().map(this::fastener);
  }

  private Fastener fastener(TorqueLine line) {
    ItemAt item = new ItemAt(line.fastener(), line.places().get(0));
    return ((Bound.OfBook) resolved.thing(item)).values();
  }
}
