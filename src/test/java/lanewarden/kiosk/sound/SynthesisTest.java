package lanewarden.kiosk.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The sounds as samples: what an ear would hear, counted. */
class SynthesisTest {

  @ParameterizedTest
  @EnumSource(Cue.class)
  void soundIsAsLongAsItsTones(Cue cue) {
    int millis = cue.tones().stream().mapToInt(Tone::millis).sum();
    assertEquals(millis, 1000.0 * Synthesis.of(cue, Volume.LOUD).length / Synthesis.RATE, 0.5);
    assertTrue(millis <= 700, "short: nobody waits for it");
  }

  @ParameterizedTest
  @EnumSource(Cue.class)
  void soundStartsAndEndsAtZeroAndIsNeverClipped(Cue cue) {
    short[] samples = Synthesis.of(cue, Volume.LOUD);
    assertEquals(0, samples[0]);
    assertEquals(0, samples[samples.length - 1]);
    int peak = peak(samples);
    assertTrue(peak < Short.MAX_VALUE, "clipped at " + peak);
    assertEquals(Synthesis.LOUDEST, (double) peak / Short.MAX_VALUE, 0.01);
  }

  /** A step between neighbours that no sine of that pitch makes is heard as a click. */
  @ParameterizedTest
  @EnumSource(Cue.class)
  void noSampleJumps(Cue cue) {
    short[] samples = Synthesis.of(cue, Volume.LOUD);
    int highest = cue.tones().stream().mapToInt(Tone::hertz).max().orElseThrow();
    double steepest =
        2 * Math.PI * highest / Synthesis.RATE * Synthesis.LOUDEST * Short.MAX_VALUE * 1.05;
    for (int i = 1; i < samples.length; i++) {
      assertTrue(Math.abs(samples[i] - samples[i - 1]) <= steepest, "at " + i);
    }
  }

  @ParameterizedTest
  @EnumSource(Volume.class)
  void loudnessFollowsTheVolume(Volume volume) {
    assertEquals(
        Synthesis.LOUDEST * volume.percent() / 100,
        (double) peak(Synthesis.of(Cue.OVER, volume)) / Short.MAX_VALUE,
        0.01);
  }

  /** Zero crossings of the first tone, which is a sine: two a period. */
  @ParameterizedTest
  @EnumSource(Cue.class)
  void firstToneHasItsPitch(Cue cue) {
    Tone first = cue.tones().get(0);
    short[] samples = Synthesis.of(cue, Volume.LOUD);
    int length = Synthesis.RATE * first.millis() / 1000;
    int crossings = 0;
    for (int i = 1; i < length; i++) {
      if (samples[i - 1] < 0 != samples[i] < 0) {
        crossings++;
      }
    }
    assertEquals(2.0 * first.hertz() * first.millis() / 1000, crossings, 2);
  }

  /** Who does not hear high from low tells them apart by how many tones there are and how long. */
  @Test
  void noTwoSoundsHaveTheSamePattern() {
    Set<List<Integer>> patterns = new HashSet<>();
    Stream.of(Cue.values())
        .map(cue -> heard(Synthesis.of(cue, Volume.LOUD)))
        .forEach(patterns::add);
    assertEquals(Cue.values().length, patterns.size(), patterns.toString());
  }

  /** The lengths of what is heard between pauses, in tenths of a second, rounded up. */
  private static List<Integer> heard(short[] samples) {
    List<Integer> lengths = new ArrayList<>();
    int window = Synthesis.RATE / 100;
    int sounding = 0;
    for (int at = 0; at + window <= samples.length + window; at += window) {
      short[] piece = Arrays.copyOfRange(samples, Math.min(at, samples.length), at + window);
      if (peak(piece) > 1000) {
        sounding++;
      } else if (sounding > 0) {
        lengths.add((sounding + 9) / 10);
        sounding = 0;
      }
    }
    return lengths;
  }

  private static int peak(short[] samples) {
    int peak = 0;
    for (short sample : samples) {
      peak = Math.max(peak, Math.abs(sample));
    }
    return peak;
  }
}
