package lanewarden.kiosk.sound;

import java.util.List;

/**
 * What is told by a sound. They differ in how many tones they have and how long those are, so that
 * they are told apart by whoever does not hear high from low.
 */
public enum Cue {
  /** A reading was taken: one short tone. */
  READING(new Tone(880, 70)),
  /** Within: a short tone and a long one above it. */
  WITHIN(new Tone(660, 90), Tone.rest(50), new Tone(990, 260)),
  /** Decided otherwise: three even tones. */
  OVER(new Tone(330, 150), Tone.rest(70), new Tone(330, 150), Tone.rest(70), new Tone(330, 150)),
  /** Refused: one long tone. */
  REFUSED(new Tone(247, 550));

  private final List<Tone> tones;

  Cue(Tone... tones) {
    this.tones = List.of(tones);
  }

  /** What it is made of, one after the other. */
  List<Tone> tones() {
    return tones;
  }
}
