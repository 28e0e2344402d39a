package baysheet.resolve;

import baysheet.books.Applicability;
import baysheet.books.Job;
import baysheet.books.KnownNames;
import baysheet.books.Procedure;
import baysheet.books.ReferenceSort;
import baysheet.books.Shop;
import baysheet.books.SpecBook;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.report.Problems;
import java.util.List;
import java.util.Locale;

/** Names that refer to other files of the folder: each is known, or a problem. */
final class NameRule {
  private final KnownNames known;
  private final Problems problems;

  NameRule(KnownNames known, Problems problems) {
    this.known = known;
    this.problems = problems;
  }

  void check(Job job) {
    all(ReferenceSort.STATE, job.condition().state());
    all(
        ReferenceSort.QUALIFICATION,
        job.crew().qualified().values().stream().map(Job.Qualified::qualification).toList());
    job.exceptions()
        .waive()
        .forEach(
            (name, who) ->
                known.check(ReferenceSort.CAUTION, new Located<>(name, who.at()), problems));
  }

  void check(SpecBook book) {
    all(ReferenceSort.TRAIT, book.traits().own());
    book.fluids()
        .values()
        .forEach(fluid -> known.check(ReferenceSort.FLUID, fluid.name(), problems));
    book.origin()
        .checked()
        .ifPresent(checked -> known.check(ReferenceSort.PERSON, checked.by(), problems));
    book.fasteners().stream()
        .flatMap(group -> group.fasteners().values().stream())
        .forEach(fastener -> known.fastener(fastener.name(), problems));
    book.partNumbers()
        .values()
        .forEach(
            it -> known.check(ReferenceSort.PART, ReferenceSort.FASTENER, it.part(), problems));
    book.fasteners().stream()
        .flatMap(group -> group.absent().stream())
        .forEach(name -> known.check(ReferenceSort.ITEM, ReferenceSort.FASTENER, name, problems));
  }

  void check(Procedure procedure) {
    procedure.behind().forEach(access -> procedure(access.map(Procedure.Access::procedure)));
    procedure.serves().ifPresent(role -> known.role(role, problems));
    procedure.after().forEach(this::procedure);
    procedure.before().forEach(this::procedure);
    procedure.needs().uses().forEach(use -> known.tool(use, problems));
    procedure.needs().parts().stream().flatMap(part -> part.renews().stream()).forEach(this::item);
    known.renewal(procedure, problems);
    applicability(procedure.applicability());
    all(ReferenceSort.QUALIFICATION, procedure.needs().qualifications());
    procedure.blocks().steps().forEach(this::check);
  }

  private void procedure(Located<String> name) {
    known.check(ReferenceSort.PROCEDURE, ReferenceSort.ROLE, name, problems);
  }

  private void applicability(Applicability all) {
    for (Located<Applicability.Need> need : all.onlyWith()) {
      need.value()
          .anyOf()
          .forEach(it -> known.check(ReferenceSort.TRAIT, new Located<>(it, need.at()), problems));
    }
    for (Applicability.Exclusion it : all.notWith()) {
      known.check(ReferenceSort.TRAIT, it.trait(), problems);
      it.procedure().ifPresent(this::procedure);
    }
  }

  void check(Shop shop) {
    for (Shop.Person person : shop.people().values()) {
      for (Shop.Certificate it : person.certificates()) {
        known.check(ReferenceSort.QUALIFICATION, it.qualification(), problems);
      }
    }
  }

  private void check(Step step) {
    step.touched().items().forEach(this::item);
    step.onlyIn()
        .forEach(
            bay ->
                known.check(
                    ReferenceSort.BAY, bay.map(it -> it.toLowerCase(Locale.ROOT)), problems));
    all(ReferenceSort.CAUTION, step.demands().hazards());
    all(ReferenceSort.CIRCUIT, step.touched().circuits());
    step.demands().uses().forEach(use -> known.tool(use, problems));
    step.touched().apply().forEach(it -> known.product(it.map(Step.Apply::product), problems));
    step.measure().forEach(figure -> known.measure(figure, problems));
  }

  private void item(Located<String> name) {
    known.check(ReferenceSort.ITEM, name.map(Step::withoutPlace), problems);
  }

  private void all(ReferenceSort sort, List<Located<String>> names) {
    names.forEach(name -> known.check(sort, name, problems));
  }
}
