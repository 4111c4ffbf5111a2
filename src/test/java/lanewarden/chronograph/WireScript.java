package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;

/**
 * What happens on a wire, written as bytes so that a fuzzer can write it, and played into a
 * decoder.
 *
 * <p>Every byte goes over the wire, except {@link #EVENT}, which makes the bytes after it an event:
 * the end of a chunk, time, a replugged cable, a good line, or damage to what is not yet sent.
 */
final class WireScript {
  private static final Pattern NOT_KEPT = Pattern.compile("; ([0-9]+) in between were not kept");

  static final byte EVENT = (byte) 0xFF;
  static final byte CHUNK = 0;
  static final byte SILENCE = 1;
  static final byte REPLUG = 2;
  static final byte GOOD = 3;
  static final byte FLIP = 4;
  static final byte LOSE = 5;
  static final byte DOUBLE = 6;
  static final byte QUIET_REPLUG = 7;

  /**
   * A signal and its bytes.
   *
   * @param from where they begin among all that were sent
   * @param midway whether bytes before the first may be missing
   */
  record Placed(Signal signal, RawBytes raw, int from, boolean midway) {}

  private final SentenceProfile profile;
  private final Decoder decoder;
  private final ByteArrayOutputStream sent = new ByteArrayOutputStream();
  private final List<Placed> placed = new ArrayList<>();
  private byte[] pending = new byte[0];
  private long nanos;
  private int accountedFor;
  private boolean broken = true;
  private boolean opening = true;
  private long openedAt;

  WireScript(SentenceProfile profile) {
    this.profile = profile;
    this.decoder = new Decoder(profile, Source.SERIAL, "fuzzed", Profiles.CLOCK);
    decoder.opened(nanos);
  }

  /** Plays a script to its end; half a line may be left. */
  void play(byte[] script) {
    for (int i = 0; i < script.length; i++) {
      if (script[i] != EVENT || i + 3 >= script.length) {
        append(script[i]);
      } else {
        event(script[i + 1] & 7, script[i + 2] & 0xFF, script[i + 3] & 0xFF);
        i += 3;
      }
    }
    send();
  }

  /** Sends bytes as they are. */
  void send(RawBytes bytes) {
    send();
    pending = bytes.bytes();
    send();
  }

  private void event(int kind, int a, int b) {
    switch (kind) {
      case CHUNK -> send();
      case SILENCE -> silence(1 + 2 * a);
      case REPLUG -> replug();
      case GOOD -> pending = RawBytes.of(pending).then(good(a, b)).bytes();
      case QUIET_REPLUG -> {
        replug();
        silence(1_000);
      }
      default -> damage(kind, a, (byte) b);
    }
  }

  private RawBytes good(int a, int b) {
    Speed speed = Speed.of(BigDecimal.valueOf(2_000 + a * 10 + b, 1), SpeedUnit.FEET_PER_SECOND);
    String line = profile.simulated().orElseThrow().write(speed, b);
    return RawBytes.ofText(line).then(profile.line().terminator());
  }

  private void damage(int kind, int a, byte b) {
    if (pending.length == 0) {
      return;
    }
    int at = pending.length - 1 - a % pending.length;
    if (kind == FLIP) {
      pending[at] ^= b;
      return;
    }
    RawBytes head = RawBytes.of(Arrays.copyOf(pending, kind == LOSE ? at : at + 1));
    pending =
        head.then(
                RawBytes.of(
                    Arrays.copyOfRange(pending, kind == LOSE ? at + 1 : at, pending.length)))
            .bytes();
  }

  private void append(byte next) {
    pending = Arrays.copyOf(pending, pending.length + 1);
    pending[pending.length - 1] = next;
  }

  private void send() {
    if (pending.length > 0) {
      sent.writeBytes(pending);
      RawBytes chunk = RawBytes.of(pending);
      pending = new byte[0];
      opening = false;
      place(decoder.feed(chunk, nanos));
    }
  }

  private void silence(int millis) {
    send();
    nanos += millis * Profiles.MILLI;
    place(decoder.idle(nanos));
    if (opening && nanos - openedAt >= profile.line().quiet().toNanos()) {
      broken = false;
    }
  }

  private void replug() {
    send();
    place(decoder.lost(nanos));
    assertEquals(sent.size(), accountedFor, "bytes without a signal when the link ended");
    decoder.opened(nanos);
    broken = true;
    opening = true;
    openedAt = nanos;
  }

  /** Every signal's bytes follow on those before; only of an endless line some are not kept. */
  private void place(List<Signal> signals) {
    byte[] all = sent.toByteArray();
    for (Signal signal : signals) {
      RawBytes raw = raw(signal);
      int from =
          accountedFor
              + (signal instanceof Signal.Refused refused ? notKept(refused.refusal().words()) : 0);
      assertTrue(holds(all, raw, from), "bytes that were not sent there: " + signal);
      accountedFor = from + raw.length();
      placed.add(new Placed(signal, raw, from, broken));
      broken = !raw.characters().endsWith(profile.line().terminator().characters());
    }
  }

  private static boolean holds(byte[] all, RawBytes raw, int from) {
    int to = from + raw.length();
    return to <= all.length && Arrays.equals(all, from, to, raw.bytes(), 0, raw.length());
  }

  /** How many bytes a refusal says were not kept: only of a line that never ends. */
  static int notKept(String words) {
    Matcher said = NOT_KEPT.matcher(words);
    return said.find() ? Integer.parseInt(said.group(1)) : 0;
  }

  private static RawBytes raw(Signal signal) {
    return signal instanceof Signal.Heard heard
        ? heard.reading().raw()
        : ((Signal.Refused) signal).refusal().raw();
  }

  /** Everything that came, in order. */
  List<Placed> placed() {
    return List.copyOf(placed);
  }

  /** The readings that came, in order, with where they stood. */
  List<Placed> readings() {
    return placed.stream().filter(one -> one.signal() instanceof Signal.Heard).toList();
  }

  /** The reading of a placed signal. */
  static Reading reading(Placed one) {
    return ((Signal.Heard) one.signal()).reading();
  }
}
