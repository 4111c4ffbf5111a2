package lanewarden.ledger;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;

/**
 * One signed entry of a ledger: the bytes as they were signed, and what they say.
 *
 * <p>Immutable; safe for any thread. Two entries are equal when their bytes are.
 */
public final class Entry {
  private final byte[] jws;
  private final Sha256 hash;
  private final String signer;
  private final Payload payload;

  Entry(byte[] jws, Sha256 hash, String signer, Payload payload) {
    this.jws = jws;
    this.hash = hash;
    this.signer = signer;
    this.payload = payload;
  }

  /** The entry that follows a head, signed. */
  static Entry sign(
      SigningKey signer,
      Head before,
      String station,
      Instant at,
      BigDecimal monotonicSeconds,
      Draft draft) {
    Payload payload =
        new Payload(
            station,
            before.sequence() + 1,
            before.hash(),
            at.truncatedTo(ChronoUnit.MILLIS),
            monotonicSeconds,
            draft.kind(),
            draft.bodyBytes());
    byte[] jws = Jws.sign(signer, PayloadText.write(payload));
    return new Entry(jws, Sha256.of(jws), signer.thumbprint(), payload);
  }

  /** The entry's place in the chain, from 1. */
  public long sequence() {
    return payload.sequence();
  }

  /** When it was appended, by the station's clock, in UTC. */
  public Instant at() {
    return payload.at();
  }

  /** Seconds since the ledger was opened for writing, by the monotonic clock. */
  public BigDecimal monotonicSeconds() {
    return payload.monotonicSeconds();
  }

  /** What the body is about. */
  public String kind() {
    return payload.kind();
  }

  /** The body: one JSON object in UTF-8, byte for byte as it was signed. */
  public byte[] body() {
    return payload.body().clone();
  }

  /** RFC 7638 thumbprint of the key that signed, which is the JWS's {@code kid}. */
  public String signer() {
    return signer;
  }

  /** The station whose chain this entry belongs to. */
  public String station() {
    return payload.station();
  }

  /** Hash of the entry before; all zero in the first. */
  public Sha256 previous() {
    return payload.previous();
  }

  /** Hash of this entry's stored bytes. */
  public Sha256 hash() {
    return hash;
  }

  /** The stored bytes: a compact JWS in ASCII. */
  public byte[] jws() {
    return jws.clone();
  }

  byte[] jwsBytes() {
    return jws;
  }

  Payload payload() {
    return payload;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Entry that && Arrays.equals(jws, that.jws);
  }

  @Override
  public int hashCode() {
    return hash.hashCode();
  }

  @Override
  public String toString() {
    return "entry " + sequence() + " " + kind() + " " + at() + " " + hash.shortHex();
  }
}
