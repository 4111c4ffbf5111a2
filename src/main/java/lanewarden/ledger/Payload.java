package lanewarden.ledger;

import java.math.BigDecimal;
import java.time.Instant;

/** What an entry says, as read from the JSON that was signed; the body is not copied. */
final class Payload {
  private final String station;
  private final long sequence;
  private final Sha256 previous;
  private final Instant at;
  private final BigDecimal monotonicSeconds;
  private final String kind;
  private final byte[] body;

  Payload(
      String station,
      long sequence,
      Sha256 previous,
      Instant at,
      BigDecimal monotonicSeconds,
      String kind,
      byte[] body) {
    this.station = station;
    this.sequence = sequence;
    this.previous = previous;
    this.at = at;
    this.monotonicSeconds = monotonicSeconds;
    this.kind = kind;
    this.body = body;
  }

  String station() {
    return station;
  }

  long sequence() {
    return sequence;
  }

  Sha256 previous() {
    return previous;
  }

  Instant at() {
    return at;
  }

  BigDecimal monotonicSeconds() {
    return monotonicSeconds;
  }

  String kind() {
    return kind;
  }

  byte[] body() {
    return body;
  }
}
