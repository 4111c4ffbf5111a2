package lanewarden.chronograph;

import java.time.Clock;
import java.time.Duration;
import java.util.function.Consumer;
import lanewarden.quantity.Speed;

/** The built-in simulator. */
@SuppressWarnings("DoNotCallSuggester")
public final class SimulatedInstrument implements Instrument {
  private final SentenceProfile profile;

  /** A simulator that speaks the profile's sentence. */
  public SimulatedInstrument(SentenceProfile profile, Clock clock) {
    this.profile = profile;
  }

  @Override
  public String name() {
    return profile.name() + ", simulated";
  }

  @Override
  public Source source() {
    return Source.SIMULATED;
  }

  @Override
  public void start(Consumer<Signal> sink) {
    throw new UnsupportedOperationException();
  }

  /** Sends a good sentence for the speed, rounded as the profile writes it. Returns at once. */
  public void shoot(Speed speed) {
    throw new UnsupportedOperationException();
  }

  /** Sends any bytes. Returns at once. */
  public void emit(RawBytes bytes) {
    throw new UnsupportedOperationException();
  }

  /** Lets time pass on the simulated wire; takes no time itself. */
  public void pause(Duration silence) {
    throw new UnsupportedOperationException();
  }

  /** Loses the link, as if the plug were pulled. */
  public void unplug() {
    throw new UnsupportedOperationException();
  }

  /** Brings the link back. */
  public void replug() {
    throw new UnsupportedOperationException();
  }

  /** Waits until the sink has taken everything sent so far. */
  public void settle() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() {}
}
