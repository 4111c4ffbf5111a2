package lanewarden.chronograph;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import lanewarden.quantity.Speed;
import lanewarden.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;

/** Seeded damage to good lines, and plain noise. */
class DecoderFuzzTest {
  private static final int ROUNDS = 15_000;

  @Test
  void randomBytesNeverBecomeAReadingOfTheGateTimer() {
    Random random = new Random(1);
    Decoder decoder = Profiles.opened(Profiles.gateTimer());
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bytes = new byte[random.nextInt(60)];
      random.nextBytes(bytes);
      List<Signal> signals = new ArrayList<>(decoder.feed(RawBytes.of(bytes), round));
      signals.addAll(decoder.feed(RawBytes.ofText("\r\n"), round));
      assertTrue(Collected.speeds(signals).isEmpty(), () -> signals.toString());
    }
  }

  @Test
  void aLineDamagedOnceNeverGivesAnotherSpeedThanItCarried() {
    assertTrue(mostWrongShare(new Random(2), 1) == 0.0);
  }

  /**
   * Damages that cancel each other pass an exclusive or, whoever computes it: then the gate time of
   * the same line bounds what they can do.
   */
  @Test
  void aLineDamagedOftenNeverGivesASpeedFurtherOffThanTheGateTimeAllows() {
    assertTrue(mostWrongShare(new Random(3), 4) <= 0.002);
  }

  /** Sends lines with up to so many damages each; how far off a heard speed was at most. */
  private static double mostWrongShare(Random random, int most) {
    SentenceProfile profile = Profiles.gateTimer();
    SimulatedLine line = profile.simulated().orElseThrow();
    Decoder decoder = Profiles.opened(profile);
    double mostWrong = 0;
    int heard = 0;
    long nanos = 0;
    for (int round = 1; round <= ROUNDS; round++) {
      Speed speed =
          Speed.of(BigDecimal.valueOf(2_000 + random.nextInt(1_500), 1), SpeedUnit.FEET_PER_SECOND);
      byte[] bytes = RawBytes.ofText(line.write(speed, round) + "\r\n").bytes();
      int damage = random.nextInt(most + 1);
      for (int i = 0; i < damage; i++) {
        bytes = damaged(bytes, random);
      }
      nanos += random.nextInt(10) == 0 ? 400 * Profiles.MILLI : 1;
      List<Signal> signals = new ArrayList<>();
      if (random.nextInt(20) == 0) {
        signals.addAll(decoder.lost(nanos));
        decoder.opened(nanos);
      }
      signals.addAll(decoder.idle(nanos));
      signals.addAll(decoder.feed(RawBytes.of(bytes), nanos));
      for (String said : Collected.speeds(signals)) {
        heard++;
        double share = Speed.parse(said).siDouble() / speed.siDouble() - 1;
        mostWrong = Math.max(mostWrong, Math.abs(share));
      }
    }
    assertTrue(heard > ROUNDS / 10, "good lines are still heard: " + heard);
    return mostWrong;
  }

  /** One fault of a wire: a bit flipped, a byte lost, doubled or invented, the line cut. */
  private static byte[] damaged(byte[] bytes, Random random) {
    if (bytes.length < 2) {
      return bytes;
    }
    int at = random.nextInt(bytes.length);
    byte[] head = Arrays.copyOf(bytes, at);
    byte[] tail = Arrays.copyOfRange(bytes, at + 1, bytes.length);
    RawBytes first = RawBytes.of(head);
    RawBytes last = RawBytes.of(tail);
    RawBytes hit = RawBytes.of(new byte[] {bytes[at]});
    return switch (random.nextInt(5)) {
      case 0 ->
          first
              .then(RawBytes.of(new byte[] {(byte) (bytes[at] ^ 1 << random.nextInt(8))}))
              .then(last)
              .bytes();
      case 1 -> first.then(last).bytes();
      case 2 -> first.then(hit).then(hit).then(last).bytes();
      case 3 ->
          first
              .then(RawBytes.of(new byte[] {(byte) random.nextInt(256)}))
              .then(hit)
              .then(last)
              .bytes();
      default -> head;
    };
  }
}
