package lanewarden.kiosk;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What is made when it is first asked for, so that nobody waits for it at the start; on one thread.
 *
 * @param <T> what that is
 */
final class Late<T> {
  private final Supplier<T> making;
  private @Nullable T made;

  Late(Supplier<T> making) {
    this.making = making;
  }

  /** Made by now. */
  T get() {
    T there = made;
    if (there == null) {
      there = making.get();
      made = there;
    }
    return there;
  }

  /** Whether it was asked for already. */
  boolean isMade() {
    return made != null;
  }
}
