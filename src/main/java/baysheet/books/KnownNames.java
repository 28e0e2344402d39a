package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Every name that a file of a shop may refer to, by sort. A reference that none of them has is an
 * error: passed over, it would drop a caution, a check or a figure without anybody noticing.
 */
public final class KnownNames {
  /** The kind of items that can be opened and have to be filled again. */
  private static final String CIRCUIT_KIND = "circuit";

  private final Map<ReferenceSort, Set<String>> names = new EnumMap<>(ReferenceSort.class);

  /** Sorts of which a file that cannot be used may have more. */
  private final Set<ReferenceSort> open = new LinkedHashSet<>();

  /** Items and fasteners that a step or a trigger names, or a book calls absent. */
  private final Set<String> asked = new TreeSet<>();

  /** Roles and procedures that a procedure is behind. */
  private final Set<String> roles = new TreeSet<>();

  /** Fasteners of books. */
  private final Set<String> inBooks = new TreeSet<>();

  /** Tools and products that cautions and checks go by. */
  private final Set<String> ruling = new TreeSet<>();

  /** Kinds whose renewal brings a caution or a check. */
  private final Set<String> renewing = new TreeSet<>();

  /** Items whose renewal brings a caution or a check, with what they are called. */
  private final Map<String, String> renewable = new TreeMap<>();

  private ShopFolder.Faulty faulty = ShopFolder.Faulty.NONE;

  private KnownNames() {
    for (ReferenceSort sort : ReferenceSort.values()) {
      names.put(sort, new TreeSet<>());
    }
  }

  /** The names of a whole folder. */
  static KnownNames of(ShopFolder folder) {
    KnownNames known = of(folder.catalogue());
    known.add(folder.shop());
    folder.books().values().forEach(known::add);
    folder.procedures().values().forEach(known::add);
    known.names.get(ReferenceSort.PROCEDURE).addAll(folder.faulty().procedures());
    known.faulty = folder.faulty();
    if (!folder.faulty().procedures().isEmpty()) {
      known.open.add(ReferenceSort.FASTENER);
      known.open.add(ReferenceSort.PART);
    }
    if (!folder.faulty().books().isEmpty()) {
      known.open.add(ReferenceSort.ITEM);
    }
    return known;
  }

  private static KnownNames of(Catalogue catalogue) {
    KnownNames known = new KnownNames();
    Vocabulary words = catalogue.vocabulary();
    known.names.get(ReferenceSort.KIND).addAll(words.kinds().keySet());
    known.names.get(ReferenceSort.TRAIT).addAll(words.traits().keySet());
    known.names.get(ReferenceSort.FLUID).addAll(words.fluids().keySet());
    known.names.get(ReferenceSort.MEASURE).addAll(words.measures().keySet());
    known.names.get(ReferenceSort.TOOL).addAll(words.tools().keySet());
    known.names.get(ReferenceSort.SPECIAL_TOOL).addAll(words.tools().keySet());
    known.names.get(ReferenceSort.PRODUCT).addAll(words.products().keySet());
    known.names.get(ReferenceSort.PRODUCT).addAll(words.fluids().keySet());
    known.names.get(ReferenceSort.STATE).addAll(catalogue.states().keySet());
    known.names.get(ReferenceSort.QUALIFICATION).addAll(catalogue.qualifications().keySet());
    known.names.get(ReferenceSort.CAUTION).addAll(catalogue.cautions().keySet());
    catalogue.items().values().forEach(known::add);
    Stream.concat(
            catalogue.cautions().values().stream().flatMap(caution -> caution.when().stream()),
            catalogue.rules().values().stream().flatMap(rule -> rule.when().stream()))
        .forEach(known::add);
    catalogue.items().values().stream()
        .filter(item -> item.kinds().stream().anyMatch(it -> known.renewing.contains(it.value())))
        .forEach(item -> known.renewable.put(item.name().value(), item.british().value()));
    return known;
  }

  private void add(Trigger trigger) {
    asked.addAll(trigger.names(Trigger.Condition.UNDO));
    asked.addAll(trigger.names(Trigger.Condition.DO_UP));
    asked.addAll(trigger.names(Trigger.Condition.DISTURB));
    ruling.addAll(trigger.names(Trigger.Condition.USES));
    ruling.addAll(trigger.names(Trigger.Condition.WHERE_UNUSED));
    ruling.addAll(trigger.names(Trigger.Condition.APPLY));
    renewing.addAll(trigger.names(Trigger.Condition.RENEW_KIND));
  }

