package lanewarden.chronograph;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import lanewarden.written.WrittenRefused;

/** The example profiles, and lines that fit them, for tests. */
final class Profiles {
  static final Instant NOON = Instant.parse("2026-05-02T12:00:00Z");
  static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);
  static final long MILLI = 1_000_000L;

  private Profiles() {}

  static SentenceProfile gateTimer() {
    return of(text("gate-timer"));
  }

  static SentenceProfile plainDecimal() {
    return of(text("plain-decimal"));
  }

  static SentenceProfile threeGateTimer() {
    return of(text("three-gate-timer"));
  }

  static String text(String name) {
    try {
      return Files.readString(Path.of("config/profiles/" + name + ".toml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static SentenceProfile of(String toml) {
    try {
      return SentenceProfile.read("test.toml", toml.getBytes(StandardCharsets.UTF_8));
    } catch (WrittenRefused e) {
      throw new AssertionError(e);
    }
  }

  /** A sentence of the gate timer with the right checksum and terminator. */
  static RawBytes sentence(String covered) {
    return RawBytes.ofText("$" + covered + "*" + Checksum.XOR.hex(covered) + "\r\n");
  }

  /** A good sentence: 300.1 ft/s, which takes 6664 µs over 609.6 mm. */
  static RawBytes good(int sequence) {
    return sentence("PLWT,%05d,0300.1,F,006664,A".formatted(sequence));
  }

  /** A good sentence of the three-gate timer whose clock showed these counts at its gates. */
  static RawBytes passed(int sequence, int at1, int at2, int at3) {
    return sentence("PLWG,%05d,%05d,%05d,%05d,A".formatted(sequence, at1, at2, at3));
  }

  /** A decoder whose port was quiet long enough after opening, at time 0, that it counts. */
  static Decoder opened(SentenceProfile profile) {
    Decoder decoder = new Decoder(profile, Source.SERIAL, "test", CLOCK);
    decoder.opened(-1_000 * MILLI);
    decoder.idle(0);
    return decoder;
  }
}
