package lanewarden.kiosk.sound;

import java.util.List;

/** Makes the sounds: sines that swell from nothing and fade to nothing, so that none clicks. */
final class Synthesis {

  /** Samples a second. */
  static final int RATE = 44_100;

  /** Of the largest sample there is: what is louder is distorted by small loudspeakers. */
  static final double LOUDEST = 0.8;

  private static final double SWELL_MILLIS = 6;

  private Synthesis() {}

  /** A sound as samples of 16 bits, one channel. */
  static short[] of(Cue cue, Volume volume) {
    List<Tone> tones = cue.tones();
    short[] samples = new short[tones.stream().mapToInt(Synthesis::length).sum()];
    int at = 0;
    for (Tone tone : tones) {
      fill(samples, at, tone, Short.MAX_VALUE * LOUDEST * volume.percent() / 100);
      at += length(tone);
    }
    return samples;
  }

  private static int length(Tone tone) {
    return Math.toIntExact((long) RATE * tone.millis() / 1000);
  }

  private static void fill(short[] samples, int from, Tone tone, double peak) {
    int length = length(tone);
    for (int i = 0; i < length; i++) {
      double wave = Math.sin(2 * Math.PI * tone.hertz() * i / RATE);
      samples[from + i] = (short) Math.round(peak * swell(i, length) * wave);
    }
  }

  /** From 0 to 1 at the beginning and back at the end, each along half a cosine. */
  private static double swell(int at, int length) {
    double edge = Math.min(SWELL_MILLIS * RATE / 1000, length / 2.0);
    double near = Math.min(at, length - 1 - at) / edge;
    return near >= 1 ? 1 : (1 - Math.cos(Math.PI * near)) / 2;
  }
}
