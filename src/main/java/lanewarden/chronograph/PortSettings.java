package lanewarden.chronograph;

/**
 * How a serial port is set.
 *
 * @param baud bits a second
 * @param dataBits 5 to 8
 * @param stopBits 1 or 2
 */
record PortSettings(int baud, int dataBits, Parity parity, int stopBits, Flow flow) {
  /** The parity bit. */
  enum Parity {
    NONE,
    ODD,
    EVEN,
    MARK,
    SPACE
  }

  /** How the two ends ask each other to wait. */
  enum Flow {
    NONE,
    RTS_CTS,
    XON_XOFF
  }

  /** The usual short writing, for example {@code 9600 8N1}. */
  @Override
  public String toString() {
    return baud + " " + dataBits + parity.name().charAt(0) + stopBits;
  }
}
