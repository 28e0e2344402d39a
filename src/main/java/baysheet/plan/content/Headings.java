package baysheet.plan.content;

import baysheet.books.Job;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Shop;
import baysheet.books.SpecBook;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.Heading;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What identifies a sheet, and where its figures come from. */
public final class Headings {
  private Headings() {}

  public static Heading of(Resolved resolved) {
    Job job = resolved.job();
    Job.Request asked = job.request();
    Shop shop = resolved.shop();
    return new Heading(
        shop.name().value(),
        job.number().value(),
        resolved.date(),
        job.sheets().revision().value(),
        new Heading.Request(
            asked.customer().map(Located::value),
            asked.complaint().map(Located::value),
            asked.readyBy().map(Located::value)),
        vehicle(resolved),
        new Heading.Bay(
            resolved.bay().name().value(),
            resolved.bay().description().value() + " " + resolved.bay().equipment().word()),
        new Heading.Crew(
            person(resolved.by()),
            resolved.with().map(Headings::person),
            resolved.second().map(Headings::person)),
        works(resolved),
        new Heading.Style(
            shop.paper(),
            shop.terms(),
            resolved.catalogue().glossary(),
            shop.units().torque(),
            shop.units().distance()),
        new Heading.Before(
            job.sheets().carried().map(Headings::carried), Optional.empty(), seen(resolved)));
  }

  private static Heading.Vehicle vehicle(Resolved resolved) {
    Job job = resolved.job();
    return new Heading.Vehicle(
        resolved.book().own().vehicle().value(),
        resolved.book().title(),
        resolved.book().years(),
        job.vehicle().plate().map(Located::value),
        job.vehicle().vin().map(Located::value),
        job.vehicle().odometer().map(Located::value),
        job.condition().state().stream().map(Located::value).toList());
  }

  /** What the book says of vehicles of this kind, up to the day before the job. */
  private static List<Heading.Seen> seen(Resolved resolved) {
    return resolved.book().books().stream()
        .flatMap(book -> book.seen().stream())
        .filter(it -> it.on().value().isBefore(resolved.date()))
        .map(it -> new Heading.Seen(it.on().value(), it.what().value(), false))
        .sorted(Comparator.comparing(Heading.Seen::on).reversed())
        .toList();
  }

  private static Heading.Carried carried(Job.Carried from) {
    return new Heading.Carried(
        from.from().value(),
        from.sheet().value(),
        from.step().map(Located::value),
        from.found().stream().map(Located::value).toList());
  }

  private static Heading.Person person(Shop.Person person) {
    return new Heading.Person(person.id().value(), person.name().value(), person.grade());
  }

  /** What the job asks for, each procedure once with its places. */
  private static List<Statement> works(Resolved resolved) {
    Map<String, Procedure> procedures = new LinkedHashMap<>();
    Map<String, List<Place>> places = new HashMap<>();
    for (Task task : resolved.tasks().values()) {
      if (task.asked()) {
        String name = task.id().procedure();
        procedures.putIfAbsent(name, task.procedure());
        places.computeIfAbsent(name, key -> new ArrayList<>()).add(task.id().place());
      }
    }
    List<Statement> works = new ArrayList<>();
    procedures.forEach((name, procedure) -> works.add(work(procedure, places.get(name))));
    return works;
  }

  private static Statement work(Procedure procedure, List<Place> where) {
    String title = procedure.title().value();
    Place.Kind kind = procedure.at().value();
    boolean unplaced = kind == Place.Kind.ENGINE || kind == Place.Kind.VEHICLE;
    return new Statement.Work(procedure.name().value(), title, where, !unplaced);
  }

  /** The wrenches that are set for any row of the table, in the order of the crib. */
  public static List<Sheet.WrenchLine> wrenches(Resolved resolved, List<TorqueLine> torque) {
    Set<String> used =
        torque.stream().flatMap(line -> line.wrenches().stream()).collect(Collectors.toSet());
    return resolved.shop().crib().wrenches().stream()
        .map(Located::value)
        .filter(wrench -> used.contains(wrench.name()))
        .map(
            wrench ->
                new Sheet.WrenchLine(
                    wrench.name(),
                    wrench.calibrated(),
                    wrench.due(resolved.shop().wrenchUse().calibrationMonths())))
        .toList();
  }

  /** The sources of all torque lines, and who last compared each book with its source. */
  public static List<Statement> sources(Resolved resolved, List<TorqueLine> torque) {
    Set<Statement> sources = new LinkedHashSet<>();
    torque.forEach(line -> sources.add(new Statement.Written(line.origin().source())));
    resolved
        .book()
        .own()
        .origin()
        .source()
        .ifPresent(source -> sources.add(new Statement.Written(source.value())));
    List<SpecBook> books = resolved.book().books();
    for (SpecBook book : books) {
      // The check of one book says nothing about another whose figures it takes over.
      Optional<String> name =
          books.size() == 1 ? Optional.empty() : Optional.of(book.vehicle().value());
      book.origin()
          .checked()
          .ifPresent(
              it -> sources.add(new Statement.Checked(name, it.by().value(), it.on().value())));
    }
    return List.copyOf(sources);
  }
}
