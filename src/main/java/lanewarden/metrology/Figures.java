package lanewarden.metrology;

/** Figures that come in from outside, refused where they make no sense. */
final class Figures {

  private Figures() {}

  static void requirePositive(double value, String what) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " must be a number more than zero, not " + value);
    }
  }

  static void requireNotNegative(double value, String what) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(what + " must be a number from zero up, not " + value);
    }
  }

  static void requireAtLeast(int least, int value, String what) {
    if (value < least) {
      throw new IllegalArgumentException(what + " must be " + least + " or more, not " + value);
    }
  }
}
