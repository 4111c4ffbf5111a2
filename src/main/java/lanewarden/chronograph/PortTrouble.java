package lanewarden.chronograph;

import java.util.List;

/**
 * What is wrong with a port or with what comes through it: what happened, why, what to do, and a
 * code that {@code serial-format.md} lists.
 */
record PortTrouble(Kind kind, String words) {
  /** The ways in which a port fails. */
  enum Kind {
    /** There is no such port. */
    MISSING("PORT-MISSING"),
    /** Another program has it. */
    BUSY("PORT-BUSY"),
    /** This user may not open it. */
    DENIED("PORT-DENIED"),
    /** It was open and went away. */
    VANISHED("PORT-VANISHED"),
    /** It is away, and another port came since. */
    RENAMED("PORT-RENAMED"),
    /**
     * It is there and free, but cannot be set up: no serial port, or a setting it does not know.
     */
    UNUSABLE("PORT-UNUSABLE"),
    /** What comes is no text: another baud rate or parity than the instrument's. */
    NOISE("WIRE-NOISE"),
    /** More comes than shots can be. */
    FLOOD("WIRE-FLOOD");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    /** The code that people can look up. */
    String code() {
      return code;
    }
  }

  private static PortTrouble of(Kind kind, String words) {
    return new PortTrouble(kind, words + " (" + kind.code() + ")");
  }

  static PortTrouble missing(String port) {
    return of(
        Kind.MISSING,
        "There is no port "
            + port
            + ": not plugged in, or it has another name. Plug it in, or choose another port.");
  }

  static PortTrouble busy(String port) {
    return of(Kind.BUSY, "The port " + port + " is in use by another program. Close that program.");
  }

  static PortTrouble denied(String port) {
    return of(
        Kind.DENIED,
        "This user may not open the port "
            + port
            + ". Add the user to the group that owns it (hardware-notes says how) and sign in to"
            + " the system again.");
  }

  static PortTrouble vanished(String port) {
    return of(
        Kind.VANISHED,
        "The port "
            + port
            + " went away: unplugged or switched off. Plug it in again; the link comes back by"
            + " itself.");
  }

  /**
   * @param came the ports that came since, each with what tells its device
   */
  static PortTrouble renamed(String port, List<String> came) {
    return of(
        Kind.RENAMED,
        "The port "
            + port
            + " is away, and since then there is "
            + String.join(" and ", came)
            + ": the system may have given the instrument another name. Choose that port; on Linux,"
            + " a name under /dev/serial/by-id stays the same.");
  }

  static PortTrouble unusable(String port, PortSettings settings, int code) {
    return of(
        Kind.UNUSABLE,
        "The port %s cannot be opened with %s (system error %d). Check that it is a serial port and knows these settings."
            .formatted(port, settings, code));
  }

  static PortTrouble unexpected(String instrument, Throwable what) {
    return of(
        Kind.UNUSABLE,
        "The link to " + instrument + " failed in an unexpected way and is tried again: " + what);
  }

  static PortTrouble noise(PortSettings settings) {
    return of(
        Kind.NOISE,
        "Bytes come, but most are no characters: the instrument speaks with another baud rate,"
            + " parity or number of bits than "
            + settings
            + ", or the line's levels are wrong. Set both ends alike, then shoot again.");
  }

  /**
   * @param bytes how many came within a second
   */
  static PortTrouble flood(long bytes) {
    return of(
        Kind.FLOOD,
        bytes
            + " bytes came within a second, more than ten shots could say: the instrument sends all"
            + " the time, or its memory. Set it to send one line a shot, or wait until its memory"
            + " is out; whole lines are heard meanwhile.");
  }
}
