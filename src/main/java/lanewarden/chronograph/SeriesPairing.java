package lanewarden.chronograph;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import lanewarden.metrology.PairAgreement;
import org.jspecify.annotations.Nullable;

/**
 * Tells which readings of two instruments in series are of one arrow, and whether they agree.
 *
 * <p>Two readings belong together if they came within the window. Where one instrument says two
 * within it, nothing can tell which of them the other's is: all are refused until both instruments
 * were quiet for the window. Times are monotonic nanoseconds. For one thread.
 */
final class SeriesPairing {
  private record Waiting(boolean first, Reading reading, long since) {}

  private final String name;
  private final String firstName;
  private final String secondName;
  private final PairAgreement agreement;
  private final Duration window;
  private final Clock clock;
  private @Nullable Waiting waiting;
  private boolean crowded;
  private long crowdedAt;

  /**
   * @param name of both together, for refusals of a pair
   */
  SeriesPairing(
      String name,
      String firstName,
      String secondName,
      PairAgreement agreement,
      Duration window,
      Clock clock) {
    this.name = name;
    this.firstName = firstName;
    this.secondName = secondName;
    this.agreement = agreement;
    this.window = window;
    this.clock = clock;
  }

  /** Whether a reading waits for the other instrument's. */
  boolean waits() {
    return waiting != null;
  }

  /**
   * Takes a reading.
   *
   * @param first whether it is the first instrument's
   * @return what became of it and of the one that waited
   */
  List<Signal> take(boolean first, Reading reading, long nanos) {
    List<Signal> signals = new ArrayList<>(idle(nanos));
    Waiting other = waiting;
    waiting = null;
    if (crowded && nanos - crowdedAt <= window.toNanos()) {
      crowdedAt = nanos;
      signals.add(unpaired(reading, tooClose()));
      return signals;
    }
    crowded = false;
    if (other == null) {
      waiting = new Waiting(first, reading, nanos);
    } else if (other.first() == first) {
      crowded = true;
      crowdedAt = nanos;
      signals.add(unpaired(other.reading(), tooClose()));
      signals.add(unpaired(reading, tooClose()));
    } else {
      signals.add(first ? pair(reading, other.reading()) : pair(other.reading(), reading));
    }
    return signals;
  }

  /** Says that it is so late now: a reading that waited longer than the window is refused. */
  List<Signal> idle(long nanos) {
    Waiting late = waiting;
    if (late == null || nanos - late.since() <= window.toNanos()) {
      return List.of();
    }
    waiting = null;
    String silent = late.first() ? secondName : firstName;
    return List.of(
        unpaired(
            late.reading(),
            silent
                + " measured nothing within "
                + window.toMillis()
                + " ms. Check its light, its cable and that the arrow passes both, then shoot again."));
  }

  /** Says that nothing more will come. */
  List<Signal> end() {
    Waiting last = waiting;
    waiting = null;
    return last == null
        ? List.of()
        : List.of(
            unpaired(
                last.reading(), "The link was closed before the other had measured. Shoot again."));
  }

  private Signal pair(Reading first, Reading second) {
    Reading both = first.with(new Companion(second.speed(), second.raw(), second.instrument()));
    if (agreement.agree(first.speed(), second.speed())) {
      return new Signal.Heard(both);
    }
    return new Signal.Refused(
        new Refusal(
            first.raw().then(second.raw()),
            Reason.DISAGREE,
            "%s and %s do not agree: %s. At least one misread. Check light and alignment of both, then shoot again."
                .formatted(firstName, secondName, agreement.inWords(first.speed(), second.speed())),
            first.source(),
            name,
            clock.instant(),
            both));
  }

  private String tooClose() {
    return "Two readings of one instrument came within "
        + window.toMillis()
        + " ms, so it cannot be told which arrow the other measured. Wait a moment, then shoot"
        + " again.";
  }

  private Signal unpaired(Reading reading, String why) {
    return new Signal.Refused(
        new Refusal(
            reading.raw(),
            Reason.UNPAIRED,
            "Only " + reading.instrument() + " measured " + reading.speed() + ". " + why,
            reading.source(),
            reading.instrument(),
            clock.instant()));
  }
}