  private void add(Catalogue.Item item) {
    names.get(ReferenceSort.ITEM).add(item.name().value());
    names.get(ReferenceSort.FASTENER).add(item.name().value());
    if (item.kinds().stream().anyMatch(kind -> kind.value().equals(CIRCUIT_KIND))) {
      names.get(ReferenceSort.CIRCUIT).add(item.name().value());
    }
  }

  private void add(Shop shop) {
    names.get(ReferenceSort.PERSON).addAll(shop.people().keySet());
    names.get(ReferenceSort.BAY).addAll(Bay.KINDS);
    shop.bays()
        .values()
        .forEach(
            bay ->
                names
                    .get(ReferenceSort.BAY)
                    .add(bay.description().value().toLowerCase(Locale.ROOT)));
    shop.crib()
        .special()
        .forEach(tool -> names.get(ReferenceSort.SPECIAL_TOOL).add(tool.name().value()));
  }

  private void add(SpecBook book) {
    for (SpecBook.Group group : book.fasteners()) {
      names.get(ReferenceSort.ITEM).addAll(group.fasteners().keySet());
      inBooks.addAll(group.fasteners().keySet());
      group.absent().forEach(name -> asked.add(name.value()));
    }
  }

  private void add(Procedure procedure) {
    names.get(ReferenceSort.PROCEDURE).add(procedure.name().value());
    for (Procedure.Part part : procedure.needs().parts()) {
      names.get(ReferenceSort.PART).add(part.name().value());
    }
    procedure.serves().ifPresent(role -> names.get(ReferenceSort.ROLE).add(role.value()));
    procedure.behind().forEach(access -> roles.add(access.value().procedure()));
    for (Step step : procedure.blocks().steps().toList()) {
      step.touched().items().map(Located::value).forEach(asked::add);
      step.touched().items().map(Located::value).forEach(names.get(ReferenceSort.FASTENER)::add);
    }
  }

  /** The names of a sort, in alphabetical order. */
  public Set<String> all(ReferenceSort sort) {
    return names.get(sort);
  }

  /** Whether a name of this sort is known, or may be in a file that cannot be used. */
  public boolean knows(ReferenceSort sort, String name) {
    boolean ofProcedure = sort == ReferenceSort.PROCEDURE || sort == ReferenceSort.ROLE;
    return names.get(sort).contains(name)
        || open.contains(sort)
        || (ofProcedure && faulty.mayServe(name));
  }

  /** Reports a name that nothing has. */
  public void check(ReferenceSort sort, Located<String> name, Problems problems) {
    if (!knows(sort, name.value())) {
      problems.add(unknown(sort, name, names.get(sort)));
    }
  }

  /**
   * Reports a fastener of a book that nothing asks for, so that its figure could reach no sheet.
   * Where the step that should ask for it is the one that is misspelt, that is reported already.
   */
  public void fastener(Located<String> name, Problems problems) {
    // Looking for near names is slow, and every fastener of the book is asked for at every job.
    if (knows(ReferenceSort.FASTENER, name.value())) {
      return;
    }
    boolean misspeltElsewhere =
        Nearest.of(name.value(), names.get(ReferenceSort.FASTENER))
            .filter(near -> !names.get(ReferenceSort.ITEM).contains(near))
            .isPresent();
    if (!misspeltElsewhere) {
      check(ReferenceSort.FASTENER, name, problems);
    }
  }

  /** Reports a name that neither of two sorts has. */
  public void check(
      ReferenceSort one, ReferenceSort other, Located<String> name, Problems problems) {
    if (!knows(one, name.value()) && !knows(other, name.value())) {
      problems.add(unknown(one, name, both(one, other)));
    }
  }

  /** That neither the catalogue nor any book has an item of a name. */
  public Problem noItem(Located<String> name) {
    return unknown(ReferenceSort.ITEM, name, names.get(ReferenceSort.ITEM));
  }

  /** That there is no procedure and no role of a name. */
  public Problem noProcedure(Located<String> name) {
    return unknown(
        ReferenceSort.PROCEDURE, name, both(ReferenceSort.PROCEDURE, ReferenceSort.ROLE));
  }

