package lanewarden.kiosk.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javax.sound.sampled.LineUnavailableException;
import org.junit.jupiter.api.Test;

/** Whoever plays never waits, and a machine without a sound device is silent and says so. */
class LoudspeakerTest {
  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private final List<short[]> played = new ArrayList<>();

  private void work() {
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
  }

  @Test
  void nothingIsPlayedOnTheThreadThatAsks() {
    Loudspeaker speaker = new Loudspeaker(played::add, waiting::add, Runnable::run);
    speaker.play(Cue.WITHIN, Volume.LOUD);
    assertEquals(0, played.size());
    work();
    assertEquals(Synthesis.of(Cue.WITHIN, Volume.LOUD).length, played.get(0).length);
    assertFalse(speaker.silent().get());
  }

  @Test
  void soundThatIsOvertakenIsNotPlayedLate() {
    Loudspeaker speaker = new Loudspeaker(played::add, waiting::add, Runnable::run);
    speaker.play(Cue.READING, Volume.LOUD);
    speaker.play(Cue.OVER, Volume.LOUD);
    work();
    assertEquals(1, played.size());
    assertEquals(Synthesis.of(Cue.OVER, Volume.LOUD).length, played.get(0).length);
  }

  @Test
  void whatIsOffStaysOff() {
    Loudspeaker speaker = new Loudspeaker(played::add, waiting::add, Runnable::run);
    speaker.play(Cue.OVER, Volume.OFF);
    assertTrue(waiting.isEmpty());
  }

  @Test
  void withoutADeviceItIsSilentUntilOneIsThere() {
    Deque<Loudspeaker.Output> machine =
        new ArrayDeque<>(
            List.of(
                samples -> {
                  throw new LineUnavailableException("in use");
                },
                samples -> {
                  throw new IllegalArgumentException("no device");
                },
                played::add));
    Loudspeaker speaker =
        new Loudspeaker(samples -> machine.remove().play(samples), waiting::add, Runnable::run);
    for (boolean silent : new boolean[] {true, true, false}) {
      speaker.play(Cue.READING, Volume.QUIET);
      work();
      assertEquals(silent, speaker.silent().get());
    }
  }

  /** On whatever this machine has: with a device it is heard, without one it says so. */
  @Test
  void realDeviceOrNoneNeitherThrowsNorBlocks() {
    Loudspeaker speaker = new Loudspeaker(waiting::add, Runnable::run);
    speaker.play(Cue.READING, Volume.QUIET);
    work();
    assertTrue(waiting.isEmpty());
  }
}
