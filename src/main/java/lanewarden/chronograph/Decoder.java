package lanewarden.chronograph;

import java.time.Clock;
import java.util.List;

/** The one way from bytes to signals: framer, then sentence, then the guard against repeats. */
@SuppressWarnings("DoNotCallSuggester")
public final class Decoder {
  /** A decoder for one instrument. */
  public Decoder(SentenceProfile profile, Source source, String instrument, Clock clock) {}

  /** The link was opened. */
  public void opened(long nanos) {
    throw new UnsupportedOperationException();
  }

  /** Takes bytes; returns what they became. */
  public List<Signal> feed(RawBytes bytes, long nanos) {
    throw new UnsupportedOperationException();
  }

  /** Nothing was there to read. */
  public List<Signal> idle(long nanos) {
    throw new UnsupportedOperationException();
  }

  /** The link was lost. */
  public List<Signal> lost() {
    throw new UnsupportedOperationException();
  }
}
