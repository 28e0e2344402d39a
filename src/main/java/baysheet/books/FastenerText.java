package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Span;
import baysheet.torque.Head;
import baysheet.torque.Passes;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.StrengthClass;
import baysheet.torque.Thread;
import baysheet.torque.Tightening;
import baysheet.torque.Treatment;
import java.util.Optional;

/**
 * The keys of a fastener as far as they are written: an override, or an entry over another book.
 */
public record FastenerText(
    Optional<Located<Integer>> count,
    Optional<Located<Thread>> thread,
    Optional<Located<StrengthClass>> strength,
    Optional<Located<Head>> head,
    Optional<Located<Tightening>> tightening,
    Optional<Located<Fastener.Order>> order,
    Optional<Located<Passes>> passes,
    Optional<Located<Treatment>> threads,
    Optional<Located<Boolean>> reuse,
    Optional<Located<Fastener.Lock>> lock,
    Optional<Located<Fastener.Moment>> moment,
    Optional<Located<Quantity>> recheck,
    Optional<Located<Reach>> reach,
    Optional<Located<Boolean>> deep,
    Optional<Located<String>> note,
    Optional<Located<String>> source,
    Span at) {
  /**
   * These values where they are written, and those of {@code base} for all the rest; but the source
   * of a figure that is replaced goes with it.
   */
  public FastenerText over(FastenerText base) {
    return new FastenerText(
        count.or(base::count),
        thread.or(base::thread),
        strength.or(base::strength),
        head.or(base::head),
        tightening.or(base::tightening),
        order.or(base::order),
        passes.or(base::passes),
        threads.or(base::threads),
        reuse.or(base::reuse),
        lock.or(base::lock),
        moment.or(base::moment),
        recheck.or(base::recheck),
        reach.or(base::reach),
        deep.or(base::deep),
        note.or(base::note),
        tightening.isPresent() ? source : source.or(base::source),
        at);
  }

  /** The whole fastener; empty when the count or the torque is nowhere written. */
  public Optional<Fastener> complete(Located<String> name) {
    if (count.isEmpty() || tightening.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Fastener(
            name,
            count.get(),
            thread,
            strength,
            head,
            tightening.get(),
            order,
            passes,
            threads.orElse(new Located<>(Treatment.NOT_STATED, at)),
            reuse,
            lock,
            moment.map(Located::value).orElse(Fastener.Moment.AT_ONCE),
            recheck,
            reach.map(Located::value),
            deep.map(Located::value).orElse(false),
            note,
            source,
            at));
  }
}
