package baysheet.output;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

/**
 * Something that is made on another thread while the books are read: a morning's run is short, and
 * half of it is getting ready.
 */
public final class AsyncValue<T> implements Supplier<T> {
  private final CompletableFuture<T> made;

  private AsyncValue(CompletableFuture<T> made) {
    this.made = made;
  }

  /** Starts making it. */
  public static <T> AsyncValue<T> start(Supplier<T> making) {
    return new AsyncValue<>(CompletableFuture.supplyAsync(making));
  }

  /** Something that the first who asks for it makes, once for all threads. */
  public static <T> Supplier<T> onDemand(Supplier<T> making) {
    CompletableFuture<T> made = new CompletableFuture<>();
    AtomicBoolean begun = new AtomicBoolean();
    AsyncValue<T> value = new AsyncValue<>(made);
    return () -> {
      if (begun.compareAndSet(false, true)) {
        try {
          made.complete(making.get());
        } catch (RuntimeException e) {
          made.completeExceptionally(e);
        }
      }
      return value.get();
    };
  }

  /** What was made, once it is; what kept it from being made is thrown as if it were made here. */
  @Override
  public T get() {
    try {
      return made.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException ours) {
        throw ours;
      }
      throw e;
    }
  }
}
