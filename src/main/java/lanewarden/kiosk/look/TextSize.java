package lanewarden.kiosk.look;

import java.util.Arrays;
import java.util.Optional;

/** How large text is, against what the screens are drawn for. */
public enum TextSize {
  /** As drawn. */
  PLAIN(100),
  /** A quarter larger. */
  LARGE(125),
  /** Half as large again. */
  LARGER(150),
  /** Twice as large, the most that WCAG 2.2 asks for (success criterion 1.4.4). */
  LARGEST(200);

  private final int percent;

  TextSize(int percent) {
    this.percent = percent;
  }

  /** In percent of what the screens are drawn for. */
  public int percent() {
    return percent;
  }

  /** The size of so many percent, if there is one. */
  public static Optional<TextSize> of(int percent) {
    return Arrays.stream(values()).filter(size -> size.percent == percent).findAny();
  }

  /** The next larger one, or this if there is none. */
  public TextSize larger() {
    return switch (this) {
      case PLAIN -> LARGE;
      case LARGE -> LARGER;
      case LARGER, LARGEST -> LARGEST;
    };
  }

  /** The next smaller one, or this if there is none. */
  public TextSize smaller() {
    return switch (this) {
      case PLAIN, LARGE -> PLAIN;
      case LARGER -> LARGE;
      case LARGEST -> LARGER;
    };
  }

  /** How many times larger than drawn. */
  public double times() {
    return percent / 100.0;
  }

  /** Whether screens must be arranged in another way, because they no longer fit as drawn. */
  public boolean isLarge() {
    return this != PLAIN;
  }
}
