package lanewarden.chronograph;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How the links of two instruments in series stand together. For one thread. */
final class SeriesLinks {
  private final String firstName;
  private final String secondName;
  private Signal.@Nullable LinkChanged first;
  private Signal.@Nullable LinkChanged second;

  SeriesLinks(String firstName, String secondName) {
    this.firstName = firstName;
    this.secondName = secondName;
  }

  /** Takes what one instrument told; what is to be told of both, if anything is known yet. */
  Optional<Signal> take(boolean ofFirst, Signal.LinkChanged changed) {
    if (ofFirst) {
      first = changed;
    } else {
      second = changed;
    }
    if (is(first, LinkState.UP) && is(second, LinkState.UP)) {
      return Optional.of(
          new Signal.LinkChanged(
              LinkState.UP,
              firstName + " and " + secondName + " are both connected.",
              changed.at()));
    }
    String lost =
        Stream.of(words(firstName, first), words(secondName, second))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(" "));
    return lost.isEmpty()
        ? Optional.empty()
        : Optional.of(new Signal.LinkChanged(LinkState.LOST, lost, changed.at()));
  }

  /** Whether both have ended by themselves, as replays do. */
  boolean over() {
    return is(first, LinkState.CLOSED) && is(second, LinkState.CLOSED);
  }

  private static boolean is(Signal.@Nullable LinkChanged link, LinkState state) {
    return link != null && link.state() == state;
  }

  private static Optional<String> words(String name, Signal.@Nullable LinkChanged link) {
    return link == null || link.state() == LinkState.UP
        ? Optional.empty()
        : Optional.of(name + " is " + link.state().word() + ": " + link.words());
  }
}
