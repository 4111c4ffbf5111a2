package lanewarden.chronograph;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Whether a port that is away came back under another name: remembers which ports were here while
 * it was last seen, and says which came since. For one thread.
 */
final class Whereabouts {
  private final String port;
  private final Supplier<List<PortHere>> here;
  private @Nullable List<PortHere> before;

  Whereabouts(String port, Supplier<List<PortHere>> here) {
    this.port = port;
    this.here = here;
  }

  /** The port was opened. */
  void seen() {
    before = here.get();
  }

  /** The trouble with a port that cannot be opened, told as a new name if another port came. */
  PortTrouble known(PortTrouble trouble) {
    if (trouble.kind() != PortTrouble.Kind.MISSING) {
      return trouble;
    }
    List<PortHere> now = here.get();
    if (before == null) {
      // Never seen: what is here already is no news, what comes from now on may be it
      before = now;
    }
    List<PortHere> known = before;
    List<String> came =
        now.stream()
            .filter(one -> known.stream().noneMatch(old -> old.path().equals(one.path())))
            .map(one -> described(one, known))
            .toList();
    return came.isEmpty() ? trouble : PortTrouble.renamed(port, came);
  }

  private String described(PortHere one, List<PortHere> known) {
    Optional<String> mine =
        known.stream().filter(old -> old.path().equals(port)).findFirst().flatMap(PortHere::serial);
    boolean same = mine.isPresent() && mine.equals(one.serial());
    return one.path() + (same ? " (the same device, serial number " + mine.get() + ")" : "");
  }
}
