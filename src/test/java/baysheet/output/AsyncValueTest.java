package baysheet.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class AsyncValueTest {
  @Test
  void isMadeOnceOnAnotherThread() {
    AtomicInteger made = new AtomicInteger();
    AsyncValue<Thread> early =
        AsyncValue.start(
            () -> {
              made.incrementAndGet();
              return Thread.currentThread();
            });
    assertNotSame(Thread.currentThread(), early.get());
    assertSame(early.get(), early.get());
    assertEquals(1, made.get());
  }

  /** A folder that cannot be read must come out as one, not as a fault of the tool. */
  @Test
  void whatKeptItFromBeingMadeIsThrownAsItWas() {
    UncheckedIOException gone = new UncheckedIOException(new IOException("no such folder"));
    AsyncValue<String> early =
        AsyncValue.start(
            () -> {
              throw gone;
            });
    assertSame(gone, assertThrows(UncheckedIOException.class, early::get));
    assertSame(gone, assertThrows(UncheckedIOException.class, early::get));
  }
}
