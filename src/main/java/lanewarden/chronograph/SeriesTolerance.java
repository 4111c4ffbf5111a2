package lanewarden.chronograph;

import java.util.Optional;
import lanewarden.quantity.Speed;

/** Says how far two instruments in series may differ over one arrow. Holds no state. */
@FunctionalInterface
public interface SeriesTolerance {
  /**
   * Compares, exactly.
   *
   * @param first what the first instrument measured
   * @param second what the second measured
   * @return how they differ, as a whole sentence without its full stop, with both speeds; empty if
   *     they agree
   */
  Optional<String> broken(Speed first, Speed second);
}
