package lanewarden.chronograph;

import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** An instrument on a serial port. */
@SuppressWarnings("DoNotCallSuggester")
public final class SerialInstrument implements Instrument {
  private final String port;
  private final SentenceProfile profile;

  /** For the given port. */
  public SerialInstrument(String port, SentenceProfile profile, Clock clock, LongSupplier nanos) {
    this.port = port;
    this.profile = profile;
  }

  /** The ports of this machine. */
  public static List<String> ports() {
    throw new UnsupportedOperationException();
  }

  @Override
  public String name() {
    return profile.name() + " on " + port;
  }

  @Override
  public Source source() {
    return Source.SERIAL;
  }

  @Override
  public void start(Consumer<Signal> sink) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() {}
}
