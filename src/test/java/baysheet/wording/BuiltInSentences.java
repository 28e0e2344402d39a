package baysheet.wording;

import baysheet.books.Catalogue;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.report.Located;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Every sentence of the catalogue and the procedures that come with the program. */
final class BuiltInSentences {
  /** What a sentence is for, which decides what it may do. */
  enum Use {
    INSTRUCTION,
    COMMAND,
    CLAUSE
  }

  /**
   * A sentence.
   *
   * @param from where it stands: the file and the entry
   */
  record Sentence(String from, Use use, String text) {
    @Override
    public String toString() {
      return from + ": " + text;
    }
  }

  private final List<Sentence> all = new ArrayList<>();

  private BuiltInSentences() {}

  static List<Sentence> of(Catalogue catalogue, Collection<Procedure> procedures) {
    BuiltInSentences sentences = new BuiltInSentences();
    catalogue.items().forEach((name, item) -> sentences.item("items " + name, item));
    catalogue.cautions().forEach((name, it) -> sentences.caution("cautions " + name, it));
    catalogue.rules().forEach((name, rule) -> sentences.rule("consequences " + name, rule));
    procedures.forEach(it -> sentences.procedure("procedures " + it.name().value(), it));
    return sentences.all;
  }

  private void item(String from, Catalogue.Item item) {
    clause(from, Optional.of(item.british()));
    instruction(from, item.back());
  }

  private void caution(String from, Catalogue.Caution caution) {
    add(from, Use.COMMAND, caution.command().value());
    clause(from, Optional.of(caution.hazard()));
    clause(from, Optional.of(caution.consequence()));
  }

  private void rule(String from, Catalogue.Rule rule) {
    instruction(from, Optional.of(rule.check()));
    clause(from, rule.grounds().because());
    clause(from, rule.needs());
    clause(from, rule.others().keepOpen());
    clause(from, rule.others().release());
    rule.uses().forEach(use -> add(from, Use.CLAUSE, use.value().name()));
    rule.step()
        .ifPresent(it -> it.uses().forEach(use -> add(from, Use.CLAUSE, use.value().name())));
  }

  private void procedure(String from, Procedure procedure) {
    clause(from, Optional.of(procedure.title()));
    procedure.needs().uses().forEach(use -> add(from, Use.CLAUSE, use.value().name()));
    procedure.needs().parts().forEach(part -> add(from, Use.CLAUSE, part.name().value()));
    List.of(procedure.blocks().open(), procedure.blocks().work(), procedure.blocks().close())
        .forEach(steps -> steps.forEach(step -> step(from, step)));
    for (Procedure.Check check : procedure.checks()) {
      instruction(from, Optional.of(check.text()));
      clause(from, check.because());
    }
  }

  private void step(String from, Step step) {
    instruction(from, Optional.of(step.text()));
    instruction(from, step.back());
    step.teaching().ifStuck().forEach(it -> instruction(from, Optional.of(it)));
    clause(from, step.teaching().because());
    clause(from, step.teaching().good());
    step.measure().forEach(it -> clause(from, Optional.of(it)));
    step.demands().uses().forEach(use -> add(from, Use.CLAUSE, use.value().name()));
  }

  private void instruction(String from, Optional<Located<String>> text) {
    text.ifPresent(it -> add(from, Use.INSTRUCTION, it.value()));
  }

  private void clause(String from, Optional<Located<String>> text) {
    text.ifPresent(it -> add(from, Use.CLAUSE, it.value()));
  }

  private void add(String from, Use use, String text) {
    all.add(new Sentence(from, use, text));
  }
}
