package lanewarden.chronograph;

import java.util.HexFormat;

/** How an instrument guards its lines against damage on the way; written as two hex digits. */
enum Checksum {
  /** No guard: only the form of the line can show damage. */
  NONE {
    @Override
    int of(String covered) {
      throw new IllegalStateException("no checksum is computed");
    }
  },
  /** Exclusive or of the covered bytes, as NMEA 0183 frames its sentences between $ and *. */
  XOR {
    @Override
    int of(String covered) {
      return covered.chars().reduce(0, (a, b) -> a ^ b);
    }
  },
  /** Sum of the covered bytes modulo 256. */
  SUM {
    @Override
    int of(String covered) {
      return covered.chars().sum() & 0xFF;
    }
  };

  /**
   * The checksum, from 0 to 255.
   *
   * @param covered one character a byte (ISO 8859-1)
   */
  abstract int of(String covered);

  /** The checksum as two upper-case hex digits. */
  String hex(String covered) {
    return HexFormat.of().withUpperCase().toHexDigits((byte) of(covered));
  }
}
