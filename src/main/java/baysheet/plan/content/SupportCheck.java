package baysheet.plan.content;

import baysheet.books.Bay;
import baysheet.books.Place;
import baysheet.books.Shop;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Statement;
import baysheet.sheet.Support;
import baysheet.torque.AxleLoad;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether what the vehicle rests on carries it. Over a rating is an error, not a note; so is a mass
 * that nobody knows.
 */
public final class SupportCheck {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private final Resolved resolved;
  private final Problems problems;

  private SupportCheck(Resolved resolved, Problems problems) {
    this.resolved = resolved;
    this.problems = problems;
  }

  public static List<Support> of(Resolved resolved, List<PlacedStep> lines, Problems problems) {
    return new SupportCheck(resolved, problems)
        .run(raised(resolved, lines), mostUp(resolved, lines));
  }

  /** Axles that are up at the same time, at most. */
  private static int mostUp(Resolved resolved, List<PlacedStep> lines) {
    Set<ItemAt> up = new LinkedHashSet<>();
    int most = 0;
    for (PlacedStep line : lines) {
      line.undo().stream().filter(item -> Lifting.holds(resolved, item)).forEach(up::add);
      Set<Place> axles = new LinkedHashSet<>();
      up.forEach(item -> axles.addAll(axles(item.place())));
      most = Math.max(most, axles.size());
      up.removeAll(line.doUp());
    }
    return most;
  }

  /** The axles that are raised, in order. */
  private static Set<Place> raised(Resolved resolved, List<PlacedStep> lines) {
    Set<Place> raised = new LinkedHashSet<>();
    for (PlacedStep line : lines) {
      for (ItemAt item : line.undo()) {
        if (Lifting.holds(resolved, item)) {
          raised.addAll(axles(item.place()));
        }
      }
    }
    return raised;
  }

  /** A wheel goes up with its axle; what belongs to no axle goes up with both. */
  private static List<Place> axles(Place place) {
    return place.axle().map(List::of).orElse(List.of(Place.FRONT, Place.REAR));
  }

  private List<Support> run(Set<Place> raised, int atOnce) {
    if (raised.isEmpty()) {
      return List.of();
    }
    // No job is resolved that raises a vehicle of which the mass is not known.
    Quantity mass = resolved.book().kerbMass().orElseThrow().value();
    if (resolved.bay().equipment() == Bay.Equipment.LIFT) {
      return List.of(lift(mass));
    }
    List<Support> supports = new ArrayList<>();
    raised.forEach(axle -> stands(mass, axle, atOnce).ifPresent(supports::add));
    return supports;
  }

  private Support lift(Quantity kerbMass) {
    Quantity whole = cargo().map(kerbMass::plus).orElse(kerbMass);
    Quantity rated = resolved.bay().rated().value();
    over(ContentSentences.LIFT, whole, rated, resolved.bay().rated().at());
    return new Support(
        "whole",
        new Statement.Lift(resolved.bay().description().value()),
        shown(whole),
        Optional.empty(),
        cargo().map(this::shown),
        rating(rated),
        points(List.of(Place.FRONT, Place.REAR)));
  }

  /** All that the job says is on board. */
  private Optional<Quantity> cargo() {
    return resolved.job().condition().load().values().stream()
        .map(Located::value)
        .reduce(Quantity::plus);
  }

  private Optional<Support> stands(Quantity kerbMass, Place axle, int atOnce) {
    Quantity load = axleLoad(kerbMass, axle);
    Optional<Shop.Stands> stands = resolved.shop().crib().stands();
    if (stands.isEmpty()) {
      problems.add(ContentSentences.noStands(resolved.shop().at()));
      return Optional.empty();
    }
    Quantity each = AxleLoad.perStand(load);
    Quantity rated = ratedEach(stands.get());
    Span at = stands.get().rated().at();
    over(ContentSentences.STAND, each, rated, at);
    over(ContentSentences.JACK, load, resolved.bay().rated().value(), resolved.bay().rated().at());
    enough(stands.get(), 2 * atOnce);
    return Optional.of(
        new Support(
            axle.word(),
            new Statement.Stands(2),
            shown(load),
            Optional.of(shown(each)),
            cargo().map(this::shown),
            rating(rated),
            jackedAt(axle)));
  }

  /** A rating for a pair is halved before it is compared with one stand's load. */
  private static Quantity ratedEach(Shop.Stands stands) {
    Quantity rated = stands.rated().value();
    return stands.each() ? rated : new Quantity(rated.value().divide(TWO), rated.unit());
  }

  private void enough(Shop.Stands stands, int needed) {
    if (stands.count().value() < needed) {
      problems.add(
          ContentSentences.tooFewStands(stands.count(), needed)
              .seeAlso("job", resolved.job().at()));
    }
  }

  /** The share of the kerb mass on the axle, with what the job says is loaded on it. */
  private Quantity axleLoad(Quantity kerbMass, Place axle) {
    Quantity mass = share(kerbMass, axle);
    Located<Quantity> load = resolved.job().condition().load().get(axle);
    return load == null ? mass : mass.plus(load.value());
  }

  private Quantity share(Quantity kerbMass, Place axle) {
    boolean front = axle == Place.FRONT;
    Optional<Located<Quantity>> share = resolved.book().frontShare();
    if (share.isPresent()) {
      Quantity percent = share.get().value();
      return front ? AxleLoad.front(kerbMass, percent) : AxleLoad.rear(kerbMass, percent);
    }
    Quantity length = resolved.book().wheelbase().orElseThrow().value();
    Quantity distance = resolved.book().massBehindFront().orElseThrow().value();
    return front
        ? AxleLoad.front(kerbMass, length, distance)
        : AxleLoad.rear(kerbMass, length, distance);
  }

  private void over(String what, Quantity load, Quantity rated, Span at) {
    if (load.isAbove(rated)) {
      problems.add(
          ContentSentences.overloaded(what, shown(load), rating(rated), at)
              .seeAlso("job", resolved.job().at()));
    }
  }

  /** A load in the shop's unit, to whole units and never less than it is. */
  private Quantity shown(Quantity load) {
    return whole(load, RoundingMode.CEILING);
  }

  /** A rating likewise, and never more than it is. */
  private Quantity rating(Quantity rated) {
    return whole(rated, RoundingMode.FLOOR);
  }

  private Quantity whole(Quantity mass, RoundingMode rounding) {
    Unit unit = resolved.shop().units().mass();
    return new Quantity(mass.to(unit).value().setScale(0, rounding), unit);
  }

  /** A jack lifts elsewhere than where the stands then go. */
  private List<Statement> jackedAt(Place axle) {
    List<Statement> points = new ArrayList<>();
    resolved
        .book()
        .jacking(axle)
        .ifPresent(point -> points.add(new Statement.JackUnder(point.value())));
    resolved
        .book()
        .support(axle)
        .ifPresent(point -> points.add(new Statement.StandsUnder(point.value())));
    return points;
  }

  private List<Statement> points(List<Place> axles) {
    List<Statement> points = new ArrayList<>();
    for (Place axle : axles) {
      resolved
          .book()
          .support(axle)
          .ifPresent(point -> points.add(new Statement.CarriedAt(axle, point.value())));
    }
    return points;
  }
}
