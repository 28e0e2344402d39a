package baysheet.books;

import baysheet.report.Located;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.ScrewThread;
import baysheet.torque.StrengthClass;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningPasses;
import baysheet.torque.Treatment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The keys of a fastener as far as they are written: an override, or an entry over another book.
 *
 * @param source where this value comes from; otherwise the book's source stands
 */
public record FastenerText(
    Pieces pieces,
    Optional<Located<Tightening>> tightening,
    Method method,
    List<Remark> remarks,
    Optional<Located<String>> source) {
  public FastenerText {
    remarks = List.copyOf(remarks);
  }

  /** Whether what is usual says something that is not written. */
  public boolean lacks(FastenerText usual) {
    return (method.order.isEmpty() && usual.method.order.isPresent())
        || (method.moment.isEmpty() && usual.method.moment.isPresent());
  }

  /**
   * These values where they are written, and those of {@code base} for all the rest; but the source
   * of a figure that is replaced goes with it.
   */
  public FastenerText over(FastenerText base) {
    return new FastenerText(
        pieces.over(base.pieces),
        tightening.or(base::tightening),
        method.over(base.method),
        Remark.over(remarks, base.remarks),
        tightening.isPresent() ? source : source.or(base::source));
  }

  /** The whole fastener; empty when the count or the torque is nowhere written. */
  public Optional<Fastener> complete(Located<String> name) {
    return pieces.count.flatMap(
        number -> tightening.map(torque -> new Fastener(name, number, torque, this)));
  }

  /**
   * What the set consists of.
   *
   * @param thread designation
   * @param strength strength class
   * @param head driving form and size; none for a fastener turned by hand
   * @param threads what the value was published for
   * @param reuse whether it may be used again
   * @param unknown the keys with {@code unknown} in place of what they say
   */
  public record Pieces(
      Optional<Located<Integer>> count,
      Optional<Located<ScrewThread>> thread,
      Optional<Located<StrengthClass>> strength,
      Optional<Located<Head>> head,
      Optional<Located<Treatment>> threads,
      Optional<Located<Boolean>> reuse,
      List<Located<String>> unknown) {
    static final String COUNT = "count";
    static final String THREAD = "thread";
    static final String CLASS = "class";
    static final String HEAD = "head";
    static final String THREADS = "threads";
    static final String REUSE = "reuse";

    static final Pieces NOTHING =
        new Pieces(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of());

    public Pieces {
      unknown = List.copyOf(unknown);
    }

    private Pieces over(Pieces base) {
      List<Located<String>> all = new ArrayList<>(unknown);
      base.unknown.stream().filter(it -> !says(it.value())).forEach(all::add);
      return new Pieces(
          over(COUNT, count, base.count),
          over(THREAD, thread, base.thread),
          over(CLASS, strength, base.strength),
          over(HEAD, head, base.head),
          over(THREADS, threads, base.threads),
          over(REUSE, reuse, base.reuse),
          all);
    }

    private <T> Optional<Located<T>> over(
        String key, Optional<Located<T>> own, Optional<Located<T>> below) {
      return isUnknown(key) ? Optional.empty() : own.or(() -> below);
    }

    private boolean says(String key) {
      Optional<?> figure =
          switch (key) {
            case COUNT -> count;
            case THREAD -> thread;
            case CLASS -> strength;
            case HEAD -> head;
            case THREADS -> threads;
            case REUSE -> reuse;
            default -> throw new IllegalArgumentException(key);
          };
      return figure.isPresent() || isUnknown(key);
    }

    private boolean isUnknown(String key) {
      return unknown.stream().anyMatch(it -> it.value().equals(key));
    }

    /** Whether the entry says that nobody has counted them. */
    public boolean isUncounted() {
      return isUnknown(COUNT);
    }

    /** The keys that are unknown and without which no sheet can be made. */
    public Stream<Located<String>> missing() {
      return unknown.stream().filter(it -> Set.of(COUNT, HEAD).contains(it.value()));
    }
  }

  /**
   * How it is tightened.
   *
   * @param order positions in which to tighten, or the shape from which they follow
   * @param passes percentages of the final torque; empty means the default rule
   * @param lock how it is secured after tightening
   * @param moment where the final torque is given
   * @param recheck distance after which it is checked again
   * @param reach an adapter between wrench and fastener
   * @param deep whether only a deep socket reaches it
   */
  public record Method(
      Optional<Located<Fastener.Order>> order,
      Optional<Located<TighteningPasses>> passes,
      Optional<Located<Fastener.Lock>> lock,
      Optional<Located<Fastener.Moment>> moment,
      Optional<Located<Quantity>> recheck,
      Optional<Located<Reach>> reach,
      Optional<Located<Boolean>> deep) {
    /** An order, a moment and an adapter, and nothing else. */
    public static Method of(
        Optional<Located<Fastener.Order>> order,
        Optional<Located<Fastener.Moment>> moment,
        Optional<Located<Reach>> reach) {
      return new Method(
          order,
          Optional.empty(),
          Optional.empty(),
          moment,
          Optional.empty(),
          reach,
          Optional.empty());
    }

    private Method over(Method base) {
      return new Method(
          order.or(base::order),
          passes.or(base::passes),
          lock.or(base::lock),
          moment.or(base::moment),
          recheck.or(base::recheck),
          reach.or(base::reach),
          deep.or(base::deep));
    }
  }
}