  private Set<String> both(ReferenceSort one, ReferenceSort other) {
    Set<String> both = new TreeSet<>(names.get(one));
    both.addAll(names.get(other));
    return both;
  }

  private static Problem unknown(
      ReferenceSort sort, Located<String> name, Collection<String> known) {
    return Problem.of(
            sort.code, name.at(), "there is no " + sort.word + " \"" + name.value() + "\"")
        .expecting(sort.expected)
        .near(Nearest.of(name.value(), known));
  }

  /**
   * Reports an item of the shop's catalogue that nothing names and that is a slip of the pen away
   * from a fastener of a book: what it says of its kinds would be passed over.
   */
  void unasked(Located<String> item, Problems problems) {
    String name = item.value();
    boolean named = asked.contains(name) || inBooks.contains(name);
    Optional<String> near = named ? Optional.empty() : Nearest.slip(name, inBooks);
    near.ifPresent(fastener -> problems.add(CatalogueSentences.nearItem(item, fastener)));
  }

  /**
   * Reports a part that does not say what it renews, where it may be one whose renewal brings
   * checks: the procedure takes such an item off, or the part is called like one.
   */
  public void renewal(Procedure procedure, Problems problems) {
    Map<String, String> open = new TreeMap<>(renewable);
    procedure.needs().parts().stream()
        .flatMap(part -> part.renews().stream())
        .forEach(it -> open.remove(Step.withoutPlace(it.value())));
    Set<String> off = new TreeSet<>();
    for (Step step : procedure.blocks().steps().toList()) {
      step.touched().undo().forEach(it -> off.add(it.value()));
    }
    for (Procedure.Part part : procedure.needs().parts()) {
      String words = part.name().value().toLowerCase(Locale.ROOT);
      List<String> items = new ArrayList<>(open.keySet());
      items.removeIf(
          it -> !off.contains(it) && !words.contains(open.get(it).toLowerCase(Locale.ROOT)));
      if (part.renews().isEmpty() && !items.isEmpty()) {
        problems.add(CatalogueSentences.renewsUnstated(part, items));
      }
    }
  }

  /** Reports a role that no procedure asks for and that is a slip of the pen away from one. */
  public void role(Located<String> role, Problems problems) {
    Optional<String> near =
        roles.contains(role.value()) ? Optional.empty() : Nearest.slip(role.value(), roles);
    near.ifPresent(asked -> problems.add(CatalogueSentences.nearRole(role, asked)));
  }

  /** Reports a tool that is misspelt, or that no catalogue declares. */
  public void tool(Located<Procedure.Use> use, Problems problems) {
    Located<String> name = use.map(Procedure.Use::name);
    if (use.value().special()) {
      check(ReferenceSort.SPECIAL_TOOL, name, problems);
    } else {
      declared(ReferenceSort.TOOL, name, problems);
    }
  }

  /** Reports a figure that reads like one by which the sheet goes. */
  public void measure(Located<String> name, Problems problems) {
    near(ReferenceSort.MEASURE, name, problems);
  }

  /** Reports a product that is misspelt, or that no catalogue declares. */
  public void product(Located<String> name, Problems problems) {
    declared(ReferenceSort.PRODUCT, name, problems);
  }

  /** What nobody has declared brings no caution and no check. */
  private void declared(ReferenceSort sort, Located<String> name, Problems problems) {
    if (!knows(sort, name.value()) && !near(sort, name, problems)) {
      problems.add(CatalogueSentences.undeclared(sort.word, name));
    }
  }

  /**
   * Reports a name that reads like a declared one, or holds the words of one by which cautions go:
   * it is meant, or this one is to be declared with what it is like.
   */
  private boolean near(ReferenceSort sort, Located<String> name, Problems problems) {
    if (knows(sort, name.value())) {
      return false;
    }
    Optional<String> like =
        Nearest.slip(name.value(), names.get(sort)).or(() -> holding(name.value(), sort));
    if (like.isPresent()) {
      problems.add(unknown(sort, name, names.get(sort)).near(like));
    }
    return like.isPresent();
  }

  private Optional<String> holding(String name, ReferenceSort sort) {
    // "press-off bolts" are no press: words joined by a hyphen are one word.
    String words = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}-]+", " ");
    String spaced = " " + words + " ";
    return ruling.stream()
        .filter(names.get(sort)::contains)
        .filter(word -> spaced.contains(" " + word.replace('-', ' ') + " "))
        .findFirst();
  }
}
