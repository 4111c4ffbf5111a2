package lanewarden.chronograph;

import static lanewarden.chronograph.Profiles.MILLI;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lanewarden.metrology.Deviation;
import lanewarden.metrology.PairAgreement;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.Test;

class SeriesPairingTest {
  private static final Duration WINDOW = Duration.ofMillis(500);
  static final PairAgreement AGREEMENT = new PairAgreement(Deviation.parse("1 ft/s"));

  private final SeriesPairing pairing =
      new SeriesPairing("Near and Far", "Near", "Far", AGREEMENT, WINDOW, Profiles.CLOCK);

  private static Reading reading(boolean first, String speed) {
    return new Reading(
        Speed.parse(speed),
        RawBytes.ofText((first ? "near " : "far ") + speed + "\n"),
        Source.SERIAL,
        first ? "Near" : "Far",
        Profiles.NOON,
        null);
  }

  private List<Signal> take(boolean first, String speed, long millis) {
    return pairing.take(first, reading(first, speed), millis * MILLI);
  }

  private static Signal confirmed(String first, String second) {
    Reading confirming = reading(false, second);
    return new Signal.Heard(
        reading(true, first)
            .with(new Companion(confirming.speed(), confirming.raw(), confirming.instrument())));
  }

  @Test
  void theFirstCountsAndTheSecondConfirmsInEitherOrder() {
    assertEquals(List.of(), take(true, "300.0 ft/s", 0));
    assertEquals(List.of(confirmed("300.0 ft/s", "300.5 ft/s")), take(false, "300.5 ft/s", 20));
    assertEquals(List.of(), take(false, "299.5 ft/s", 5_000));
    assertEquals(List.of(confirmed("299.0 ft/s", "299.5 ft/s")), take(true, "299.0 ft/s", 5_020));
    assertFalse(pairing.waits());
  }

  @Test
  void theyAgreeUpToTheToleranceAndNotBeyond() {
    take(true, "300.0 ft/s", 0);
    assertEquals(1, Collected.speeds(take(false, "301.0 ft/s", 1)).size());
    take(true, "300.0 ft/s", 5_000);
    Refusal refusal = Collected.refusals(take(false, "301.1 ft/s", 5_001)).get(0);
    assertEquals(Reason.DISAGREE, refusal.reason());
    assertEquals("near 300.0 ft/s\\nfar 301.1 ft/s\\n", refusal.raw().escaped());
    assertEquals(
        "Near and Far do not agree: 300.0 ft/s and 301.1 ft/s are 1.10 ft/s apart, more than the"
            + " 1 ft/s allowed. At least one misread. Check light and alignment of both, then"
            + " shoot again.",
        refusal.words());
    assertEquals("Near and Far", refusal.instrument());
  }

  @Test
  void theWindowHoldsItsLastNanosecond() {
    take(true, "300.0 ft/s", 0);
    assertEquals(List.of(), pairing.idle(WINDOW.toNanos()));
    assertEquals(1, Collected.speeds(take(false, "300.0 ft/s", 500)).size());
    take(true, "300.0 ft/s", 5_000);
    List<Signal> late = pairing.idle(5_500 * MILLI + 1);
    assertEquals(List.of(Reason.UNPAIRED), Collected.reasons(late));
    String words = Collected.refusals(late).get(0).words();
    assertTrue(
        words.startsWith("Only Near measured 300.0 ft/s. Far measured nothing within 500 ms."),
        words);
  }

  @Test
  void aReadingThatComesTooLateWaitsAnew() {
    take(true, "300.0 ft/s", 0);
    assertEquals(List.of(Reason.UNPAIRED), Collected.reasons(take(false, "300.0 ft/s", 501)));
    assertTrue(pairing.waits());
    assertEquals(List.of(Reason.UNPAIRED), Collected.reasons(pairing.end()));
    assertEquals(List.of(), pairing.end());
  }

  @Test
  void twoOfOneInstrumentWithinTheWindowAreNotGuessedAtUntilBothWereQuiet() {
    List<Signal> signals = new ArrayList<>(take(true, "300.0 ft/s", 0));
    signals.addAll(take(true, "300.1 ft/s", 400));
    signals.addAll(take(false, "300.0 ft/s", 450));
    signals.addAll(take(false, "300.1 ft/s", 900));
    signals.addAll(take(true, "300.2 ft/s", 1_400));
    assertEquals(5, Collected.refusals(signals).size());
    assertFalse(pairing.waits());
    take(true, "300.3 ft/s", 1_901);
    assertEquals(1, Collected.speeds(take(false, "300.3 ft/s", 1_910)).size());
  }

  /** Each arrow has a speed of its own, so that a wrong pair would show. */
  @Test
  void arrowsFurtherApartThanTheWindowAreNeverMixedUpAndNoneIsLost() {
    record Arrival(boolean first, int arrow, long at) {}
    Random random = new Random(5);
    List<Arrival> arrivals = new ArrayList<>();
    int confirmed = 0;
    int alone = 0;
    long now = 0;
    for (int arrow = 0; arrow < 2_000; arrow++) {
      now += 1_001 + random.nextInt(3_000);
      boolean near = random.nextInt(10) > 0;
      boolean far = random.nextInt(10) > 0;
      if (near) {
        arrivals.add(new Arrival(true, arrow, now + random.nextInt(500)));
      }
      if (far) {
        arrivals.add(new Arrival(false, arrow, now + random.nextInt(500)));
      }
      confirmed += near && far ? 1 : 0;
      alone += near ^ far ? 1 : 0;
    }
    arrivals.sort(Comparator.comparingLong(Arrival::at));
    List<Signal> signals = new ArrayList<>();
    for (Arrival arrival : arrivals) {
      signals.addAll(take(arrival.first(), (100 + arrival.arrow()) + " ft/s", arrival.at()));
    }
    signals.addAll(pairing.end());
    assertEquals(confirmed, Collected.speeds(signals).size());
    assertEquals(alone, Collected.refusals(signals).size());
    for (Signal signal : signals) {
      if (signal instanceof Signal.Heard heard) {
        Companion companion = heard.reading().companion();
        assertEquals(
            Optional.of(heard.reading().speed()),
            Optional.ofNullable(companion).map(Companion::speed));
      }
    }
  }
}
