package lanewarden.kiosk.sound;

import java.util.Arrays;
import java.util.Optional;

/** How loud the sounds are. */
public enum Volume {
  /** Nothing is heard. */
  OFF(0),
  /** For an indoor range. */
  QUIET(20),
  /** For a roofed table. */
  MIDDLE(50),
  /** For a table outdoors. */
  LOUD(100);

  private final int percent;

  Volume(int percent) {
    this.percent = percent;
  }

  /** Of the loudest, in percent. */
  public int percent() {
    return percent;
  }

  /** The one of so many percent, if there is one. */
  public static Optional<Volume> of(int percent) {
    return Arrays.stream(values()).filter(volume -> volume.percent == percent).findAny();
  }
}
