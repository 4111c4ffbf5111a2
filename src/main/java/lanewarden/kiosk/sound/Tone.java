package lanewarden.kiosk.sound;

/**
 * A piece of a sine, or of silence.
 *
 * @param hertz its pitch; 0 for silence
 * @param millis how long it lasts, in milliseconds
 */
record Tone(int hertz, int millis) {

  /** Silence. */
  static Tone rest(int millis) {
    return new Tone(0, millis);
  }
}
