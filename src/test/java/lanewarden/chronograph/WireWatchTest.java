package lanewarden.chronograph;

import static lanewarden.chronograph.Profiles.good;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lanewarden.quantity.Speed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Noise and a flood are told, and told to be over, by a clock in the test's hands. */
class WireWatchTest {
  private static final RawBytes NOISE = RawBytes.of(new byte[60]);
  private static final RawBytes NOTHING = RawBytes.ofText("");
  private static final RawBytes FLOOD = RawBytes.ofText("x".repeat(2_000));

  private final WireWatch watch = new WireWatch(Profiles.gateTimer());

  @BeforeEach
  void open() {
    watch.opened(0);
  }

  private static long at(double seconds) {
    return (long) (seconds * 1_000_000_000L);
  }

  private Optional<PortTrouble.Kind> came(RawBytes bytes, double seconds) {
    return watch.came(bytes, List.of(), at(seconds)).map(PortTrouble::kind);
  }

  private void reading(double seconds) {
    Signal heard =
        new Signal.Heard(
            new Reading(
                Speed.parse("300.1 ft/s"),
                good(1),
                Source.SERIAL,
                "Gate timer",
                Profiles.NOON,
                "00001"));
    assertEquals(Optional.empty(), watch.came(good(1), List.of(heard), at(seconds)));
  }

  private boolean isOver(double seconds) {
    assertEquals(Optional.empty(), came(NOTHING, seconds));
    return watch.isOver(at(seconds));
  }

  @Test
  void noiseIsOverAfterAReadingAndFiveQuietSeconds() {
    assertEquals(Optional.of(PortTrouble.Kind.NOISE), came(NOISE, 1));
    assertFalse(isOver(20), "no reading has shown that both ends are set alike");
    reading(21);
    assertTrue(isOver(21), "quiet since the noise");
    assertFalse(isOver(30), "told once");
  }

  @Test
  void aReadingAmidNoiseDoesNotEndIt() {
    assertEquals(Optional.of(PortTrouble.Kind.NOISE), came(NOISE, 1));
    reading(2);
    assertFalse(isOver(5.9));
    assertEquals(Optional.empty(), came(RawBytes.parse("\\xFF"), 5.95));
    assertFalse(isOver(10.9), "counted anew from the last strange byte");
    assertTrue(isOver(10.95));
  }

  @Test
  void noiseThatComesAgainAsksForAReadingAgain() {
    came(NOISE, 1);
    reading(2);
    assertEquals(Optional.of(PortTrouble.Kind.NOISE), came(NOISE, 3));
    assertFalse(isOver(20));
    reading(21);
    assertTrue(isOver(21));
  }

  @Test
  void aFloodIsOverAfterAReadingAndFiveSecondsWithoutOne() {
    assertEquals(Optional.of(PortTrouble.Kind.FLOOD), came(FLOOD, 0.5));
    assertFalse(isOver(9));
    reading(10);
    assertTrue(isOver(10));
  }

  @Test
  void whatWasNeverInTroubleIsNeverOver() {
    reading(1);
    assertFalse(isOver(30));
    came(NOISE, 31);
    watch.opened(at(32));
    reading(33);
    assertFalse(isOver(60), "the port was opened anew, and that was told");
  }
}
