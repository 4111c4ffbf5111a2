package lanewarden.station;

import java.util.Optional;
import java.util.function.Consumer;
import lanewarden.chronograph.Instrument;
import lanewarden.chronograph.SeriesInstrument;
import lanewarden.chronograph.Signal;
import lanewarden.chronograph.SimulatedInstrument;
import lanewarden.chronograph.Source;

/**
 * What archers of a rehearsal shoot through: the simulator, and behind it a second one where the
 * settings have it, which measures every arrow that the first measured.
 */
final class PracticeGates {
  private final SimulatedInstrument first;
  private final Optional<SimulatedInstrument> second;
  private final Optional<SeriesInstrument> series;

  private PracticeGates(
      SimulatedInstrument first,
      Optional<SimulatedInstrument> second,
      Optional<SeriesInstrument> series) {
    this.first = first;
    this.second = second;
    this.series = series;
  }

  static PracticeGates of(StationPapers papers, Surroundings here) {
    SimulatedInstrument first = new SimulatedInstrument(papers.profile(), here.clock());
    Optional<SecondInstrument> settings = papers.settings().second();
    if (settings.isEmpty()) {
      return new PracticeGates(first, Optional.empty(), Optional.empty());
    }
    SimulatedInstrument second =
        new SimulatedInstrument(papers.second().orElseThrow(), here.clock());
    SeriesInstrument series =
        new SeriesInstrument(
            new Followed(first, second),
            second,
            settings.get().agreement(),
            settings.get().within(),
            here.clock(),
            here.nanos());
    return new PracticeGates(first, Optional.of(second), Optional.of(series));
  }

  /** What the station listens to. */
  Instrument instrument() {
    return series.<Instrument>map(s -> s).orElse(first);
  }

  /** What the archers shoot at. */
  SimulatedInstrument first() {
    return first;
  }

  /** Waits until all that was shot came to the station, as far as it will. */
  void settle() throws InterruptedException {
    first.settle();
    if (second.isPresent() && series.isPresent()) {
      second.get().settle();
      series.get().settle();
    }
  }

  /** The first simulator, each of whose readings the second measures too. */
  private record Followed(SimulatedInstrument first, SimulatedInstrument second)
      implements Instrument {
    @Override
    public String name() {
      return first.name();
    }

    @Override
    public Source source() {
      return first.source();
    }

    @Override
    public void start(Consumer<Signal> sink) {
      first.start(
          signal -> {
            sink.accept(signal);
            if (signal instanceof Signal.Heard heard) {
              follow(heard);
            }
          });
    }

    private void follow(Signal.Heard heard) {
      try {
        second.shoot(heard.reading().speed());
      } catch (IllegalArgumentException | IllegalStateException unwritable) {
        // The second cannot write it: nothing confirms the arrow, and the official is told so
      }
    }

    @Override
    public void close() {
      first.close();
    }
  }
}
